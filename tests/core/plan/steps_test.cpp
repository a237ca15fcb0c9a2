// SPDX-License-Identifier: GPL-3.0-or-later
// Which steps where, and in what order. Common practice, no source, unless a line names one.
#include "repairs.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::AnyOf;
using testing::Contains;
using testing::ElementsAre;
using testing::IsSupersetOf;
using testing::Not;

namespace strandbench::test {
namespace {

QStringList prepOf(const Assessment& assessment) { return codesOf(Bench().plan(assessment).prep); }

Assessment holeOf(double across, bool rearAccess)
{
    Assessment hole = repairOf(Substrate::Smc, DamageKind::Hole, across, across / 2, 3.5);
    hole.rearAccess = rearAccess;
    return hole;
}

const Step* stepNamed(const std::vector<Step>& steps, const QString& code)
{
    for (const Step& each : steps)
        if (each.code == code)
            return &each;
    return nullptr;
}

/// The order of the trade; each place takes the steps that stand for it.
TEST(Prep, KeepsTheTradesOrder)
{
    const std::vector<QStringList> order{
        {u"gear_on"_s},
        {u"own_tools"_s},
        {u"wash"_s},
        {u"degrease"_s, u"degrease_little"_s},
        {u"flash_off"_s},
        {u"strip_paint"_s},
        {u"cut_to_sound"_s},
        {u"find_cracks"_s},
        {u"stop_drill"_s},
        {u"squeeze_out_off"_s, u"dress_weld"_s},
        {u"dry"_s},
        {u"bevel"_s, u"bevel_both"_s, u"open_gouge"_s, u"bevel_upper_panel"_s},
        {u"abrade_back"_s},
        {u"backing_behind"_s, u"backing_through"_s, u"dam"_s},
        {u"abrade_80"_s, u"abrade_80_metal"_s},
        {u"dust_off"_s, u"wipe_metal"_s},
        {u"flash_off_metal"_s},
        {u"read_panel"_s, u"read_panel_metal"_s},
    };
    const auto placeOf = [&](const QString& code) {
        const auto place =
            std::find_if(order.begin(), order.end(), [&](const auto& each) { return each.contains(code); });
        EXPECT_NE(place, order.end()) << "a step without a place: " << code.toStdString();
        return place - order.begin();
    };
    forManyPlans([&](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        std::ptrdiff_t last = -1;
        for (const Step& each : plan.prep) {
            EXPECT_GT(placeOf(each.code), last) << nameOf(assessment) << ", " << each.code.toStdString();
            last = placeOf(each.code);
        }
        EXPECT_EQ(plan.prep.front().code, u"gear_on"_s) << "protective gear first";
        EXPECT_THAT(plan.prep.back().code, AnyOf(u"read_panel"_s, u"read_panel_metal"_s)) << "read again, last";
    });
}

TEST(Prep, OfASmallHoleInSmcWhole)
{
    EXPECT_THAT(prepOf(holeOf(40, true)),
                ElementsAre(u"gear_on"_s, u"wash"_s, u"degrease_little"_s, u"flash_off"_s, u"strip_paint"_s,
                            u"cut_to_sound"_s, u"find_cracks"_s, u"stop_drill"_s, u"dry"_s, u"bevel_both"_s,
                            u"abrade_back"_s, u"dam"_s, u"abrade_80"_s, u"dust_off"_s, u"read_panel"_s));
}

TEST(Prep, OfAWeldSeamInAluminiumWhole)
{
    EXPECT_THAT(prepOf(repairOf(Substrate::Aluminium, DamageKind::WeldSeam, 200, 12, 1)),
                ElementsAre(u"gear_on"_s, u"own_tools"_s, u"wash"_s, u"degrease"_s, u"flash_off"_s, u"strip_paint"_s,
                            u"dress_weld"_s, u"dry"_s, u"abrade_80_metal"_s, u"wipe_metal"_s, u"flash_off_metal"_s,
                            u"read_panel_metal"_s));
}

/// A bonded backing first: over 50 mm across, or over 25 mm without rear access; a dam otherwise.
TEST(Prep, BackingOrDam)
{
    const auto kindOf = [](const Assessment& assessment) {
        const QStringList prep = prepOf(assessment);
        QString found;
        for (const QString& each : {u"backing_behind"_s, u"backing_through"_s, u"dam"_s})
            if (prep.contains(each))
                found += each;
        return found;
    };
    EXPECT_EQ(kindOf(holeOf(50, true)), u"dam"_s);
    EXPECT_EQ(kindOf(holeOf(50.1, true)), u"backing_behind"_s);
    EXPECT_EQ(kindOf(holeOf(25, false)), u"dam"_s);
    EXPECT_EQ(kindOf(holeOf(25.1, false)), u"backing_through"_s);
    EXPECT_EQ(kindOf(holeOf(60, false)), u"backing_through"_s);
    EXPECT_EQ(kindOf(repairOf(Substrate::Smc, DamageKind::Gouge, 60, 20, 2)), QString());
    const RepairPlan plan = Bench().plan(holeOf(60, true));
    EXPECT_THAT(plan.reasons, Contains(Reason{u"backing_first"_s, {millimetres(60), millimetres(50)}}));
    EXPECT_EQ(stepNamed(plan.prep, u"backing_behind"_s)->arguments, (std::vector<Argument>{millimetres(50)}));
}

/// Paint off 50 mm beyond the repair; 75 mm on SMC and metal.
TEST(Prep, StripsFurtherOnSmcAndMetal)
{
    const auto beyond = [](Substrate substrate) {
        const RepairPlan plan = Bench().plan(repairOf(substrate, DamageKind::Gouge, 60, 10, 2));
        return inMillimetres(std::get<Length>(stepNamed(plan.prep, u"strip_paint"_s)->arguments.at(0)));
    };
    EXPECT_DOUBLE_EQ(beyond(Substrate::Laminate), 50);
    for (const Substrate each : {Substrate::Smc, Substrate::Steel, Substrate::Galvanised, Substrate::Aluminium})
        EXPECT_DOUBLE_EQ(beyond(each), 75) << codeOf(each).toStdString();
    // TM 1-1500-204-23-11, paragraph 6-3, takes paint off laminate 1 to 2 in beyond the repair.
    EXPECT_GE(beyond(Substrate::Laminate), 1 * 25.4);
    EXPECT_LE(beyond(Substrate::Laminate), 2 * 25.4);
}

/// Cured, abraded epoxy stays on: nothing is stripped off it.
TEST(Prep, LeavesEpoxyOn)
{
    Assessment gouge = repairOf(Substrate::Galvanised, DamageKind::Gouge, 60, 10, 2);
    EXPECT_THAT(prepOf(gouge), Contains(u"strip_paint"_s));
    gouge.surface = SurfaceState::AbradedEpoxy;
    EXPECT_THAT(prepOf(gouge), Not(Contains(u"strip_paint"_s)));
}

/// Crack ends are drilled 3/32 to 1/8 in: FAA AC 43.13-1B, paragraph 4-59. A gouge can have run at its ends as well.
TEST(Prep, StopDrillsWhereverCracksCanRun)
{
    for (const DamageKind kind : {DamageKind::Crack, DamageKind::Hole, DamageKind::Gouge}) {
        const RepairPlan plan =
            Bench().plan(repairOf(Substrate::Laminate, kind, 40, kind == DamageKind::Crack ? 0 : 30, 3));
        const Step* drill = stepNamed(plan.prep, u"stop_drill"_s);
        ASSERT_NE(drill, nullptr) << codeOf(kind).toStdString();
        ASSERT_EQ(drill->arguments.size(), 2u);
        EXPECT_NEAR(inMillimetres(std::get<Length>(drill->arguments[0])), 2.38125, 1e-9);
        EXPECT_NEAR(inMillimetres(std::get<Length>(drill->arguments[1])), 3.175, 1e-9);
    }
    EXPECT_THAT(prepOf(repairOf(Substrate::Steel, DamageKind::Dent, 60, 40, 2)), Not(Contains(u"stop_drill"_s)));
}

TEST(Prep, BevelsBothFacesOfAReachableHole)
{
    EXPECT_THAT(prepOf(holeOf(20, true)), Contains(u"bevel_both"_s));
    EXPECT_THAT(prepOf(holeOf(20, true)), Not(Contains(u"bevel"_s)));
    EXPECT_THAT(prepOf(holeOf(20, false)), Contains(u"bevel"_s));
    EXPECT_THAT(prepOf(holeOf(20, false)), Not(Contains(u"bevel_both"_s)));
    EXPECT_THAT(prepOf(holeOf(20, false)), Not(Contains(u"abrade_back"_s)));
    // 3.5 mm at 4 : 1, from one face or half of it from each.
    const auto run = [](const Assessment& hole, const QString& code) {
        return inMillimetres(std::get<Length>(stepNamed(Bench().plan(hole).prep, code)->arguments.at(0)));
    };
    EXPECT_DOUBLE_EQ(run(holeOf(20, false), u"bevel"_s), 14);
    EXPECT_DOUBLE_EQ(run(holeOf(20, true), u"bevel_both"_s), 7);
}

TEST(Prep, MetalIsWipedFlashedOffAndReadLast)
{
    for (const Substrate metal : {Substrate::Steel, Substrate::Galvanised, Substrate::Aluminium}) {
        const QStringList prep = prepOf(repairOf(metal, DamageKind::Dent, 60, 40, 2));
        EXPECT_EQ(prep.mid(prep.size() - 3),
                  (QStringList{u"wipe_metal"_s, u"flash_off_metal"_s, u"read_panel_metal"_s}));
        EXPECT_EQ(prep.contains(u"own_tools"_s), metal == Substrate::Aluminium) << codeOf(metal).toStdString();
        EXPECT_THAT(prep, Not(Contains(u"dust_off"_s)));
        EXPECT_THAT(prep, Not(Contains(u"find_cracks"_s)));
    }
    for (const Substrate composite : {Substrate::Laminate, Substrate::Smc}) {
        const QStringList prep = prepOf(repairOf(composite, DamageKind::Dent, 60, 40, 2));
        EXPECT_EQ(prep.mid(prep.size() - 2), (QStringList{u"dust_off"_s, u"read_panel"_s}));
        EXPECT_THAT(prep, Not(Contains(u"wipe_metal"_s))) << "no solvent on ground fibre";
    }
}

TEST(Prep, SolventIsSparedOnOpenFibre)
{
    for (const DamageKind kind : {DamageKind::Gouge, DamageKind::Crack, DamageKind::Hole}) {
        const QStringList prep = prepOf(repairOf(Substrate::Laminate, kind, 40, kind == DamageKind::Crack ? 0 : 20, 3));
        EXPECT_THAT(prep, IsSupersetOf({u"degrease_little"_s, u"cut_to_sound"_s})) << codeOf(kind).toStdString();
        EXPECT_THAT(prep, Not(Contains(u"degrease"_s)));
    }
    EXPECT_THAT(prepOf(repairOf(Substrate::Laminate, DamageKind::Dent, 40, 20, 3)), Contains(u"degrease"_s));
    EXPECT_THAT(prepOf(repairOf(Substrate::Steel, DamageKind::Gouge, 40, 20, 3)), Contains(u"degrease"_s));
}

TEST(Prep, Seams)
{
    EXPECT_THAT(prepOf(repairOf(Substrate::Steel, DamageKind::WeldSeam, 200, 12, 1)), Contains(u"dress_weld"_s));
    Assessment bond = repairOf(Substrate::Smc, DamageKind::BondSeam, 200, 12, 1);
    bond.damage->panelThickness = millimetres(5);
    EXPECT_THAT(prepOf(bond), IsSupersetOf({u"squeeze_out_off"_s, u"bevel_upper_panel"_s}));
    EXPECT_THAT(prepOf(bond), Not(Contains(u"dress_weld"_s)));
    // At most half of the upper panel's thickness.
    const RepairPlan plan = Bench().plan(bond);
    EXPECT_EQ(stepNamed(plan.prep, u"bevel_upper_panel"_s)->arguments, (std::vector<Argument>{millimetres(2.5)}));
}

TEST(Finishing, GuideCoatGritsInspectionAndTheWait)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        EXPECT_THAT(codesOf(plan.finishing), ElementsAre(u"guide_coat"_s, u"sand_180"_s, u"sand_320"_s,
                                                         u"dust_off_finish"_s, u"inspect"_s, u"cure_before_primer"_s));
    });
}

TEST(Prep, SquareEdgesAreSpokenOf)
{
    Assessment hole = holeOf(20, true);
    const Reason square{u"edges_square"_s, {}};
    EXPECT_THAT(Bench().plan(hole).reasons, Not(Contains(square)));
    hole.damage->bevelRatio = 0;
    EXPECT_THAT(Bench().plan(hole).reasons, Contains(square));
}

} // namespace
} // namespace strandbench::test
