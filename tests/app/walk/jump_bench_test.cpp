// SPDX-License-Identifier: GPL-3.0-or-later
// A clock that jumps while a batch runs: its figure goes on, the glass says so, the log has it.
#include "bench_fixture.h"
#include "shown.h"

#include "repair/run_clock.h"

#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class JumpOnTheBench : public BenchTest {
protected:
    void toSpread()
    {
        open();
        walkTo(skirtPanel(), Station::Spread);
    }
    /// A second of the bench, and what it writes: the log's own thread answers in the order in which it was asked.
    void tick()
    {
        window().tick();
        bool written = false;
        bench().bench().recorder().readAfter(0, [&written](const auto&) { written = true; });
        EXPECT_TRUE(QTest::qWaitFor([&written] { return written; }, 30000));
        bench().thumb().settle();
    }
    [[nodiscard]] double left() { return inSeconds(bench().bench().runningMixes().front().face.toNextPhase); }
    [[nodiscard]] QString notice() { return shown(window(), u"ribbon_reading"_s); }
    [[nodiscard]] std::vector<Event> ofBench()
    {
        const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
        return opened ? *(*opened)->events(benchSubject()) : std::vector<Event>{};
    }
    void setWall(qint64 ms)
    {
        Instant at = bench().clock().now();
        at.utcMs += ms;
        bench().clock().set(at);
    }
};

TEST_F(JumpOnTheBench, AStepOfTheWallIsToldWrittenAndChangesNoFigure)
{
    toSpread();
    const double before = left();
    const QString usual = notice();
    setWall(3'600'000);
    tick();
    EXPECT_NEAR(left(), before, 0.001);
    EXPECT_NE(notice(), usual);
    EXPECT_TRUE(notice().contains(u"Clock set on"_s)) << notice().toStdString();
    ASSERT_EQ(ofBench().size(), 1U);
    EXPECT_EQ(std::get<ClockJumped>(ofBench().front().payload), (ClockJumped{ClockJump::WallStepped, seconds(3600)}));
    bench().clock().advance(seconds(31));
    tick();
    EXPECT_FALSE(notice().contains(u"Clock set on"_s)) << "it does not stand for ever";
    EXPECT_EQ(ofBench().size(), 1U) << "told once";
}

TEST_F(JumpOnTheBench, AfterASleepTheFigureIsWhatReallyIsLeft)
{
    toSpread();
    const double before = left();
    bench().clock().sleep(seconds(30));
    tick();
    EXPECT_NEAR(left(), before - 30, 0.001);
    ASSERT_EQ(ofBench().size(), 1U);
    EXPECT_EQ(std::get<ClockJumped>(ofBench().front().payload), (ClockJumped{ClockJump::Slept, seconds(30)}));
}

TEST_F(JumpOnTheBench, AClockSetBetweenTheHardenerAndARestartIsMadeGood)
{
    toSpread();
    const double before = left();
    bench().clock().advance(seconds(1));
    setWall(7'200'000);
    tick();
    Instant later = bench().clock().now();
    later.utcMs += 20'000;
    later.boottimeMs = 9'000;
    later.bootId = u"another boot"_s;
    bench().clock().set(later);
    open();
    tick();
    EXPECT_NEAR(left(), before - 21, 0.001);
    const auto events = ofBench();
    ASSERT_EQ(events.size(), 2U);
    EXPECT_EQ(std::get<ClockJumped>(events.back().payload), (ClockJumped{ClockJump::Restarted, seconds(20)}));
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(JumpOnTheBench, TodayTellsTheSupervisor)
{
    toSpread();
    setWall(-600'000);
    tick();
    window().showHome();
    bench().thumb().settle();
    tap(u"today"_s);
    waitFor(u"today_bench"_s);
    tap(u"today_bench"_s);
    EXPECT_EQ(screen(), u"screen_bench_day"_s);
    const QString told = waitText(u"bench_event_0_text"_s);
    EXPECT_TRUE(told.contains(u"10:00"_s)) << told.toStdString();
}

} // namespace
} // namespace strandbench::test
