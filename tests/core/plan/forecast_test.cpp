// SPDX-License-Identifier: GPL-3.0-or-later
// A batch with how sure it is, over the real engine.
#include "cases.h"
#include "repairs.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "learning/at_rate.h"
#include "learning/learning_rules.h"
#include "learning/product.h"
#include "plan/forecast.h"

#include <gtest/gtest.h>

namespace strandbench::test {
namespace {

/// z of a 90 % interval, from any table of the normal distribution.
constexpr double z90 = 1.644853626951;
const LotBelief known{{LogRate::ofLogarithm(0.1), 0.09}, 3, 0};

struct Sample {
    Bench bench;
    Assessment assessment = sampleHole();
    RepairPlan plan = bench.plan(assessment);
    const ProductSheet& sheet = bench.sheetOf(plan);
    CureEngine engine;

    [[nodiscard]] BatchForecast forecast(const LotBelief& lot) const
    {
        const Batch& batch = plan.batches.front();
        return *forecastBatch({batch, *plan.lifts.front().cureCase, sheet}, *assessment.reading,
                              batch.mix.hardenerShare, engine, lot);
    }
};

TEST(Forecast, BySheetAloneItIsThePlansOwn)
{
    const Sample sample;
    const BatchForecast forecast = sample.forecast({priorOf(sample.sheet), 0, 0});
    EXPECT_EQ(forecast.times, sample.plan.batches.front().times);
    EXPECT_EQ(forecast.howSure.sheet, forecast.times);
    EXPECT_EQ(forecast.cureCase, *sample.plan.lifts.front().cureCase);
    EXPECT_EQ(forecast.howSure.batches, 0);
}

/// Each figure against a solve of its own at the rate that the 90 % of a normal distribution ends at; the batch's own
/// scatter is in it.
TEST(Forecast, IsSolvedAtMiddleAndEndsAndBySheet)
{
    const Sample sample;
    const BatchForecast forecast = sample.forecast(known);
    const double spread = std::hypot(0.09, LearningRules().batch);
    const auto sandAt = [&](double rate) {
        return inSeconds(*solved(atRate(*sample.plan.lifts.front().cureCase, LogRate::ofLogarithm(rate))).sand);
    };
    EXPECT_NEAR(inSeconds(forecast.times.sand), sandAt(0.1), 1e-6);
    EXPECT_NEAR(inSeconds(forecast.howSure.early.sand), sandAt(0.1 + z90 * spread), 1e-3);
    EXPECT_NEAR(inSeconds(forecast.howSure.late.sand), sandAt(0.1 - z90 * spread), 1e-3);
    EXPECT_NEAR(inSeconds(forecast.howSure.sheet.sand), sandAt(0), 1e-3);
    EXPECT_NEAR(forecast.howSure.rate.spread, spread, 1e-12);
    EXPECT_EQ(forecast.howSure.batches, 3);
}

/// What holds of every case: the fast end comes first in all, and nothing gets hotter than the hottest.
TEST(Forecast, EndsLieOnTheirSides)
{
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    const CureEngine engine;
    std::mt19937_64 random(5);
    int seen = 0;
    for (int i = 0; i < 60; ++i) {
        const CureCase layer = benchCase(random);
        const BatchCases both{layer, skirtPanel()};
        const auto forecast = solveForecast({both, both, both}, sheet, engine, known);
        if (!forecast)
            continue; // never sands
        ++seen;
        const auto& [bySheet, early, late, hottest, rate, batches, others] = forecast->howSure;
        for (const auto mark : {&BatchTimes::boardGel, &BatchTimes::gel, &BatchTimes::sand}) {
            EXPECT_LT(early.*mark, forecast->times.*mark) << i;
            EXPECT_LT(forecast->times.*mark, late.*mark) << i;
            EXPECT_LT(forecast->times.*mark, bySheet.*mark) << i << ": faster than its sheet";
        }
        EXPECT_GE(hottest, forecast->peak);
    }
    EXPECT_GT(seen, 40);
}

TEST(Forecast, TheSurerTheNarrower)
{
    const Sample sample;
    const auto width = [&](double spread) {
        const HowSure howSure = sample.forecast({{LogRate(), spread}, 1, 0}).howSure;
        return inSeconds(howSure.late.gel - howSure.early.gel);
    };
    EXPECT_LT(width(0.01), width(0.05));
    EXPECT_LT(width(0.05), width(0.2));
    EXPECT_GT(width(0.0001), 0) << "a bead laid by hand stays a bead laid by hand";
}

/// A plan for a lot known to be fast: its times are the lot's, and its batches are such as can be spread in them.
TEST(Forecast, APlanForAFastLotGoesByTheLot)
{
    const Sample sample;
    const CureEngine fast = sample.engine.with(CureRates{{versionOf(sample.sheet), LogRate::ofMultiplier(1.5)}});
    const PlanningSet set{builtInTable(), sample.bench.catalogue(), builtInSteps(), Assumptions{}, fast};
    const RepairPlan plan = planRepair(sample.assessment, set);
    ASSERT_TRUE(plan.fill);
    const BatchTimes& by = plan.batches.front().times;
    EXPECT_LT(by.gel, sample.plan.batches.front().times.gel);
    const LotBelief lot{{LogRate::ofMultiplier(1.5), 0.03}, 5, 0};
    const CureCase& layer = *plan.lifts.front().cureCase;
    const auto forecast = forecastBatch({plan.batches.front(), layer, sample.sheet}, *sample.assessment.reading,
                                        plan.batches.front().mix.hardenerShare, fast, lot);
    ASSERT_TRUE(forecast);
    EXPECT_NEAR(inSeconds(forecast->times.gel), inSeconds(by.gel), 0.01) << "the rate counts once";
    const auto told = std::ranges::find(plan.reasons, QStringLiteral("lot_faster"), &Reason::code);
    ASSERT_NE(told, plan.reasons.end()) << "nothing is learnt silently";
    EXPECT_NEAR(std::get<Fraction>(told->arguments.front()).percent(), 50, 1e-9);
    const Assumptions assumptions;
    for (const Batch& each : plan.batches) {
        const Duration spread = assumptions.kneading + each.mix.filler / assumptions.spreading;
        EXPECT_LE(spread, std::min(each.times.gel, each.times.boardGel) * assumptions.edgesAtGel.value() * (1 + 1e-9));
    }
}

} // namespace
} // namespace strandbench::test
