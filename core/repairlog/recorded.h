// SPDX-License-Identifier: GPL-3.0-or-later
// Restoring with its own entry in the log: who did it, when, and what came of it.
#pragma once

#include "repairlog/restore.h"

namespace strandbench {

/// restoreLog(), then a LogRestored. When the entry cannot be written that is the failure, and the restored log stands.
[[nodiscard]] Logged<RestoreReport> restoreAndRecord(const QString& path, const QString& backup, const QString& person,
                                                     const Instant& now);

} // namespace strandbench
