// SPDX-License-Identifier: GPL-3.0-or-later
// What commands say alike of a log, one line each, and of what they write beside it.
#pragma once

#include "repairlog/repair_log.h"

#include <QStringList>

#include <optional>

namespace strandbench::headless {

/// "log: The log cannot be opened. Check … (unable to open database file)"
[[nodiscard]] QString troubleLine(const QString& path, const LogFailure& failure);

/// Refuses a name that a file or a link has already: nothing is ever overwritten.
[[nodiscard]] std::optional<Fault> nameTaken(const QString& option, const QString& path);

/// Where it breaks; nothing for a clean one.
[[nodiscard]] QStringList breakLine(const QString& path, const VerifyReport& report);

} // namespace strandbench::headless
