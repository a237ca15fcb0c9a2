// SPDX-License-Identifier: GPL-3.0-or-later
// From what is shown to what it is, held against the forward model and against the trade's own words.
#include "shop.h"

#include "practice/inference.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

TEST(PracticeInference, EveryPanelShowsItsTruthAndNoOther)
{
    for (const PracticePanel& panel : deliveredPanels()) {
        EXPECT_TRUE(unanswered(panel).isEmpty()) << panel.id.toStdString();
        const Assessment& truth = panel.truth;
        const Damage& damage = *truth.damage;
        EXPECT_TRUE(showsSurface(*truth.surface, panel.shown));
        EXPECT_TRUE(showsDamage({damage.kind, damage.weld, damage.adhesiveCured}, panel.shown));
        EXPECT_TRUE(showsZone(*truth.zone, panel.shown));
        if (truth.substrate == Substrate::Unknown)
            continue;
        for (const auto& [each, code] : Codes<Substrate>::table)
            EXPECT_EQ(showsSubstrate(each, *truth.surface, panel.shown), each == truth.substrate)
                << panel.id.toStdString() << " " << code;
    }
}

TEST(PracticeInference, WhatIsNotShownLeavesItOpen)
{
    PracticePanel panel = delivered(u"smc_bonnet_hole"_s);
    panel.shown.edge.reset(); // ribs, powder and a hard sound: a cast thermoset has them too
    EXPECT_EQ(consistentWith(panel.shown).substrates, (std::vector{Substrate::Smc, Substrate::CastThermoset}));
    EXPECT_EQ(assessmentFrom(panel).substrate, Substrate::Unknown);
    EXPECT_EQ(unanswered(panel), QStringList{u"substrate"_s});
}

TEST(PracticeInference, AWeakMagnetOverOldFillerIsSteelBelow)
{
    PracticePanel panel = delivered(u"old_patch"_s);
    EXPECT_EQ(assessmentFrom(panel).substrate, Substrate::Steel);
    panel.shown.magnetHere = MagnetPull::Strong; // a patch that does not weaken it is none that we know
    EXPECT_FALSE(assessmentFrom(panel).substrate);
}

TEST(PracticeInference, StitchesAreSeenFromBehindAlone)
{
    PracticePanel panel = delivered(u"stitched_lap"_s);
    EXPECT_EQ(assessmentFrom(panel).damage->weld, WeldKind::Stitch);
    panel.shown.reach = BackReach::Closed;
    panel.shown.back.clear();
    EXPECT_FALSE(assessmentFrom(panel).damage->weld);
    EXPECT_EQ(consistentWith(panel.shown).damages.size(), 3U);
}

/// 30 cm from a mounting it begins to be load-bearing (the trade's words).
TEST(PracticeInference, AMountingReachesThirtyCentimetres)
{
    PracticePanel panel = delivered(u"belt_far_away"_s);
    EXPECT_EQ(assessmentFrom(panel).zone, Zone::Cosmetic);
    panel.shown.near.front().distance = millimetres(300);
    EXPECT_EQ(assessmentFrom(panel).zone, Zone::Restraint);
    panel.shown.near.push_back({Neighbour::SensorBehind, millimetres(0)});
    EXPECT_EQ(assessmentFrom(panel).zone, Zone::Restraint); // what nobody may override binds more
}

TEST(PracticeInference, ACrackIsAsLongAsItsTipsAreApart)
{
    PracticePanel panel = delivered(u"crack_tips"_s);
    EXPECT_EQ(assessmentFrom(panel).damage->length, millimetres(130));
    panel.shown.tipsAt.reset();
    EXPECT_EQ(unanswered(panel), QStringList{u"size"_s});
}

} // namespace
} // namespace strandbench::test
