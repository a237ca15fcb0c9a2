// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/writer_lock.h"

#include <QFileInfo>
#include <QLockFile>
#include <QThread>

#include <chrono>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int looks = 10;
constexpr unsigned long lookMs = 50;

/// Who has the lock; empty: it names nobody. A program that is taking it writes its name a moment later, so that is
/// looked for again.
std::optional<Holder> holderOf(const QLockFile& file)
{
    Holder holder;
    for (int i = 0; i < looks; ++i) {
        if (file.getLockInfo(&holder.process, &holder.machine, &holder.program))
            return holder;
        QThread::msleep(lookMs);
    }
    return std::nullopt;
}

/// A program that was killed, or lost its power, after it made its lock and before its name was in it: such a lock
/// never goes stale by itself and would keep every bench out for ever. Taken away only where no living program holds
/// the file.
bool takeAwayNobodys(QLockFile& file) { return file.removeStaleLockFile() && file.tryLock(); }

} // namespace

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
    const auto holder = holderOf(*file);
    if (!holder && takeAwayNobodys(*file))
        return std::unique_ptr<WriterLock>(new WriterLock(std::move(file)));
    return tl::unexpected(holder.value_or(Holder{}));
}

LogFailure inUseBy(const Holder& holder)
{
    return {LogTrouble::InUse,
            u"%1, process %2 on %3"_s.arg(holder.program, QString::number(holder.process), holder.machine)};
}

} // namespace strandbench
