// SPDX-License-Identifier: GPL-3.0-or-later
// Targets and letters beside published figures of human factors.
#include "theme/sizes.h"
#include "theme/theme.h"

#include <QFontInfo>
#include <QFontMetricsF>

#include <gtest/gtest.h>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;

/// MIL-STD-1472E, paragraph 5.4.3.1.3.3: keys for the finger of an arctic mitten are at least 19 mm wide. No glove of a
/// bench is thicker. From memory of its later editions: a pushbutton for a bare fingertip at least 10 mm, an area of a
/// touch screen at least 15 to 16 mm, 3 to 6 mm apart.
TEST(PublishedSizes, TargetsAtTheBenchTakeAGlove)
{
    EXPECT_GE(sizes::target, 19);
    EXPECT_GE(sizes::answer, 19);
    EXPECT_GE(sizes::target, 16);
    EXPECT_GE(sizes::denseTarget, 10);
    EXPECT_GE(sizes::gap, 3);
    EXPECT_LE(sizes::gap, 6);
}

/// WCAG 2.2, success criteria 2.5.8 and 2.5.5: at least 24 and, enhanced, 44 CSS pixels of a 96th of an inch: 6.35 and
/// 11.64 mm. The enhanced one also where the work is not at the bench.
TEST(PublishedSizes, TargetsElsewhereAreThoseOfTheEnhancedCriterion)
{
    EXPECT_NEAR(24 * 25.4 / 96, 6.35, 0.005);
    EXPECT_NEAR(44 * 25.4 / 96, 11.64, 0.005);
    EXPECT_GE(sizes::denseTarget, 11.64);
}

/// Millimetres of a letter that is seen under so many minutes of arc: NUREG-0700, 1.3.1-4, height = 6.283 D MA / 21600.
double heightOf(double minutesOfArc, double metresAway) { return 6.283 * metresAway * 1000 * minutesOfArc / 21600; }

/// Millimetres of a capital, which is what the standards call a character's height.
double capitalOf(double emMillimetres)
{
    const Theme theme(Metrics(20), DayNight::Day, Hand::Right);
    return QFontMetricsF(theme.font(emMillimetres)).capHeight() / 20;
}

TEST(PublishedSizes, HeightsAreWorkedOutRight) // apart from this code, to 0.01 mm
{
    EXPECT_NEAR(heightOf(16, 0.5), 2.33, 0.005);
    EXPECT_NEAR(heightOf(20, 0.6), 3.49, 0.005);
    EXPECT_NEAR(heightOf(22, 0.8), 5.12, 0.005);
    EXPECT_NEAR(heightOf(16, 1), 4.65, 0.005);
    EXPECT_NEAR(heightOf(22, 2), 12.80, 0.005);
}

/// ISO 9241-3 (as quoted): capitals of at least 16 minutes of arc, 20 to 22 preferred. So what stands smallest is read
/// from half a metre, the sentence from a metre, and the running figure from two with ease.
TEST(PublishedSizes, LettersAreTallEnoughForTheirDistance)
{
    ASSERT_EQ(QFontInfo(Theme(Metrics(20), DayNight::Day, Hand::Right).font(7)).family(), u"B612"_s);
    for (const TextRole role : {TextRole::Title, TextRole::Body, TextRole::Small, TextRole::BigFigure}) {
        EXPECT_GE(capitalOf(Theme::size(role).leastMm), heightOf(16, 0.5));
        EXPECT_GE(capitalOf(Theme::size(role).preferredMm), heightOf(20, 0.5));
    }
    EXPECT_GE(capitalOf(Theme::size(TextRole::Sentence).leastMm), heightOf(16, 1));
    EXPECT_GE(capitalOf(Theme::size(TextRole::Sentence).preferredMm), heightOf(20, 1));
    EXPECT_GE(capitalOf(Theme::size(TextRole::Figure).leastMm), heightOf(22, 2));
}

} // namespace
} // namespace strandbench
