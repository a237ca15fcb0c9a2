// SPDX-License-Identifier: GPL-3.0-or-later
// Heat made is heat kept: the first law, and the greatest rise there can be.
#include "cases.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

struct Adiabatic {
    const char* name;
    double thickness; ///< mm
    double start;     ///< degC
    double hardener;  ///< percent
    double heat;      ///< J/kg
    double specificHeat;
    double initial;
    double horizon; ///< s: some end halfway
};

class CureEnergy : public testing::TestWithParam<Adiabatic> {
protected:
    [[nodiscard]] static CureCase of(const Adiabatic& figures)
    {
        CureCase cureCase = insulated(skirtPanel());
        cureCase.thickness = millimetres(figures.thickness);
        cureCase.temperature = celsius(figures.start);
        cureCase.air = {{seconds(0), celsius(-30)}}; // must not matter
        cureCase.hardener = Fraction::ofHundred(figures.hardener);
        cureCase.heat = joulesPerKilogram(figures.heat);
        cureCase.filler.specificHeat = joulesPerKilogramKelvin(figures.specificHeat);
        cureCase.initialConversion = Fraction::ofOne(figures.initial);
        cureCase.horizon = seconds(figures.horizon);
        return cureCase;
    }
};

TEST_P(CureEnergy, RiseIsHeatTimesConversion)
{
    const Adiabatic& figures = GetParam();
    const CureResult result = solved(of(figures));
    ASSERT_GT(result.finalMean.value(), figures.initial + 0.02) << "nothing to compare";
    const double whole = figures.heat / figures.specificHeat;
    for (const CurvePoint& point : result.curve) {
        const double expected = whole * (point.mean.value() - figures.initial);
        const double rise = inCelsius(point.face) - figures.start;
        EXPECT_NEAR(rise, expected, 0.001 * expected + 1e-6) << "at " << inSeconds(point.at) << " s";
        // A layer that is alike throughout stays so.
        EXPECT_NEAR(inKelvin(point.hottest), inKelvin(point.face), 1e-6);
    }
    EXPECT_EQ(result.curve.back().mean, result.finalMean);
}

TEST_P(CureEnergy, NothingRisesMoreThanAllItsHeat)
{
    const Adiabatic& figures = GetParam();
    CureCase cureCase = of(figures);
    cureCase.horizon = seconds(48.0 * 3600.0);
    const CureResult result = solved(cureCase);
    const double whole = figures.heat / figures.specificHeat;
    // A step's tolerance: 2e-4 of 100 K.
    EXPECT_LE(inCelsius(result.peak), figures.start + whole + 0.02);
    // Warm enough at last for the ceiling to be 1: all of the heat comes out, but for the last slow bit.
    if (figures.start + 0.9 * whole > 90.0) {
        EXPECT_GE(inCelsius(result.peak), figures.start + 0.97 * (1.0 - figures.initial) * whole);
    }
}

INSTANTIATE_TEST_SUITE_P(Insulated, CureEnergy,
                         testing::Values(Adiabatic{"thin", 0.5, 20, 2, 150e3, 1250, 0, 400},
                                         Adiabatic{"middling", 4, 25, 2, 150e3, 1250, 0, 260},
                                         Adiabatic{"thick", 25, 35, 4, 170e3, 1100, 0, 3600},
                                         Adiabatic{"cold", 10, 5, 1, 110e3, 1400, 0, 7200},
                                         Adiabatic{"begun", 60, 15, 3, 130e3, 1250, 0.3, 900},
                                         Adiabatic{"weak", 2, 30, 2, 5e3, 1250, 0, 1800}),
                         [](const auto& each) { return each.param.name; });

// With a stack, and no heat going out, all come to one temperature; the sum of capacity times rise is the heat made.
TEST(CureEnergyOfAStack, IsSharedAndNoneIsLost)
{
    CureCase cureCase = skirtPanel();
    cureCase.stack = {layerOf(laminate(), 3, 12), layerOf(steel(), 1.5, 35), layerOf(board(), 2, 20)};
    cureCase.temperature = celsius(25);
    cureCase.front = cureCase.back = wattsPerSquareMetreKelvin(0);
    cureCase.horizon = seconds(6 * 3600);
    const CureResult result = solved(cureCase);
    const double made = 1150 * 0.004 * 150e3 * result.finalMean.value();
    double capacity = 1150 * 0.004 * 1250;
    double heldAtStart = capacity * 25.0;
    for (const StackLayer& layer : cureCase.stack) {
        const double own =
            layer.material.density.value() * layer.material.specificHeat.value() * layer.thickness.value();
        capacity += own;
        heldAtStart += own * inCelsius(layer.temperature);
    }
    const double startMean = heldAtStart / capacity;
    const double expected = made / capacity;
    EXPECT_NEAR(inCelsius(result.curve.back().face) - startMean, expected, 0.001 * expected);
    EXPECT_NEAR(inCelsius(result.curve.back().hottest) - startMean, expected, 0.001 * expected);
    ASSERT_GT(expected, 20.0);
}

} // namespace
} // namespace strandbench::test
