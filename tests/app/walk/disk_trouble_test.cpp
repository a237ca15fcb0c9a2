// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that refuses while an act is confirmed: the act is not half saved, the screen stays and says so; what
// is against the clock counts all the same and is written when the disk is back.
#include "bench_fixture.h"
#include "shown.h"

#include "repairlog/failing_vfs.h"
#include "words/log_trouble.h"

#include <QFile>
#include <QTest>

#include <sqlite3.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class DiskTrouble : public BenchTest {
protected:
    QString trouble() { return window().screen()->troubleShown(); }
    QString unsavedBar() { return shown(window(), u"unsaved_bar"_s); }
    FailingVfs m_disk;
};

struct Refusal {
    const char* name;
    Failure failure;
    LogTrouble said;
};

void PrintTo(const Refusal& refusal, std::ostream* out) { *out << refusal.name; }

class WhileConfirming : public DiskTrouble, public ::testing::WithParamInterface<Refusal> {};

TEST_P(WhileConfirming, TheStepIsKeptAndGoesOnWhenTheDiskTakesIt)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const Repair before = *bench().repair(u"4421"_s);
    const QString step = screen();
    FailingVfs::failAfter(0, GetParam().failure);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), step);
    EXPECT_TRUE(trouble().startsWith(logTrouble(GetParam().said).headline)) << trouble().toStdString();
    EXPECT_TRUE(*bench().repair(u"4421"_s) == before);
    FailingVfs::work();
    tap(u"answer_way_on"_s);
    EXPECT_NE(screen(), step);
    EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before.prepDone + 1);
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

INSTANTIATE_TEST_SUITE_P(TheDisk, WhileConfirming,
                         ::testing::Values(Refusal{"IsFull", Failure::Full, LogTrouble::DiskFull},
                                           Refusal{"IsReadOnly", Failure::ReadOnly, LogTrouble::ReadOnly},
                                           Refusal{"FailsToWrite", Failure::Write, LogTrouble::IoError},
                                           Refusal{"FailsToSync", Failure::Sync, LogTrouble::IoError}),
                         [](const auto& each) { return std::string(each.param.name); });

TEST_F(DiskTrouble, ActsAgainstTheClockCountAtOnceAndAreWrittenLater)
{
    open();
    walkTo(skirtPanel(), Station::Mix);
    const QUuid id = bench().repair(u"4421"_s)->id;
    const std::size_t written = eventsInLog(id);
    FailingVfs::failAfter(0, Failure::Full);
    tap(u"answer_way_on"_s); // hardener in: the chemistry does not wait for a disk
    EXPECT_EQ(screen(), u"screen_spread"_s);
    EXPECT_EQ(bench().bench().unsaved(), 1U);
    EXPECT_TRUE(unsavedBar().contains(u'1')) << unsavedBar().toStdString();
    bench().clock().advance(minutes(3));
    tap(u"answer_way_on"_s); // edges are clear
    EXPECT_EQ(screen(), u"screen_wait"_s);
    EXPECT_EQ(bench().bench().unsaved(), 2U);
    EXPECT_EQ(eventsInLog(id), written);
    FailingVfs::work();
    EXPECT_TRUE(QTest::qWaitFor([this] { return bench().bench().unsaved() == 0; }, 20000));
    EXPECT_TRUE(unsavedBar().isEmpty()) << unsavedBar().toStdString();
    EXPECT_EQ(eventsInLog(id), written + 2);
    open();
    EXPECT_EQ(nextStep(*bench().repair(u"4421"_s)).station, Station::Wait);
}

TEST_F(DiskTrouble, ALockedLogIsSaidAndTheActCanBeDoneAgain)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const QString step = screen();
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(QFile::encodeName(log()).constData(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), step);
    EXPECT_TRUE(trouble().startsWith(logTrouble(LogTrouble::Locked).headline)) << trouble().toStdString();
    sqlite3_exec(other, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(other);
    tap(u"answer_way_on"_s);
    EXPECT_NE(screen(), step);
}

} // namespace
} // namespace strandbench::test
