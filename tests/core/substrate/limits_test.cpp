// SPDX-License-Identifier: GPL-3.0-or-later
// Limits: exactly at one is within; a sheet's own where they are narrower. Common practice, no source.
#include "sound_panels.h"

#include "exchange/rules.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::Not;

namespace strandbench::test {
namespace {

Assessment dentIn(Substrate substrate, double depthMm)
{
    Assessment assessment = soundPanel(substrate, DamageKind::Dent);
    assessment.damage->depth = millimetres(depthMm);
    return assessment;
}

auto says(const QString& code) { return Contains(Field(&Reason::code, code)); }

TEST(Limits, DentInMetal)
{
    EXPECT_TRUE(decideHere(dentIn(Substrate::Steel, 6)).fill);
    const Decision deep = decideHere(dentIn(Substrate::Steel, 6.01));
    const Stop stop = stopNamed(deep, u"dent_too_deep"_s);
    EXPECT_EQ(stop.reason.arguments, (std::vector<Argument>{millimetres(6.01), millimetres(6)}));
    EXPECT_THAT(decideHere(dentIn(Substrate::Steel, 3)).reasons, Not(says(u"dent_deep"_s)));
    EXPECT_THAT(decideHere(dentIn(Substrate::Steel, 3.01)).reasons, says(u"dent_deep"_s));
    EXPECT_TRUE(decideHere(dentIn(Substrate::Laminate, 20)).fill);
    EXPECT_THAT(decideHere(dentIn(Substrate::Laminate, 20)).reasons, Not(says(u"dent_deep"_s)));
}

TEST(Limits, Hole)
{
    Assessment hole = soundPanel(Substrate::Smc, DamageKind::Hole);
    hole.damage->length = millimetres(75);
    EXPECT_TRUE(decideHere(hole).fill);
    hole.damage->length = millimetres(75.1);
    const Stop stop = stopNamed(decideHere(hole), u"hole_too_large"_s);
    EXPECT_EQ(stop.reason.arguments, (std::vector<Argument>{millimetres(75.1), millimetres(75)}));
    EXPECT_EQ(across(*hole.damage), millimetres(75.1));
}

/// FAA AC 43.13-1B, paragraph 3-3a, scarfs damage of less than 3 in across; TM 5-3820-256-24-5 calls 3 in and more
/// large. Nothing larger is filled here.
TEST(Limits, HoleIsNoLargerThanThreeInches)
{
    EXPECT_LE(DecisionLimits().holeGreatest, inches(3));
    Assessment hole = soundPanel(Substrate::Laminate, DamageKind::Hole);
    hole.damage->length = inches(3);
    EXPECT_FALSE(decideHere(hole).fill);
}

Assessment gougeAt(double airC, double panelC)
{
    Assessment assessment = soundPanel(Substrate::Laminate, DamageKind::Gouge);
    assessment.reading = Reading{celsius(airC), celsius(panelC), Fraction::ofHundred(30)};
    return assessment;
}

TEST(Limits, CoolPanelIsACaution)
{
    EXPECT_THAT(decideHere(gougeAt(20, 15)).reasons, Not(says(u"panel_cool"_s)));
    const Decision cool = decideHere(gougeAt(20, 14.5));
    EXPECT_TRUE(cool.fill);
    EXPECT_THAT(cool.reasons, says(u"panel_cool"_s));
    EXPECT_TRUE(decideHere(gougeAt(10, 10)).fill);
    EXPECT_TRUE(decideHere(gougeAt(35, 30)).fill);
}

/// The demo sheets' own are as wide as ours, so a narrower one is made here.
TEST(Limits, SheetsOwnWhereNarrower)
{
    ProductSheet narrow = demoSheet(FillerClass::ShortStrand);
    narrow.panelLowCaution = celsius(12);
    narrow.panelLow = celsius(17);
    narrow.panelHigh = celsius(26);
    const auto at = [&](double panelC) { return decide(gougeAt(22, panelC), builtInTable(), Catalogue({narrow})); };
    EXPECT_TRUE(at(12).fill);
    EXPECT_THAT(stopCodes(at(11.9)), ElementsAre(u"panel_too_cold"_s));
    EXPECT_THAT(at(16.9).reasons, says(u"panel_cool"_s));
    EXPECT_THAT(at(17).reasons, Not(says(u"panel_cool"_s)));
    EXPECT_TRUE(at(26).fill);
    EXPECT_THAT(stopCodes(at(26.1)), ElementsAre(u"panel_too_hot"_s));
}

TEST(Limits, WiderSheetDoesNotWidenOurs)
{
    ProductSheet wide = demoSheet(FillerClass::ShortStrand);
    wide.panelLowCaution = celsius(2);
    wide.panelLow = celsius(5);
    wide.panelHigh = celsius(45);
    const FillingLimits ours;
    const FillingLimits own = narrowed(ours, wide);
    EXPECT_EQ(own.panelLow, ours.panelLow);
    EXPECT_EQ(own.panelHigh, ours.panelHigh);
    EXPECT_EQ(own.panelCautionBelow, ours.panelCautionBelow);
    EXPECT_EQ(own.airLow, ours.airLow);
    EXPECT_EQ(own.dewMargin, ours.dewMargin);
}

/// The limits are passed in: a bench that says otherwise is heard.
TEST(Limits, ArePassedIn)
{
    DecisionLimits own;
    own.dentDeepest = millimetres(2);
    const Catalogue catalogue = only({FillerClass::ShortStrand});
    EXPECT_FALSE(decide(dentIn(Substrate::Steel, 3), builtInTable(), catalogue, own).fill);
    own.dentDeepest = millimetres(9);
    EXPECT_TRUE(decide(dentIn(Substrate::Steel, 8), builtInTable(), catalogue, own).fill);
}

} // namespace
} // namespace strandbench::test
