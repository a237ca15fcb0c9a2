// SPDX-License-Identifier: GPL-3.0-or-later
// The finishing coat: no thicker than the trade and the sheet allow. Common practice, no source.
#include "repairs.h"

#include "exchange/sheets.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

ProductSheet demo(FillerClass filler) { return *demoCatalogue().byClass(filler); }

TEST(Finish, StaysWithinItsLimits)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        const ProductSheet& sheet = bench.finishOf(plan);
        EXPECT_FALSE(isFibreReinforced(plan.finish.filler));
        EXPECT_GT(inMillimetres(plan.finish.thickness), 0) << nameOf(assessment);
        EXPECT_LE(plan.finish.thickness, plan.finish.limitInAll);
        EXPECT_LE(inInches(plan.finish.limitInAll), 0.25 + 1e-12);
        EXPECT_LE(plan.finish.limitInAll, *sheet.finishInAll);
        ASSERT_GE(plan.finish.coats, 1);
        EXPECT_LE(inMillimetres(plan.finish.thickness) / plan.finish.coats, inMillimetres(sheet.greatestLift) + 1e-9);
        // Left 0.5 mm low, and never more than half of a shallow repair.
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        EXPECT_NEAR(inMillimetres(plan.finish.thickness), std::min(0.5, inMillimetres(cavity.height()) / 2), 1e-12);
    });
}

TEST(Finish, MixesEveryCoat)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        int next = 0;
        for (const Batch& each : plan.finish.batches) {
            EXPECT_TRUE(each.lift == next || each.lift + 1 == next);
            next = each.lift + 1;
        }
        EXPECT_EQ(next, plan.finish.coats);
    });
}

/// The lower of the trade's quarter inch and the sheet's own; one coat more where the coat is thinner.
TEST(Finish, LowerLimitWins)
{
    ProductSheet thin = demo(FillerClass::FinishSmooth);
    thin.greatestLift = millimetres(0.2);
    thin.finishInAll = millimetres(0.4);
    const Bench bench({demo(FillerClass::MixedStrand), thin});
    const RepairPlan plan = bench.plan(sampleHole());
    ASSERT_TRUE(plan.fill);
    EXPECT_DOUBLE_EQ(inMillimetres(plan.finish.limitInAll), 0.4);
    EXPECT_DOUBLE_EQ(inMillimetres(plan.finish.thickness), 0.4);
    EXPECT_EQ(plan.finish.coats, 2);
    thin.finishInAll = millimetres(20);
    EXPECT_DOUBLE_EQ(inInches(Bench({demo(FillerClass::MixedStrand), thin}).plan(sampleHole()).finish.limitInAll),
                     0.25);
}

TEST(Finish, FineWhereThereIsNoSmooth)
{
    const Bench bench({demo(FillerClass::MixedStrand), demo(FillerClass::FinishFine)});
    EXPECT_EQ(bench.plan(sampleHole()).finish.filler, FillerClass::FinishFine);
    EXPECT_EQ(Bench().plan(sampleHole()).finish.filler, FillerClass::FinishSmooth);
    const Bench bare({demo(FillerClass::MixedStrand)});
    EXPECT_THROW((void)bare.plan(sampleHole()), std::logic_error);
}

/// By hand for a box: full thickness over the opening, a wedge to nothing 10 mm all round; 0.5 mm, 1.25 g/ml.
TEST(Finish, SkimOfAGougeByHand)
{
    const RepairPlan plan = Bench().plan(repairOf(Substrate::Laminate, DamageKind::Gouge, 100, 20, 3));
    ASSERT_EQ(plan.finish.batches.size(), 1u);
    const double box = 100 * 20;
    const double widened = 120 * 40;
    const double ml = (box * 0.5 + (widened - box) * 0.25) / 1000;
    EXPECT_NEAR(inGrams(plan.finish.batches.front().mix.filler), ml / 0.965 * 1.25 * 1.1 + 2, 1e-9);
}

} // namespace
} // namespace strandbench::test
