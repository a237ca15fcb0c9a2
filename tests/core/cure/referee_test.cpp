// SPDX-License-Identifier: GPL-3.0-or-later
// The engine against a general-purpose library's stiff solver (GNU Scientific Library, msbdf) on a discretisation
// that shares nothing with the engine's.
#include "cases.h"
#include "referee.h"
#include "spectral_elements.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

namespace strandbench::test {
namespace {

constexpr int chunks = 10;
constexpr int casesAChunk = 60;

double relative(double seen, double expected) { return std::abs(seen - expected) / expected; }

// Exact to degree 2 p - 1 (Canuto, Hussaini, Quarteroni and Zang, Spectral Methods, 2.3; from memory).
TEST(CureRefereeLobatto, IntegratesAndDerivesPolynomialsExactly)
{
    const Lobatto lobatto(6);
    ASSERT_EQ(lobatto.points.size(), 7U);
    for (int power = 0; power <= 11; ++power) {
        double integral = 0.0;
        for (std::size_t i = 0; i < lobatto.points.size(); ++i)
            integral += lobatto.weights[i] * std::pow(lobatto.points[i], power);
        EXPECT_NEAR(integral, power % 2 == 0 ? 2.0 / (power + 1) : 0.0, 1e-12) << "x^" << power;
    }
    for (std::size_t row = 0; row < lobatto.points.size(); ++row) {
        double slope = 0.0;
        for (std::size_t i = 0; i < lobatto.points.size(); ++i)
            slope += lobatto.slope[row][i] * std::pow(lobatto.points[i], 6);
        EXPECT_NEAR(slope, 6.0 * std::pow(lobatto.points[row], 5), 1e-11);
    }
}

// Full series of Incropera 5.5 for Bi 1, Fo 0.5 (computed): centre 0.772526; the centre is the hottest place.
TEST(CureRefereeSlab, CoolsAsTheSeriesSays)
{
    CureCase cureCase = skirtPanel();
    cureCase.stack = {layerOf(filler(), 4, 100)}; // the fresh layer is the outer half of the half slab
    cureCase.temperature = celsius(100);
    cureCase.heat = joulesPerKilogram(0);
    cureCase.air = {{seconds(0), celsius(0)}};
    cureCase.back = wattsPerSquareMetreKelvin(0);
    cureCase.front = wattsPerSquareMetreKelvin(0.35 / 0.008);
    cureCase.kinetics.k1 = perSecond(1e-12);
    cureCase.kinetics.k2 = perSecond(0);
    const double diffusivity = 0.35 / (1150.0 * 1250.0);
    cureCase.horizon = seconds(0.5 * 0.008 * 0.008 / diffusivity);
    // theta(x) = C1 exp(-zeta^2 Fo) cos(zeta x / L) at x = L/2, with zeta 0.860334, C1 1.119132; later terms fell off.
    const double expected = 100.0 * 1.119132 * std::exp(-0.860334 * 0.860334 * 0.5) * std::cos(0.860334 / 2.0);
    EXPECT_NEAR(judge(cureCase, 6).hottestAtEnd - 273.15, expected, 0.15);
}

class CureReferee : public testing::TestWithParam<int> {};

TEST_P(CureReferee, AgreesOnBenchCases)
{
    const auto seed = static_cast<unsigned>(2000 + GetParam());
    std::cout << "seed " << seed << '\n';
    std::mt19937_64 random(seed);
    double worstGel = 0.0;
    double worstSand = 0.0;
    double worstPeak = 0.0;
    for (int i = 0; i < casesAChunk; ++i) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", case " << i);
        const CureCase cureCase = benchCase(random);
        const CureResult seen = solved(cureCase);
        const Verdict verdict = convergedVerdict(cureCase);
        ASSERT_TRUE(verdict.gel); // 12 gel times of the reference bring any bench case so far
        ASSERT_EQ(seen.sand.has_value(), verdict.sand.has_value());
        const double gel = relative(secondsOf(seen.gel), *verdict.gel);
        const double sand = verdict.sand ? relative(secondsOf(seen.sand), *verdict.sand) : 0.0;
        const double peak = std::abs(inKelvin(seen.peak) - verdict.peak) / allowedAtPeak(cureCase, verdict.peak);
        EXPECT_LE(gel, 0.005) << secondsOf(seen.gel) << " s, referee " << *verdict.gel;
        EXPECT_LE(sand, 0.005) << secondsOf(seen.sand) << " s, referee " << *verdict.sand;
        EXPECT_LE(peak, 1.0) << inKelvin(seen.peak) << " K, referee " << verdict.peak << ", allowed "
                             << allowedAtPeak(cureCase, verdict.peak);
        worstGel = std::max(worstGel, gel);
        worstSand = std::max(worstSand, sand);
        worstPeak = std::max(worstPeak, peak);
    }
    std::cout << "worst: gel " << 100.0 * worstGel << " %, sand " << 100.0 * worstSand << " %, peak " << worstPeak
              << " of what is allowed\n";
}

INSTANTIATE_TEST_SUITE_P(Bench, CureReferee, testing::Range(0, chunks));

} // namespace
} // namespace strandbench::test
