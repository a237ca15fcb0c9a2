// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/clock_watch.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

class MovedClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override { return at; }
    [[nodiscard]] Duration asleep() const override { return slept; }
    void pass(qint64 ms)
    {
        at.utcMs += ms;
        at.boottimeMs += ms;
    }
    Instant at{1'772'434'800'000, 5'000'000, u"a"_s, 3600};
    Duration slept = seconds(40);
};

class Watch : public ::testing::Test {
protected:
    void SetUp() override { EXPECT_TRUE(watch.look().empty()); }
    /// The one jump that a look finds.
    ClockJumped jump()
    {
        const auto found = watch.look();
        EXPECT_EQ(found.size(), 1U);
        EXPECT_TRUE(watch.look().empty()) << "it is told once";
        return found.empty() ? ClockJumped{} : found.front();
    }
    MovedClock clock;
    ClockWatch watch{clock};
};

TEST_F(Watch, HearsNothingOfTimeThatPasses)
{
    for (const qint64 ms : {1, 1000, 60'000, 86'400'000}) {
        clock.pass(ms);
        EXPECT_TRUE(watch.look().empty()) << ms;
    }
}

TEST_F(Watch, TellsAStepOfTheWall)
{
    for (const qint64 ms : {3'600'000, -3'600'000, 500, -500, 86'400'000}) {
        clock.pass(1000);
        clock.at.utcMs += ms;
        EXPECT_EQ(jump(), (ClockJumped{ClockJump::WallStepped, seconds(double(ms) / 1e3)})) << ms;
    }
    clock.pass(1000);
    clock.at.utcMs += 499;
    EXPECT_TRUE(watch.look().empty());
}

TEST_F(Watch, TellsASleep)
{
    clock.pass(1'200'000);
    clock.slept = seconds(40 + 1199);
    EXPECT_EQ(jump(), (ClockJumped{ClockJump::Slept, seconds(1199)}));
    clock.pass(1000);
    clock.slept += seconds(0.9); // two clocks that are not read in one moment
    EXPECT_TRUE(watch.look().empty());
}

TEST_F(Watch, TellsSummerTime)
{
    clock.pass(1000);
    clock.at.utcOffsetSeconds = 7200;
    EXPECT_EQ(jump(), (ClockJumped{ClockJump::OffsetChanged, seconds(3600)}));
    clock.at.utcOffsetSeconds = 3600;
    EXPECT_EQ(jump(), (ClockJumped{ClockJump::OffsetChanged, seconds(-3600)}));
}

TEST_F(Watch, TellsTwoAtOnce)
{
    clock.pass(600'000);
    clock.slept += seconds(590);
    clock.at.utcMs += 7'200'000;
    const auto found = watch.look();
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0], (ClockJumped{ClockJump::WallStepped, seconds(7200)}));
    EXPECT_EQ(found[1], (ClockJumped{ClockJump::Slept, seconds(590)}));
}

TEST(WatchFromTheLog, TellsARestartAndAClockThatStandsBehind)
{
    MovedClock clock;
    for (const qint64 gone : {90'000, -90'000}) {
        ClockWatch watch(clock);
        Instant last = clock.at;
        last.bootId = u"before"_s;
        last.utcMs -= gone;
        watch.goOnFrom(last);
        const auto found = watch.look();
        ASSERT_EQ(found.size(), 1U);
        EXPECT_EQ(found.front(), (ClockJumped{ClockJump::Restarted, seconds(double(gone) / 1e3)}));
    }
}

TEST(WatchFromTheLog, TellsAStepWhileTheProgramWasClosed)
{
    MovedClock clock;
    ClockWatch watch(clock);
    watch.goOnFrom(clock.at);
    clock.pass(7'200'000);
    clock.at.utcMs -= 60'000;
    clock.slept += seconds(3600); // before this program looked: nobody knows how much of it
    const auto found = watch.look();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front(), (ClockJumped{ClockJump::WallStepped, seconds(-60)}));
}

TEST(WatchTheMachine, NothingJumpsInAMoment)
{
    const SystemClock clock;
    EXPECT_GE(inSeconds(clock.asleep()), 0);
    ClockWatch watch(clock);
    for (int i = 0; i < 100; ++i)
        EXPECT_TRUE(watch.look().empty());
}

} // namespace
