// SPDX-License-Identifier: GPL-3.0-or-later
// SQL through SQLite's own C library, as somebody would ask it who wants nothing but the rows: prepared once, bound,
// stepped, every column copied out as it lies.
#pragma once

#include <sqlite3.h>

#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace strandbench::yearsbench {

using Bind = std::variant<sqlite3_int64, std::string>;
using Line = std::vector<std::string>;

class PlainSql {
public:
    /// Only reads.
    explicit PlainSql(const std::string& path);
    ~PlainSql();
    PlainSql(const PlainSql&) = delete;
    PlainSql& operator=(const PlainSql&) = delete;

    class Statement {
    public:
        Statement(sqlite3* database, const char* sql);
        [[nodiscard]] std::vector<Line> rows(const std::vector<Bind>& binds) const;

    private:
        std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)> m_statement;
    };
    [[nodiscard]] Statement prepare(const char* sql) const { return {m_database, sql}; }
    /// Prepares, asks once.
    [[nodiscard]] std::vector<Line> rows(const char* sql, const std::vector<Bind>& binds = {}) const;

private:
    sqlite3* m_database = nullptr;
};

} // namespace strandbench::yearsbench
