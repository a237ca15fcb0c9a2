// SPDX-License-Identifier: GPL-3.0-or-later
// What lies at a path, found out without changing it.
#pragma once

#include "repairlog/connection.h"

namespace strandbench {

enum class Found {
    Nothing, ///< no file, but a folder that could hold one
    Empty,   ///< a file without bytes, an SQLite file without anything in it, or one whose first transaction was cut
             ///< off: may become a log
    Log,
};

struct Probe {
    Found found = Found::Nothing;
    QString path;        ///< absolute, links followed
    bool cutOff = false; ///< while it was made or brought up to a version: a writer rolls that back before it reads
    Access reading = Access::Still; ///< how to read it without leaving a trace
};

/// Looks at a path. Files that are not ours, newer logs and paths that cannot be read are failures.
/// The file is only ever opened through SQLite: closing a descriptor of our own would drop the locks that
/// this process holds on it (POSIX advisory locks belong to the process).
[[nodiscard]] Logged<Probe> probe(const QString& path);

/// A connection that reads what was found; a failure when there is nothing to read.
[[nodiscard]] Logged<std::unique_ptr<SqlConnection>> openToRead(const Probe& found);

/// Whether a log, or the folder for one, may be written; ReadOnly when not.
[[nodiscard]] Logged<void> mayWrite(const Probe& found);

/// True when a WAL lies beside the file: somebody has it open, or left it without closing.
[[nodiscard]] bool hasWal(const QString& path);

} // namespace strandbench
