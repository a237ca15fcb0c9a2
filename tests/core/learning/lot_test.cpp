// SPDX-License-Identifier: GPL-3.0-or-later
// What a lot teaches: which batches count, and when a lot is believed to be another than it should be.
#include "learning/lot.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace strandbench {
namespace {

using testing::ElementsAre;

const Belief prior{LogRate(), 0.1};
const LearningRules rules;

BatchTold gelAt(double logRate) { return {{}, LogRate::ofLogarithm(logRate), {}}; }

LotLearnt learn(const std::vector<double>& gels)
{
    std::vector<BatchTold> batches;
    for (const double each : gels)
        batches.push_back(gelAt(each));
    return learnLot(prior, batches);
}

TEST(Lot, WithoutBatchesIsItsPrior)
{
    const LotLearnt learnt = learnLot(prior, {});
    EXPECT_EQ(learnt.rate, prior);
    EXPECT_EQ(learnt.counted, 0);
    EXPECT_FALSE(learnt.different);
}

TEST(Lot, CountsItsGels)
{
    const LotLearnt learnt = learn({0.05, -0.02, 0.1});
    const Belief expected = afterSeeing(prior, LogRate::ofLogarithm(0.13 / 3), rules.batch / std::sqrt(3.0));
    EXPECT_NEAR(learnt.rate.mean.value(), expected.mean.value(), 1e-12);
    EXPECT_NEAR(learnt.rate.spread, expected.spread, 1e-12);
    EXPECT_EQ(learnt.counted, 3);
    EXPECT_THAT(learnt.lessons, ElementsAre(BatchLesson::Counted, BatchLesson::Counted, BatchLesson::Counted));
}

TEST(Lot, IsSurerWithEveryGel)
{
    std::vector<BatchTold> batches;
    double before = prior.spread;
    for (int i = 0; i < 20; ++i) {
        batches.push_back(gelAt(0.03));
        const double now = learnLot(prior, batches).rate.spread;
        EXPECT_LT(now, before) << i;
        before = now;
    }
}

/// One batch has one bead: both its gels are one lesson.
TEST(Lot, TakesBoardAndPanelOfABatchAsOne)
{
    const LotLearnt both = learnLot(prior, {{LogRate::ofLogarithm(0.1), LogRate::ofLogarithm(0.2), {}}});
    const LotLearnt one = learnLot(prior, {gelAt(0.15)});
    EXPECT_NEAR(both.rate.mean.value(), one.rate.mean.value(), 1e-15);
    EXPECT_DOUBLE_EQ(both.rate.spread, one.rate.spread);
    EXPECT_EQ(both.counted, 1);
    const LotLearnt board = learnLot(prior, {{LogRate::ofLogarithm(0.15), {}, {}}});
    EXPECT_EQ(board.rate, one.rate);
}

/// A forgotten bead, or twice the hardener: three times as long or as short.
TEST(Lot, AFactorOfThreeMovesNothing)
{
    for (const double outlier : {std::log(3.0), -std::log(3.0)})
        for (const std::vector<double>& sound :
             {std::vector<double>{}, std::vector<double>{0.05}, std::vector<double>{0.05, 0.1, -0.03, 0.08, 0.02}}) {
            const LotLearnt before = learn(sound);
            std::vector<double> with = sound;
            with.push_back(outlier);
            const LotLearnt after = learn(with);
            EXPECT_EQ(after.rate, before.rate);
            EXPECT_EQ(after.lessons.back(), BatchLesson::Held);
            EXPECT_EQ(after.counted, before.counted);
            // Nor does it once the lot goes on.
            with.push_back(0.06);
            std::vector<double> without = sound;
            without.push_back(0.06);
            EXPECT_EQ(learn(with).rate, learn(without).rate);
        }
}

/// Two outliers, one to each side, are two beads laid wrong; three on one side are another lot.
TEST(Lot, IsDifferentAfterThreeInARowOnOneSide)
{
    EXPECT_FALSE(learn({0.9, 0.9}).different);
    EXPECT_FALSE(learn({0.9, -0.9, 0.9, -0.9}).different);
    EXPECT_FALSE(learn({0.9, 0.9, 0.02, 0.9}).different) << "a sound one in between";
    const LotLearnt different = learn({0.02, 0.05, 0.9, 0.92, 0.88});
    EXPECT_TRUE(different.different);
    EXPECT_NEAR(different.rate.mean.value(), 0.9, 0.01);
    EXPECT_THAT(different.lessons, ElementsAre(BatchLesson::Before, BatchLesson::Before, BatchLesson::Counted,
                                               BatchLesson::Counted, BatchLesson::Counted));
    EXPECT_EQ(different.counted, 3);
}

TEST(Lot, AForgottenBatchInBetweenDoesNotBreakTheRow)
{
    const BatchTold silent;
    const LotLearnt learnt = learnLot(prior, {gelAt(0.9), silent, gelAt(0.9), silent, gelAt(0.9)});
    EXPECT_TRUE(learnt.different);
    EXPECT_EQ(learnt.lessons[1], BatchLesson::Silent);
    EXPECT_EQ(learnt.counted, 3);
}

/// Held at first because it was far from the sheet; the lot came to meet it.
TEST(Lot, CountsWhatItHeldOnceTheBeliefIsThere)
{
    ASSERT_EQ(learn({0.4}).lessons.front(), BatchLesson::Held);
    const LotLearnt learnt = learn({0.4, 0.3, 0.3});
    EXPECT_THAT(learnt.lessons, ElementsAre(BatchLesson::Counted, BatchLesson::Counted, BatchLesson::Counted));
    EXPECT_FALSE(learnt.different);
}

TEST(Lot, ItSandsBoundsItOnly)
{
    const LotLearnt late = learnLot(prior, {{{}, {}, LogRate::ofLogarithm(-0.8)}});
    EXPECT_NEAR(late.rate.mean.value(), 0, 1e-6) << "told long after";
    EXPECT_EQ(late.lessons.front(), BatchLesson::Bound);
    const LotLearnt early = learnLot(prior, {{{}, {}, LogRate::ofLogarithm(0.2)}});
    EXPECT_GT(early.rate.mean.value(), 0.05);
    EXPECT_LT(early.rate.spread, prior.spread);
    const LotLearnt both = learnLot(prior, {{{}, LogRate::ofLogarithm(0.1), LogRate::ofLogarithm(0.2)}});
    EXPECT_EQ(both.rate, learnLot(prior, {gelAt(0.1)}).rate) << "the gel says it better";
    EXPECT_EQ(learnLot(prior, {{{}, {}, LogRate::ofLogarithm(1.1)}}).lessons.front(), BatchLesson::Held);
}

} // namespace
} // namespace strandbench
