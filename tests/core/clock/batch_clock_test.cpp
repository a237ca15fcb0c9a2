// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/batch_clock.h"

#include <QStringList>

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

BatchTimes timesOf(double boardGel, double gel, double sand, double easy)
{
    return {minutes(boardGel), minutes(gel), minutes(sand), minutes(easy)};
}

/// Board sets at 4 min, layer gels at 5, sands from 8 to 23.
const BatchTimes usual = timesOf(4, 5, 8, 15);

struct Row {
    const char* what;
    BatchTimes times;
    QStringList phases; ///< "code from-to", seconds
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.what; }

class Phases : public testing::TestWithParam<Row> {};

TEST_P(Phases, FollowOneAnother)
{
    QStringList spans;
    for (const PhaseSpan& each : phasesOf(GetParam().times, Assumptions{}))
        spans << u"%1 %2-%3"_s.arg(codeOf(each.phase)).arg(inSeconds(each.from)).arg(inSeconds(each.to));
    if (!spans.isEmpty()) // where the ribbon ends is a matter of looks
        spans.last() = spans.last().section(u'-', 0, 0);
    EXPECT_EQ(spans.join(u", ").toStdString(), GetParam().phases.join(u", ").toStdString());
}

// Kneading 45 s and edges at 0.75 of the gel time: ours, no source.
INSTANTIATE_TEST_SUITE_P(
    OfABatch, Phases,
    testing::Values(
        Row{"usual",
            usual,
            {u"knead 0-45"_s, u"spread 45-225"_s, u"clear_edges 225-300"_s, u"hands_off 300-480"_s, u"sand 480-1380"_s,
             u"harder 1380"_s}},
        Row{"no time to spread",
            timesOf(0.5, 0.8, 3, 10),
            {u"knead 0-36"_s, u"clear_edges 36-48"_s, u"hands_off 48-180"_s, u"sand 180-780"_s, u"harder 780"_s}},
        Row{"sands as it gels",
            timesOf(4, 4, 4, 10),
            {u"knead 0-45"_s, u"spread 45-180"_s, u"clear_edges 180-240"_s, u"sand 240-840"_s, u"harder 840"_s}},
        Row{"no easy sanding known",
            timesOf(4, 5, 8, 0),
            {u"knead 0-45"_s, u"spread 45-225"_s, u"clear_edges 225-300"_s, u"hands_off 300-480"_s, u"harder 480"_s}},
        Row{"no times at all", {}, {}}));

class PhaseInvariants : public testing::TestWithParam<BatchTimes> {};

TEST_P(PhaseInvariants, NoGapNoOverlapNoEmptyOne)
{
    const std::vector<PhaseSpan> spans = phasesOf(GetParam(), Assumptions{});
    ASSERT_FALSE(spans.empty());
    EXPECT_EQ(spans.front().from, seconds(0));
    EXPECT_EQ(spans.back().phase, Phase::Harder);
    for (std::size_t i = 0; i < spans.size(); ++i) {
        EXPECT_GT(spans[i].to, spans[i].from) << i;
        if (i > 0) {
            EXPECT_EQ(spans[i].from, spans[i - 1].to) << i;
            EXPECT_GT(spans[i].phase, spans[i - 1].phase) << i;
        }
    }
}

TEST_P(PhaseInvariants, TheClockWalksThroughThem)
{
    const Assumptions assumptions;
    const std::vector<PhaseSpan> spans = phasesOf(GetParam(), assumptions);
    for (double second = 0; second < inSeconds(spans.back().to) + 100; second += 1) {
        const ClockFace face = readClock(GetParam(), assumptions, seconds(second));
        const auto here = std::find_if(spans.begin(), spans.end(),
                                       [second](const PhaseSpan& each) { return seconds(second) < each.to; });
        const PhaseSpan& span = here == spans.end() ? spans.back() : *here;
        ASSERT_EQ(face.phase, span.phase) << second;
        EXPECT_EQ(face.sinceHardener, seconds(second));
        EXPECT_GE(face.boardSetsIn, seconds(0));
        EXPECT_GE(face.phaseGone.value(), 0.0);
        EXPECT_LE(face.phaseGone.value(), 1.0);
        if (face.phase == Phase::Harder)
            EXPECT_EQ(face.toNextPhase, seconds(0));
        else
            EXPECT_NEAR(inSeconds(face.toNextPhase), inSeconds(span.to) - second, 1e-9);
    }
}

INSTANTIATE_TEST_SUITE_P(Times, PhaseInvariants,
                         testing::Values(usual, timesOf(0.5, 0.8, 3, 10), timesOf(4, 4, 4, 10), timesOf(4, 5, 8, 0),
                                         timesOf(9, 12.5, 40, 60)));

TEST(ReadClock, AtTheMomentOfHardenerIn)
{
    const ClockFace face = readClock(usual, Assumptions{}, seconds(0));
    EXPECT_EQ(face.phase, Phase::Knead);
    EXPECT_EQ(face.toNextPhase, seconds(45));
    EXPECT_EQ(face.boardSetsIn, minutes(4));
    EXPECT_EQ(face.phaseGone, Fraction());
}

TEST(ReadClock, ABoundaryBelongsToTheNextPhase)
{
    EXPECT_EQ(readClock(usual, Assumptions{}, seconds(224.9)).phase, Phase::Spread);
    EXPECT_EQ(readClock(usual, Assumptions{}, seconds(225)).phase, Phase::ClearEdges);
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(5)).phase, Phase::HandsOff);
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(8)).phase, Phase::Sand);
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(23)).phase, Phase::Harder);
}

TEST(ReadClock, TheBoardSetsOnItsOwnTime)
{
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(3)).boardSetsIn, minutes(1));
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(4)).boardSetsIn, seconds(0));
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(600)).boardSetsIn, seconds(0));
}

TEST(ReadClock, HalfAPhaseIsHalfGone)
{
    EXPECT_NEAR(readClock(usual, Assumptions{}, seconds(135)).phaseGone.value(), 0.5, 1e-12);
    EXPECT_NEAR(readClock(usual, Assumptions{}, seconds(390)).phaseGone.value(), 0.5, 1e-12);
    EXPECT_EQ(readClock(usual, Assumptions{}, minutes(600)).phaseGone, Fraction::ofOne(1));
}

TEST(ReadClock, TakesTheShopsOwnAssumptions)
{
    Assumptions slow;
    slow.kneading = seconds(90);
    slow.edgesAtGel = Fraction::ofOne(0.5);
    EXPECT_EQ(readClock(usual, slow, seconds(60)).phase, Phase::Knead);
    EXPECT_EQ(readClock(usual, slow, seconds(151)).phase, Phase::ClearEdges);
}

} // namespace
