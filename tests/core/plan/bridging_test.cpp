// SPDX-License-Identifier: GPL-3.0-or-later
// A hole in laminate that is reached from the front alone: a backing, a filler that bridges, mixed strand over it
// (common practice, no source; that half the height is bridged is an assumption of ours).
#include "repairs.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Assessment holeFromTheFront(double across)
{
    Assessment assessment = repairOf(Substrate::Laminate, DamageKind::Hole, across, across, 6);
    assessment.rearAccess = false;
    return assessment;
}

bool hasReason(const RepairPlan& plan, const QString& code)
{
    return std::ranges::any_of(plan.reasons, [&](const Reason& each) { return each.code == code; });
}

TEST(Bridging, LongStrandGoesInFirstAndMixedStrandOverIt)
{
    const Bench bench;
    const RepairPlan plan = bench.plan(holeFromTheFront(40));
    ASSERT_TRUE(plan.fill);
    EXPECT_EQ(plan.filler, FillerClass::MixedStrand);
    ASSERT_GE(plan.lifts.size(), 2u);
    EXPECT_EQ(plan.lifts.front().filler, FillerClass::LongStrand);
    EXPECT_EQ(plan.lifts.back().filler, FillerClass::MixedStrand);
    Length bridged = millimetres(0);
    Length whole = millimetres(0);
    for (const Lift& each : plan.lifts) {
        (each.filler == FillerClass::LongStrand ? bridged : whole) += each.thickness;
        EXPECT_EQ(each.sheetHash, bench.catalogue().byId(each.sheetId)->hash);
    }
    EXPECT_NEAR(inMillimetres(bridged), 3.0, 1e-9);
    EXPECT_NEAR(inMillimetres(whole), 3.0, 1e-9);
    EXPECT_TRUE(hasReason(plan, u"bridged_first"_s));
    for (const RejectedFiller& each : plan.rejected)
        EXPECT_NE(each.filler, FillerClass::LongStrand) << "it is used";
}

TEST(Bridging, EachFillerIsMixedByItsOwnDensity)
{
    const Bench bench;
    const Assessment assessment = holeFromTheFront(40);
    const RepairPlan plan = bench.plan(assessment);
    const Cavity cavity(*assessment.damage, false);
    Mass owed = plan.allowances.boardLoss;
    Length floor = millimetres(0);
    for (std::size_t i = 0; i < plan.lifts.size(); ++i) {
        const ProductSheet& sheet = *bench.catalogue().byId(plan.lifts[i].sheetId);
        const Length top = floor + plan.lifts[i].thickness;
        Volume laid = cavity.volumeUpTo(top) - cavity.volumeUpTo(floor);
        if (i + 1 == plan.lifts.size())
            laid += cavity.opening() * millimetres(1);
        owed += laid / (1.0 - sheet.shrinkage.value()) * sheet.density;
        floor = top;
    }
    EXPECT_NEAR(plan.fillerTotal / owed, 1.0, 1e-9);
}

TEST(Bridging, IsForABackingThatNobodyReachesFromBehind)
{
    const Bench bench;
    Assessment reached = holeFromTheFront(40);
    reached.rearAccess = true;
    for (const Assessment& each : {holeFromTheFront(20), reached}) {
        const RepairPlan plan = bench.plan(each);
        ASSERT_TRUE(plan.fill);
        for (const Lift& lift : plan.lifts)
            EXPECT_EQ(lift.filler, FillerClass::MixedStrand) << nameOf(each);
    }
}

/// Long strand leaves SMC dry: it does not bridge there either.
TEST(Bridging, NotOnSmc)
{
    Assessment smc = repairOf(Substrate::Smc, DamageKind::Hole, 40, 40, 6);
    smc.rearAccess = false;
    for (const Lift& lift : Bench().plan(smc).lifts)
        EXPECT_EQ(lift.filler, FillerClass::MixedStrand);
}

} // namespace
} // namespace strandbench::test
