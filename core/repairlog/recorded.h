// SPDX-License-Identifier: GPL-3.0-or-later
// Restoring and merging with their own entry in the log: who did it, when, and what came of it.
#pragma once

#include "repairlog/restore.h"

namespace strandbench {

/// restoreLog(), then a LogRestored. When the entry cannot be written that is the failure, and the restored log stands.
[[nodiscard]] Logged<RestoreReport> restoreAndRecord(const QString& path, const QString& backup, const QString& person,
                                                     const Instant& now);

/// mergeLog(), then a LogMerged of every bench of which something was added.
[[nodiscard]] Logged<MergeReport> mergeAndRecord(const QString& path, const QString& from, const QString& person,
                                                 const Instant& now);

} // namespace strandbench
