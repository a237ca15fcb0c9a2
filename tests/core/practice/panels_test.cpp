// SPDX-License-Identifier: GPL-3.0-or-later
// The delivered panels: all there, over all that the trade tells apart.
#include "shop.h"

#include "practice/panel_json.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

template <class E, class Has> void expectEvery(const Has& has)
{
    for (const auto& entry : Codes<E>::table)
        EXPECT_TRUE(
            std::ranges::any_of(deliveredPanels(), [&](const PracticePanel& each) { return has(each, entry.first); }))
            << "no panel with " << entry.second;
}

TEST(PracticePanels, AreTheOnesThatTheProgramCarries) { EXPECT_EQ(builtInPanels(), deliveredPanels()); }

TEST(PracticePanels, AreAtLeastTwentyTwo) { EXPECT_GE(deliveredPanels().size(), 22U); }

TEST(PracticePanels, HaveEverythingThatTheTradeTellsApart)
{
    expectEvery<Substrate>([](const PracticePanel& p, Substrate s) { return p.truth.substrate == s; });
    expectEvery<DamageKind>([](const PracticePanel& p, DamageKind k) { return p.truth.damage->kind == k; });
    expectEvery<WeldKind>([](const PracticePanel& p, WeldKind w) { return p.truth.damage->weld == w; });
    expectEvery<SurfaceState>([](const PracticePanel& p, SurfaceState s) { return p.truth.surface == s; });
    expectEvery<Zone>([](const PracticePanel& p, Zone z) { return p.truth.zone == z; });
    expectEvery<Moisture>([](const PracticePanel& p, Moisture m) { return p.truth.moisture == m; });
    expectEvery<CoreMaterial>([](const PracticePanel& p, CoreMaterial c) { return p.truth.core == c; });
    expectEvery<TrapKind>([](const PracticePanel& p, TrapKind t) { return std::ranges::count(p.traps, t) > 0; });
    for (const bool cured : {false, true})
        EXPECT_TRUE(std::ranges::any_of(
            deliveredPanels(), [&](const PracticePanel& each) { return each.truth.damage->adhesiveCured == cured; }));
}

/// Whatever of the shop's refusals a panel as it stands can come to.
TEST(PracticePanels, ComeToEveryRefusalOfAPanel)
{
    std::set<QString> met;
    for (const PracticePanel& each : deliveredPanels())
        for (const std::vector<Stop> stops = decide(each.truth, shop().table, shop().catalogue).stops;
             const Stop& stop : stops)
            met.insert(stop.reason.code);
    // What is of the pupil's answers, of a product or of its cure, not of a panel.
    const std::set<QString> others{u"not_assessed"_s,  u"weld_seam_not_on_metal"_s, u"rust_hole_not_on_metal"_s,
                                   u"gels_too_fast"_s, u"overheats_in_any_lift"_s,  u"never_sands"_s,
                                   u"cure_unsolved"_s, u"sheet_times_unfit"_s,      u"sheet_never_sands"_s,
                                   u"no_filler_fits"_s};
    const std::vector<QString> wanted = knownStopCodes();
    for (const QString& code : wanted)
        EXPECT_TRUE(others.contains(code) || met.contains(code)) << code.toStdString();
}

} // namespace
} // namespace strandbench::test
