// SPDX-License-Identifier: GPL-3.0-or-later
// A backup in the place of the log. Nothing that the log held is thrown away.
#pragma once

#include "repairlog/merge.h"

namespace strandbench {

struct RestoreReport {
    VerifyReport backup;             ///< of the backup
    bool logThere = false;           ///< something lies where the log is to be
    bool logWhole = false;           ///< and it verifies
    QString logBreaks;               ///< where it does not, or why it cannot be read
    qint64 fetched = 0;              ///< events that it holds beyond the backup and that come along, or would
    qint64 loose = 0;                ///< events that can be read and do not follow: they stay in the earlier log alone
    std::vector<MergedChain> parted; ///< chains that tell other things than the backup: likewise
    QString earlier;    ///< the folder in which the earlier log is kept; empty in a dry run, and where there was none
    VerifyReport after; ///< of the log as it is afterwards, or would be

    /// Nothing of the earlier log is known to be missing.
    [[nodiscard]] bool complete() const { return (!logThere || logWhole) && loose == 0 && parted.empty(); }
};

/// Puts a backup in the place of the log, with what the log holds beyond it as far as that can be read and follows. The
/// earlier log goes into a folder beside it, whole and unchanged. Cut off at any moment, the earlier log is in its
/// place or a mark says where it is, and nobody writes until it was restored again. A dry run says what would be, and
/// changes nothing. Damaged when the backup itself does not hold. Whoever calls it holds the log's WriterLock, and no
/// connection of this process has the log open.
[[nodiscard]] Logged<RestoreReport> restoreLog(const QString& path, const QString& backup, MergeMode mode);

} // namespace strandbench
