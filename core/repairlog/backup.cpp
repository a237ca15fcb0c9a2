// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/failure.h"
#include "repairlog/probe.h"

#include <QFile>
#include <QFileInfo>
#include <QUuid>

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Takes a half-made copy away again, with what SQLite may have left beside it.
class Temporary {
public:
    explicit Temporary(QString path) : m_path(std::move(path)) {}
    ~Temporary()
    {
        for (const QString& each : {m_path, m_path + u"-journal"_s})
            QFile::remove(each); // it may well not be there
    }
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    [[nodiscard]] const QString& path() const { return m_path; }

private:
    QString m_path;
};

/// Nothing may stand there yet, not even a link to nothing; and its folder must take a file.
Logged<void> checkTarget(const QString& to)
{
    const QFileInfo target(to);
    const QFileInfo folder(target.absolutePath());
    if (to.isEmpty())
        return failed(LogTrouble::CannotOpen, u"no path was given for the copy"_s);
    if (target.exists() || target.isSymLink())
        return failed(LogTrouble::CannotOpen, u"%1 is already there"_s.arg(to));
    if (!folder.isDir())
        return failed(LogTrouble::CannotOpen, u"there is no folder %1"_s.arg(folder.filePath()));
    if (::access(QFile::encodeName(folder.filePath()).constData(), W_OK | X_OK) != 0)
        return failedBySystem(LogTrouble::ReadOnly, folder.filePath());
    return {};
}

Logged<void> copy(const QString& path, const QString& to)
{
    const auto found = probe(path);
    if (!found)
        return tl::unexpected(found.error());
    const auto connection = openToRead(*found);
    if (!connection)
        return tl::unexpected(connection.error());
    return (*connection)->run(u"VACUUM INTO ?"_s, {to});
}

/// What does not verify is a failure here.
Logged<VerifyReport> verified(const QString& path)
{
    auto report = verifyLog(path);
    if (report && !report->clean)
        return failed(LogTrouble::Damaged, u"%1: %2"_s.arg(report->breaksAt, report->where));
    return report;
}

Logged<void> sync(const QString& path, int flags)
{
    const int file = ::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC);
    if (file < 0)
        return failedBySystem(LogTrouble::IoError, path);
    Logged<void> done;
    if (::fsync(file) != 0)
        done = failedBySystem(LogTrouble::IoError, path);
    ::close(file);
    return done;
}

/// Renames without ever replacing. Some file systems (on sticks, say) cannot promise that in one call; there
/// it is looked for once more just before.
Logged<void> putInPlace(const QString& from, const QString& to)
{
    const QByteArray source = QFile::encodeName(from);
    const QByteArray target = QFile::encodeName(to);
    if (::renameat2(AT_FDCWD, source.constData(), AT_FDCWD, target.constData(), RENAME_NOREPLACE) == 0)
        return {};
    if (errno == EEXIST)
        return failed(LogTrouble::CannotOpen, u"%1 is already there"_s.arg(to));
    if (errno != EINVAL && errno != ENOSYS)
        return failedBySystem(LogTrouble::IoError, to);
    if (auto free = checkTarget(to); !free)
        return free;
    if (std::rename(source.constData(), target.constData()) != 0)
        return failedBySystem(LogTrouble::IoError, to);
    return {};
}

} // namespace

Logged<VerifyReport> backupLog(const QString& path, const QString& to)
{
    if (auto free = checkTarget(to); !free)
        return tl::unexpected(free.error());
    // Copying leaves some damage behind, that of an index for one: the copy would hold, and nobody would be told.
    if (auto whole = verified(path); !whole)
        return whole;
    const QFileInfo target(to);
    const Temporary part(target.absoluteFilePath() + u".part-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces));
    if (auto done = copy(path, part.path()); !done)
        return tl::unexpected(done.error());
    const auto report = verified(part.path());
    if (!report)
        return report;
    auto done = sync(part.path(), O_RDONLY)
                    .and_then([&] { return putInPlace(part.path(), target.absoluteFilePath()); })
                    .and_then([&] { return sync(target.absolutePath(), O_RDONLY | O_DIRECTORY); });
    if (!done)
        return tl::unexpected(done.error());
    return report;
}

} // namespace strandbench
