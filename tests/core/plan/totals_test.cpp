// SPDX-License-Identifier: GPL-3.0-or-later
// What is mixed covers the cavity and the allowances, to the last gram. Conservation of mass; the shares are
// assumptions of ours, no source.
#include "repairs.h"

#include <gtest/gtest.h>

#include <numbers>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr double hair = 1e-9;

TEST(Totals, CoverCavityAndAllowances)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        if (isBridged(plan))
            return; // two densities: bridging_test.cpp
        const Volume laid = plan.cavity + plan.allowances.proud + plan.allowances.shrinkage;
        const Mass owed = laid * bench.sheetOf(plan).density + plan.allowances.boardLoss;
        EXPECT_NEAR(plan.fillerTotal / owed, 1.0, hair) << nameOf(assessment);
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        const double faces = cavity.faces();
        EXPECT_NEAR(plan.cavity / (cavity.volume() * faces), 1.0, hair);
        EXPECT_NEAR(plan.allowances.proud / (cavity.opening() * millimetres(1) * faces), 1.0, hair);
        // 3.5 % of what is laid is gone after the cure: what is left fills cavity and proud part.
        EXPECT_NEAR(laid * 0.965 / (plan.cavity + plan.allowances.proud), 1.0, hair);
        // 10 % and 2 g a batch.
        const Mass loss = laid * bench.sheetOf(plan).density * 0.1 + grams(2) * double(plan.batches.size());
        EXPECT_NEAR(plan.allowances.boardLoss / loss, 1.0, hair);
    });
}

TEST(Totals, AreWhatTheBatchesAddUpTo)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        Mass filler = grams(0);
        Mass hardener = grams(0);
        for (const Batch& each : plan.batches) {
            filler += each.mix.filler;
            hardener += each.mix.hardener;
        }
        EXPECT_NEAR(filler / plan.fillerTotal, 1.0, hair) << nameOf(assessment);
        EXPECT_NEAR(hardener / plan.hardenerTotal, 1.0, hair);
        // 50 : 1 by mass (common practice, no source).
        EXPECT_NEAR(plan.hardenerTotal / plan.fillerTotal, 0.02, 0.02 * hair);
    });
}

/// The whole sum by hand for one hole: both faces of 60 x 40 mm, 1.75 mm each, bevelled 4 : 1.
TEST(Totals, OfTheSampleHoleByHand)
{
    const RepairPlan plan = Bench().plan(sampleHole());
    ASSERT_TRUE(plan.fill);
    EXPECT_EQ(plan.filler, FillerClass::MixedStrand);
    constexpr double pi = std::numbers::pi;
    const double face = pi * (30 * 20 * 1.75 + 50 * 4 * 1.75 * 1.75 / 2 + 16 * 1.75 * 1.75 * 1.75 / 3);
    EXPECT_NEAR(inMillilitres(plan.cavity), 2 * face / 1000, 1e-9);
    EXPECT_NEAR(inMillilitres(plan.cavity), 8.70, 0.005);
    const double proud = 2 * pi * 37 * 27 * 1.0 / 1000;
    EXPECT_NEAR(inMillilitres(plan.allowances.proud), proud, 1e-9);
    const double shrinkage = (2 * face / 1000 + proud) * (1 / 0.965 - 1);
    EXPECT_NEAR(inMillilitres(plan.allowances.shrinkage), shrinkage, 1e-9);
    const double needed = (2 * face / 1000 + proud + shrinkage) * 1.45;
    EXPECT_NEAR(inGrams(plan.allowances.boardLoss), needed * 0.1 + 2 * 2, 1e-9);
    EXPECT_NEAR(inGrams(plan.fillerTotal), needed * 1.1 + 4, 1e-9);
    EXPECT_EQ(plan.batches.size(), 2u);
}

TEST(Totals, FollowTheAssumptions)
{
    Bench bench;
    bench.assumptions.proud = millimetres(2);
    bench.assumptions.boardLossShare = Fraction::ofHundred(0);
    bench.assumptions.boardLossEach = grams(0);
    const RepairPlan plan = bench.plan(sampleHole());
    const RepairPlan usual = Bench().plan(sampleHole());
    EXPECT_NEAR(plan.allowances.proud / usual.allowances.proud, 2.0, hair);
    EXPECT_DOUBLE_EQ(inGrams(plan.allowances.boardLoss), 0);
}

/// More depth takes more filler.
TEST(Totals, GrowWithTheDamage)
{
    const Bench bench;
    Mass before = grams(0);
    for (double depth = 0.5; depth <= 20; depth += 0.5) {
        const RepairPlan plan = bench.plan(repairOf(Substrate::Laminate, DamageKind::Dent, 120, 80, depth));
        ASSERT_TRUE(plan.fill);
        EXPECT_GT(plan.fillerTotal, before) << depth;
        before = plan.fillerTotal;
    }
}

TEST(Plan, IsPure)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        const Assessment copy = assessment;
        EXPECT_EQ(bench.plan(assessment), plan);
        EXPECT_EQ(assessment, copy);
    });
}

TEST(Plan, SaysWhatItWasMadeWith)
{
    const Bench bench;
    const RepairPlan plan = bench.plan(sampleHole());
    EXPECT_EQ(plan.sheetHash, bench.sheetOf(plan).hash);
    EXPECT_EQ(plan.finishSheetHash, bench.finishOf(plan).hash);
    EXPECT_FALSE(plan.sheetHash.isEmpty());
    EXPECT_FALSE(plan.tableHash.isEmpty());
    EXPECT_EQ(plan.engine, u"cure-1"_s);
    bool demo = false;
    for (const Reason& each : plan.reasons)
        demo = demo || each.code == u"demo_sheet"_s;
    EXPECT_TRUE(demo) << "an invented sheet says so";
}

} // namespace
} // namespace strandbench::test
