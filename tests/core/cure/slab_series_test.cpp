// SPDX-License-Identifier: GPL-3.0-or-later
// No reaction: conduction and convection against the full series of the slab (Incropera and DeWitt, Fundamentals of
// Heat and Mass Transfer, 5.5.1), and textbook examples that it solves.
#include "cases.h"

#include <boost/math/constants/constants.hpp>
#include <boost/math/tools/roots.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

constexpr double pi = boost::math::constants::pi<double>();

/// The root of zeta tan zeta = Bi between k pi and k pi + pi/2, k from 0.
double zetaOf(double biot, int k)
{
    const auto equation = [biot](double zeta) { return zeta * std::sin(zeta) - biot * std::cos(zeta); };
    std::uintmax_t most = 200;
    const auto [below, above] = boost::math::tools::toms748_solve(equation, k * pi, k * pi + pi / 2.0,
                                                                  boost::math::tools::eps_tolerance<double>(50), most);
    return (below + above) / 2.0;
}

/// (T - T_air)/(T_start - T_air) at x, 0 the middle and 1 the face; 200 terms.
double theta(double biot, double fourier, double x)
{
    double sum = 0.0;
    for (int k = 0; k < 200; ++k) {
        const double zeta = zetaOf(biot, k);
        sum += 4.0 * std::sin(zeta) / (2.0 * zeta + std::sin(2.0 * zeta)) * std::exp(-zeta * zeta * fourier) *
               std::cos(zeta * x);
    }
    return sum;
}

/// A half slab: insulated behind. The law of cure rests.
CureCase halfSlab(double millimetresThick, double startCelsius, double airCelsius, double front)
{
    CureCase cureCase = insulated(skirtPanel());
    cureCase.kinetics.k1 = perSecond(1e-12);
    cureCase.kinetics.k2 = perSecond(0);
    cureCase.heat = joulesPerKilogram(0);
    cureCase.thickness = millimetres(millimetresThick);
    cureCase.temperature = celsius(startCelsius);
    cureCase.air = {{seconds(0), celsius(airCelsius)}};
    cureCase.front = wattsPerSquareMetreKelvin(front);
    return cureCase;
}

struct Tabulated {
    double biot;
    double fourier;
    double centre;
    double face;
};

class CureSlabSeries : public testing::TestWithParam<Tabulated> {};

// The series here against tables of it: Incropera table 5.1 has zeta and C1 of the first term to four digits
// (from memory); the full series was computed apart, to six.
TEST_P(CureSlabSeries, IsTheTabulatedOne)
{
    const Tabulated& row = GetParam();
    EXPECT_NEAR(theta(row.biot, row.fourier, 0.0), row.centre, 1e-6);
    EXPECT_NEAR(theta(row.biot, row.fourier, 1.0), row.face, 1e-6);
}

TEST_P(CureSlabSeries, IsWhatTheEngineGives)
{
    const Tabulated& row = GetParam();
    constexpr double span = 100.0; // K
    CureCase hot = halfSlab(10, 100, 0, row.biot * 0.35 / 0.010);
    const double diffusivity = 0.35 / (1150.0 * 1250.0);
    hot.horizon = seconds(row.fourier * 0.010 * 0.010 / diffusivity);
    const CurvePoint cooled = solved(hot).curve.back();
    EXPECT_NEAR(inCelsius(cooled.hottest) / span, theta(row.biot, row.fourier, 0.0), 1e-3);
    EXPECT_NEAR(inCelsius(cooled.face) / span, theta(row.biot, row.fourier, 1.0), 1e-3);
    CureCase cold = hot;
    cold.temperature = celsius(0);
    cold.air = {{seconds(0), celsius(span)}};
    const CurvePoint heated = solved(cold).curve.back();
    EXPECT_NEAR(inCelsius(heated.face) / span, 1.0 - theta(row.biot, row.fourier, 1.0), 1e-3);
}

INSTANTIATE_TEST_SUITE_P(
    Incropera, CureSlabSeries,
    testing::Values(Tabulated{0.1, 0.05, 0.999973, 0.975260}, Tabulated{1, 0.05, 0.999751, 0.790377},
                    Tabulated{10, 0.05, 0.998530, 0.232326}, Tabulated{0.1, 0.1, 0.999223, 0.965294},
                    Tabulated{1, 0.1, 0.993108, 0.723577}, Tabulated{10, 0.1, 0.968424, 0.170574},
                    Tabulated{0.1, 0.2, 0.993999, 0.951420}, Tabulated{1, 0.2, 0.950642, 0.643391},
                    Tabulated{10, 0.2, 0.829255, 0.122482}, Tabulated{0.1, 0.5, 0.967981, 0.921779},
                    Tabulated{1, 0.5, 0.772526, 0.504522}, Tabulated{10, 0.5, 0.454641, 0.064329},
                    Tabulated{0.1, 1.0, 0.922389, 0.878126}, Tabulated{1, 1.0, 0.533859, 0.348177},
                    Tabulated{10, 1.0, 0.163818, 0.023172}, Tabulated{0.1, 2.0, 0.837326, 0.797144},
                    Tabulated{1, 2.0, 0.254668, 0.166091}, Tabulated{10, 2.0, 0.021265, 0.003008}));

struct FirstTerm {
    double biot;
    double zeta;
    double c1;
};

// Incropera table 5.1, zeta_1 and C_1 by Biot number (four digits, from memory; recomputed to six).
TEST(CureSlabSeriesRoots, AreTheTabulatedOnes)
{
    const FirstTerm rows[] = {{0.01, 0.099834, 1.001661}, {0.05, 0.221760, 1.008189}, {0.1, 0.311053, 1.016094},
                              {0.2, 0.432841, 1.031088},  {0.3, 0.521791, 1.045047},  {0.5, 0.653271, 1.070128},
                              {1, 0.860334, 1.119132},    {2, 1.076874, 1.178456},    {5, 1.313838, 1.240249},
                              {10, 1.428870, 1.261963},   {50, 1.540006, 1.272652},   {100, 1.555245, 1.273088}};
    for (const FirstTerm& row : rows) {
        const double zeta = zetaOf(row.biot, 0);
        EXPECT_NEAR(zeta, row.zeta, 1e-6) << "Bi " << row.biot;
        EXPECT_NEAR(4 * std::sin(zeta) / (2 * zeta + std::sin(2 * zeta)), row.c1, 1e-6) << "Bi " << row.biot;
    }
}

/// Incropera, example 5.5: a pipeline's wall of AISI 1010, 40 mm, at -20 degC, oil of 60 degC, h 500, 8 minutes.
CureCase pipeline(double startCelsius, double oilCelsius)
{
    CureCase cureCase = halfSlab(40, startCelsius, oilCelsius, 500);
    cureCase.filler = {kilogramsPerCubicMetre(7832), joulesPerKilogramKelvin(434), wattsPerMetreKelvin(63.9)};
    cureCase.horizon = seconds(480);
    return cureCase;
}

// Book, from one term and rounded: 42.9 and 45.2 degC, -7400 W/m2 (from memory); unrounded 43.02, 45.36 and -7319.
TEST(CureTextbook, PipelineWall)
{
    EXPECT_NEAR(500 * 0.040 / 63.9, 0.313, 0.0005) << "Biot number";
    EXPECT_NEAR(63.9 / (7832.0 * 434) * 480 / (0.040 * 0.040), 5.64, 0.005) << "Fourier number";
    EXPECT_NEAR(zetaOf(0.313, 0), 0.531, 0.001);
    const double face = inCelsius(solved(pipeline(-20, 60)).curve.back().face);
    EXPECT_NEAR(face, 45.36, 0.05);
    EXPECT_NEAR(500.0 * (face - 60.0), -7319.0, 25.0);
    // The outer side is the coldest place there; mirrored, the hottest: 60 - 20 - 43.02.
    EXPECT_NEAR(inCelsius(solved(pipeline(60, -20)).curve.back().hottest), 60.0 - 20.0 - 43.02, 0.05);
}

struct Contact {
    const char* name;
    ThermalMaterial panel;
    double contact; ///< degC, where a paste of 10 degC meets a panel of 25
};

class CureContact : public testing::TestWithParam<Contact> {};

// Incropera eq. 5.63 (from memory): two half-spaces meet at the mean of their temperatures by sqrt(k rho c). Paste
// (0.5, 1700, 1100) of 25 on steel of 10 degC: 10.95; aluminium 10.58; laminate (0.35, 1900, 1000) 18.14; mirrored.
TEST_P(CureContact, OfTwoHalfSpaces)
{
    CureCase cureCase = halfSlab(60, 10, 10, 0);
    cureCase.filler = {kilogramsPerCubicMetre(1700), joulesPerKilogramKelvin(1100), wattsPerMetreKelvin(0.5)};
    cureCase.stack = {{millimetres(100), GetParam().panel, celsius(25)}};
    cureCase.horizon = seconds(8);
    const CureResult result = solved(cureCase);
    ASSERT_GT(result.curve.size(), 4U);
    for (const CurvePoint& point : result.curve)
        EXPECT_NEAR(inCelsius(point.hottest), GetParam().contact, 0.15) << "at " << inSeconds(point.at) << " s";
}

INSTANTIATE_TEST_SUITE_P(
    Panels, CureContact,
    testing::Values(Contact{"steel", steel(), 35 - 10.95}, Contact{"aluminium", aluminium(), 35 - 10.58},
                    Contact{"laminate",
                            {kilogramsPerCubicMetre(1900), joulesPerKilogramKelvin(1000), wattsPerMetreKelvin(0.35)},
                            35 - 18.14}),
    [](const auto& each) { return each.param.name; });

} // namespace
} // namespace strandbench::test
