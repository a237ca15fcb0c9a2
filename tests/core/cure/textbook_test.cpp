// SPDX-License-Identifier: GPL-3.0-or-later
// Worked examples and closed solutions of textbooks on conduction, by the engine: with the reaction at rest, and with
// one of no order, which is an even source of heat.
#include "cases.h"

#include <boost/math/constants/constants.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

constexpr double gasConstant = 8.314462618;

/// Insulated behind, of one material, its reaction at rest.
CureCase atRest(const ThermalMaterial& material, double metresThick, double startCelsius, double airCelsius,
                double front)
{
    CureCase cureCase = insulated(skirtPanel());
    cureCase.kinetics.k1 = perSecond(1e-12);
    cureCase.kinetics.k2 = perSecond(0);
    cureCase.heat = joulesPerKilogram(0);
    cureCase.filler = material;
    cureCase.thickness = metres(metresThick);
    cureCase.temperature = celsius(startCelsius);
    cureCase.air = {{seconds(0), celsius(airCelsius)}};
    cureCase.front = wattsPerSquareMetreKelvin(front);
    return cureCase;
}

ThermalMaterial materialOf(double density, double specificHeat, double conductivity)
{
    return {kilogramsPerCubicMetre(density), joulesPerKilogramKelvin(specificHeat), wattsPerMetreKelvin(conductivity)};
}

/// Incropera, example 5.1 (a textbook companion): a thermocouple's bead of 7.06e-4 m in gas of 200 degC, h 400, k 20,
/// c 400, rho 8500, comes from 25 to 199 degC in 5.2 s (5.16 in the companion). What counts is volume over surface, a
/// sixth of its diameter: as thick a layer does the same.
TEST(CureTextbook, ThermocoupleIsLumped)
{
    for (const double second : {5.16, 5.2}) {
        CureCase bead = atRest(materialOf(8500, 400, 20), 7.06e-4 / 6, 25, 200, 400);
        bead.horizon = seconds(second);
        EXPECT_NEAR(inCelsius(solved(bead).curve.back().face), 199, 0.06) << second << " s";
    }
}

struct Frost {
    double eta; ///< depth over twice the root of diffusivity and time
    double erf; ///< Holman, table A-1
};

/// Ground so deep that its far end feels nothing, cooled at its surface; the temperature at a depth.
double groundAt(double depth, double days)
{
    const ThermalMaterial soil = materialOf(2050, 1840, 0.52);
    CureCase ground = atRest(soil, depth, 20, -15, 1e6);
    ground.stack = {{metres(8), soil, celsius(20)}};
    ground.horizon = seconds(days * 86400);
    return inCelsius(solved(ground).curve.back().hottest); // of the layer, which is warmest at its depth
}

/// Incropera, example 5.6 (from memory): soil of k 0.52, rho 2050, c 1840 and 20 degC freezes down to 0.68 m (0.677
/// unrounded) in sixty days of -15 degC at its surface. The error function by Holman's table A-1.
TEST(CureTextbook, FrostGoesDownByTheErrorFunction)
{
    EXPECT_NEAR(groundAt(0.677, 60), 0, 0.1);
    EXPECT_NEAR(groundAt(0.68, 60), 0, 0.2);
    constexpr double share = 0.003; // of the whole fall
    const double root = std::sqrt(0.52 / (2050 * 1840.0) * 60 * 86400);
    for (const Frost& row : {Frost{0.40, 0.42839}, Frost{0.50, 0.52050}, Frost{1.00, 0.84270}})
        EXPECT_NEAR((groundAt(2 * row.eta * root, 60) + 15) / 35, row.erf, share) << row.eta;
}

/// Incropera, example 5.5: a metre of pipeline, 1 m across, takes up -2.73e7 J in its eight minutes (from memory);
/// unrounded -2.725e7. By what comes in through its inner face, of which each metre has pi square metres.
TEST(CureTextbook, PipelineTakesUpItsHeat)
{
    CureCase wall = atRest(materialOf(7832, 434, 63.9), 0.040, -20, 60, 500);
    wall.horizon = seconds(480);
    const std::vector<CurvePoint> curve = solved(wall).curve;
    double taken = 0; // J/m2, by trapezia
    for (std::size_t i = 1; i < curve.size(); ++i) {
        const double mean = (inCelsius(curve[i].face) + inCelsius(curve[i - 1].face)) / 2;
        taken += 500 * (60 - mean) * (inSeconds(curve[i].at) - inSeconds(curve[i - 1].at));
    }
    EXPECT_NEAR(-boost::math::constants::pi<double>() * taken, -2.725e7, 0.01 * 2.725e7);
}

/// A reaction of no order and no activation energy that never comes to an end: an even source, W/m3.
CureCase evenSource(double wattsPerCubicMetre, double millimetresThick, double front)
{
    CureCase source = atRest(materialOf(1150, 1250, 0.5), millimetresThick / 1000, 20, 20, front);
    source.kinetics.k1 = perSecond(1e-9);
    source.kinetics.law = {
        .activationEnergyJoulesPerMole = 0, .m = 1, .n = 0, .maxConversionAtReference = 1, .maxConversionPerKelvin = 0};
    source.hardener = source.kinetics.referenceHardener;
    source.heat = joulesPerKilogram(wattsPerCubicMetre / 1150 / 1e-9);
    return source;
}

/// A slab with a source q, insulated behind: its face stands q L/h above the air, its back q L2/(2 k) above its face.
/// 2e4 W/m3, 5 mm, k 0.5, h 10: 10.0 and 0.5 K.
TEST(CureTextbook, EvenSourceIsWarmestBehind)
{
    CureCase slab = evenSource(2e4, 5, 10);
    slab.horizon = seconds(40'000);
    const CurvePoint last = solved(slab).curve.back();
    EXPECT_NEAR(inCelsius(last.face) - 20, 10.0, 0.01);
    EXPECT_NEAR(inKelvin(last.hottest) - inKelvin(last.face), 0.5, 0.005);
}

/// How far a slab of that half thickness warms that makes 5e4 W/m3 at 25 degC, E 60 kJ/mol, its faces held at 25;
/// endless where it runs away.
double warmingOf(double halfMillimetres)
{
    CureCase slab = evenSource(5e4, halfMillimetres, 1e6);
    slab.kinetics.law.activationEnergyJoulesPerMole = 60'000;
    slab.kinetics.reference = slab.temperature = celsius(25);
    slab.air = {{seconds(0), celsius(25)}};
    slab.horizon = seconds(40'000);
    const CureOutcome outcome = solveCure(slab, {.cells = 40});
    return outcome ? inCelsius(outcome->peak) - 25 : std::numeric_limits<double>::infinity();
}

/// Frank-Kamenetskii (from memory): a slab runs away where E q L2/(k R T2) is above 0.878, which is a half thickness of
/// 10.4 mm here; just below it warms by no more than about 1.2 R T2/E. His exponential rises a little faster than
/// Arrhenius', so that the true limit lies a few percent higher.
TEST(CureTextbook, RunsAwayWhereFrankKamenetskiiSays)
{
    const double step = gasConstant * 298.15 * 298.15 / 60'000; // K
    const double critical = 1000 * std::sqrt(0.878 * 0.5 * step / 5e4);
    EXPECT_NEAR(critical, 10.4, 0.05);
    for (const double below : {0.5, 0.9, 0.99}) {
        EXPECT_GT(warmingOf(below * critical), 0) << below;
        EXPECT_LT(warmingOf(below * critical), 1.2 * step) << below;
    }
    for (const double above : {1.05, 1.2, 2.0})
        EXPECT_GT(warmingOf(above * critical), 100) << above;
}

struct Panel {
    ThermalMaterial material;
    double thickness; ///< mm
    double capacity;  ///< J/(m2 K), worked out apart
};

/// Paste (0.5, 1700, 1100) of 25 degC, 5 mm thick, holds 9350 J/(m2 K); 0.8 mm of steel 2727, 1.2 mm of aluminium 2928,
/// 3 mm of laminate 7144. Insulated, paste and panel of 10 degC end at the mean by these.
TEST(CureTextbook, PanelAndPasteMeetByTheirCapacities)
{
    for (const Panel& panel : {Panel{steel(), 0.8, 2727}, Panel{aluminium(), 1.2, 2928}, Panel{laminate(), 3, 7144}}) {
        CureCase cureCase = atRest(materialOf(1700, 1100, 0.5), 0.005, 25, 25, 0);
        cureCase.stack = {{millimetres(panel.thickness), panel.material, celsius(10)}};
        cureCase.horizon = seconds(3600);
        const double mean = (9350 * 25 + panel.capacity * 10) / (9350 + panel.capacity);
        EXPECT_NEAR(inCelsius(solved(cureCase).curve.back().face), mean, 0.002) << panel.capacity;
    }
}

/// Incropera, table A.1: which of its steels a panel is of, and which of its aluminiums, makes no difference to a cure
/// that a clock would show: plain carbon steel, AISI 1010 and iron; pure, 2024-T6 and Al-Mg-Si.
TEST(CureTextbook, ItsMetalsOfOneKindCureAlike)
{
    const auto on = [](const ThermalMaterial& metal) {
        CureCase cureCase = skirtPanel();
        cureCase.stack = {{millimetres(1.2), metal, celsius(25)}};
        return solved(cureCase);
    };
    const std::vector<std::vector<ThermalMaterial>> kinds{
        {materialOf(7854, 434, 60.5), materialOf(7832, 434, 63.9), materialOf(7870, 447, 80.2)},
        {materialOf(2702, 903, 237), materialOf(2770, 875, 177), materialOf(2707, 892, 117)}};
    for (const auto& kind : kinds) {
        const CureResult first = on(kind.front());
        for (const ThermalMaterial& metal : kind) {
            const CureResult result = on(metal);
            EXPECT_NEAR(secondsOf(result.gel) / secondsOf(first.gel), 1, 0.01);
            EXPECT_NEAR(secondsOf(result.sand) / secondsOf(first.sand), 1, 0.01);
            EXPECT_NEAR(inCelsius(result.peak), inCelsius(first.peak), 1.0);
        }
    }
}

} // namespace
} // namespace strandbench::test
