// SPDX-License-Identifier: GPL-3.0-or-later
#include "plain_log.h"

#include "statements.h"

#include <stdexcept>

namespace strandbench::commitbench {
PlainLog::PlainLog(const std::string& path)
{
    if (sqlite3_open_v2(path.c_str(), &m_handle, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK)
        throw std::runtime_error("the log does not open: " + path);
    for (const char* pragma : allPragmas)
        if (sqlite3_exec(m_handle, pragma, nullptr, nullptr, nullptr) != SQLITE_OK)
            throw std::runtime_error(pragma);
    for (const char* sql : allStatements)
        m_statements.push_back(prepare(sql));
}

PlainLog::~PlainLog()
{
    m_statements.clear();
    sqlite3_close(m_handle);
}

PlainLog::Statement PlainLog::prepare(const char* sql) const
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v3(m_handle, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sqlite3_errmsg(m_handle));
    return {statement, &sqlite3_finalize};
}

std::vector<Cells> PlainLog::rows(const char* sql) const
{
    const Statement statement = prepare(sql);
    std::vector<Cells> found;
    while (sqlite3_step(statement.get()) == SQLITE_ROW) {
        Cells& row = found.emplace_back();
        for (int column = 0; column < sqlite3_column_count(statement.get()); ++column)
            row.emplace_back(sqlite3_value_dup(sqlite3_column_value(statement.get(), column)), &sqlite3_value_free);
    }
    return found;
}

std::string PlainLog::value(const char* sql) const
{
    const std::vector<Cells> found = rows(sql);
    return reinterpret_cast<const char*>(sqlite3_value_text(found.at(0).at(0).get()));
}

ActRows PlainLog::newest() const
{
    return {rows("SELECT * FROM event ORDER BY seq DESC LIMIT 1"),
            rows("SELECT * FROM blob WHERE hash IN (SELECT hash FROM event_blob GROUP BY hash "
                 "HAVING min(seq) = (SELECT max(seq) FROM event))"),
            rows("SELECT * FROM event_blob WHERE seq = (SELECT max(seq) FROM event)"),
            rows("SELECT * FROM summary WHERE last_seq = (SELECT max(seq) FROM event)")};
}

void PlainLog::run(const Statement& statement, const Cells& cells) const
{
    for (std::size_t i = 0; i < cells.size(); ++i)
        sqlite3_bind_value(statement.get(), int(i) + 1, cells[i].get());
    if (sqlite3_step(statement.get()) != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(m_handle));
    sqlite3_reset(statement.get());
}

void PlainLog::write(const ActRows& act) const
{
    run(m_statements[Begin]);
    for (const Cells& each : act.event)
        run(m_statements[InsertEvent], each);
    for (const Cells& each : act.blobs)
        run(m_statements[InsertBlob], each);
    for (const Cells& each : act.links)
        run(m_statements[InsertLink], each);
    for (const Cells& each : act.summary)
        run(m_statements[PutSummary], each);
    run(m_statements[Commit]);
}

} // namespace strandbench::commitbench
