// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/backup_folder.h"

#include "repairlog/failure.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSaveFile>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString stampLayout = u"yyyyMMdd-HHmmss"_s;

QDateTime utc(qint64 ms) { return QDateTime::fromMSecsSinceEpoch(ms, Qt::UTC); }

std::optional<BackupFile> readName(const QFileInfo& file)
{
    static const QRegularExpression layout(
        u"\\Astrandbench-([0-9a-f]{8})-([0-9]{8}-[0-9]{6})-([0-9]{1,18})(-[0-9]+)?\\.sqlite\\z"_s);
    const auto match = layout.match(file.fileName());
    if (!match.hasMatch())
        return std::nullopt;
    QDateTime at = QDateTime::fromString(match.captured(2), stampLayout);
    at.setTimeSpec(Qt::UTC);
    if (!at.isValid())
        return std::nullopt;
    return BackupFile{file.absoluteFilePath(), match.captured(1), at.toMSecsSinceEpoch(),
                      match.captured(3).toLongLong()};
}

QString freeName(const QString& folder, const ChainHead& head, const Instant& now)
{
    const QString name =
        u"strandbench-%1-%2-%3"_s.arg(benchOf(head.origin), utc(now.utcMs).toString(stampLayout)).arg(head.count);
    QString path = QDir(folder).filePath(name + u".sqlite"_s);
    for (int again = 2; QFileInfo::exists(path); ++again) // within one second, or with the clock set back
        path = QDir(folder).filePath(u"%1-%2.sqlite"_s.arg(name).arg(again));
    return path;
}

QString headsPathOf(const QString& backup) { return backup + u".heads.txt"_s; }

/// "origin count hash", a line a bench: what paper would say of it.
Logged<void> writeHeads(const QString& backup, const VerifyReport& report)
{
    QSaveFile file(headsPathOf(backup));
    QByteArray lines;
    for (const ChainHead& head : report.heads)
        lines += head.origin.toLatin1() + ' ' + QByteArray::number(head.count) + ' ' + head.hash.toHex() + '\n';
    if (!file.open(QIODevice::WriteOnly) || file.write(lines) != lines.size() || !file.commit())
        return failed(LogTrouble::IoError, u"%1: %2"_s.arg(headsPathOf(backup), file.errorString()));
    return {};
}

QStringList giveUp(const QString& folder, const BackupFile& newest, int keep)
{
    std::vector<BackupFile> all = backupsIn(folder, newest.bench);
    std::erase_if(all, [&](const BackupFile& each) { return each.path == newest.path || each.count > newest.count; });
    QStringList given;
    for (std::size_t i = static_cast<std::size_t>(std::max(keep, fewestBackups) - 1); i < all.size(); ++i) {
        if (!QFile::remove(all[i].path))
            continue; // tried again after the next one
        QFile::remove(headsPathOf(all[i].path));
        given << all[i].path;
    }
    return given;
}

/// What backups of this bench left that were cut off; one may be under way.
void clearCutOff(const QString& folder, const QString& bench)
{
    constexpr qint64 hour = 3600;
    const QStringList names{u"strandbench-%1-*.sqlite.part-*"_s.arg(bench)};
    for (const QFileInfo& each : QDir(folder).entryInfoList(names, QDir::Files))
        if (each.lastModified().secsTo(QDateTime::currentDateTimeUtc()) > hour)
            QFile::remove(each.filePath());
}

} // namespace

Logged<ChainHead> headOfLog(const QString& log)
{
    const auto open = RepairLog::open(log, LogMode::ReadOnly);
    return open ? (*open)->head() : Logged<ChainHead>(tl::unexpected(open.error()));
}

QString benchOf(const QString& origin) { return origin.left(8).toLower(); }

std::vector<BackupFile> backupsIn(const QString& folder, const QString& bench)
{
    std::vector<BackupFile> found;
    for (const QFileInfo& each : QDir(folder).entryInfoList({u"strandbench-*.sqlite"_s}, QDir::Files))
        if (const auto backup = readName(each); backup && (bench.isEmpty() || backup->bench == bench))
            found.push_back(*backup);
    std::ranges::sort(found, [](const BackupFile& a, const BackupFile& b) {
        return std::tie(a.utcMs, a.count, a.path) > std::tie(b.utcMs, b.count, b.path);
    });
    return found;
}

Logged<BackedUp> backupIntoFolder(const QString& log, const QString& folder, int keep, const Instant& now)
{
    const auto head = headOfLog(log);
    if (!head)
        return tl::unexpected(head.error());
    if (!QFileInfo(folder).isDir())
        return failed(LogTrouble::CannotOpen, u"there is no folder %1"_s.arg(folder));
    BackedUp done;
    const QString path = freeName(folder, *head, now);
    const auto report = backupLog(log, path);
    if (!report)
        return tl::unexpected(report.error());
    done.report = *report;
    done.file = readName(QFileInfo(path)).value_or(BackupFile{path, benchOf(head->origin), now.utcMs, head->count});
    if (auto heads = writeHeads(path, *report); !heads)
        return tl::unexpected(heads.error());
    clearCutOff(folder, done.file.bench);
    done.givenUp = giveUp(folder, done.file, keep);
    return done;
}

bool backupIsDue(const std::vector<BackupFile>& ofBench, Duration every, const Instant& now)
{
    if (ofBench.empty())
        return true;
    const qint64 age = now.utcMs - ofBench.front().utcMs;
    return age < 0 || age >= static_cast<qint64>(inSeconds(every) * 1000);
}

} // namespace strandbench
