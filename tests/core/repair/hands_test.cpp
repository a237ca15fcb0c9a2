// SPDX-License-Identifier: GPL-3.0-or-later
// One pair of hands: hand-made examples of the trade, and the recommended delay against a search that tries everything.
#include "repair/hands.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <random>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

const Assumptions ours;
const QUuid first(u"{11111111-1111-4111-8111-111111111111}"_s);
const QUuid second(u"{22222222-2222-4222-8222-222222222222}"_s);
const QUuid third(u"{33333333-3333-4333-8333-333333333333}"_s);

Instant after(Duration gone)
{
    const auto ms = static_cast<qint64>(inSeconds(gone) * 1000);
    return {1'700'000'000'000 + ms, 5'000'000 + ms, u"boot"_s, 0};
}

/// Common practice, no source: five minutes of working time, sands from ten minutes after mixing, easily for ten.
BatchRun usual()
{
    BatchRun run;
    run.mixed.filler = grams(45); // a minute of spreading
    run.mixed.times = {minutes(5), minutes(5), minutes(10), minutes(10)};
    run.hardenerIn = after(seconds(0));
    return run;
}

HandsOf running(const QUuid& repair, Duration since) { return handsOf(repair, usual(), ours, after(since)); }

HandsOf next(const QUuid& repair)
{
    const BatchRun run = usual();
    return {repair, {}, handActs(run.mixed.filler, run.mixed.times, ours)};
}

TEST(Hands, ABatchBindsThemForKneadingSpreadingEdgesAndSanding)
{
    const std::vector<HandSpan> acts = handActs(grams(45), usual().mixed.times, ours);
    ASSERT_EQ(acts.size(), 3U);
    EXPECT_EQ(acts[0], (HandSpan{HandAct::Spread, seconds(0), seconds(105), seconds(105)})); // 45 s and a minute
    EXPECT_EQ(acts[1], (HandSpan{HandAct::Edges, seconds(225), seconds(300), seconds(75)})); // from 0.75 of 5 min
    EXPECT_EQ(acts[2], (HandSpan{HandAct::Sand, minutes(10), minutes(20), minutes(5)}));
}

/// Mixed a minute ago: its edges are due in 2:45, when a batch mixed now is long spread; but its own edges would be due
/// in 3:45, while nothing else is. The two fit beside each other.
TEST(Hands, ASecondBatchAMinuteLaterFallsIntoTheSpreadingOfTheFirst)
{
    const auto hold = judgeHands({running(first, minutes(1))}, next(second));
    ASSERT_TRUE(hold);
    EXPECT_EQ(hold->collision.first.repair, first);
    EXPECT_EQ(hold->collision.first.span.act, HandAct::Spread); // still 45 s to spread
    EXPECT_EQ(hold->collision.second.span.act, HandAct::Spread);
    EXPECT_DOUBLE_EQ(inSeconds(hold->collision.at), 0);
    // At 45 s the hands are free until the edges at 2:45, two minutes: enough to knead and spread. The new edges are
    // then due from 4:30, the old ones clear at 4:00.
    EXPECT_DOUBLE_EQ(inSeconds(hold->delay), 45);
    EXPECT_EQ(hold->collision.reason().code, u"hands_spread"_s);
}

/// Mixed 2:30 ago: its edges are due in 1:15 until 2:30; a batch mixed now is spread until 1:45.
TEST(Hands, EdgesThatAreDueHoldTheNextBatchBackUntilTheyAreClear)
{
    const auto hold = judgeHands({running(first, seconds(150))}, next(second));
    ASSERT_TRUE(hold);
    EXPECT_EQ(hold->collision.first.repair, first);
    EXPECT_EQ(hold->collision.first.span.act, HandAct::Edges);
    EXPECT_EQ(hold->collision.second.span.act, HandAct::Spread);
    EXPECT_DOUBLE_EQ(inSeconds(hold->collision.at), 75);
    EXPECT_DOUBLE_EQ(inSeconds(hold->delay), 150);
    EXPECT_EQ(hold->collision.reason(), (Reason{u"hands_spread"_s, {u"edges"_s, seconds(75)}}));
    EXPECT_FALSE(hold->collision.soft());
}

/// Edges told clear bind nothing more; the sanding has all its time to move in.
TEST(Hands, ClearEdgesFreeTheHands)
{
    BatchRun run = usual();
    run.edgesClear = after(seconds(140));
    EXPECT_FALSE(judgeHands({handsOf(first, run, ours, after(seconds(150)))}, next(second)));
}

/// It sands, for 6:30 more, and takes 5: there is a gap of 2:00 between spreading (1:45) and edges (3:45), too short.
TEST(Hands, ASandingThatFindsNoPlaceIsASofterReasonToWait)
{
    BatchRun run = usual();
    run.edgesClear = after(minutes(4));
    const auto hold = judgeHands({handsOf(first, run, ours, after(seconds(810)))}, next(second));
    ASSERT_TRUE(hold);
    EXPECT_TRUE(hold->collision.soft());
    EXPECT_EQ(hold->collision.first.repair, second);
    EXPECT_EQ(hold->collision.second.repair, first);
    EXPECT_EQ(hold->collision.second.span.act, HandAct::Sand);
    EXPECT_DOUBLE_EQ(inSeconds(hold->delay), 300); // sanded first, which takes 5:00
    EXPECT_EQ(hold->collision.reason().code, u"hands_sand"_s);
}

TEST(Hands, ASandingMovesWithinItsTime)
{
    BatchRun run = usual();
    run.edgesClear = after(minutes(4));
    // It sands from now for 10:00: after the new edges (5:00) it still has five minutes.
    EXPECT_FALSE(judgeHands({handsOf(first, run, ours, after(minutes(10)))}, next(second)));
    // Ten seconds later it no longer has: spread until 1:45, edges from 3:45 to 5:00.
    EXPECT_TRUE(judgeHands({handsOf(first, run, ours, after(seconds(610)))}, next(second)));
}

TEST(Hands, WhatIsPastItsTimeHoldsNothingBack)
{
    EXPECT_FALSE(judgeHands({running(first, minutes(17))}, next(second))); // three minutes left to sand five
    EXPECT_TRUE(running(first, minutes(21)).acts.empty());
    EXPECT_FALSE(judgeHands({}, next(second)));
}

/// A lift in two batches is sanded once, and the second is spread when the edges of the first are clear.
TEST(Hands, TheSecondBatchOfALiftOwesNoSandingToTheFirst)
{
    Repair repair;
    repair.id = first;
    repair.runs = {usual(), usual()};
    repair.runs[0].edgesClear = after(seconds(240));
    repair.runs[1].batch.index = 1;
    repair.runs[1].hardenerIn = after(seconds(250));
    const auto hands = handsOf(repair, ours, after(seconds(300)));
    ASSERT_EQ(hands.size(), 2U);
    EXPECT_TRUE(hands[0].acts.empty());
    EXPECT_EQ(hands[1].acts.size(), 3U);
    EXPECT_FALSE(judgeHands({handsOf(first, repair.runs[0], ours, after(seconds(850)))}, next(first)));
}

/// Two batches mixed 1:40 apart: the edges of the later are due while those of the earlier still are.
TEST(Hands, TwoThatRunSayWhichGoesFirst)
{
    BatchRun later = usual();
    later.mixed.times.gel = minutes(4);
    later.hardenerIn = after(seconds(105));
    const auto told = nextCollision(
        {handsOf(first, usual(), ours, after(seconds(210))), handsOf(second, later, ours, after(seconds(210)))});
    ASSERT_TRUE(told);
    EXPECT_EQ(told->first.repair, first);
    EXPECT_EQ(told->first.span.act, HandAct::Edges);
    EXPECT_EQ(told->second.repair, second);
    EXPECT_EQ(told->second.span.act, HandAct::Edges);
    EXPECT_DOUBLE_EQ(inSeconds(told->at), 75); // 105 s + 0.75 of 4 min, less 210 s
    EXPECT_FALSE(nextCollision({running(first, seconds(210))}));
}

/// What collides already is no fault of the next batch.
TEST(Hands, ACollisionThatIsThereIsNotTheNextBatchs)
{
    const std::vector<HandsOf> two{running(first, seconds(280)), running(second, seconds(270))};
    ASSERT_TRUE(nextCollision(two));
    const auto hold = judgeHands(two, next(third));
    ASSERT_TRUE(hold);
    EXPECT_TRUE(hold->collision.first.repair == third || hold->collision.second.repair == third);
}

// ---- the search that tries everything

constexpr int grain = 30; // seconds: every time of the random cases is a multiple of it

int whole(Duration time) { return static_cast<int>(std::lround(inSeconds(time))); }

/// True when the acts of all, the last shifted by so many seconds, can be done by one pair of hands: every start of
/// every sanding is tried on the two grids that the times lie on.
bool possible(const std::vector<HandsOf>& running, const HandsOf& next, int delay)
{
    std::vector<char> busy(8000, 0);
    std::vector<HandSpan> sandings;
    const auto add = [&](const HandsOf& batch, int by) {
        for (const HandSpan& act : batch.acts) {
            if (act.act == HandAct::Sand) {
                sandings.push_back({act.act, act.from + seconds(by), act.to + seconds(by), act.takes});
                continue;
            }
            for (int at = whole(act.from) + by; at < whole(act.to) + by; ++at)
                if (std::exchange(busy[static_cast<std::size_t>(at)], 1))
                    return false;
        }
        return true;
    };
    for (const HandsOf& each : running)
        if (!add(each, 0))
            return false;
    if (!add(next, delay))
        return false;
    const std::function<bool(std::size_t)> place = [&](std::size_t which) {
        if (which == sandings.size())
            return true;
        const int takes = whole(sandings[which].takes);
        for (int start = whole(sandings[which].from); start + takes <= whole(sandings[which].to); ++start) {
            if (start % grain != 0 && start % grain != delay % grain)
                continue;
            const auto from = busy.begin() + start;
            if (std::any_of(from, from + takes, [](char b) { return b != 0; }))
                continue;
            std::fill(from, from + takes, 1);
            const bool all = place(which + 1);
            std::fill(from, from + takes, 0);
            if (all)
                return true;
        }
        return false;
    };
    return place(0);
}

class RandomBench {
public:
    HandsOf batch(const QUuid& repair, bool runs)
    {
        BatchRun run;
        run.mixed.filler = grams(22.5 * (1 + pick(3))); // 30 s of spreading each
        Assumptions half = ours;
        half.kneading = seconds(grain);
        half.sandLift = seconds(grain * (3 + pick(6)));
        const Duration gel = seconds(120.0 * (1 + pick(4)));
        const Duration sand = gel + seconds(grain * (2 + pick(8)));
        run.mixed.times = {gel, gel, sand, seconds(grain * (5 + pick(10)))};
        run.hardenerIn = after(seconds(0));
        const Duration since = runs ? seconds(grain * pick(static_cast<int>(inSeconds(sand) / grain))) : seconds(0);
        if (runs && since >= gel * 0.75)
            run.edgesClear = after(since);
        return handsOf(repair, run, half, after(since));
    }

private:
    int pick(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_random); }
    std::mt19937 m_random{20260914};
};

TEST(Hands, TheDelayIsFreeOfCollisionsAndNoSmallerOneIs)
{
    RandomBench bench;
    int held = 0;
    int soft = 0;
    for (int each = 0; each < 400; ++each) {
        std::vector<HandsOf> two{bench.batch(first, true), bench.batch(second, true)};
        const HandsOf mixed = bench.batch(third, false);
        if (nextCollision(two))
            continue; // what collides already has a rule of its own
        const auto hold = judgeHands(two, mixed);
        const int delay = hold ? whole(hold->delay) : 0;
        EXPECT_TRUE(possible(two, mixed, delay)) << each << ": " << delay;
        for (int less = 0; less < delay; ++less)
            ASSERT_FALSE(possible(two, mixed, less)) << each << ": " << less << " of " << delay;
        held += hold ? 1 : 0;
        soft += hold && hold->collision.soft() ? 1 : 0;
    }
    EXPECT_GT(held, 60); // the cases are there
    EXPECT_GT(soft, 5);
}

/// More that runs never lets a batch go earlier, where none of it collides by itself.
TEST(Hands, ABenchWithLessOnItNeverHoldsLonger)
{
    RandomBench bench;
    int compared = 0;
    for (int each = 0; each < 400; ++each) {
        const std::vector<HandsOf> two{bench.batch(first, true), bench.batch(second, true)};
        const HandsOf mixed = bench.batch(third, false);
        if (nextCollision(two))
            continue;
        const auto both = judgeHands(two, mixed);
        const auto one = judgeHands({two.front()}, mixed);
        EXPECT_FALSE(judgeHands({}, mixed));
        EXPECT_LE(one ? one->delay : seconds(0), both ? both->delay : seconds(0)) << each;
        ++compared;
    }
    EXPECT_GT(compared, 100);
}

/// Once the recommended delay has passed and nothing else happened, the hands are free.
TEST(Hands, HeldBackUntilThenItNoLongerCollides)
{
    const BatchRun run = usual();
    for (int since = 0; since < 1200; since += 7) {
        const auto hold = judgeHands({handsOf(first, run, ours, after(seconds(since)))}, next(second));
        if (!hold)
            continue;
        const Instant then = after(seconds(since) + hold->delay);
        EXPECT_FALSE(judgeHands({handsOf(first, run, ours, then)}, next(second))) << since;
    }
}

} // namespace
