// SPDX-License-Identifier: GPL-3.0-or-later
// Before the first batch of a lot: the sheet, and the product's other lots.
#include "learning/product.h"

#include <gtest/gtest.h>

namespace strandbench {
namespace {

const LearningRules rules;

ProductSheet sheetOf(double early, double nominal, double late)
{
    ProductSheet sheet;
    sheet.working = {minutes(nominal), minutes(early), minutes(late)};
    return sheet;
}

/// 4 to 6 min: the logarithm of 1.5 is 0.4055, four standard deviations.
TEST(Product, ASheetsRangeIsTwoSpreadsEitherWay)
{
    const Belief prior = priorOf(sheetOf(4, 5, 6));
    EXPECT_DOUBLE_EQ(prior.mean.value(), 0);
    EXPECT_NEAR(prior.spread, 0.10137, 1e-5);
    EXPECT_DOUBLE_EQ(priorOf(sheetOf(5, 5, 5)).spread, rules.sheetAtLeast) << "one time is not certainty";
}

TEST(Product, WithoutAnotherLotANewOneIsTheSheets)
{
    for (const double spread : {0.05, 0.1, 0.3}) {
        const Belief sheet{LogRate(), spread};
        const Belief lot = priorOfNewLot(sheet, {});
        EXPECT_DOUBLE_EQ(lot.mean.value(), 0);
        EXPECT_NEAR(lot.spread, spread, 1e-12);
    }
}

TEST(Product, OtherLotsMoveANewOneAndLeaveItWide)
{
    const Belief sheet{LogRate(), 0.1};
    const LotMean fast{LogRate::ofLogarithm(0.15), 12};
    Belief before = priorOfNewLot(sheet, {});
    std::vector<LotMean> lots;
    for (int i = 0; i < 8; ++i) {
        lots.push_back(fast);
        const Belief lot = priorOfNewLot(sheet, lots);
        EXPECT_GT(lot.mean.value(), before.mean.value()) << i;
        EXPECT_LT(lot.mean.value(), 0.15) << i;
        EXPECT_LT(lot.spread, before.spread) << i;
        EXPECT_GT(lot.spread, rules.lot) << "never surer than lots differ";
        before = lot;
    }
    const Belief once = priorOfNewLot(sheet, {{LogRate::ofLogarithm(0.15), 1}});
    const Belief often = priorOfNewLot(sheet, {{LogRate::ofLogarithm(0.15), 12}});
    EXPECT_GT(often.mean.value(), once.mean.value());
    EXPECT_LT(often.spread, once.spread);
}

TEST(Product, ALotThatIsDifferentSaysNothingOfTheNext)
{
    const Belief prior{LogRate(), 0.1};
    const auto gels = [](std::vector<double> values) {
        std::vector<BatchTold> batches;
        for (const double each : values)
            batches.push_back({{}, LogRate::ofLogarithm(each), {}});
        return batches;
    };
    const auto sound = gels({0.02, 0.04, 1.2});
    const auto mean = meanOf(learnLot(prior, sound), sound);
    ASSERT_TRUE(mean);
    EXPECT_NEAR(mean->mean.value(), 0.03, 1e-12) << "without the one that is held";
    EXPECT_EQ(mean->batches, 2);
    const auto different = gels({0.9, 0.9, 0.9});
    EXPECT_FALSE(meanOf(learnLot(prior, different), different));
    EXPECT_FALSE(meanOf(learnLot(prior, {}), {}));
}

} // namespace
} // namespace strandbench
