// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of an act through Qt SQL, as somebody would write them by hand: each QSqlQuery prepared once, values bound
// by position, with the log's own schema, guards and pragmas.
#pragma once

#include "plain_log.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

namespace strandbench::commitbench {

/// What an act left in a log, as Qt SQL binds it.
struct QtActRows {
    std::vector<QVariantList> event; ///< one
    std::vector<QVariantList> blobs;
    std::vector<QVariantList> links;
    std::vector<QVariantList> summary;
};
[[nodiscard]] QtActRows forQt(const ActRows& act);

class QtLog {
public:
    /// A log that is there already, made by the program. Throws std::runtime_error when it does not open.
    explicit QtLog(const QString& path);
    ~QtLog();
    QtLog(const QtLog&) = delete;
    QtLog& operator=(const QtLog&) = delete;

    /// Writes an act: BEGIN IMMEDIATE, its rows, COMMIT. Throws std::runtime_error when SQLite refuses.
    void write(const QtActRows& act);
    [[nodiscard]] qint64 events() const;

private:
    static void run(QSqlQuery& query, const QVariantList& values = {});

    QString m_name;
    QSqlDatabase m_database;
    std::vector<QSqlQuery> m_statements; ///< by Which
};

} // namespace strandbench::commitbench
