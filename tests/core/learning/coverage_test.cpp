// SPDX-License-Identifier: GPL-3.0-or-later
// Does what is believed hold? 2 000 lots whose truth is known, drawn as the rules say that lots scatter.
#include "learning/product.h"

#include <gtest/gtest.h>

#include <random>

namespace strandbench {
namespace {

constexpr int lots = 2000;
const Belief sheet{LogRate(), 0.1};
const LearningRules rules;

double drawn(std::mt19937_64& random, double mean, double spread)
{
    return std::normal_distribution<double>(mean, spread)(random);
}

std::vector<BatchTold> gelsOf(std::mt19937_64& random, double truth, int count)
{
    std::vector<BatchTold> batches;
    for (int i = 0; i < count; ++i)
        batches.push_back({{}, LogRate::ofLogarithm(drawn(random, truth, rules.batch)), {}});
    return batches;
}

bool holds(const Belief& belief, double value)
{
    const LogRateRange range = middleOf(belief, rules.shown);
    return range.low.value() <= value && value <= range.high.value();
}

class Coverage : public testing::TestWithParam<int> {};

/// 90 % of the intervals must hold the truth, of the lot and of its next batch: 88 to 92 % of 2 000.
TEST_P(Coverage, OfAProductsFirstLot)
{
    std::mt19937_64 random(20'261'126U + unsigned(GetParam()));
    int ofLot = 0;
    int ofNext = 0;
    for (int i = 0; i < lots; ++i) {
        const double truth = drawn(random, 0, sheet.spread);
        const Belief rate = learnLot(priorOfNewLot(sheet, {}), gelsOf(random, truth, GetParam())).rate;
        ofLot += holds(rate, truth);
        ofNext += holds(ofTheNext(rate, rules.batch), drawn(random, truth, rules.batch));
    }
    for (const int held : {ofLot, ofNext}) {
        EXPECT_GE(held, 0.88 * lots);
        EXPECT_LE(held, 0.92 * lots);
    }
    RecordProperty("of_lot_percent", std::to_string(100.0 * ofLot / lots));
    RecordProperty("of_next_percent", std::to_string(100.0 * ofNext / lots));
}

/// The same where three lots of the product went before.
TEST_P(Coverage, OfALotOfAKnownProduct)
{
    std::mt19937_64 random(4'417U + unsigned(GetParam()));
    int ofLot = 0;
    int ofNext = 0;
    for (int i = 0; i < lots; ++i) {
        const double product = drawn(random, 0, std::sqrt(sheet.spread * sheet.spread - rules.lot * rules.lot));
        std::vector<LotMean> others;
        for (int lot = 0; lot < 3; ++lot) {
            const auto gels = gelsOf(random, drawn(random, product, rules.lot), 4);
            if (const auto mean = meanOf(learnLot(priorOfNewLot(sheet, others), gels), gels))
                others.push_back(*mean);
        }
        const double truth = drawn(random, product, rules.lot);
        const Belief rate = learnLot(priorOfNewLot(sheet, others), gelsOf(random, truth, GetParam())).rate;
        ofLot += holds(rate, truth);
        ofNext += holds(ofTheNext(rate, rules.batch), drawn(random, truth, rules.batch));
    }
    for (const int held : {ofLot, ofNext}) {
        EXPECT_GE(held, 0.88 * lots);
        EXPECT_LE(held, 0.92 * lots);
    }
}

INSTANTIATE_TEST_SUITE_P(Batches, Coverage, testing::Values(0, 1, 3, 12));

/// A lot that really is 40 % faster is believed after three: the belief excludes the sheet, and its middle is within a
/// tenth of the truth, as a rule with batches that scatter, and always without their scatter.
TEST(Coverage, ALotThatIsMuchFasterIsBelievedAfterThree)
{
    std::mt19937_64 random(140);
    const double truth = std::log(1.4);
    int excludes = 0;
    int near = 0;
    for (int i = 0; i < lots; ++i) {
        const Belief rate = learnLot(sheet, gelsOf(random, truth, 3)).rate;
        excludes += middleOf(rate, rules.shown).low.value() > 0;
        near += std::abs(rate.mean.value() - truth) < std::log(1.1);
    }
    EXPECT_GE(excludes, 0.99 * lots);
    EXPECT_GE(near, 0.75 * lots);
    const BatchTold plain{{}, LogRate::ofLogarithm(truth), {}};
    const Belief rate = learnLot(sheet, {plain, plain, plain}).rate;
    EXPECT_GT(middleOf(rate, rules.shown).low.value(), 0);
    EXPECT_NEAR(rate.mean.value(), truth, std::log(1.1));
    EXPECT_TRUE(holds(ofTheNext(rate, rules.batch), truth));
    RecordProperty("excludes_sheet_percent", std::to_string(100.0 * excludes / lots));
    RecordProperty("within_a_tenth_percent", std::to_string(100.0 * near / lots));
}

} // namespace
} // namespace strandbench
