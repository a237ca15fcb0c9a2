// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/writer_lock.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSysInfo>
#include <QThread>

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int looks = 10;
constexpr unsigned long lookMs = 50;

/// Three lines, as QLockFile writes them, which kept this lock before: so either knows the other's holder.
QByteArray nameOfThisProgram()
{
    return QByteArray::number(QCoreApplication::applicationPid()) + '\n' +
           QFileInfo(QFile::symLinkTarget(u"/proc/self/exe"_s)).fileName().toUtf8() + '\n' +
           QSysInfo::machineHostName().toUtf8() + '\n';
}

/// Who holds a lock that is held. Its name is in it a moment after it was taken, so that is looked for again.
Holder holderOf(const QByteArray& path)
{
    for (int i = 0; i < looks; ++i) {
        QFile file(QFile::decodeName(path));
        if (file.open(QIODevice::ReadOnly)) {
            const QList<QByteArray> lines = file.read(4096).split('\n');
            if (lines.size() > 3)
                return {lines[0].toLongLong(), QString::fromUtf8(lines[2]), QString::fromUtf8(lines[1])};
        }
        QThread::msleep(lookMs);
    }
    return {};
}

/// Whether the open file is still the one of this name: who held it before takes the name away with it.
bool isAt(int file, const QByteArray& path)
{
    struct stat held {};
    struct stat named {};
    return ::fstat(file, &held) == 0 && ::stat(path.constData(), &named) == 0 && held.st_dev == named.st_dev &&
           held.st_ino == named.st_ino;
}

} // namespace

WriterLock::~WriterLock()
{
    if (stands())
        ::unlink(m_path.constData()); // while it is held: nobody else's can be of this name
    ::close(m_file);
}

bool WriterLock::stands() const { return isAt(m_file, m_path); }

QString lockPathOf(const QString& log)
{
    // By its real name: a link to a log is the same log.
    const QFileInfo info(log);
    return (info.exists() ? info.canonicalFilePath() : info.absoluteFilePath()) + u".lock"_s;
}

tl::expected<std::unique_ptr<WriterLock>, Holder> WriterLock::take(const QString& log)
{
    const QByteArray path = QFile::encodeName(lockPathOf(log));
    for (;;) {
        const int file = ::open(path.constData(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
        if (file < 0)
            return std::unique_ptr<WriterLock>();
        const int refused = ::flock(file, LOCK_EX | LOCK_NB) == 0 ? 0 : errno;
        if (refused == 0 && isAt(file, path)) {
            std::unique_ptr<WriterLock> lock(new WriterLock(file, path));
            const QByteArray name = nameOfThisProgram();
            if (::ftruncate(file, 0) != 0 || ::pwrite(file, name.constData(), std::size_t(name.size()), 0) < 0)
                qWarning("the lock beside the log does not say who holds it"); // a full disk; it holds all the same
            return lock;
        }
        ::close(file);
        if (refused == EWOULDBLOCK)
            return tl::unexpected(holderOf(path));
        if (refused != 0 && refused != EINTR) // a file system that knows no locks
            return std::unique_ptr<WriterLock>();
    }
}

LogFailure inUseBy(const Holder& holder)
{
    return {LogTrouble::InUse,
            u"%1, process %2 on %3"_s.arg(holder.program, QString::number(holder.process), holder.machine)};
}

} // namespace strandbench
