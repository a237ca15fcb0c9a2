// SPDX-License-Identifier: GPL-3.0-or-later
// Reading leaves no trace: not in the file, not beside it.
#include "log_fixture.h"

#include <QFile>
#include <QFileInfo>

#include <csignal>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

using Reading = LogTest;

void readEverything(const RepairLog& log)
{
    const auto repairs = log.openRepairs();
    ASSERT_TRUE(repairs);
    for (const RepairSummary& each : *repairs)
        EXPECT_TRUE(log.events(each.repair));
    EXPECT_TRUE(log.repairsOfDay(localDay(moment(0))));
    EXPECT_TRUE(log.head());
}

TEST_F(Reading, AClosedLogIsLeftByteForByteAndAlone)
{
    makeLog(Station::Turn);
    const auto before = contentsOf(folder());
    ASSERT_EQ(before.size(), 1U) << "a log that was closed has no WAL";
    const QDateTime changed = QFileInfo(path()).lastModified();
    {
        const auto log = open(LogMode::ReadOnly);
        readEverything(*log);
        EXPECT_EQ(contentsOf(folder()), before) << "while it is open";
    }
    EXPECT_EQ(contentsOf(folder()), before);
    EXPECT_TRUE(verifyLog(path())->clean);
    EXPECT_EQ(contentsOf(folder()), before);
    EXPECT_EQ(QFileInfo(path()).lastModified(), changed);
}

/// A program that was killed leaves its WAL: reading must see what is in it and must not move it.
TEST_F(Reading, AKilledProgramsLogIsReadWithItsWal)
{
    ASSERT_EQ(inChild([&] {
                  const auto log = open();
                  walk(*log, QUuid::createUuid(), Station::Turn);
                  std::raise(SIGKILL);
                  return 0;
              }),
              256 + SIGKILL);
    const auto contents = [&] {
        auto all = contentsOf(folder());
        all.erase(QFileInfo(path()).fileName() + u"-shm"_s); // the index of the WAL, made anew by any reader
        return all;
    };
    const auto before = contents();
    ASSERT_EQ(before.size(), 2U);
    ASSERT_GT(before.rbegin()->second.size(), 0) << "the WAL holds the events";
    {
        const auto log = open(LogMode::ReadOnly);
        readEverything(*log);
        ASSERT_EQ(log->openRepairs()->size(), 1U);
        EXPECT_EQ(log->openRepairs()->front().station, u"turn"_s);
    }
    EXPECT_TRUE(verifyLog(path())->clean);
    EXPECT_EQ(contents(), before);
}

} // namespace
