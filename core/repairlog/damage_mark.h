// SPDX-License-Identifier: GPL-3.0-or-later
// What a program leaves beside a log that it found damaged, or that it was about to replace: until that is cleared up,
// nobody opens the log for writing.
#pragma once

#include "repairlog/repair_log.h"

namespace strandbench {

/// "…/bench.sqlite.damaged": a small text that says what was found. A disk that refuses it too is not told: the log is
/// looked at anew before it is written.
void markDamaged(const QString& log, const QString& what);
[[nodiscard]] bool isMarkedDamaged(const QString& log);
/// After it was verified and found clean, or replaced.
void clearDamageMark(const QString& log);

/// "…/bench.sqlite.restoring": while a backup takes the log's place; names where the earlier log lies.
[[nodiscard]] Logged<void> markRestoring(const QString& log, const QString& earlier);
/// Where the earlier log of a restore lies that was cut off; empty when none was.
[[nodiscard]] QString restoreCutOff(const QString& log);
[[nodiscard]] Logged<void> clearRestoringMark(const QString& log);

} // namespace strandbench
