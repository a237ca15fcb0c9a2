// SPDX-License-Identifier: GPL-3.0-or-later
// The thick glass/polyester slab of Bogetti and Gillespie, Two-dimensional cure simulation of thick thermosetting
// composites, J. Compos. Mater. 25 (1991) 239-273: law and figures as published; the times and temperatures expected
// here were computed apart from them (finite differences, Runge-Kutta, converged in grid and step).
#include "cases.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

constexpr double frequency = 6.167e20; ///< 1/s: 3.7e22 a minute
constexpr double energy = 167'400;     ///< J/mol
constexpr double wholeRise = 77.5e3 / 1260;

/// Half of the slab, by symmetry; its wall is held at the air's temperature.
CureCase halfSlab(double wholeMillimetres, std::vector<AirPoint> air, double horizon)
{
    CureCase cureCase;
    CureKinetics& kinetics = cureCase.kinetics;
    kinetics.reference = celsius(100);
    kinetics.k1 = perSecond(0);
    kinetics.k2 = perSecond(frequency * std::exp(-energy / (8.314462618 * inKelvin(kinetics.reference))));
    kinetics.law = {.activationEnergyJoulesPerMole = energy,
                    .m = 0.524,
                    .n = 1.476,
                    .maxConversionAtReference = 1.0,
                    .maxConversionPerKelvin = 0.0};
    cureCase.hardener = kinetics.referenceHardener;
    cureCase.filler = {kilogramsPerCubicMetre(1890), joulesPerKilogramKelvin(1260), wattsPerMetreKelvin(0.2163)};
    cureCase.heat = joulesPerKilogram(77.5e3);
    cureCase.thickness = millimetres(wholeMillimetres / 2.0);
    cureCase.temperature = celsius(20);
    cureCase.initialConversion = Fraction::ofOne(1e-3);
    cureCase.air = std::move(air);
    cureCase.front = wattsPerSquareMetreKelvin(1e6);
    cureCase.back = wattsPerSquareMetreKelvin(0);
    cureCase.horizon = seconds(horizon);
    return cureCase;
}

CureCase withMark(CureCase cureCase, double conversion)
{
    cureCase.kinetics.gel = cureCase.kinetics.sand = Fraction::ofOne(conversion);
    return cureCase;
}

const std::vector<AirPoint> steppedTo100{{seconds(0), celsius(100)}};
/// 20 to 100 degC at 2 degC a minute, then held.
const std::vector<AirPoint> rampedTo100{{seconds(0), celsius(20)}, {seconds(2400), celsius(100)}};

struct Published {
    const char* name;
    double millimetres;
    std::vector<AirPoint> wall;
    double peak; ///< degC
    double peakAt;
    double centreHalf; ///< s to a conversion of 0.5, and to 0.9
    double centreMost;
    double wallHalf;
    double wallMost;
};

class CurePublishedSlab : public testing::TestWithParam<Published> {};

TEST_P(CurePublishedSlab, PeakAndItsTime)
{
    const Published& row = GetParam();
    const CureResult result = solved(halfSlab(row.millimetres, row.wall, 5400));
    EXPECT_NEAR(inCelsius(result.peak), row.peak, 0.5);
    EXPECT_NEAR(inSeconds(result.peakAt), row.peakAt, 5.0);
    for (const CurvePoint& point : result.curve)
        EXPECT_LE(point.mean.value(), 1.0);
}

TEST_P(CurePublishedSlab, WallCures)
{
    const Published& row = GetParam();
    const CureCase cureCase = halfSlab(row.millimetres, row.wall, 5400);
    EXPECT_NEAR(secondsOf(solved(withMark(cureCase, 0.5)).sand), row.wallHalf, 5.0);
    EXPECT_NEAR(secondsOf(solved(withMark(cureCase, 0.9)).sand), row.wallMost, 5.0);
}

// Gel is the first point anywhere. The wall comes to 0.5 first; 0.9 the inside, some place before or at the centre.
TEST_P(CurePublishedSlab, SomePlaceIsFirst)
{
    const Published& row = GetParam();
    const CureCase cureCase = halfSlab(row.millimetres, row.wall, 5400);
    const double half = secondsOf(solved(withMark(cureCase, 0.5)).gel);
    EXPECT_LE(half, std::min(row.wallHalf, row.centreHalf) + 5.0);
    const double most = secondsOf(solved(withMark(cureCase, 0.9)).gel);
    EXPECT_LE(most, row.centreMost + 5.0);
    EXPECT_GE(most, 0.75 * row.centreMost);
}

INSTANTIATE_TEST_SUITE_P(
    Bogetti, CurePublishedSlab,
    testing::Values(Published{"A", 25.4, steppedTo100, 161.59, 2075.0, 2065.8, 2070.9, 888.2, 2591.2},
                    Published{"B", 25.4, rampedTo100, 161.98, 3589.9, 3581.2, 3586.1, 3088.0, 4791.0},
                    Published{"C", 13.8, steppedTo100, 147.67, 994.5, 964.6, 981.4, 888.2, 2591.2}),
    [](const auto& each) { return each.param.name; });

// Runs away: a fixed explicit step of 0.05 s drove its conversion to 1.05-1.09. The peak of 209-212 degC and its time
// were computed apart and had not converged in the grid.
TEST(CurePublishedRunaway, StaysBelowOne)
{
    const CureCase cureCase = halfSlab(25.4, {{seconds(0), celsius(110)}}, 3600);
    const CureResult result = solved(withMark(cureCase, 0.5));
    EXPECT_GE(inCelsius(result.peak), 209.0);
    EXPECT_LE(inCelsius(result.peak), 212.0);
    EXPECT_NEAR(inSeconds(result.peakAt), 1434.4, 5.0);
    EXPECT_NEAR(secondsOf(result.sand), 217.2, 5.0);
    EXPECT_NEAR(secondsOf(solved(withMark(cureCase, 0.9)).sand), 633.8, 5.0);
    double before = -1.0;
    for (const CurvePoint& point : result.curve) {
        EXPECT_TRUE(std::isfinite(inKelvin(point.face)) && std::isfinite(inKelvin(point.hottest)));
        EXPECT_LE(point.mean.value(), 1.0);
        EXPECT_GE(point.mean.value(), before);
        before = point.mean.value();
    }
    EXPECT_LE(result.finalMean.value(), 1.0);
}

// Thin goes cooler than thick (ASTM D2471 says that the volume must be stated), and slow cooler than fast.
TEST(CurePublishedOrder, ThinnerPeaksLower)
{
    double before = 0.0;
    for (const double whole : {6.0, 10.0, 13.8, 18.0, 25.4}) {
        const double peak = inCelsius(solved(halfSlab(whole, steppedTo100, 5400)).peak);
        EXPECT_GT(peak, before + 1.0) << whole << " mm";
        before = peak;
    }
}

struct Mark {
    double conversion;
    double second;
};

// All its heat kept: from 90 degC and 1e-3, computed apart. Rise 61.51 K at most, end 151.45 degC.
TEST(CurePublishedAdiabatic, TimesAndEnd)
{
    EXPECT_NEAR(wholeRise, 61.51, 0.005);
    CureCase cureCase = halfSlab(25.4, {{seconds(0), celsius(90)}}, 7200);
    cureCase.temperature = celsius(90);
    cureCase.front = wattsPerSquareMetreKelvin(0);
    for (const Mark& mark : {Mark{0.5, 1236.4}, Mark{0.9, 1255.9}, Mark{0.99, 1266.1}}) {
        const CureResult result = solved(withMark(cureCase, mark.conversion));
        EXPECT_NEAR(secondsOf(result.gel), mark.second, 0.002 * mark.second);
        EXPECT_NEAR(secondsOf(result.sand), mark.second, 0.002 * mark.second);
        EXPECT_NEAR(inCelsius(result.peak), 151.45, 0.1);
        EXPECT_LE(inCelsius(result.peak), 90.0 + wholeRise);
    }
}

} // namespace
} // namespace strandbench::test
