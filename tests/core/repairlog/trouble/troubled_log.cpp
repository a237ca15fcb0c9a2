// SPDX-License-Identifier: GPL-3.0-or-later
#include "troubled_log.h"

#include "exchange/events.h"

#include <QDir>
#include <QFile>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {

TroubledLog::TroubledLog()
{
    if (!QDir().mkpath(quick(u"crashed"_s)))
        throw std::runtime_error("no folder");
}

Logged<std::unique_ptr<RepairLog>> TroubledLog::openPlace(LogMode mode) const { return RepairLog::open(place(), mode); }

std::map<QString, QByteArray> TroubledLog::filesNow() const
{
    auto files = contentsOf(quick({}));
    std::erase_if(files, [](const auto& each) { return each.first.endsWith(u"-shm"_s); });
    return files;
}

void TroubledLog::lay(const std::map<QString, QByteArray>& files) const
{
    for (const QString& name : QDir(quick({})).entryList(QDir::Files))
        if (!QFile::remove(quick(name)))
            throw std::runtime_error("a file stays");
    for (const auto& [name, bytes] : files) {
        QFile file(quick(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
            throw std::runtime_error("a file is not laid");
    }
}

void TroubledLog::expectOfTheDisk(const LogFailure& failure, Trouble trouble)
{
    const LogTrouble wanted = trouble == Trouble::Full ? LogTrouble::DiskFull : LogTrouble::IoError;
    // What cannot be made or opened has SQLite's one word for it, whatever the reason.
    EXPECT_TRUE(failure.trouble == wanted || failure.trouble == LogTrouble::CannotOpen) << qPrintable(failure.detail);
    EXPECT_FALSE(failure.detail.isEmpty());
}

void TroubledLog::expectActs(const RepairLog& log, std::size_t count) const
{
    const auto events = log.events(acts.front().repair);
    ASSERT_TRUE(events) << qPrintable(events.error().detail);
    ASSERT_EQ(events->size(), count);
    for (std::size_t i = 0; i < count; ++i) {
        ASSERT_EQ((*events)[i].seq, qint64(i) + 1);
        ASSERT_EQ((*events)[i].at, acts[i].at);
        ASSERT_EQ((*events)[i].payload, stored(acts[i].payload));
    }
    ASSERT_EQ(log.head()->count, qint64(count));
}

void TroubledLog::expectSound(std::size_t count) const
{
    const auto report = verifyLog(place());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    ASSERT_TRUE(report->clean) << qPrintable(report->breaksAt + u' ' + report->where);
    ASSERT_EQ(report->events, qint64(count));
}

} // namespace strandbench::test
