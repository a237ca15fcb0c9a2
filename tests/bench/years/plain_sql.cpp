// SPDX-License-Identifier: GPL-3.0-or-later
#include "plain_sql.h"

#include <stdexcept>

namespace strandbench::yearsbench {

PlainSql::PlainSql(const std::string& path)
{
    if (sqlite3_open_v2(path.c_str(), &m_database, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK)
        throw std::runtime_error("it does not open: " + path);
}

PlainSql::~PlainSql() { sqlite3_close(m_database); }

PlainSql::Statement::Statement(sqlite3* database, const char* sql) : m_statement(nullptr, &sqlite3_finalize)
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v3(database, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sqlite3_errmsg(database));
    m_statement.reset(statement);
}

std::vector<Line> PlainSql::Statement::rows(const std::vector<Bind>& binds) const
{
    sqlite3_stmt* statement = m_statement.get();
    for (std::size_t i = 0; i < binds.size(); ++i) {
        const int place = int(i) + 1;
        if (const auto* number = std::get_if<sqlite3_int64>(&binds[i]))
            sqlite3_bind_int64(statement, place, *number);
        else if (const auto* text = std::get_if<std::string>(&binds[i]))
            sqlite3_bind_text(statement, place, text->data(), int(text->size()), SQLITE_STATIC);
    }
    std::vector<Line> found;
    int step = sqlite3_step(statement);
    for (; step == SQLITE_ROW; step = sqlite3_step(statement)) {
        Line& line = found.emplace_back();
        const int columns = sqlite3_column_count(statement);
        line.reserve(std::size_t(columns));
        for (int i = 0; i < columns; ++i) {
            const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, i));
            line.emplace_back(bytes ? bytes : "", std::size_t(sqlite3_column_bytes(statement, i)));
        }
    }
    if (step != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(sqlite3_db_handle(statement)));
    sqlite3_reset(statement);
    return found;
}

std::vector<Line> PlainSql::rows(const char* sql, const std::vector<Bind>& binds) const
{
    return prepare(sql).rows(binds);
}

} // namespace strandbench::yearsbench
