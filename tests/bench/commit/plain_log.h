// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of an act through SQLite's own C library, as somebody would write them who wants nothing but them in the
// file: prepared once, bound, stepped, with the log's own schema, guards and pragmas.
#pragma once

#include <sqlite3.h>

#include <memory>
#include <string>
#include <vector>

namespace strandbench::commitbench {

using Cell = std::unique_ptr<sqlite3_value, decltype(&sqlite3_value_free)>;
using Cells = std::vector<Cell>;

/// What an act left in a log.
struct ActRows {
    std::vector<Cells> event; ///< one
    std::vector<Cells> blobs; ///< those that were not there before
    std::vector<Cells> links; ///< of event_blob
    std::vector<Cells> summary;
};

class PlainLog {
public:
    /// A log that is there already, made by the program.
    explicit PlainLog(const std::string& path);
    ~PlainLog();
    PlainLog(const PlainLog&) = delete;
    PlainLog& operator=(const PlainLog&) = delete;

    /// What the newest event left. Blobs: those that no earlier event names.
    [[nodiscard]] ActRows newest() const;
    /// Writes an act: BEGIN IMMEDIATE, its rows, COMMIT.
    void write(const ActRows& act) const;
    [[nodiscard]] std::string value(const char* sql) const;

private:
    using Statement = std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)>;
    [[nodiscard]] Statement prepare(const char* sql) const;
    [[nodiscard]] std::vector<Cells> rows(const char* sql) const;
    void run(const Statement& statement, const Cells& cells = {}) const;

    sqlite3* m_handle = nullptr;
    std::vector<Statement> m_statements; ///< by Which
};

} // namespace strandbench::commitbench
