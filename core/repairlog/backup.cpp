// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/disk.h"
#include "repairlog/failure.h"

#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
Logged<VerifyReport> backupLog(const QString& path, const QString& to)
{
    if (auto free = disk::checkTarget(to); !free)
        return tl::unexpected(free.error());
    const QString target = QFileInfo(to).absoluteFilePath();
    const disk::Temporary part(disk::partNameFor(target));
    if (auto done = disk::copyLog(path, part.path()); !done)
        return tl::unexpected(done.error());
    const auto report = verifyLog(part.path());
    if (!report)
        return report;
    if (!report->clean)
        return failed(LogTrouble::Damaged, u"%1: %2"_s.arg(report->breaksAt, report->where));
    auto done =
        disk::syncFile(part.path()).and_then([&] { return disk::putInPlace(part.path(), target); }).and_then([&] {
            return disk::syncFolderOf(target);
        });
    if (!done)
        return tl::unexpected(done.error());
    return report;
}

} // namespace strandbench
