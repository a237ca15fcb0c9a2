// SPDX-License-Identifier: GPL-3.0-or-later
// The log taken away while the bench works: what is against the clock waits under the red bar, the rest stops, and all
// goes on when it is back.
#include "bench_fixture.h"
#include "shown.h"

#include "repairlog/failing_vfs.h"
#include "words/log_trouble.h"

#include <QDir>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class GoneLog : public BenchTest {
protected:
    [[nodiscard]] QString bar() { return shown(window(), u"unsaved_bar"_s); }
    void takeAway() const
    {
        for (const char* ending : {"", "-wal", "-shm", ".lock"})
            QFile::rename(log() + QLatin1StringView(ending), folder() + u"/away"_s + QLatin1StringView(ending));
    }
    void putBack() const
    {
        for (const char* ending : {"", "-wal", "-shm", ".lock"})
            QFile::rename(folder() + u"/away"_s + QLatin1StringView(ending), log() + QLatin1StringView(ending));
    }
};

TEST_F(GoneLog, ActsAgainstTheClockWaitAndOthersStopUntilItIsBack)
{
    open();
    walkTo(skirtPanel(), Station::Mix);
    const QUuid id = bench().repair(u"4421"_s)->id;
    const std::size_t written = eventsInLog(id);
    takeAway();
    tap(u"answer_way_on"_s); // hardener in
    EXPECT_EQ(screen(), u"screen_spread"_s);
    EXPECT_EQ(bench().bench().unsaved(), 1U);
    EXPECT_TRUE(bar().contains(logTrouble(LogTrouble::Gone).headline)) << bar().toStdString();
    EXPECT_FALSE(QFile::exists(log())) << "no new log is made in its place";
    window().showHome();
    bench().thumb().settle();
    tap(u"take_in"_s);
    for (const QChar digit : u"77"_s)
        tap(u"key_"_s + digit);
    tap(u"answer_way_on"_s);
    bench().thumb().settle();
    EXPECT_EQ(bench().bench().openRepairs().size(), 1U);
    putBack();
    EXPECT_TRUE(QTest::qWaitFor([this] { return bench().bench().unsaved() == 0; }, 20000));
    EXPECT_TRUE(bar().isEmpty()) << bar().toStdString();
    EXPECT_EQ(eventsInLog(id), written + 1);
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(GoneLog, AnotherLogInItsPlaceIsNotWritten)
{
    const QString other = folder() + u"/other.sqlite"_s;
    {
        const auto made = RepairLog::open(other, LogMode::ReadWrite);
        ASSERT_TRUE((*made)->append(
            {QUuid::createUuid(), u"Technician 2"_s, TakenIn{u"88"_s, u"wing"_s}, workingMorning(), {}}));
    }
    open();
    walkTo(skirtPanel(), Station::Mix);
    takeAway();
    ASSERT_TRUE(QFile::copy(other, log()));
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(QTest::qWaitFor([this] { return bar().contains(logTrouble(LogTrouble::OtherLog).headline); }, 20000))
        << bar().toStdString();
    EXPECT_EQ(verifyLog(log())->events, 1);
    ASSERT_TRUE(QFile::remove(log()));
    putBack();
    EXPECT_TRUE(QTest::qWaitFor([this] { return bench().bench().unsaved() == 0; }, 20000));
}

TEST_F(GoneLog, AfterADiskThatFailedTheLogIsOpenedAnew)
{
    FailingVfs disk;
    open();
    walkTo(skirtPanel(), Station::Mix);
    FailingVfs::failAfter(0, Failure::Write);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(bench().bench().unsaved(), 1U);
    EXPECT_TRUE(bar().contains(logTrouble(LogTrouble::IoError).headline)) << bar().toStdString();
    FailingVfs::work();
    EXPECT_TRUE(QTest::qWaitFor([this] { return bench().bench().unsaved() == 0; }, 20000));
    bench().clock().advance(minutes(3));
    tap(u"answer_way_on"_s);
    EXPECT_EQ(bench().bench().unsaved(), 0U);
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

} // namespace
} // namespace strandbench::test
