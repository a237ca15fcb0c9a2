// SPDX-License-Identifier: GPL-3.0-or-later
// What holds on any bench: sense in the figures, and nothing gels later for being warmer, stronger or thicker.
#include "cases.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

namespace strandbench::test {
namespace {

constexpr int chunks = 10;
constexpr int casesAChunk = 2000;
/// Twice what each may be off by itself is 1 %; this is asked instead, for a grid alike errs alike.
constexpr double leeway = 0.002;

void expectSense(const CureCase& cureCase, const CureResult& result)
{
    ASSERT_TRUE(result.gel) << "no gel in twelve gel times";
    EXPECT_GT(inSeconds(*result.gel), 0.0);
    if (result.sand) {
        EXPECT_LE(inSeconds(*result.gel), inSeconds(*result.sand));
    }
    ASSERT_TRUE(std::isfinite(inKelvin(result.peak)));
    EXPECT_GE(inKelvin(result.peak), inKelvin(cureCase.temperature));
    double hottest = inKelvin(cureCase.temperature);
    for (const StackLayer& layer : cureCase.stack)
        hottest = std::max(hottest, inKelvin(layer.temperature));
    hottest = std::max(hottest, inKelvin(cureCase.air.front().temperature));
    const double whole = cureCase.heat.value() / cureCase.filler.specificHeat.value();
    // More than all of its heat on top of the hottest: heat runs ahead of a front and warms what has its own still to
    // come, as in a front that meets an insulated wall. referee_test.cpp finds the same peaks. That twice is not
    // reached is seen here, no source.
    EXPECT_LE(inKelvin(result.peak), hottest + 2.0 * whole);
    EXPECT_GE(result.finalMean.value(), cureCase.kinetics.gel.value() * 0.1);
    EXPECT_LE(result.finalMean.value(), 1.0);
    for (const CurvePoint& point : result.curve)
        ASSERT_TRUE(std::isfinite(inKelvin(point.face)) && std::isfinite(inKelvin(point.hottest)) &&
                    std::isfinite(point.mean.value()));
}

double gelOf(const CureCase& cureCase)
{
    const CureResult result = solved(cureCase, {.cells = {}, .until = CureUntil::Marks});
    return secondsOf(result.gel);
}

class CureProperties : public testing::TestWithParam<int> {};

TEST_P(CureProperties, OfBenchCases)
{
    const auto seed = static_cast<unsigned>(1000 + GetParam());
    std::cout << "seed " << seed << '\n';
    std::mt19937_64 random(seed);
    for (int i = 0; i < casesAChunk && !HasFailure(); ++i) {
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", case " << i);
        const CureCase cureCase = benchCase(random);
        const CureResult result = solved(cureCase);
        expectSense(cureCase, result);
        const double latest = secondsOf(result.gel) * (1.0 + leeway);

        const double kelvins = between(random, 1, 10);
        EXPECT_LE(gelOf(warmer(cureCase, kelvins)), latest) << kelvins << " K warmer";

        CureCase stronger = cureCase;
        const double percent = cureCase.hardener.percent() * between(random, 1.02, 2.0);
        stronger.hardener = Fraction::ofHundred(percent);
        EXPECT_LE(gelOf(stronger), latest) << percent << " % of hardener";

        // On a panel of another temperature a thick layer can be slower: it takes longer to be warmed.
        CureCase level = cureCase;
        level.air = {{seconds(0), cureCase.temperature}};
        for (StackLayer& layer : level.stack)
            layer.temperature = cureCase.temperature;
        CureCase thicker = level;
        thicker.thickness = cureCase.thickness * between(random, 1.02, 2.0);
        EXPECT_LE(gelOf(thicker), gelOf(level) * (1.0 + leeway)) << inMillimetres(thicker.thickness) << " mm";
    }
}

INSTANTIATE_TEST_SUITE_P(Bench, CureProperties, testing::Range(0, chunks));

} // namespace
} // namespace strandbench::test
