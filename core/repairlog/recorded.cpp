// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/recorded.h"

namespace strandbench {

Logged<RestoreReport> restoreAndRecord(const QString& path, const QString& backup, const QString& person,
                                       const Instant& now)
{
    auto report = restoreLog(path, backup, MergeMode::Write);
    if (!report)
        return report;
    const auto log = RepairLog::open(path, LogMode::ReadWrite);
    if (!log)
        return tl::unexpected(log.error());
    const auto head = (*log)->head();
    if (!head)
        return tl::unexpected(head.error());
    const LogRestored restored{head->count, head->hash, report->fetched, report->complete()};
    const auto written = (*log)->append({benchSubject(), person, restored, now, {}});
    if (!written)
        return tl::unexpected(written.error());
    return report;
}

} // namespace strandbench
