// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairs.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Seeded, so that a failure can be repeated.
class Dice {
public:
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_random); }
    /// As many small ones as large ones.
    double size(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
    bool chance(double share) { return between(0, 1) < share; }
    template <class T> T from(std::initializer_list<T> all)
    {
        return *(all.begin() + std::uniform_int_distribution<std::ptrdiff_t>(0, std::ssize(all) - 1)(m_random));
    }

private:
    std::mt19937_64 m_random{44210};
};

Assessment anyComposite(Dice& dice)
{
    using enum DamageKind;
    const Substrate substrate = dice.from({Substrate::Laminate, Substrate::Smc});
    const DamageKind kind = dice.from({Gouge, Dent, Crack, Hole, Hole, BondSeam});
    const double panel = dice.size(1, 25);
    Assessment a = repairOf(substrate, kind, dice.size(3, 400), dice.size(2, 300), dice.between(0.2, 1) * panel);
    a.damage->panelThickness = millimetres(panel);
    if (kind == Hole) {
        a.damage->length = millimetres(dice.size(3, 75));
        a.damage->width = millimetres(dice.size(3, 75));
        a.damage->depth = a.damage->panelThickness;
        a.damage->bevelRatio = dice.chance(0.2) ? 0 : dice.between(0.5, 6);
        a.rearAccess = dice.chance(0.5);
    }
    if (kind == Crack) {
        a.damage->width = millimetres(0);
        a.damage->bevelRatio = dice.between(0.5, 6);
    }
    if (substrate == Substrate::Laminate && dice.chance(0.2))
        a.core = CoreMaterial::DryWood;
    return a;
}

Assessment anyMetal(Dice& dice)
{
    using enum DamageKind;
    const Substrate substrate = dice.from({Substrate::Steel, Substrate::Galvanised, Substrate::Aluminium});
    const DamageKind kind = dice.from({Gouge, Dent, WeldSeam, BondSeam});
    const bool seam = kind == WeldSeam || kind == BondSeam;
    return repairOf(substrate, kind, dice.size(5, seam ? 3000 : 500), dice.size(2, seam ? 60 : 400),
                    dice.between(0.3, 6));
}

} // namespace

Bench::Bench() : m_catalogue(demoCatalogue()) {}
Bench::Bench(std::vector<ProductSheet> sheets) : m_catalogue(std::move(sheets)) {}

RepairPlan Bench::plan(const Assessment& assessment) const
{
    return planRepair(assessment, {builtInTable(), m_catalogue, builtInSteps(), assumptions, m_engine});
}

RepairPlan Bench::replan(const Assessment& assessment, const RepairPlan& before, const PlanProgress& done) const
{
    return replanRepair(assessment, {builtInTable(), m_catalogue, builtInSteps(), assumptions, m_engine}, before, done);
}

Assessment repairOf(Substrate substrate, DamageKind kind, double length, double width, double depth)
{
    Assessment a;
    a.substrate = substrate;
    a.damage = Damage{kind, millimetres(length), millimetres(width), millimetres(depth), millimetres(depth), 0, {}, {}};
    if (kind == DamageKind::Hole || kind == DamageKind::Crack)
        a.damage->bevelRatio = 4;
    if (kind == DamageKind::Hole)
        a.rearAccess = true;
    if (kind == DamageKind::WeldSeam)
        a.damage->weld = WeldKind::Solid;
    if (kind == DamageKind::BondSeam)
        a.damage->adhesiveCured = true;
    a.surface = SurfaceState::Bare;
    a.zone = Zone::Cosmetic;
    a.moisture = Moisture::Dry;
    a.reading = Reading{celsius(18.5), celsius(17), Fraction::ofHundred(52)};
    return a;
}

Assessment sampleHole() { return repairOf(Substrate::Smc, DamageKind::Hole, 60, 40, 3.5); }

void forManyPlans(const std::function<void(const Assessment&, const RepairPlan&, const Bench&)>& look)
{
    const Bench bench;
    Dice dice;
    int planned = 0;
    for (int round = 0; round < 1500; ++round) {
        Assessment assessment = dice.chance(0.6) ? anyComposite(dice) : anyMetal(dice);
        if (dice.chance(0.2))
            assessment.surface = SurfaceState::AbradedEpoxy;
        assessment.reading = Reading{celsius(dice.between(10, 35)), celsius(dice.between(10, 30)),
                                     Fraction::ofHundred(dice.between(15, 80))};
        if (!judgeAir(*assessment.reading).mayFill)
            continue;
        const RepairPlan plan = bench.plan(assessment);
        ASSERT_TRUE(plan.fill) << nameOf(assessment) << ": " << plan.stops.front().reason.code.toStdString();
        ++planned;
        look(assessment, plan, bench);
        ASSERT_FALSE(testing::Test::HasFatalFailure() || testing::Test::HasNonfatalFailure()) << nameOf(assessment);
    }
    EXPECT_GT(planned, 750);
}

QStringList codesOf(const std::vector<Step>& steps)
{
    QStringList codes;
    for (const Step& each : steps)
        codes << each.code;
    return codes;
}

std::string nameOf(const Assessment& a)
{
    std::ostringstream name;
    name << codeOf(a.damage->kind).toStdString() << " in " << codeOf(*a.substrate).toStdString() << ", "
         << inMillimetres(a.damage->length) << " x " << inMillimetres(a.damage->width) << " x "
         << inMillimetres(a.damage->depth) << " mm, panel " << inMillimetres(a.damage->panelThickness) << " mm, bevel "
         << a.damage->bevelRatio << ", rear " << a.rearAccess.value_or(false) << ", air " << inCelsius(a.reading->air)
         << ", panel " << inCelsius(a.reading->panel) << " degC";
    return name.str();
}

std::vector<Lift> liftsOf(const RepairPlan& plan, Face face)
{
    std::vector<Lift> lifts;
    for (const Lift& each : plan.lifts)
        if (each.face == face)
            lifts.push_back(each);
    return lifts;
}

bool isBridged(const RepairPlan& plan)
{
    return std::any_of(plan.lifts.begin(), plan.lifts.end(),
                       [&](const Lift& each) { return each.filler != *plan.filler; });
}

bool lastOfFace(const RepairPlan& plan, std::size_t lift)
{
    return lift + 1 == plan.lifts.size() || plan.lifts[lift + 1].face != plan.lifts[lift].face;
}

} // namespace strandbench::test
