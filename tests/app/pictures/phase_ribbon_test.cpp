// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/phase_look.h"
#include "pictures/phase_ribbon.h"
#include "pictures/picture_text.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

std::vector<PhaseSpan> spans()
{
    const auto span = [](Phase phase, double from, double to) { return PhaseSpan{phase, minutes(from), minutes(to)}; };
    return {span(Phase::Knead, 0, 0.75),  span(Phase::Spread, 0.75, 3.75), span(Phase::ClearEdges, 3.75, 5),
            span(Phase::HandsOff, 5, 10), span(Phase::Sand, 10, 20),       span(Phase::Harder, 20, 24)};
}

const QStringList words{u"Kneten"_s,    u"Auftragen"_s,          u"Ränder frei"_s,
                        u"Hände weg"_s, u"Schleifen, Korn 80"_s, u"härter"_s};

void show(PhaseRibbon& ribbon, double now)
{
    ribbon.setPhases(spans(), words, [](int minute) { return u"%1 min"_s.arg(minute); });
    ribbon.setNow(minutes(now));
}

class RibbonOnEveryGlass : public testing::TestWithParam<rules::Glass> {};

TEST_P(RibbonOnEveryGlass, wordsAreWholeInBothThemes)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme = samples::themeFor(GetParam(), dayNight);
        for (const double width : {80.0, 124.0, 205.0}) {
            PhaseRibbon ribbon(theme, u"phases"_s);
            ribbon.resize(theme.px(width), theme.px(23));
            show(ribbon, 2.2);
            EXPECT_TRUE(ribbon.textFits()) << width;
            EXPECT_GE(ribbon.smallestTextMm(), 3.4) << width;
        }
    }
}

TEST_P(RibbonOnEveryGlass, phasesAreToTimeScale)
{
    const Theme theme = samples::themeFor(GetParam());
    PhaseRibbon ribbon(theme, u"phases"_s);
    ribbon.resize(theme.px(205), theme.px(23));
    show(ribbon, 2.2);
    const QImage image = pixels::grab(ribbon, theme);
    const double band = ribbon.width() - 2.0 * theme.px(2);
    // The row just above the band's lower edge has neither words nor signs.
    int row = image.height() - 1;
    while (row > 0 && pixels::spanInRow(image, row, theme.color(Role::Go)) == 0)
        --row;
    row -= theme.px(1);
    // Sanding takes 10 of 24 minutes; soft edges at both ends may take or give a few millimetres.
    EXPECT_NEAR(pixels::spanInRow(image, row, theme.color(Role::Go)), band * 10 / 24, theme.px(6));
}

INSTANTIATE_TEST_SUITE_P(Glasses, RibbonOnEveryGlass, testing::ValuesIn(rules::glasses()));

TEST(PhaseRibbon, theMarkerStandsAtNow)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    PhaseRibbon ribbon(theme, u"phases"_s);
    ribbon.resize(1200, 136);
    for (const double now : {0.0, 6.0, 12.0, 23.0}) {
        show(ribbon, 0);
        const QImage before = pixels::grab(ribbon, theme);
        show(ribbon, now == 0.0 ? 18.0 : now);
        const QImage after = pixels::grab(ribbon, theme);
        // Where the two differ in the row of the triangle's top, there the marker stands now.
        const double expected = theme.px(2) + (1200 - 2 * theme.px(2)) * (now == 0.0 ? 18.0 : now) / 24.0;
        double left = 1e9;
        double right = -1;
        for (int y = 0; y < after.height(); ++y)
            for (int x = theme.px(8); x < after.width(); ++x)
                if (!pixels::near(before.pixel(x, y), QColor(after.pixel(x, y)), 40)) {
                    left = std::min<double>(left, x);
                    right = std::max<double>(right, x);
                }
        EXPECT_NEAR((left + right) / 2, expected, 1.5) << now;
    }
}

TEST(PhaseRibbon, everyPhaseReadsUponItsColour)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme(Metrics(5.9), dayNight, Hand::Right);
        for (const auto& entry : Codes<Phase>::table) {
            const PhaseLook look = lookOf(entry.first, theme);
            EXPECT_GE(contrastRatio(look.ink, look.ground), 4.5) << entry.second;
        }
    }
}

TEST(PhaseRibbon, withoutPhasesNothingIsPainted)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    PhaseRibbon ribbon(theme, u"phases"_s);
    ribbon.resize(600, 136);
    QImage blank(ribbon.size(), QImage::Format_RGB32);
    blank.fill(theme.color(Role::Card));
    EXPECT_EQ(pixels::difference(pixels::grab(ribbon, theme), blank), 0);
}

} // namespace
} // namespace strandbench
