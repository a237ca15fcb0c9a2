// SPDX-License-Identifier: GPL-3.0-or-later
// Batches: each fits the board and is kneaded and spread before its edges must be cleared.
#include "repairs.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace strandbench::test {
namespace {

std::vector<Batch> allBatches(const RepairPlan& plan)
{
    std::vector<Batch> all = plan.batches;
    all.insert(all.end(), plan.finish.batches.begin(), plan.finish.batches.end());
    return all;
}

/// Kneaded for 45 s, spread at 45 g/min: assumptions of ours, no source.
double spreadAfter(double grammes) { return 45 + grammes / 45 * 60; }

double edgesAt(const BatchTimes& times) { return 0.75 * std::min(inSeconds(times.boardGel), inSeconds(times.gel)); }

TEST(Batches, AreSpreadBeforeTheEdgesAreCleared)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        for (const Batch& each : allBatches(plan))
            EXPECT_LE(spreadAfter(inGrams(each.mix.filler)), edgesAt(each.times) + 1e-6) << nameOf(assessment);
    });
}

TEST(Batches, FitTheBoard)
{
    forManyPlans([](const Assessment& assessment, const RepairPlan& plan, const Bench&) {
        for (const Batch& each : allBatches(plan)) {
            EXPECT_LE(inMillimetres(each.mix.puddle), 250 + 1e-9) << nameOf(assessment);
            EXPECT_GT(inMillimetres(each.mix.puddle), 0);
        }
    });
}

/// One batch fewer for a lift would be too wide for the board or too slow to spread.
TEST(Batches, AreTheFewestThatDo)
{
    int split = 0;
    forManyPlans([&](const Assessment& assessment, const RepairPlan& plan, const Bench& bench) {
        for (std::size_t lift = 0; lift < plan.lifts.size(); ++lift) {
            std::vector<Batch> own;
            std::copy_if(plan.batches.begin(), plan.batches.end(), std::back_inserter(own),
                         [&](const Batch& each) { return each.lift == static_cast<int>(lift); });
            ASSERT_FALSE(own.empty()) << "a lift that nobody mixes";
            if (own.size() == 1)
                continue;
            ++split;
            const auto count = static_cast<double>(own.size());
            const double needed = count * inGrams(own.front().mix.filler) - 2 * count; // 2 g a batch stay behind
            const double each = needed / (count - 1) + 2;
            const Mix mix = mixForFiller(grams(each), bench.sheetOf(plan));
            EXPECT_TRUE(inMillimetres(mix.puddle) > 250 || spreadAfter(each) > edgesAt(own.front().times))
                << nameOf(assessment) << ", " << count << " batches";
        }
    });
    EXPECT_GT(split, 50);
}

TEST(Batches, ComeInTheOrderOfTheLifts)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        EXPECT_TRUE(std::is_sorted(plan.batches.begin(), plan.batches.end(),
                                   [](const Batch& one, const Batch& other) { return one.lift < other.lift; }));
        EXPECT_EQ(plan.batches.front().lift, 0);
        EXPECT_EQ(plan.batches.back().lift + 1, static_cast<int>(plan.lifts.size()));
    });
}

TEST(Batches, OfALiftAreAlike)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        for (std::size_t i = 1; i < plan.batches.size(); ++i) {
            if (plan.batches[i].lift == plan.batches[i - 1].lift) {
                EXPECT_EQ(plan.batches[i], plan.batches[i - 1]);
            }
        }
    });
}

TEST(Batches, GelBeforeTheySand)
{
    forManyPlans([](const Assessment&, const RepairPlan& plan, const Bench&) {
        for (const Batch& each : allBatches(plan)) {
            EXPECT_GT(inSeconds(each.times.boardGel), 0);
            EXPECT_LT(each.times.gel, each.times.sand);
            EXPECT_GT(inSeconds(each.times.easySanding), 0);
        }
    });
}

/// A small batch is made all the same, and the plan says to weigh it.
TEST(Batches, SmallOnesAreToBeWeighed)
{
    const auto weighed = [](const RepairPlan& plan) {
        return std::any_of(plan.reasons.begin(), plan.reasons.end(),
                           [](const Reason& each) { return each.code == QLatin1String("weigh_small"); });
    };
    const Bench bench;
    EXPECT_TRUE(weighed(bench.plan(repairOf(Substrate::Steel, DamageKind::Gouge, 20, 5, 1))));
    EXPECT_FALSE(weighed(bench.plan(repairOf(Substrate::Steel, DamageKind::Dent, 200, 150, 5))));
}

TEST(Batches, SlowerSpreadingMakesMoreOfThem)
{
    Bench bench;
    const Assessment dent = repairOf(Substrate::Steel, DamageKind::Dent, 300, 250, 5);
    const std::size_t usual = bench.plan(dent).batches.size();
    bench.assumptions.spreading = gramsPerMinute(15);
    EXPECT_GT(bench.plan(dent).batches.size(), usual);
}

} // namespace
} // namespace strandbench::test
