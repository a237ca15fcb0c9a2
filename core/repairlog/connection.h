// SPDX-License-Identifier: GPL-3.0-or-later
// One connection to SQLite through Qt SQL: positional binds, queries finished, the handle dropped in order.
#pragma once

#include "repairlog/repair_log.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

#include <functional>
#include <map>

namespace strandbench {

enum class Access {
    ReadWrite, ///< creates the file when it is not there
    ReadOnly,  ///< beside a program that may be writing
    Still,     ///< read only, with no lock, no -wal and no -shm: for a file that nobody has open
    Memory,
};

/// One row of a result, while it is the present one. Columns count from 0.
class Row {
public:
    explicit Row(const QSqlQuery& query) : m_query(query) {}
    [[nodiscard]] QString text(int column) const;
    [[nodiscard]] qint64 integer(int column) const;
    [[nodiscard]] QByteArray bytes(int column) const;

private:
    const QSqlQuery& m_query;
};

class SqlConnection {
public:
    /// How long a statement waits for another program's lock.
    static constexpr int busyTimeoutMs = 2000;

    /// Opens, and sets what every connection of ours has: the busy timeout and foreign keys, both read back.
    [[nodiscard]] static Logged<std::unique_ptr<SqlConnection>> open(const QString& path, Access access);
    ~SqlConnection();
    SqlConnection(const SqlConnection&) = delete;
    SqlConnection& operator=(const SqlConnection&) = delete;

    /// Sets a PRAGMA and reads it back; a setting that did not take effect is a failure.
    /// Room in memory for the pages that a question of a log of many years goes by again and again.
    [[nodiscard]] Logged<void> keepPagesAtHand() const;
    [[nodiscard]] Logged<void> set(const QString& pragma, const QString& value, const QString& readsBackAs) const;

    /// A statement without rows.
    [[nodiscard]] Logged<void> run(const QString& sql, const QVariantList& binds = {}) const;
    /// Hands every row over; a failure of `take` ends the reading and comes back.
    [[nodiscard]] Logged<void> each(const QString& sql, const QVariantList& binds,
                                    const std::function<Logged<void>(const Row&)>& take) const;
    /// The first column of the first row; an invalid QVariant when there is no row.
    [[nodiscard]] Logged<QVariant> value(const QString& sql, const QVariantList& binds = {}) const;

private:
    SqlConnection(QSqlDatabase database, QString name);
    /// A query for the statement: one that was prepared before and is idle, or a fresh one.
    [[nodiscard]] QSqlQuery take(const QString& sql) const;
    /// Ends a query that went well, and keeps it for the next time.
    void keep(const QString& sql, const QVariantList& binds, QSqlQuery query) const;

    QSqlDatabase m_database;
    QString m_name;
    mutable std::map<QString, QSqlQuery> m_idle; ///< an act at the bench is the same few statements each time
};

} // namespace strandbench
