// SPDX-License-Identifier: GPL-3.0-or-later
// States that must differ do so for people who do not see all colours: in lightness or in shape, never in hue alone.
#include "touch_rules/colour_vision.h"

#include "pictures/hatch.h"
#include "pictures/mix_block.h"
#include "pictures/phase_ribbon.h"
#include "pictures/pictogram.h"
#include "pixels.h"
#include "samples.h"
#include "touch/tap_button.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using rules::differenceMm2;
using rules::everyVision;
using rules::leastDifferenceMm2;
using rules::seen;
using rules::Vision;

constexpr double ppmm = 5.9;
/// Of a swatch: as much as the sparsest of our hatches has ink, a stroke of 1.15 by 0.22 mm in each 11 mm².
constexpr double hatchShare = 0.02;

struct Shown {
    std::string name;
    QImage picture;
};

/// Every pair differs, whoever looks.
void expectToldApart(const std::vector<Shown>& all, double ratio = rules::leastGraphicRatio,
                     double mm2 = leastDifferenceMm2)
{
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j)
            for (const Vision vision : everyVision)
                EXPECT_GE(differenceMm2(all[i].picture, all[j].picture, vision, ppmm, ratio), mm2)
                    << all[i].name << " and " << all[j].name << " with " << rules::nameOf(vision);
}

// Worked out apart from this code, from the matrices and the transfer of sRGB.
TEST(ColourVision, primariesAreSeenAsPublished)
{
    EXPECT_EQ(seen(QColor(255, 0, 0), Vision::Protanopia).name(), u"#6d5f00"_s);
    EXPECT_EQ(seen(QColor(255, 0, 0), Vision::Deuteranopia).name(), u"#a39000"_s);
    EXPECT_EQ(seen(QColor(0, 0, 255), Vision::Tritanopia).name(), u"#006b96"_s);
}

TEST(ColourVision, greyStaysGrey)
{
    for (const Vision vision : everyVision) {
        for (const auto& row : rules::matrixOf(vision))
            EXPECT_NEAR(row[0] + row[1] + row[2], 1, 2e-6) << rules::nameOf(vision);
        for (const int level : {0, 64, 128, 200, 255})
            EXPECT_EQ(seen(QColor(level, level, level), vision), QColor(level, level, level)) << rules::nameOf(vision);
    }
}

class SeenBy : public testing::TestWithParam<DayNight> {
protected:
    [[nodiscard]] QImage key(TapButton::Kind kind, bool chosen = false, bool open = true) const
    {
        TapButton made(theme, u"key"_s, kind);
        made.setTitle(u"Key"_s);
        made.resize(theme.px(50), theme.px(24));
        made.setChecked(chosen);
        made.setEnabled(open);
        return pixels::grab(made, theme, Role::Ground);
    }
    [[nodiscard]] QImage sign(Pictogram of) const
    {
        const QSize size(theme.px(9), theme.px(9));
        return pixels::paint(size, theme, [&](QPainter& painter) {
            paintPictogram(painter, QRectF(QPointF(), QSizeF(size)), of, theme, theme.color(Role::Ink));
        });
    }
    [[nodiscard]] QImage swatch(Material material) const
    {
        const QSize size(theme.px(20), theme.px(12));
        return pixels::paint(size, theme, [&](QPainter& painter) {
            QPainterPath area;
            area.addRect(QRectF(QPointF(), QSizeF(size)));
            paintMaterial(painter, area, material, theme);
        });
    }
    const Theme theme = Theme(Metrics(ppmm), GetParam(), Hand::Right);
};

constexpr std::array<Phase, 6> phases{Phase::Knead,    Phase::Spread, Phase::ClearEdges,
                                      Phase::HandsOff, Phase::Sand,   Phase::Harder};

/// The word left out: shape and ground alone.
TEST_P(SeenBy, thePhasesOfARunningMixAreToldApart)
{
    std::vector<Shown> all;
    for (const Phase phase : phases) {
        MixBlock block(theme, u"block"_s);
        block.resize(theme.px(60), theme.px(20));
        ClockFace face;
        face.phase = phase;
        face.phaseGone = Fraction::ofOne(0.4);
        block.setShown(face, {u"4421"_s, {}, u"02:05"_s});
        all.push_back({"block in phase " + std::to_string(int(phase)), pixels::grab(block, theme, Role::RibbonGround)});
    }
    expectToldApart(all);
}

/// The clock's own ribbon names its phases by words; where one ends is to be seen without their hue.
TEST_P(SeenBy, theEndOfEachPhaseOnTheClocksRibbonIsSeen)
{
    const auto ribbonThatTurns = [&](Phase first, Phase second, double at) {
        PhaseRibbon ribbon(theme, u"phases"_s);
        ribbon.resize(theme.px(80), theme.px(23));
        ribbon.setPhases({PhaseSpan{first, minutes(0), minutes(at)}, PhaseSpan{second, minutes(at), minutes(10)}},
                         {QString(), QString()}, [](int) { return QString(); });
        return pixels::grab(ribbon, theme);
    };
    for (std::size_t i = 0; i + 1 < phases.size(); ++i)
        expectToldApart(
            {{"phase " + std::to_string(i) + " that ends sooner", ribbonThatTurns(phases.at(i), phases.at(i + 1), 4)},
             {"later", ribbonThatTurns(phases.at(i), phases.at(i + 1), 6)}});
}

TEST_P(SeenBy, stopIsNoWayOnAndAChoiceShows)
{
    using Kind = TapButton::Kind;
    expectToldApart({{"stop", key(Kind::Stop)}, {"go", key(Kind::Go)}});
    expectToldApart({{"stop", key(Kind::Stop)}, {"way on", key(Kind::Way)}});
    expectToldApart({{"plain", key(Kind::Plain)}, {"way on", key(Kind::Way)}});
    expectToldApart({{"plain", key(Kind::Plain)}, {"go", key(Kind::Go)}});
    expectToldApart({{"chosen", key(Kind::Choice, true)}, {"not chosen", key(Kind::Choice)}});
    expectToldApart({{"way on", key(Kind::Way)}, {"way on that is not open", key(Kind::Way, false, false)}});
}

TEST_P(SeenBy, theSignsOfStateAreToldApart)
{
    expectToldApart({{"stop", sign(Pictogram::StopHand)},
                     {"caution", sign(Pictogram::Caution)},
                     {"tick", sign(Pictogram::Tick)},
                     {"question", sign(Pictogram::Question)}});
}

TEST_P(SeenBy, materialsAreToldApartByTheirHatch)
{
    expectToldApart({{"laminate", swatch(Material::Laminate)},
                     {"smc", swatch(Material::Smc)},
                     {"steel", swatch(Material::Steel)},
                     {"aluminium", swatch(Material::Aluminium)},
                     {"carbon", swatch(Material::Carbon)},
                     {"plastic", swatch(Material::Plastic)},
                     {"adhesive", swatch(Material::Adhesive)},
                     {"filler", swatch(Material::Filler)},
                     {"next lift", swatch(Material::FillerLater)},
                     {"finish", swatch(Material::Finish)},
                     {"hardener", swatch(Material::Hardener)}},
                    rules::leastHatchRatio, hatchShare * 20 * 12);
}

/// Two swatches of one hatch, and two keys of one shape, in hues of one lightness: nobody is to need the hue.
TEST_P(SeenBy, hueAloneIsFound)
{
    const auto plain = [](QRgb color) {
        QImage image(60, 60, QImage::Format_RGB32);
        image.fill(color);
        return image;
    };
    EXPECT_LT(differenceMm2(plain(0xFF9C1218), plain(0xFF075A31), Vision::Full, ppmm), leastDifferenceMm2);
    EXPECT_LT(differenceMm2(plain(0xFFB9D2C6), plain(0xFFD9C6B9), Vision::Deuteranopia, ppmm), leastDifferenceMm2);
    // Dark red upon black is there for most people, and not for those who see no red.
    EXPECT_GE(differenceMm2(plain(0xFFD00000), plain(0xFF000000), Vision::Full, ppmm), leastDifferenceMm2);
    EXPECT_LT(differenceMm2(plain(0xFFD00000), plain(0xFF000000), Vision::Protanopia, ppmm), leastDifferenceMm2);
}

/// A mark that is too small to be seen at arm's length is none.
TEST_P(SeenBy, aSpeckIsNoDifference)
{
    QImage marked = key(TapButton::Kind::Plain);
    const QImage plain = marked;
    for (int y = 20; y < 28; ++y)
        for (int x = 20; x < 28; ++x)
            marked.setPixelColor(x, y, theme.color(Role::Ink));
    EXPECT_LT(differenceMm2(plain, marked, Vision::Full, ppmm), leastDifferenceMm2);
}

INSTANTIATE_TEST_SUITE_P(InTheme, SeenBy, testing::Values(DayNight::Day, DayNight::Night),
                         [](const auto& each) { return each.param == DayNight::Day ? "day" : "night"; });

} // namespace
} // namespace strandbench
