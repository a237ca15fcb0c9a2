// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/disk.h"

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

namespace strandbench::disk {
namespace {

class Descriptor {
public:
    Descriptor(const QString& path, int flags) : m_number(::open(QFile::encodeName(path).constData(), flags, 0666)) {}
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return m_number; }
    [[nodiscard]] bool isOpen() const { return m_number >= 0; }

private:
    int m_number;
};

Logged<void> sync(const QString& path, int flags)
{
    const Descriptor file(path, flags | O_CLOEXEC);
    if (!file.isOpen() || ::fsync(file.number()) != 0)
        return failedBySystem(LogTrouble::IoError, path);
    return {};
}

/// Small enough that a bad place costs little, and a multiple of every disk's sector.
constexpr qint64 block = 4096;

} // namespace

Temporary::~Temporary()
{
    for (const char* each : {"", "-journal", "-wal", "-shm"})
        QFile::remove(m_path + QLatin1StringView(each)); // it may well not be there
}

QString partNameFor(const QString& path)
{
    return path + u".part-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces);
}

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

Logged<void> copyLog(const QString& path, const QString& to)
{
    const auto found = probe(path);
    if (!found)
        return tl::unexpected(found.error());
    const auto connection = openToRead(*found);
    if (!connection)
        return tl::unexpected(connection.error());
    return (*connection)->run(u"VACUUM INTO ?"_s, {to});
}

Logged<void> syncFile(const QString& path) { return sync(path, O_RDONLY); }

Logged<void> syncFolderOf(const QString& path) { return sync(QFileInfo(path).absolutePath(), O_RDONLY | O_DIRECTORY); }

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
    return replace(from, to);
}

Logged<void> replace(const QString& from, const QString& to)
{
    if (std::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) != 0)
        return failedBySystem(LogTrouble::IoError, to);
    return {};
}

Logged<void> keepBeside(const QString& from, const QString& to)
{
    if (::link(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) == 0)
        return {};
    if (errno == EEXIST)
        return failed(LogTrouble::CannotOpen, u"%1 is already there"_s.arg(to));
    return copyWhatReads(from, to).and_then([&](qint64) { return syncFile(to); });
}

Logged<qint64> copyWhatReads(const QString& from, const QString& to)
{
    const Descriptor source(from, O_RDONLY | O_CLOEXEC);
    if (!source.isOpen())
        return failedBySystem(LogTrouble::CannotOpen, from);
    const Descriptor target(to, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC);
    if (!target.isOpen())
        return failedBySystem(LogTrouble::CannotOpen, to);
    const qint64 size = QFileInfo(from).size();
    qint64 unread = 0;
    for (qint64 at = 0; at < size; at += block) {
        const auto wanted = static_cast<std::size_t>(std::min(block, size - at));
        QByteArray bytes(static_cast<qsizetype>(wanted), '\0');
        const ssize_t got = ::pread(source.number(), bytes.data(), wanted, at);
        unread += static_cast<qint64>(wanted) - std::max<qint64>(got, 0);
        if (::pwrite(target.number(), bytes.constData(), wanted, at) != static_cast<ssize_t>(wanted))
            return failedBySystem(LogTrouble::IoError, to);
    }
    return unread;
}

} // namespace strandbench::disk
