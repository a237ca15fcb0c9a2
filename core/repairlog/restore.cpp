// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/restore.h"

#include "repairlog/damage_mark.h"
#include "repairlog/disk.h"
#include "repairlog/failure.h"
#include "repairlog/rescue.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The log's file and what SQLite keeps beside it.
QStringList filesOf(const QString& log)
{
    QStringList files;
    for (const char* ending : {"", "-wal", "-journal"})
        if (const QString file = log + QLatin1StringView(ending); QFileInfo::exists(file))
            files << file;
    return files;
}

QString realPath(const QString& path)
{
    const QFileInfo info(path);
    return info.exists() ? info.canonicalFilePath() : info.absoluteFilePath();
}

/// What the log holds that still reads, beside the new one: into the part file.
Logged<void> fetch(const QString& path, const QString& part, RestoreReport& report)
{
    const auto held = verifyLog(path);
    report.logWhole = held && held->clean;
    report.logBreaks = held ? held->where : held.error().detail;
    const disk::Temporary rescued(disk::partNameFor(part));
    const auto rescue = rescueLog(path, rescued.path());
    if (!rescue) // not even its first page: nothing comes along
        return {};
    report.loose = rescue->loose;
    if (!rescue->looseFile.isEmpty())
        QFile::remove(rescue->looseFile); // the earlier log itself is kept
    const auto merged = mergeLog(part, rescued.path(), MergeMode::Write);
    if (!merged)
        return tl::unexpected(merged.error());
    report.fetched = merged->added;
    for (const MergedChain& each : merged->chains)
        if (each.partsAt != 0)
            report.parted.push_back(each);
    return {};
}

Logged<void> build(const QString& path, const QString& backup, const QString& part, RestoreReport& report)
{
    const auto held = backupLog(backup, part);
    if (!held)
        return tl::unexpected(held.error());
    report.backup = *held;
    report.logThere = QFileInfo(path).size() > 0;
    if (report.logThere)
        if (auto done = fetch(path, part, report); !done)
            return done;
    const auto after = verifyLog(part);
    if (!after)
        return tl::unexpected(after.error());
    report.after = *after;
    if (!after->clean)
        return failed(LogTrouble::Damaged, u"%1: %2"_s.arg(after->breaksAt, after->where));
    return disk::syncFile(part);
}

/// A folder of its own for the earlier log, named by the time.
Logged<QString> keepEarlier(const QString& path)
{
    const QString stamp = QDateTime::currentDateTimeUtc().toString(u"yyyyMMdd-HHmmss"_s);
    QString folder = path + u".before-"_s + stamp;
    for (int again = 2; QFileInfo::exists(folder); ++again)
        folder = u"%1.before-%2-%3"_s.arg(path, stamp).arg(again);
    if (!QDir().mkdir(folder))
        return failed(LogTrouble::ReadOnly, folder);
    for (const QString& each : filesOf(path))
        if (auto done = disk::keepBeside(each, QDir(folder).filePath(QFileInfo(each).fileName())); !done)
            return tl::unexpected(done.error());
    return disk::syncFolderOf(QDir(folder).filePath(u"x"_s))
        .and_then([&] { return disk::syncFolderOf(folder); })
        .map([&] { return folder; });
}

/// A WAL of the earlier log beside the new one would be taken for the new one's: it goes first, under the mark.
Logged<void> swap(const QString& path, const QString& part, RestoreReport& report)
{
    if (!filesOf(path).isEmpty()) {
        const auto kept = keepEarlier(path);
        if (!kept)
            return tl::unexpected(kept.error());
        report.earlier = *kept;
    }
    if (auto marked = markRestoring(path, report.earlier); !marked)
        return marked;
    for (const char* ending : {"-wal", "-shm", "-journal"})
        if (const QString file = path + QLatin1StringView(ending); QFileInfo::exists(file) && !QFile::remove(file))
            return failed(LogTrouble::IoError, file);
    return disk::syncFolderOf(path)
        .and_then([&] { return disk::replace(part, path); })
        .and_then([&] { return disk::syncFolderOf(path); })
        .and_then([&] { return clearRestoringMark(path); })
        .map([&] { clearDamageMark(path); });
}

} // namespace

Logged<RestoreReport> restoreLog(const QString& path, const QString& backup, MergeMode mode)
{
    const QString log = realPath(path);
    if (log == realPath(backup))
        return failed(LogTrouble::CannotOpen, u"%1 is the log itself"_s.arg(backup));
    RestoreReport report;
    const QString place = mode == MergeMode::DryRun ? QDir::temp().filePath(u"strandbench"_s) : log;
    const disk::Temporary part(disk::partNameFor(place));
    if (auto done = build(log, backup, part.path(), report); !done)
        return tl::unexpected(done.error());
    if (mode == MergeMode::DryRun)
        return report;
    return swap(log, part.path(), report).map([&] { return report; });
}

} // namespace strandbench
