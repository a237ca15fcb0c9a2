// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/checks.h"
#include "repairlog/disk.h"
#include "repairlog/failure.h"

#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
Logged<VerifyReport> backupLog(const QString& path, const QString& to)
{
    if (auto free = disk::checkTarget(to); !free)
        return tl::unexpected(free.error());
    // Copying leaves some damage behind, that of an index for one: the copy would hold, and nobody would be told.
    if (auto whole = verifiedLog(path); !whole)
        return whole;
    const QString target = QFileInfo(to).absoluteFilePath();
    const disk::Temporary part(disk::partNameFor(target));
    if (auto done = disk::copyLog(path, part.path()); !done)
        return tl::unexpected(done.error());
    const auto report = verifiedLog(part.path());
    if (!report &&
        report.error().trouble == LogTrouble::Damaged) // the log was whole: its new place is not to be trusted
        return failed(LogTrouble::IoError, u"the copy does not verify: "_s + report.error().detail);
    if (!report)
        return report;
    auto done =
        disk::syncFile(part.path()).and_then([&] { return disk::putInPlace(part.path(), target); }).and_then([&] {
            return disk::syncFolderOf(target);
        });
    if (!done)
        return tl::unexpected(done.error());
    return report;
}

} // namespace strandbench
