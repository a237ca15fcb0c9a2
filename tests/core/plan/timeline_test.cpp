// SPDX-License-Identifier: GPL-3.0-or-later
// The timeline: end to end, everything in it, 'ready for primer' its end.
#include "repairs.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

std::ptrdiff_t countOf(const RepairPlan& plan, const QString& code)
{
    return std::count_if(plan.timeline.begin(), plan.timeline.end(),
                         [&](const TimelineEntry& each) { return each.code == code; });
}

double secondsOf(const RepairPlan& plan, const QString& code)
{
    double sum = 0;
    for (const TimelineEntry& each : plan.timeline)
        sum += each.code == code ? inSeconds(each.length) : 0.0;
    return sum;
}

TEST(Timeline, HasNoGapAndEndsReadyForPrimer)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        Duration at = seconds(0);
        for (const TimelineEntry& each : plan.timeline) {
            EXPECT_NEAR(inSeconds(each.start), inSeconds(at), 1e-6) << nameOf(assessment);
            EXPECT_GT(inSeconds(each.length), 0) << each.code.toStdString();
            at = each.start + each.length;
        }
        EXPECT_NEAR(inSeconds(plan.readyForPrimer), inSeconds(at), 1e-6);
    });
}

/// At least about an hour at 20 °C after the last sanding, longer where it is colder (common practice, no source).
TEST(Timeline, WaitsAnHourBeforePrimer)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        const TimelineEntry& last = plan.timeline.back();
        EXPECT_EQ(last.code, u"before_primer"_s);
        EXPECT_FALSE(last.handsOn);
        EXPECT_GE(inMinutes(last.length), 60 - 1e-9) << nameOf(assessment);
        if (inCelsius(assessment.reading->panel) < 19.9) {
            EXPECT_GT(inMinutes(last.length), 60);
        }
        EXPECT_EQ(plan.finishing.back().waiting, last.length) << "the step says what the timeline waits";
    });
    // 2.064 between 10 and 20 °C at 50 kJ/mol, by the Arrhenius law.
    Assessment cold = sampleHole();
    cold.reading = Reading{celsius(12), celsius(10), Fraction::ofHundred(40)};
    EXPECT_NEAR(inMinutes(Bench().plan(cold).timeline.back().length), 60 * 2.064, 0.03);
}

TEST(Timeline, HoldsEveryStepOnce)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        double handsOn = 0;
        double waiting = 0;
        for (const Step& each : plan.prep) {
            handsOn += inSeconds(each.handsOn);
            waiting += inSeconds(each.waiting);
        }
        EXPECT_NEAR(secondsOf(plan, u"prepare"_s), handsOn, 1e-6);
        EXPECT_NEAR(secondsOf(plan, u"prepare_waiting"_s), waiting, 1e-6);
        double finishing = 0;
        for (const Step& each : plan.finishing)
            finishing += inSeconds(each.handsOn);
        EXPECT_NEAR(secondsOf(plan, u"finish"_s), finishing, 1e-6);
    });
}

/// One mixing a batch; one wait and one sanding a lift and a coat, however many batches it took; one turning.
TEST(Timeline, MixesEveryBatchAndSandsEveryLayerOnce)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        const std::size_t batches = plan.batches.size() + plan.finish.batches.size();
        EXPECT_EQ(countOf(plan, u"mix"_s), std::ptrdiff_t(batches));
        EXPECT_EQ(countOf(plan, u"spread"_s), std::ptrdiff_t(batches));
        const std::ptrdiff_t layers = std::ptrdiff_t(plan.lifts.size()) + plan.finish.coats;
        EXPECT_EQ(countOf(plan, u"sand"_s), layers) << nameOf(assessment);
        EXPECT_EQ(countOf(plan, u"wait"_s), layers);
        EXPECT_EQ(countOf(plan, u"turn"_s), liftsOf(plan, Face::Back).empty() ? 0 : 1);
    });
}

/// From 'hardener in' to the first sanding at least the layer's sanding time goes by.
TEST(Timeline, NeverSandsEarly)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        std::vector<Batch> batches = plan.batches;
        batches.insert(batches.end(), plan.finish.batches.begin(), plan.finish.batches.end());
        std::size_t mixed = 0;
        Duration hardenerIn = seconds(0);
        for (const TimelineEntry& each : plan.timeline) {
            if (each.code == u"mix"_s) {
                hardenerIn = each.start + bench.assumptions.layPuddle;
                ++mixed;
            } else if (each.code == u"sand"_s) {
                EXPECT_GE(inSeconds(each.start - hardenerIn), inSeconds(batches[mixed - 1].times.sand) - 1e-6)
                    << nameOf(assessment);
            }
        }
        EXPECT_EQ(mixed, batches.size());
    });
}

TEST(Timeline, HandsAreBoundExceptWhileItWaits)
{
    const RepairPlan plan = Bench().plan(sampleHole());
    for (const TimelineEntry& each : plan.timeline) {
        const bool waits =
            each.code == u"wait"_s || each.code == u"before_primer"_s || each.code.endsWith(u"_waiting"_s);
        EXPECT_EQ(each.handsOn, !waits) << each.code.toStdString();
    }
}

/// Colder air and panel make it later, never sooner.
TEST(Timeline, ColdMakesItLater)
{
    const Bench bench;
    Duration before = minutes(0);
    for (double c = 30; c >= 10; c -= 2.5) {
        Assessment hole = sampleHole();
        hole.reading = Reading{celsius(c), celsius(c), Fraction::ofHundred(40)};
        const RepairPlan plan = bench.plan(hole);
        ASSERT_TRUE(plan.fill);
        EXPECT_GT(plan.readyForPrimer, before) << c;
        before = plan.readyForPrimer;
    }
}

} // namespace
} // namespace strandbench::test
