// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a log, one line each, for commands that read one.
#pragma once

#include "repairlog/repair_log.h"

#include <QStringList>

namespace strandbench::headless {

/// "log: The log cannot be opened. Check … (unable to open database file)"
[[nodiscard]] QString troubleLine(const QString& path, const LogFailure& failure);

/// Where it breaks; nothing for a clean one.
[[nodiscard]] QStringList breakLine(const QString& path, const VerifyReport& report);

} // namespace strandbench::headless
