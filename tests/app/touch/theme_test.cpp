// SPDX-License-Identifier: GPL-3.0-or-later
// Colours, sizes and fonts of the theme.
#include "theme/theme.h"

#include "touch_rules/contrast.h"

#include <QFontInfo>
#include <QFontMetricsF>

#include <gtest/gtest.h>

#include <stdexcept>
#include <vector>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;
using rules::contrastRatio;

struct ContrastVector {
    QRgb one;
    QRgb other;
    double ratio;
};

// Ratios computed apart from this code after the definition of relative luminance in WCAG 2.x; the pairs on
// either side of 4.5 and 7 are well-known limits. The four sign colours are the RGB of ISO 3864-4's.
TEST(Contrast, matchesKnownVectors)
{
    const std::vector<ContrastVector> known{
        {0x000000, 0xFFFFFF, 21.000}, {0x777777, 0xFFFFFF, 4.478}, {0x767676, 0xFFFFFF, 4.542},
        {0x595959, 0xFFFFFF, 7.005},  {0x5A5A5A, 0xFFFFFF, 6.897}, {0x0000FF, 0xFFFFFF, 8.592},
        {0xFF0000, 0xFFFFFF, 3.998},  {0xF9A800, 0x000000, 10.63}, {0x9B2423, 0xFFFFFF, 7.86},
        {0x005387, 0xFFFFFF, 8.12},   {0x237F52, 0xFFFFFF, 4.97},  {0xD05D29, 0x000000, 5.28},
        {0xD05D29, 0xFFFFFF, 3.98},
    };
    for (const ContrastVector& pair : known) {
        EXPECT_NEAR(contrastRatio(QColor(pair.one), QColor(pair.other)), pair.ratio, 0.006) << std::hex << pair.one;
        EXPECT_NEAR(contrastRatio(QColor(pair.other), QColor(pair.one)), pair.ratio, 0.006) << std::hex << pair.one;
    }
}

struct RolePair {
    Role ink;
    Role ground;
};

class Palette : public testing::TestWithParam<DayNight> {
protected:
    [[nodiscard]] double contrast(Role one, Role other) const
    {
        const Theme theme(Metrics(5.9), GetParam(), Hand::Right);
        return contrastRatio(theme.color(one), theme.color(other));
    }
    void expectAll(const std::vector<RolePair>& pairs, double least) const
    {
        for (const RolePair& pair : pairs)
            EXPECT_GE(contrast(pair.ink, pair.ground), least)
                << "roles " << static_cast<int>(pair.ink) << " on " << static_cast<int>(pair.ground);
    }
};

TEST_P(Palette, textIsAtLeastSevenToOne)
{
    expectAll({{Role::Ink, Role::Ground},
               {Role::Ink, Role::Card},
               {Role::MutedInk, Role::Ground},
               {Role::MutedInk, Role::Card},
               {Role::Action, Role::Card},
               {Role::Action, Role::Ground},
               {Role::Go, Role::Card},
               {Role::Stop, Role::Card},
               {Role::Stop, Role::Ground},
               {Role::OnAction, Role::Action},
               {Role::OnGo, Role::Go},
               {Role::OnCaution, Role::Caution},
               {Role::OnStop, Role::Stop},
               {Role::OnRibbon, Role::RibbonGround},
               {Role::OnRibbon, Role::RibbonBlock},
               {Role::OnRibbonMuted, Role::RibbonGround},
               {Role::OnRibbonMuted, Role::RibbonBlock},
               {Role::HardenerFill, Role::Card}},
              7.0);
}

TEST_P(Palette, figuresInPicturesAreAtLeastFourAndAHalfToOne)
{
    expectAll({{Role::Ink, Role::LaminateFill},
               {Role::Ink, Role::SmcFill},
               {Role::Ink, Role::MetalFill},
               {Role::Ink, Role::ZincFill},
               {Role::Ink, Role::FillerFill},
               {Role::Ink, Role::FillerSecond},
               {Role::Ink, Role::FinishFill},
               {Role::Ink, Role::Hole}},
              4.5);
}

TEST_P(Palette, edgesOfControlsAreAtLeastThreeToOne)
{
    // On a pressed control the overlay lies over the card, so the card's own contrast is what counts.
    expectAll({{Role::Edge, Role::Card},
               {Role::Edge, Role::Ground},
               {Role::MutedInk, Role::Card},
               {Role::Action, Role::Card},
               {Role::Action, Role::Ground},
               {Role::Go, Role::Ground},
               {Role::Stop, Role::Ground},
               {Role::HardenerFill, Role::FillerFill}},
              3.0);
}

INSTANTIATE_TEST_SUITE_P(Theme, Palette, testing::Values(DayNight::Day, DayNight::Night),
                         [](const auto& each) { return each.param == DayNight::Day ? "day" : "night"; });

TEST(Theme, pressedTextStillReads)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme(Metrics(5.9), dayNight, Hand::Right);
        const QColor over = theme.color(Role::Pressed);
        const QColor card = theme.color(Role::Card);
        const auto mix = [&](int top, int under) { return (top * over.alpha() + under * (255 - over.alpha())) / 255; };
        const QColor pressed(mix(over.red(), card.red()), mix(over.green(), card.green()),
                             mix(over.blue(), card.blue()));
        EXPECT_GE(contrastRatio(theme.color(Role::Ink), pressed), 7.0);
        EXPECT_NE(pressed, card);
    }
}

TEST(Theme, fontHasTheEmHeightAskedFor)
{
    const Theme theme(Metrics(10), DayNight::Day, Hand::Right);
    EXPECT_EQ(theme.font(3.4).pixelSize(), 34);
    EXPECT_EQ(theme.font(22).pixelSize(), 220);
    EXPECT_TRUE(theme.font(6, true).bold());
}

TEST(Theme, fontIsB612WithFiguresOfOneWidth)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    for (const bool bold : {false, true}) {
        const QFont font = theme.font(22, bold);
        ASSERT_EQ(QFontInfo(font).family(), u"B612"_s) << "the package of the font is not installed";
        const QFontMetricsF metrics(font);
        for (char16_t digit = u'1'; digit <= u'9'; ++digit)
            EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QChar(digit)), metrics.horizontalAdvance(u'0'))
                << static_cast<char>(digit) << (bold ? " bold" : "");
        // The package's monospaced files call themselves B612 as well.
        EXPECT_LT(metrics.horizontalAdvance(u'i'), 0.6 * metrics.horizontalAdvance(u'W'))
            << (bold ? "bold" : "regular");
    }
}

TEST(Theme, runningFigureNeverChangesItsWidth)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const QFontMetricsF metrics(theme.font(22, true));
    const double width = metrics.horizontalAdvance(u"00:00"_s);
    for (int second = 0; second < 3600; ++second) {
        const QString shown = QString::asprintf("%02d:%02d", second / 60, second % 60);
        ASSERT_NEAR(metrics.horizontalAdvance(shown), width, 1e-6) << shown.toStdString();
    }
}

TEST(Theme, refusesAScreenWithoutPixels)
{
    EXPECT_THROW(Theme(Metrics(0), DayNight::Day, Hand::Right), std::invalid_argument);
    EXPECT_THROW(Theme(Metrics(-5.9), DayNight::Day, Hand::Right), std::invalid_argument);
}

TEST(Theme, leastSizesAreThoseOfTheRules)
{
    EXPECT_GE(Theme::size(TextRole::Sentence).leastMm, 7.0);
    EXPECT_GE(Theme::size(TextRole::Figure).leastMm, 18.0);
    for (const TextRole role : {TextRole::BigFigure, TextRole::Title, TextRole::Body, TextRole::Small}) {
        EXPECT_GE(Theme::size(role).leastMm, 3.4);
        EXPECT_GE(Theme::size(role).preferredMm, Theme::size(role).leastMm);
    }
}

} // namespace
} // namespace strandbench
