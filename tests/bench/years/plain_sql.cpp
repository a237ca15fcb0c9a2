// SPDX-License-Identifier: GPL-3.0-or-later
#include "plain_sql.h"

#include <QUrl>

#include <stdexcept>
#include <string>

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {

PlainSql::PlainSql(const QString& path, Reading reading)
{
    const QString uri = QUrl::fromLocalFile(path).toString(QUrl::FullyEncoded) +
                        (reading == Reading::Still ? u"?immutable=1"_s : u"?mode=ro"_s);
    const std::string cache = "PRAGMA cache_size = -" + std::to_string(cacheKiB);
    if (sqlite3_open_v2(uri.toUtf8().constData(), &m_database, SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, nullptr) !=
            SQLITE_OK ||
        sqlite3_exec(m_database, cache.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        throw std::runtime_error("it does not open: " + path.toStdString());
}

PlainSql::~PlainSql() { sqlite3_close(m_database); }

PlainSql::Statement::Statement(sqlite3* database, const char* sql) : m_statement(nullptr, &sqlite3_finalize)
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v3(database, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sqlite3_errmsg(database));
    m_statement.reset(statement);
}

void PlainSql::Statement::bind(int place, qint64 value) const { sqlite3_bind_int64(m_statement.get(), place, value); }

void PlainSql::Statement::bind(int place, const QString& value) const
{
    const QByteArray bytes = value.toUtf8();
    sqlite3_bind_text(m_statement.get(), place, bytes.constData(), int(bytes.size()), SQLITE_TRANSIENT);
}

bool PlainSql::Statement::step() const
{
    const int step = sqlite3_step(m_statement.get());
    if (step != SQLITE_ROW && step != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(sqlite3_db_handle(m_statement.get())));
    return step == SQLITE_ROW;
}

} // namespace strandbench::yearsbench
