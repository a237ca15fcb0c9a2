// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/probe.h"

#include "repairlog/failure.h"
#include "repairlog/schema.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// One page of the smallest size. SQLite itself takes a file of one byte for an empty one.
constexpr qint64 smallestDatabase = 512;

bool allows(const QString& path, int how) { return ::access(QFile::encodeName(path).constData(), how) == 0; }

QString folderOf(const QString& path) { return QFileInfo(path).absolutePath(); }

Logged<Probe> probeMissing(const QFileInfo& info)
{
    const QFileInfo folder(info.absolutePath());
    if (info.isSymLink())
        return failed(LogTrouble::CannotOpen, u"%1 is a link to nothing"_s.arg(info.filePath()));
    if (!folder.isDir())
        return failed(LogTrouble::CannotOpen, u"there is no folder %1"_s.arg(folder.filePath()));
    if (!allows(folder.filePath(), X_OK))
        return failedBySystem(LogTrouble::CannotOpen, folder.filePath());
    return Probe{Found::Nothing, info.absoluteFilePath()};
}

/// A newer program may have left word that this one still understands its log.
Logged<void> judgeVersion(const SqlConnection& connection, int version)
{
    if (version <= currentVersion())
        return {};
    const auto oldest = metaValue(connection, u"min_compatible_version"_s);
    if (!oldest)
        return tl::unexpected(oldest.error());
    bool number = false;
    if (const int least = oldest->toInt(&number); number && least <= currentVersion())
        return {};
    return failed(LogTrouble::NewerVersion, u"version %1; this program knows %2"_s.arg(version).arg(currentVersion()));
}

Logged<Found> judge(const SqlConnection& connection)
{
    const auto application = connection.value(u"PRAGMA application_id"_s);
    if (!application)
        return tl::unexpected(application.error());
    const auto version = connection.value(u"PRAGMA user_version"_s);
    if (!version)
        return tl::unexpected(version.error());
    if (application->toLongLong() == logApplicationId)
        return judgeVersion(connection, version->toInt()).map([] { return Found::Log; });
    const auto objects = connection.value(u"SELECT count(*) FROM sqlite_schema"_s);
    if (!objects)
        return tl::unexpected(objects.error());
    if (application->toLongLong() == 0 && version->toInt() == 0 && objects->toLongLong() == 0)
        return Found::Empty;
    return failed(LogTrouble::NotALog, u"an SQLite file with application id %1"_s.arg(application->toString()));
}

/// How many pages the file had before the transaction that a rollback journal beside it was written for; nothing when
/// there is none to roll back. By SQLite's file format: 8 bytes of magic, then four big-endian numbers, the third of
/// which it is. The locks of a process are on the file, not on its journal, which may be read as any other.
std::optional<quint32> pagesBeforeCutOff(const QString& path)
{
    QFile journal(path + u"-journal"_s);
    if (!journal.open(QIODevice::ReadOnly))
        return std::nullopt;
    const QByteArray head = journal.read(20);
    if (head.size() < 20 || !head.startsWith(QByteArray::fromHex("d9d505f920a163d7")))
        return std::nullopt;
    return qFromBigEndian<quint32>(head.constData() + 16);
}

/// A file whose making was cut off, or is going on: only then a log has a rollback journal. SQLite rolls it back before
/// a writer sees the file, and until then most of it says nothing. What began without a page becomes empty again.
/// Else the application id tells: it is in the first sector, as it was and as it will be.
Logged<Probe> probeCutOff(Probe found, quint32 pagesBefore)
{
    if (pagesBefore == 0)
        return found;
    const auto connection = SqlConnection::open(found.path, Access::Still);
    if (!connection)
        return tl::unexpected(connection.error());
    const auto application = (*connection)->value(u"PRAGMA application_id"_s);
    if (!application)
        return tl::unexpected(application.error());
    if (application->toLongLong() != logApplicationId)
        return failed(LogTrouble::NotALog, u"an SQLite file with application id %1"_s.arg(application->toString()));
    found.found = Found::Log;
    found.cutOff = true;
    found.reading = Access::ReadOnly;
    return found;
}

} // namespace

bool hasWal(const QString& path) { return QFileInfo::exists(path + u"-wal"_s); }

Logged<Probe> probe(const QString& path)
{
    if (path.isEmpty())
        return failed(LogTrouble::CannotOpen, u"no path was given"_s);
    const QFileInfo info(path);
    if (!info.exists())
        return probeMissing(info);
    Probe found{Found::Empty, info.canonicalFilePath()};
    if (info.isDir())
        return failed(LogTrouble::CannotOpen, u"%1 is a folder"_s.arg(path));
    if (!info.isFile())
        return failed(LogTrouble::CannotOpen, u"%1 is not a file"_s.arg(path));
    if (!allows(found.path, R_OK))
        return failedBySystem(LogTrouble::CannotOpen, path);
    if (info.size() == 0)
        return found;
    if (info.size() < smallestDatabase)
        return failed(LogTrouble::NotADatabase, u"%1 has only %2 bytes"_s.arg(path).arg(info.size()));
    if (const auto pagesBefore = pagesBeforeCutOff(found.path))
        return probeCutOff(found, *pagesBefore);
    if (hasWal(found.path))
        found.reading = Access::ReadOnly;
    const auto connection = SqlConnection::open(found.path, found.reading);
    if (!connection)
        return tl::unexpected(connection.error());
    return judge(**connection).map([&](Found what) {
        found.found = what;
        return found;
    });
}

Logged<std::unique_ptr<SqlConnection>> openToRead(const Probe& found)
{
    if (found.found == Found::Nothing)
        return failed(LogTrouble::CannotOpen, u"there is no file %1"_s.arg(found.path));
    if (found.found == Found::Empty)
        return failed(LogTrouble::NotALog, u"%1 is empty"_s.arg(found.path));
    if (found.cutOff) // a reader may not roll it back, and must not read what would be rolled back
        return failed(LogTrouble::CannotOpen,
                      u"%1 was cut off while it was made; opened for writing it is set right"_s.arg(found.path));
    return SqlConnection::open(found.path, found.reading);
}

Logged<void> mayWrite(const Probe& found)
{
    if (found.found != Found::Nothing && !allows(found.path, W_OK))
        return failedBySystem(LogTrouble::ReadOnly, found.path);
    if (!allows(folderOf(found.path), W_OK | X_OK)) // SQLite keeps its WAL beside the file
        return failedBySystem(LogTrouble::ReadOnly, folderOf(found.path));
    return {};
}

} // namespace strandbench
