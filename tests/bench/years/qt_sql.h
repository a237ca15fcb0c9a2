// SPDX-License-Identifier: GPL-3.0-or-later
// SQL through Qt SQL, as somebody would write it by hand who wants nothing but the values: a QSqlQuery prepared once,
// forward only, every column made of query.value().
#pragma once

#include "plain_sql.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

namespace strandbench::yearsbench {

class QtSql {
public:
    /// Only reads. Throws std::runtime_error when the file does not open.
    QtSql(const QString& path, Reading reading);
    ~QtSql();
    QtSql(const QtSql&) = delete;
    QtSql& operator=(const QtSql&) = delete;

    /// The present row. Columns count from 0.
    class Row {
    public:
        explicit Row(const QSqlQuery& query) : m_query(query) {}
        [[nodiscard]] qint64 integer(int column) const { return m_query.value(column).toLongLong(); }
        [[nodiscard]] QString text(int column) const { return m_query.value(column).toString(); }
        [[nodiscard]] QByteArray bytes(int column) const { return m_query.value(column).toByteArray(); }
        [[nodiscard]] QByteArray lying(int column) const { return bytes(column); } ///< Qt has copied it already
        [[nodiscard]] QUuid uuid(int column) const { return QUuid::fromString(text(column)); }

    private:
        const QSqlQuery& m_query;
    };

    class Statement {
    public:
        Statement(const QSqlDatabase& database, const char* sql);
        /// Binds by position, hands every row over. Throws std::runtime_error when SQLite does not answer.
        template <class Take, class... Bound> void each(const Take& take, const Bound&... bound)
        {
            int place = 0;
            (m_query.bindValue(place++, bound), ...);
            if (!m_query.exec())
                end();
            const Row row(m_query);
            while (m_query.next())
                take(row);
            m_query.finish();
        }

    private:
        [[noreturn]] void end() const;
        QSqlQuery m_query;
    };
    [[nodiscard]] Statement prepare(const char* sql) const { return {m_database, sql}; }

private:
    QString m_name;
    QSqlDatabase m_database;
};

} // namespace strandbench::yearsbench
