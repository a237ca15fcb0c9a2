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

Logged<MergeReport> mergeAndRecord(const QString& path, const QString& from, const QString& person, const Instant& now)
{
    auto report = mergeLog(path, from, MergeMode::Write);
    if (!report || report->added == 0)
        return report;
    const auto log = RepairLog::open(path, LogMode::ReadWrite);
    if (!log)
        return tl::unexpected(log.error());
    for (const MergedChain& each : report->chains) {
        if (each.added == 0)
            continue;
        const LogMerged merged{each.origin, each.added, each.there, each.head};
        if (const auto written = (*log)->append({benchSubject(), person, merged, now, {}}); !written)
            return tl::unexpected(written.error());
    }
    return report;
}

} // namespace strandbench
