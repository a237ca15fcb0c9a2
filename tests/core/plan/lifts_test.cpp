// SPDX-License-Identifier: GPL-3.0-or-later
// Lifts: they add up to a face's height, and none is over what the sheet lays in one go.
#include "repairs.h"

#include "cure/solve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace strandbench::test {
namespace {

TEST(Lifts, AddUpToTheFacesHeight)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        int faces = 0;
        for (const Face face : {Face::Front, Face::Back}) {
            const std::vector<Lift> lifts = liftsOf(plan, face);
            Length sum = millimetres(0);
            for (const Lift& each : lifts) {
                sum += each.thickness;
                EXPECT_GT(each.thickness, millimetres(0));
                EXPECT_EQ(each.filler, bench.catalogue().byId(each.sheetId)->fillerClass);
                ASSERT_TRUE(each.peak && each.cureCase);
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
        for (std::size_t i = 0; i < plan.lifts.size(); ++i) {
            const double greatest = inMillimetres(bench.catalogue().byId(plan.lifts[i].sheetId)->greatestLift);
            const double proud = lastOfFace(plan, i) ? 1.0 : 0.0;
            EXPECT_LE(inMillimetres(plan.lifts[i].thickness) + proud, greatest + 1e-6) << nameOf(assessment);
        }
    });
}

/// The lowest of the filler's, the panel's and the bond seam's (values of the demo sheets).
double peakLimitC(const Assessment& assessment)
{
    if (assessment.damage->kind == DamageKind::BondSeam)
        return 80;
    return assessment.substrate == Substrate::Laminate || assessment.substrate == Substrate::Smc ? 90 : 100;
}

/// The hottest of a front face laid in so many lifts, solved here once more from the first lift's case.
double hottestInLifts(const RepairPlan& plan, const Assessment& assessment, Length height, int count)
{
    double hottest = 0;
    CureCase lift = *plan.lifts.front().cureCase;
    const StackLayer cured{height / static_cast<double>(count), lift.filler, assessment.reading->panel};
    for (int i = 0; i < count; ++i) {
        lift.thickness = height / static_cast<double>(count) + (i + 1 == count ? millimetres(1) : millimetres(0));
        if (i == 1)
            lift.stack.push_back(cured);
        if (i > 1)
            lift.stack.back().thickness += cured.thickness;
        hottest = std::max(hottest, inCelsius(solveCure(lift)->peak));
    }
    return hottest;
}

TEST(Lifts, StayUnderTheirPeakLimit)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        for (const Lift& each : plan.lifts) {
            EXPECT_LT(inCelsius(*each.peak), peakLimitC(assessment)) << nameOf(assessment);
            EXPECT_NEAR(inCelsius(solveCure(*each.cureCase)->peak), inCelsius(*each.peak), 1e-9);
        }
    });
}

/// No more lifts than needed: one fewer on a face would be over the sheet's greatest, or too hot.
TEST(Lifts, AreTheFewestThatDo)
{
    int byHeat = 0;
    forManyPlans([&](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        const int count = static_cast<int>(liftsOf(plan, Face::Front).size());
        if (count <= 1 || isBridged(plan))
            return;
        const Cavity cavity(*assessment.damage, assessment.rearAccess.value_or(false));
        const double fewer = inMillimetres(cavity.height()) / (count - 1) + 1.0;
        if (fewer > inMillimetres(bench.sheetOf(plan).greatestLift))
            return;
        ++byHeat;
        EXPECT_GT(hottestInLifts(plan, assessment, cavity.height(), count - 1), peakLimitC(assessment) - 1e-6)
            << nameOf(assessment);
    });
    EXPECT_GT(byHeat, 20);
}

/// Within limits on a mild day, too hot on a warm one: then more lifts, and the plan says why.
TEST(Lifts, HeatOfTheDayAsksForMore)
{
    const Bench bench;
    Assessment gouge = repairOf(Substrate::Laminate, DamageKind::Gouge, 120, 30, 6.5);
    gouge.damage->panelThickness = millimetres(10);
    gouge.reading = Reading{celsius(18), celsius(18), Fraction::ofHundred(50)};
    const RepairPlan mild = bench.plan(gouge);
    gouge.reading = Reading{celsius(34), celsius(29), Fraction::ofHundred(40)};
    const RepairPlan warm = bench.plan(gouge);
    const auto told = [](const RepairPlan& plan) {
        return std::any_of(plan.reasons.begin(), plan.reasons.end(),
                           [](const Reason& each) { return each.code == QStringLiteral("one_go_too_hot"); });
    };
    const auto greatest = [](const RepairPlan& plan) {
        const auto today = std::find_if(plan.reasons.begin(), plan.reasons.end(), [](const Reason& each) {
            return each.code == QStringLiteral("greatest_lift_today");
        });
        return today == plan.reasons.end() ? millimetres(0) : std::get<Length>(today->arguments.front());
    };
    EXPECT_EQ(mild.lifts.size(), 1u);
    EXPECT_FALSE(told(mild));
    EXPECT_EQ(warm.filler, mild.filler);
    EXPECT_GT(warm.lifts.size(), 1u);
    EXPECT_TRUE(told(warm));
    // The greatest lift of that day: below the one go that is too hot, and at its limit.
    EXPECT_GT(greatest(warm), millimetres(3));
    EXPECT_LT(greatest(warm), millimetres(7.5));
    CureCase most = *warm.lifts.front().cureCase;
    most.thickness = greatest(warm);
    EXPECT_LT(inCelsius(solveCure(most)->peak), 90);
    EXPECT_GT(inCelsius(solveCure(most)->peak), 89.5);
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
    const std::size_t count = plan.lifts.size();
    ASSERT_GE(count, 2u);
    std::vector<double> grammes(count, 0.0);
    std::vector<double> batches(count, 0.0);
    for (const Batch& each : plan.batches) {
        grammes[static_cast<std::size_t>(each.lift)] += inGrams(each.mix.filler);
        batches[static_cast<std::size_t>(each.lift)] += 1;
    }
    // A V of 200 x 30 x 14 mm, 42 ml: up to a share of its depth that share's square; 6 ml proud on the last;
    // density 1.7, shrinkage 3.5 %.
    const auto mixed = [](double ml, double each) { return ml / 0.965 * 1.7 * 1.1 + 2 * each; };
    for (std::size_t i = 0; i < count; ++i) {
        const double top = static_cast<double>(i + 1) / static_cast<double>(count);
        const double floor = static_cast<double>(i) / static_cast<double>(count);
        const double ml = 42 * (top * top - floor * floor) + (i + 1 == count ? 6 : 0);
        EXPECT_NEAR(grammes[i], mixed(ml, batches[i]), 1e-6);
    }
}

} // namespace
} // namespace strandbench::test
