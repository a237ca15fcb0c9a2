// SPDX-License-Identifier: GPL-3.0-or-later
// What is not planned: a stop leaves nothing to do, and a filler that gels too fast is one.
#include "repairs.h"

#include "exchange/sheets.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::IsEmpty;
using testing::SizeIs;

namespace strandbench::test {
namespace {

TEST(Stopped, PlanHoldsOnlyTheStops)
{
    Assessment hole = sampleHole();
    hole.zone = Zone::Structural;
    hole.moisture.reset();
    const RepairPlan plan = Bench().plan(hole);
    EXPECT_FALSE(plan.fill);
    EXPECT_THAT(plan.stops, SizeIs(2));
    RepairPlan empty;
    empty.stops = plan.stops;
    EXPECT_EQ(plan, empty);
}

TEST(Stopped, NothingAnsweredIsPlanned)
{
    const RepairPlan plan = Bench().plan(Assessment{});
    EXPECT_FALSE(plan.fill);
    EXPECT_THAT(plan.batches, IsEmpty());
}

Bench quickBench(double workingMinutes)
{
    ProductSheet quick = *demoCatalogue().byClass(FillerClass::MixedStrand);
    // Sanding follows as it does on the sheet: not every pair of times is a cure.
    quick.sanding.nominal *= minutes(workingMinutes) / quick.working.nominal;
    quick.working = {minutes(workingMinutes), minutes(workingMinutes), minutes(workingMinutes)};
    return Bench({quick, *demoCatalogue().byClass(FillerClass::FinishSmooth)});
}

Assessment holeAt(double airC, double panelC)
{
    Assessment hole = sampleHole();
    hole.reading = Reading{celsius(airC), celsius(panelC), Fraction::ofHundred(30)};
    return hole;
}

/// Kneaded for 45 s, and 0.75 of the gel time to do it in: a minute's gel leaves nothing to spread in.
TEST(GelsTooFast, StopsWithTheGelAndTheKneading)
{
    const RepairPlan plan = quickBench(1).plan(holeAt(25, 25));
    EXPECT_FALSE(plan.fill);
    ASSERT_THAT(plan.stops, SizeIs(1));
    EXPECT_EQ(plan.stops[0].reason.code, u"gels_too_fast"_s);
    ASSERT_THAT(plan.stops[0].reason.arguments, SizeIs(2));
    // The minute is a 12 mm puddle's, stated at 25 °C; the least of layer and puddles is not far from it.
    EXPECT_NEAR(inSeconds(std::get<Duration>(plan.stops[0].reason.arguments[0])), 60, 6);
    EXPECT_DOUBLE_EQ(inSeconds(std::get<Duration>(plan.stops[0].reason.arguments[1])), 45);
    EXPECT_THAT(plan.batches, IsEmpty());
    EXPECT_FALSE(plan.filler);
}

/// The same filler in the cool: fill. So the stop's 'cool the shop' is true.
TEST(GelsTooFast, IsLeftByCoolingTheShop)
{
    EXPECT_FALSE(quickBench(1.2).plan(holeAt(34, 25)).fill);
    EXPECT_TRUE(quickBench(1.2).plan(holeAt(15, 15)).fill);
}

/// A hot panel under cool air: the layer gels before the board does.
TEST(GelsTooFast, OnTheHotPanelToo)
{
    const RepairPlan plan = quickBench(0.6).plan(holeAt(12, 30));
    ASSERT_FALSE(plan.fill);
    EXPECT_EQ(plan.stops[0].reason.code, u"gels_too_fast"_s);
    // The gel that is in the way is the one that is named: the layer's, on a panel of 30 °C.
    EXPECT_LT(inSeconds(std::get<Duration>(plan.stops[0].reason.arguments[0])), 80);
}

/// A finishing filler that is too fast stops as well, with its own gel time.
TEST(GelsTooFast, OfTheFinishToo)
{
    ProductSheet quick = *demoCatalogue().byClass(FillerClass::FinishSmooth);
    quick.sanding.nominal *= minutes(0.9) / quick.working.nominal;
    quick.working = {minutes(0.9), minutes(0.9), minutes(0.9)};
    const RepairPlan plan = Bench({*demoCatalogue().byClass(FillerClass::MixedStrand), quick}).plan(holeAt(25, 25));
    ASSERT_FALSE(plan.fill);
    ASSERT_EQ(plan.stops[0].reason.code, u"gels_too_fast"_s);
    // As a thin coat it gels later than the 0.9 min of its 12 mm puddle, the small puddle somewhere between.
    const Duration gel = std::get<Duration>(plan.stops[0].reason.arguments[0]);
    EXPECT_GT(gel, minutes(0.9) * 0.99);
    EXPECT_LT(gel, minutes(1.2));
}

/// No demo sheet is ever too fast within the limits for filling, however much there is to mix: the largest that a
/// description may hold, at the hottest that may be filled.
TEST(GelsTooFast, NeverWithTheDemoSheetsWithinLimits)
{
    for (Assessment huge : {repairOf(Substrate::Laminate, DamageKind::Dent, 3000, 1000, 60),
                            repairOf(Substrate::Smc, DamageKind::Gouge, 3000, 1000, 50),
                            repairOf(Substrate::Steel, DamageKind::WeldSeam, 3000, 1000, 7)}) {
        huge.damage->panelThickness = millimetres(60);
        huge.reading = Reading{celsius(35), celsius(30), Fraction::ofHundred(30)};
        const RepairPlan plan = Bench().plan(huge);
        ASSERT_TRUE(plan.fill) << nameOf(huge) << ": " << plan.stops[0].reason.code.toStdString();
        EXPECT_GT(plan.batches.size(), 400u);
    }
}

} // namespace
} // namespace strandbench::test
