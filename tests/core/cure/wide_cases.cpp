// SPDX-License-Identifier: GPL-3.0-or-later
#include "wide_cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iostream>

namespace strandbench::test {
namespace {

/// Zero for a share of them.
double zeroOr(std::mt19937_64& random, double share, double low, double high)
{
    return chance(random, share) ? 0.0 : scaledBetween(random, low, high);
}

Temperature anyTemperature(std::mt19937_64& random) { return celsius(between(random, -30, 200)); }

ThermalMaterial anyMaterial(std::mt19937_64& random)
{
    const double density = scaledBetween(random, 10, 20'000);
    const double specificHeat = scaledBetween(random, 50, 10'000);
    return {kilogramsPerCubicMetre(density), joulesPerKilogramKelvin(specificHeat),
            wattsPerMetreKelvin(scaledBetween(random, 0.01, 500))};
}

CureKinetics anyKinetics(std::mt19937_64& random)
{
    CureKinetics kinetics;
    do {
        kinetics.k1 = perSecond(zeroOr(random, 0.2, 1e-8, 1));
        kinetics.k2 = perSecond(zeroOr(random, 0.2, 1e-8, 1));
    } while (inPerSecond(kinetics.k1) == 0.0 && inPerSecond(kinetics.k2) == 0.0);
    kinetics.law.m = zeroOr(random, 0.15, 0.05, 5);
    kinetics.law.n = between(random, 0.5, 5);
    kinetics.law.activationEnergyJoulesPerMole = between(random, 0, 300e3);
    kinetics.law.hardenerExponent = between(random, 0, 3);
    kinetics.law.maxConversionAtReference = between(random, 0.05, 1);
    kinetics.law.maxConversionPerKelvin = between(random, 0, 0.02);
    kinetics.reference = celsius(between(random, 0, 200));
    kinetics.referenceHardener = Fraction::ofHundred(scaledBetween(random, 0.1, 10));
    const double one = between(random, 0.001, 0.999);
    const double other = between(random, 0.001, 0.999);
    kinetics.gel = Fraction::ofOne(std::min(one, other));
    kinetics.sand = Fraction::ofOne(std::max(one, other));
    return kinetics;
}

void checkCurve(const CureCase& cureCase, const CureResult& result)
{
    double before = -1.0;
    for (const CurvePoint& point : result.curve) {
        ASSERT_TRUE(std::isfinite(inKelvin(point.face)));
        ASSERT_GT(inSeconds(point.at), before);
        ASSERT_GE(point.mean.value(), 0.0);
        ASSERT_LE(point.mean.value(), 1.0);
        ASSERT_LE(inKelvin(point.hottest), inKelvin(result.peak));
        ASSERT_LE(inKelvin(point.face), inKelvin(point.hottest) + 1e-9);
        before = inSeconds(point.at);
    }
    EXPECT_EQ(inSeconds(result.curve.front().at), 0.0);
    EXPECT_DOUBLE_EQ(before, inSeconds(cureCase.horizon));
    EXPECT_GE(inSeconds(result.peakAt), 0.0);
    EXPECT_LE(inSeconds(result.peakAt), inSeconds(cureCase.horizon));
}

void check(const CureCase& cureCase, const CureResult& result)
{
    EXPECT_TRUE(std::isfinite(inKelvin(result.peak)));
    checkCurve(cureCase, result);
    EXPECT_GE(result.finalMean.value(), 0.0);
    EXPECT_LE(result.finalMean.value(), 1.0);
    if (result.gel) {
        EXPECT_GE(inSeconds(*result.gel), 0.0);
    }
    if (result.sand) {
        ASSERT_TRUE(result.gel) << "sanded before it gelled";
        EXPECT_GE(inSeconds(*result.sand), inSeconds(*result.gel));
        EXPECT_LE(inSeconds(*result.sand), inSeconds(cureCase.horizon));
    }
}

} // namespace

CureCase wideCase(std::mt19937_64& random)
{
    CureCase cureCase;
    cureCase.kinetics = anyKinetics(random);
    cureCase.filler = anyMaterial(random);
    const double most = cureCase.filler.specificHeat.value() * 400.0;
    cureCase.heat = joulesPerKilogram(std::min(1e6, most * between(random, 0, 1)));
    cureCase.thickness = millimetres(scaledBetween(random, 0.1, 60));
    cureCase.hardener = Fraction::ofHundred(scaledBetween(random, 0.1, 10));
    cureCase.temperature = anyTemperature(random);
    cureCase.initialConversion = Fraction::ofOne(chance(random, 0.5) ? 0.0 : between(random, 0, 0.99));
    const int layers = std::uniform_int_distribution<>(0, 12)(random);
    for (int i = 0; i < layers; ++i) {
        const Length thickness = millimetres(scaledBetween(random, 0.05, 100));
        const ThermalMaterial material = anyMaterial(random);
        cureCase.stack.push_back({thickness, material, anyTemperature(random)});
    }
    const int points = chance(random, 0.5) ? 1 : std::uniform_int_distribution<>(2, 6)(random);
    double second = 0.0;
    for (int i = 0; i < points; ++i) {
        cureCase.air.push_back({seconds(second), anyTemperature(random)});
        second += scaledBetween(random, 0.1, 1e4);
    }
    cureCase.front = wattsPerSquareMetreKelvin(zeroOr(random, 0.2, 0.1, 1e6));
    cureCase.back = wattsPerSquareMetreKelvin(zeroOr(random, 0.2, 0.1, 1e6));
    cureCase.horizon = seconds(scaledBetween(random, 1, 7 * 24 * 3600));
    return cureCase;
}

void checkWideCases(unsigned seed, int count)
{
    std::mt19937_64 random(seed);
    std::array<int, 2> refused{};
    for (int i = 0; i < count && !testing::Test::HasFailure(); ++i) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", case " << i);
        const CureCase cureCase = wideCase(random);
        const CureOutcome outcome = solveCure(cureCase);
        if (outcome) {
            check(cureCase, *outcome);
            continue;
        }
        ++refused.at(static_cast<std::size_t>(outcome.error().kind));
        EXPECT_GE(inSeconds(outcome.error().at), 0.0);
        EXPECT_LE(inSeconds(outcome.error().at), inSeconds(cureCase.horizon));
    }
    std::cout << "seed " << seed << ", " << count << " cases; refused: step too small " << refused[0]
              << ", too many steps " << refused[1] << '\n';
    // A named refusal is allowed, but it is no way out.
    EXPECT_LE(refused[0] + refused[1], count / 20);
}

} // namespace strandbench::test
