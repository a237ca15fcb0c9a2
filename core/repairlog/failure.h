// SPDX-License-Identifier: GPL-3.0-or-later
// From SQLite's and the system's words to ours.
#pragma once

#include "quantity/fault.h"
#include "repairlog/repair_log.h"

class QSqlError;

namespace strandbench {

[[nodiscard]] tl::unexpected<LogFailure> failed(LogTrouble trouble, const QString& detail);
[[nodiscard]] tl::unexpected<LogFailure> failed(const QSqlError& error);
/// With the system's reason for the latest failed call, from errno.
[[nodiscard]] tl::unexpected<LogFailure> failedBySystem(LogTrouble trouble, const QString& what);

/// A fault in a line, for the small print: "step_done: prepare 2; next_step prepare 0".
[[nodiscard]] QString inWords(const Fault& fault);

} // namespace strandbench
