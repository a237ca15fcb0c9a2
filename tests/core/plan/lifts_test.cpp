// SPDX-License-Identifier: GPL-3.0-or-later
// Lifts: they add up to a face's height, and none is over what the sheet lays in one go.
#include "repairs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

TEST(Lifts, AddUpToTheFacesHeight)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        int faces = 0;
        for (const Face face : {Face::Front, Face::Back}) {
            const std::vector<Lift> lifts = liftsOf(plan, face);
            Length sum = millimetres(0);
            for (const Lift& each : lifts) {
                sum += each.thickness;
                EXPECT_GT(each.thickness, millimetres(0));
                EXPECT_EQ(each.filler, *plan.filler);
                EXPECT_FALSE(each.peak) << "a peak that nobody computed";
            }
            if (lifts.empty())
                continue;
            ++faces;
            EXPECT_NEAR(sum / cavity.height(), 1.0, 1e-9) << nameOf(assessment);
        }
        EXPECT_EQ(faces, cavity.faces());
    });
}

TEST(Lifts, StayWithinTheSheetProudIncluded)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        const double greatest = inMillimetres(bench.sheetOf(plan).greatestLift);
        for (std::size_t i = 0; i < plan.lifts.size(); ++i) {
            const double proud = lastOfFace(plan, i) ? 1.0 : 0.0;
            EXPECT_LE(inMillimetres(plan.lifts[i].thickness) + proud, greatest + 1e-6) << nameOf(assessment);
        }
    });
}

/// No more lifts than needed: one fewer on a face would be over the sheet's greatest.
TEST(Lifts, AreTheFewestThatDo)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        const auto count = static_cast<double>(liftsOf(plan, Face::Front).size());
        if (count <= 1)
            return;
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        const double fewer = inMillimetres(cavity.height()) / (count - 1) + 1.0;
        EXPECT_GT(fewer, inMillimetres(bench.sheetOf(plan).greatestLift));
    });
}

TEST(Lifts, FrontIsFilledBeforeTheBack)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        for (std::size_t i = 1; i < plan.lifts.size(); ++i)
            EXPECT_FALSE(plan.lifts[i - 1].face == Face::Back && plan.lifts[i].face == Face::Front);
    });
}

/// Both faces of a through hole only with rear access (common practice, no source).
TEST(Lifts, BackOnlyWhereItCanBeReached)
{
    const Bench bench;
    Assessment hole = sampleHole();
    hole.damage->length = millimetres(20);
    hole.damage->width = millimetres(20);
    EXPECT_EQ(liftsOf(bench.plan(hole), Face::Back).size(), 1u);
    hole.rearAccess = false;
    EXPECT_TRUE(liftsOf(bench.plan(hole), Face::Back).empty());
    EXPECT_TRUE(liftsOf(bench.plan(repairOf(Substrate::Smc, DamageKind::Gouge, 60, 10, 2)), Face::Back).empty());
}

/// The greatest lift of the short dense class is 8 mm: 7 mm and 1 mm proud is one lift, a hair more is two.
TEST(Lifts, ExactlyAtTheGreatestIsOne)
{
    const Bench bench;
    EXPECT_EQ(bench.plan(repairOf(Substrate::Laminate, DamageKind::Dent, 80, 60, 7)).lifts.size(), 1u);
    EXPECT_EQ(bench.plan(repairOf(Substrate::Laminate, DamageKind::Dent, 80, 60, 7.001)).lifts.size(), 2u);
    EXPECT_EQ(bench.plan(repairOf(Substrate::Laminate, DamageKind::Dent, 80, 60, 14)).lifts.size(), 2u);
}

/// A wedge takes more filler at its top: the lifts' masses follow the slices of the cavity.
TEST(Lifts, TakeTheirSliceOfTheCavity)
{
    const RepairPlan plan = Bench().plan(repairOf(Substrate::Laminate, DamageKind::Gouge, 200, 30, 14));
    ASSERT_EQ(plan.lifts.size(), 2u);
    std::vector<double> grammes(2, 0.0);
    std::vector<double> batches(2, 0.0);
    for (const Batch& each : plan.batches) {
        grammes[static_cast<std::size_t>(each.lift)] += inGrams(each.mix.filler);
        batches[static_cast<std::size_t>(each.lift)] += 1;
    }
    // A V of 200 x 30 x 14 mm: a quarter of it in the lower half; 6 ml proud; density 1.7, shrinkage 3.5 %.
    const auto mixed = [](double ml, double count) { return ml / 0.965 * 1.7 * 1.1 + 2 * count; };
    EXPECT_NEAR(grammes[0], mixed(42 * 0.25, batches[0]), 1e-6);
    EXPECT_NEAR(grammes[1], mixed(42 * 0.75 + 6, batches[1]), 1e-6);
}

} // namespace
} // namespace strandbench::test
