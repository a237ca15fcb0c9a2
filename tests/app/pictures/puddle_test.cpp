// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/puddle_layout.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Mix mixOf(double puddle, double bead)
{
    Mix mix;
    mix.puddle = millimetres(puddle);
    mix.bead = millimetres(bead);
    return mix;
}

const PuddleLabels words{u"True size"_s, u"not true size"_s, u"33 mm"_s, u"58 mm"_s};

class PuddleOnEveryGlass : public testing::TestWithParam<rules::Glass> {};

TEST_P(PuddleOnEveryGlass, isAsWideAndHighAsItSays)
{
    const Theme theme = samples::themeFor(GetParam());
    PuddlePicture picture(theme, u"puddle"_s);
    picture.resize(theme.px(122), theme.px(65));
    picture.setMix(mixOf(58, 33), words);
    ASSERT_TRUE(picture.drawnTrueSize());
    EXPECT_NEAR(picture.drawnPuddleMm(), 58, 1e-6);
    EXPECT_NEAR(picture.drawnBeadMm(), 33, 1e-6);
    const QImage image = pixels::grab(picture, theme);
    const double ppmm = GetParam().pixelsPerMillimetre();
    const int middle = image.height() / 2;
    EXPECT_NEAR(pixels::spanOfOthersInRow(image, middle, theme.color(Role::Card)), 58 * ppmm, 1.0);
    EXPECT_NEAR(pixels::spanOfOthersInColumn(image, image.width() / 2, theme.color(Role::Card)), 58 * ppmm, 1.0);
    EXPECT_NEAR(pixels::spanInRow(image, middle, theme.color(Role::HardenerFill)), 33 * ppmm, 1.0);
}

TEST_P(PuddleOnEveryGlass, tooBigShowsItsEdgeAndItsBeadAtTrueSize)
{
    const Theme theme = samples::themeFor(GetParam());
    PuddlePicture picture(theme, u"puddle"_s);
    picture.resize(theme.px(122), theme.px(65));
    picture.setMix(mixOf(101.6, 101.6), words);
    EXPECT_FALSE(picture.drawnTrueSize());
    EXPECT_LT(picture.drawnPuddleMm(), 65);
    EXPECT_NEAR(picture.drawnBeadMm(), 101.6, 1e-6);
    const QImage image = pixels::grab(picture, theme);
    const double ppmm = GetParam().pixelsPerMillimetre();
    const int row = image.height() - theme.px(1.5 + 0.5 + 4.6); // within the bead, above its figure's letters
    EXPECT_NEAR(pixels::spanInRow(image, row, theme.color(Role::HardenerFill)), 101.6 * ppmm, 1.0);
    // The true circle: its radius, and the ruler's ten-millimetre marks upon it.
    const PuddleLayout layout = layOutPuddle(QRectF(picture.rect()), mixOf(101.6, 101.6), words, theme);
    EXPECT_NEAR(layout.arcCircle.width(), 101.6 * ppmm, 1e-6);
    ASSERT_GT(layout.ticks.size(), 30U);
    EXPECT_NEAR(layout.ticks[30].x - layout.arcCircle.left(), 30 * ppmm, 1e-6);
    // In US units inches and eighths: the ninth mark stands at 1 in, 25.4 mm (exact: international yard), figure 1.
    PuddleLabels inUs = words;
    inUs.ruler = UnitSystem::UsCustomary;
    const PuddleLayout us = layOutPuddle(QRectF(picture.rect()), mixOf(101.6, 101.6), inUs, theme);
    ASSERT_GT(us.ticks.size(), 8U);
    EXPECT_NEAR(us.ticks[8].x - us.arcCircle.left(), 25.4 * ppmm, 1e-6);
    EXPECT_EQ(us.ticks[8].figure.text, u"1"_s);
    EXPECT_GT(us.ticks[8].length, us.ticks[4].length);
    EXPECT_GT(us.ticks[4].length, us.ticks[1].length);
}

TEST_P(PuddleOnEveryGlass, everyWordIsWhole)
{
    const Theme theme = samples::themeFor(GetParam());
    for (const double puddle : {25.4, 40.0, 58.0, 75.0, 101.6, 203.2, 250.0})
        for (const QSizeF& room : {QSizeF(122, 65), QSizeF(100, 60), QSizeF(80, 42)}) {
            PuddlePicture picture(theme, u"puddle"_s);
            picture.resize(theme.px(room.width()), theme.px(room.height()));
            const Mix mix = mixOf(puddle, puddle * 1.2);
            const PuddleLabels labels{u"Wahre Größe"_s, u"nicht in wahrer Größe"_s, u"12 3/16 in"_s, u"250 mm"_s};
            picture.setMix(mix, labels);
            EXPECT_TRUE(picture.textFits()) << puddle << " in " << room.width() << " x " << room.height();
            EXPECT_GE(picture.smallestTextMm(), 3.4);
        }
}

INSTANTIATE_TEST_SUITE_P(Glasses, PuddleOnEveryGlass, testing::ValuesIn(rules::glasses()));

TEST(Puddle, aBeadLongerThanThePuddleIsLaidEdgeToEdgeAndTheRestBelow)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const PuddleLayout layout = layOutPuddle(QRectF(0, 0, 720, 384), mixOf(203.2, 304.8), words, theme);
    ASSERT_EQ(layout.runs.size(), 2U);
    EXPECT_NEAR(layout.runs[0].width(), layout.puddle.width(), 1e-6);
    EXPECT_NEAR(layout.runs[1].width(), layout.puddle.width() / 2, 1e-6); // 8 in and 4 in more
    EXPECT_NEAR(layout.beadMm / layout.puddleMm, 304.8 / 203.2, 1e-9);
}

TEST(Puddle, saysSoWhenItsWordsDoNotFit)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    PuddlePicture picture(theme, u"puddle"_s);
    picture.resize(theme.px(20), theme.px(12));
    picture.setMix(mixOf(58, 33), words);
    EXPECT_FALSE(picture.textFits());
}

} // namespace
} // namespace strandbench
