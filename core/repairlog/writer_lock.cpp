// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/writer_lock.h"

#include <QFileInfo>
#include <QLockFile>

#include <chrono>

using namespace Qt::StringLiterals;

namespace strandbench {

WriterLock::WriterLock(std::unique_ptr<QLockFile> file) : m_file(std::move(file)) {}
WriterLock::~WriterLock() = default;

QString lockPathOf(const QString& log)
{
    // By its real name: a link to a log is the same log.
    const QFileInfo info(log);
    return (info.exists() ? info.canonicalFilePath() : info.absoluteFilePath()) + u".lock"_s;
}

tl::expected<std::unique_ptr<WriterLock>, Holder> WriterLock::take(const QString& log)
{
    auto file = std::make_unique<QLockFile>(lockPathOf(log));
    file->setStaleLockTime(
        std::chrono::milliseconds(0)); // a bench stands for weeks: age says nothing, only its process
    if (file->tryLock())
        return std::unique_ptr<WriterLock>(new WriterLock(std::move(file)));
    if (file->error() != QLockFile::LockFailedError)
        return std::unique_ptr<WriterLock>();
    Holder holder;
    file->getLockInfo(&holder.process, &holder.machine, &holder.program);
    return tl::unexpected(holder);
}

LogFailure inUseBy(const Holder& holder)
{
    return {LogTrouble::InUse,
            u"%1, process %2 on %3"_s.arg(holder.program, QString::number(holder.process), holder.machine)};
}

} // namespace strandbench
