// SPDX-License-Identifier: GPL-3.0-or-later
#include "instrument/steadiness.h"

#include <gtest/gtest.h>

using namespace strandbench;

namespace {

TEST(Steadiness, ThreeThatSayTheSameOverASecondMayBeTakenOver)
{
    Steadiness scale(0.011);
    scale.take(58.42, {}, seconds(0));
    scale.take(58.42, {}, seconds(0.5));
    EXPECT_EQ(scale.steady(seconds(0.5)), std::nullopt);
    EXPECT_EQ(scale.newest(seconds(0.5)), 58.42);
    scale.take(58.43, {}, seconds(0.9));
    EXPECT_EQ(scale.steady(seconds(0.9)), std::nullopt) << "of less than a second";
    scale.take(58.43, {}, seconds(1.1));
    EXPECT_EQ(scale.steady(seconds(1.2)), 58.43);
}

TEST(Steadiness, OneThatLostADigitBeginsAnew)
{
    Steadiness scale(0.011);
    for (int i = 0; i < 10; ++i)
        scale.take(58.42, {}, seconds(0.5 * i));
    ASSERT_TRUE(scale.steady(seconds(4.5)));
    scale.take(8.42, {}, seconds(5));
    EXPECT_EQ(scale.steady(seconds(5)), std::nullopt);
    for (int i = 0; i < 2; ++i)
        scale.take(58.42, {}, seconds(5.5 + 0.5 * i));
    EXPECT_EQ(scale.steady(seconds(6)), std::nullopt);
    scale.take(58.42, {}, seconds(6.5));
    EXPECT_EQ(scale.steady(seconds(6.5)), 58.42);
}

TEST(Steadiness, WhatCreepsIsNotSteady)
{
    Steadiness scale(0.011);
    for (int i = 0; i < 50; ++i) {
        scale.take(58.0 + 0.01 * i, {}, seconds(0.5 * i));
        EXPECT_EQ(scale.steady(seconds(0.5 * i)), std::nullopt)
            << "each is near the one before, not the one before that";
    }
}

TEST(Steadiness, TheInstrumentsOwnWordCounts)
{
    Steadiness scale(0.011);
    for (int i = 0; i < 10; ++i)
        scale.take(58.42, false, seconds(0.5 * i));
    EXPECT_EQ(scale.steady(seconds(4.5)), std::nullopt);
    EXPECT_EQ(scale.newest(seconds(4.5)), 58.42) << "it is shown all the same";
    for (int i = 0; i < 3; ++i)
        scale.take(58.42, true, seconds(5 + 0.5 * i));
    EXPECT_EQ(scale.steady(seconds(6)), 58.42);
}

TEST(Steadiness, WhatIsOldIsNothing)
{
    Steadiness scale(0.011);
    for (int i = 0; i < 10; ++i)
        scale.take(58.42, {}, seconds(0.5 * i));
    EXPECT_TRUE(scale.steady(seconds(7.5)));
    EXPECT_EQ(scale.steady(seconds(7.6)), std::nullopt);
    EXPECT_EQ(scale.newest(seconds(7.6)), std::nullopt);
    scale.take(58.42, {}, seconds(60));
    EXPECT_EQ(scale.steady(seconds(60)), std::nullopt) << "what was before the gap does not speak for what is after";
}

} // namespace
