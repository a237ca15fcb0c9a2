// SPDX-License-Identifier: GPL-3.0-or-later
// The rest of a repair planned again after an answer was corrected: what was mixed stays and counts (conservation of
// mass and of height).
#include "plan/plan_difference.h"
#include "repairs.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// A dent deep enough for several lifts.
Assessment deepDent(double depth = 20) { return repairOf(Substrate::Laminate, DamageKind::Dent, 120, 80, depth); }

/// The lift of a batch is begun: all its batches stay.
PlanProgress afterLift(const RepairPlan& plan, int lift)
{
    PlanProgress done;
    done.steps = static_cast<int>(plan.prep.size());
    for (const Batch& each : plan.batches)
        if (each.lift <= lift)
            ++done.frozenBatches;
    done.sandedBatches = done.frozenBatches;
    return done;
}

/// Volume that stayed on the panel of some batches, cured: 10 % and 2 g a batch stay on the board, 3.5 % shrink.
double curedMl(const RepairPlan& plan, int batches, const Bench& bench)
{
    double ml = 0;
    for (int i = 0; i < batches; ++i)
        ml += (inGrams(plan.batches[std::size_t(i)].mix.filler) - 2) / 1.1 / bench.sheetOf(plan).density.value() *
              1000 * 0.965;
    return ml;
}

TEST(Replan, WithNothingBegunIsThePlanOfTheNewAnswers)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    EXPECT_EQ(bench.replan(deepDent(12), before, {}), bench.plan(deepDent(12)));
}

TEST(Replan, TheSameAnswersLeaveTheSameRest)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    ASSERT_GE(before.lifts.size(), 3u);
    const PlanProgress done = afterLift(before, 0);
    const RepairPlan now = bench.replan(deepDent(), before, done);
    ASSERT_TRUE(now.fill);
    ASSERT_EQ(now.lifts.size(), before.lifts.size());
    for (std::size_t i = 0; i < now.lifts.size(); ++i)
        EXPECT_NEAR(now.lifts[i].thickness / before.lifts[i].thickness, 1.0, 1e-6) << i;
    EXPECT_NEAR(now.fillerTotal / before.fillerTotal, 1.0, 1e-6);
    EXPECT_NEAR(now.allowances.boardLoss / before.allowances.boardLoss, 1.0, 1e-6);
    EXPECT_NEAR(now.allowances.shrinkage / before.allowances.shrinkage, 1.0, 1e-6);
    EXPECT_TRUE(planDifference(before, now, done).figures.empty());
    EXPECT_LT(now.readyForPrimer, before.readyForPrimer) << "what is done takes no more time";
}

TEST(Replan, WhatWasMixedStaysAndTheRestFillsTheCavityAsItIsNow)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    const PlanProgress done = afterLift(before, 0);
    for (const double depth : {14.0, 20.0, 26.0}) {
        const Assessment corrected = deepDent(depth);
        const RepairPlan now = bench.replan(corrected, before, done);
        ASSERT_TRUE(now.fill) << depth;
        for (int i = 0; i < done.frozenBatches; ++i)
            EXPECT_EQ(now.batches[std::size_t(i)], before.batches[std::size_t(i)]);
        EXPECT_EQ(now.lifts.front(), before.lifts.front());
        EXPECT_EQ(now.prep, before.prep);
        const Cavity cavity(*corrected.damage, false);
        const double whole = inMillilitres(cavity.volume()) + inMillilitres(cavity.opening() * millimetres(1));
        EXPECT_NEAR(curedMl(now, int(now.batches.size()), bench), whole, whole * 1e-4) << depth;
    }
}

TEST(Replan, AWiderDamageLeavesTheFirstLiftLower)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    const PlanProgress done = afterLift(before, 0);
    Assessment wider = deepDent();
    wider.damage->width = millimetres(120);
    const RepairPlan now = bench.replan(wider, before, done);
    ASSERT_TRUE(now.fill);
    Length rest = millimetres(0);
    for (std::size_t i = 1; i < now.lifts.size(); ++i)
        rest += now.lifts[i].thickness;
    // A paraboloid of the same depth: the same filler in one half wider stands at sqrt(2/3) of the height.
    const double stood = inMillimetres(before.lifts[0].thickness) * std::sqrt(80.0 / 120.0);
    EXPECT_NEAR(inMillimetres(rest), 20.0 - stood, 1e-3);
}

TEST(Replan, AFaceThatIsFullTakesNoMore)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent(5));
    ASSERT_EQ(before.lifts.size(), 1u);
    const PlanProgress done = afterLift(before, 0);
    const RepairPlan now = bench.replan(deepDent(4), before, done);
    ASSERT_TRUE(now.fill);
    EXPECT_EQ(now.batches, before.batches);
    EXPECT_EQ(now.lifts, before.lifts);
}

TEST(Replan, AnotherFillerTakesOverAboveWhatIsLaid)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    const PlanProgress done = afterLift(before, 0);
    Assessment smc = deepDent();
    smc.substrate = Substrate::Smc;
    const RepairPlan now = bench.replan(smc, before, done);
    ASSERT_TRUE(now.fill);
    ASSERT_NE(now.filler, before.filler);
    EXPECT_EQ(now.lifts.front().filler, *before.filler);
    EXPECT_EQ(now.lifts.back().filler, *now.filler);
    const PlanDifference difference = planDifference(before, now, done);
    EXPECT_EQ(difference.figures.front(), (PlanChange{u"filler"_s, codeOf(*before.filler), codeOf(*now.filler)}));
    EXPECT_EQ(difference.kept, done.frozenBatches);
}

TEST(Replan, ARefusalStopsWhateverWasMixed)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    Assessment structural = deepDent();
    structural.zone = Zone::Structural;
    const RepairPlan now = bench.replan(structural, before, afterLift(before, 0));
    EXPECT_FALSE(now.fill);
    ASSERT_FALSE(now.stops.empty());
    EXPECT_EQ(now.stops.front().reason.code, u"zone_structural"_s);
}

TEST(Replan, NoFibreFillerOverFinishingFiller)
{
    const Bench bench;
    const RepairPlan before = bench.plan(deepDent());
    PlanProgress done = afterLift(before, int(before.lifts.size()) - 1);
    done.mixedFinishing = 1;
    const RepairPlan now = bench.replan(deepDent(26), before, done);
    ASSERT_TRUE(now.fill);
    EXPECT_EQ(now.batches, before.batches);
    EXPECT_EQ(now.finish, before.finish);
}

TEST(Replan, ABevelCorrectedOpensItsStepAndAllAfterIt)
{
    const Bench bench;
    Assessment hole = sampleHole();
    const RepairPlan before = bench.plan(hole);
    hole.damage->bevelRatio = 6;
    PlanProgress done;
    done.steps = static_cast<int>(before.prep.size());
    const RepairPlan now = bench.replan(hole, before, done);
    const PlanDifference difference = planDifference(before, now, done);
    const QStringList codes = codesOf(before.prep);
    const auto bevel = codes.indexOf(u"bevel_both"_s);
    ASSERT_GT(bevel, 0);
    EXPECT_EQ(stepsStillDone(before.prep, now.prep, done.steps), int(bevel));
    EXPECT_EQ(QStringList(difference.opened.begin(), difference.opened.end()), codes.mid(bevel));
    EXPECT_TRUE(difference.dropped.empty());
}

/// Any plan, begun or not, made again with its own answers fills every face to its height, and never in more batches:
/// what is left may take fewer lifts than the whole did.
TEST(Replan, OfAnyRepairWithItsOwnAnswersFillsItToItsHeight)
{
    int number = 0;
    forManyPlans([&](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        if (++number % 12 != 0) // each takes several plans
            return;
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        for (int lift = -1; lift < int(plan.lifts.size()); lift += 2) {
            const RepairPlan now = bench.replan(assessment, plan, afterLift(plan, lift));
            ASSERT_TRUE(now.fill) << nameOf(assessment);
            EXPECT_LE(now.batches.size(), plan.batches.size()) << nameOf(assessment) << " after lift " << lift;
            for (const Face face : {Face::Front, Face::Back}) {
                Length sum = millimetres(0);
                for (const Lift& each : liftsOf(now, face))
                    sum += each.thickness;
                const bool filled = face == Face::Front || cavity.faces() == 2;
                EXPECT_NEAR(sum / cavity.height(), filled ? 1.0 : 0.0, 1e-6)
                    << nameOf(assessment) << " after lift " << lift;
            }
        }
    });
}

} // namespace
} // namespace strandbench::test
