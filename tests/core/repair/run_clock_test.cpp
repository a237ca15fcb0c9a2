// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/run_clock.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

Instant after(double gone)
{
    const auto ms = static_cast<qint64>(gone * 60000);
    return {1'700'000'000'000 + ms, 5'000'000 + ms, u"boot"_s, 0};
}

/// Board sets at 4 min, layer gels at 5, sands from 8 to 23.
BatchRun usual()
{
    BatchRun run;
    run.mixed.times = {minutes(4), minutes(5), minutes(8), minutes(15)};
    run.hardenerIn = after(0);
    return run;
}

const Assumptions ours;

TEST(RunClock, GoesByTheTimesWhileNothingIsTold)
{
    const BatchRun run = usual();
    for (const double gone : {0.2, 2.0, 4.5, 6.0, 10.0, 30.0})
        EXPECT_EQ(clockOf(run, ours, after(gone)), readClock(run.mixed.times, ours, minutes(gone))) << gone;
}

TEST(RunClock, EdgesThatAreClearMeanHandsOffUntilItSands)
{
    BatchRun run = usual();
    run.edgesClear = after(3);
    const ClockFace face = clockOf(run, ours, after(4)); // by the times alone the edges would be due
    EXPECT_EQ(face.phase, Phase::HandsOff);
    EXPECT_DOUBLE_EQ(inSeconds(face.toNextPhase), 4 * 60);
    EXPECT_DOUBLE_EQ(face.phaseGone.value(), 1.0 / 5); // one of the five minutes from 3 to 8
    EXPECT_DOUBLE_EQ(inSeconds(face.sinceHardener), 4 * 60);
}

TEST(RunClock, ALayerThatGelledEarlyMeansHandsOff)
{
    BatchRun run = usual();
    run.panelGelled = after(2);
    EXPECT_EQ(clockOf(run, ours, after(2.5)).phase, Phase::HandsOff);
    run.edgesClear = after(3); // told later: hands were off since the gel
    EXPECT_DOUBLE_EQ(clockOf(run, ours, after(5)).phaseGone.value(), 3.0 / 6);
}

TEST(RunClock, WhatIsToldLateTakesNothingBack)
{
    BatchRun run = usual();
    run.edgesClear = after(9);
    EXPECT_EQ(clockOf(run, ours, after(9.5)).phase, Phase::Sand);
}

TEST(RunClock, WhatSandsEarlyIsSanded)
{
    BatchRun run = usual();
    run.edgesClear = after(3);
    run.sands = after(7);
    const ClockFace face = clockOf(run, ours, after(7.5));
    EXPECT_EQ(face.phase, Phase::Sand);
    EXPECT_DOUBLE_EQ(inSeconds(face.toNextPhase), 15.5 * 60); // easy sanding ends at 23 by the plan
    run.sands = after(9); // told when it had long been sanding by the times: they hold
    EXPECT_EQ(clockOf(run, ours, after(10)), readClock(run.mixed.times, ours, minutes(10)));
}

TEST(RunClock, TheBoardGoesByItsOwnTime)
{
    BatchRun run = usual();
    run.edgesClear = after(1);
    EXPECT_DOUBLE_EQ(inSeconds(clockOf(run, ours, after(1.5)).boardSetsIn), 2.5 * 60);
}

} // namespace
