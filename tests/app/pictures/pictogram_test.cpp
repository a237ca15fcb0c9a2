// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/pictogram.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The sign without its colours: light or dark only.
QImage shapeOfSign(Pictogram sign, int side)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    QImage image = pixels::paint({side, side}, theme, [&](QPainter& painter) {
        paintPictogram(painter, QRectF(0, 0, side, side), sign, theme, theme.color(Role::Ink));
    });
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            image.setPixel(x, y, qGray(image.pixel(x, y)) < 160 ? qRgb(0, 0, 0) : qRgb(255, 255, 255));
    return image;
}

double inkShare(const QImage& image)
{
    QImage blank(image.size(), image.format());
    blank.fill(Qt::white);
    return pixels::difference(image, blank);
}

TEST(Pictogram, everySignShowsAtEightAndAtTwentyMillimetres)
{
    for (const int side : {47, 118}) // 8 and 20 mm at 5.9 pixels a millimetre
        for (const Pictogram sign : allPictograms()) {
            const double share = inkShare(shapeOfSign(sign, side));
            EXPECT_GT(share, 0.04) << "sign " << static_cast<int>(sign) << " at " << side;
            EXPECT_LT(share, 0.95) << "sign " << static_cast<int>(sign) << " at " << side;
        }
}

TEST(Pictogram, noTwoSignsLookAlikeWithoutColour)
{
    const std::vector<Pictogram> signs = allPictograms();
    std::vector<QImage> shapes;
    for (const Pictogram sign : signs)
        shapes.push_back(shapeOfSign(sign, 47));
    for (std::size_t i = 0; i < shapes.size(); ++i)
        for (std::size_t j = i + 1; j < shapes.size(); ++j)
            EXPECT_GT(pixels::difference(shapes[i], shapes[j]), 0.03)
                << "signs " << static_cast<int>(signs[i]) << " and " << static_cast<int>(signs[j]);
}

TEST(Pictogram, nothingIsPaintedOutsideOfTheSquare)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    for (const Pictogram sign : allPictograms()) {
        const QImage image = pixels::paint({160, 120}, theme, [&](QPainter& painter) {
            paintPictogram(painter, QRectF(10, 10, 140, 100), sign, theme, theme.color(Role::Ink));
        });
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const bool inside = x >= 29 && x <= 131 && y >= 9 && y <= 111; // the largest centred square
                ASSERT_TRUE(inside || pixels::near(image.pixel(x, y), theme.color(Role::Card), 4))
                    << "sign " << static_cast<int>(sign) << " at " << x << ", " << y;
            }
    }
}

TEST(Pictogram, theStopSignIsRedTheCautionYellowTheTickGreen)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme(Metrics(5.9), dayNight, Hand::Right);
        const auto colourAt = [&](Pictogram sign, int x, int y) {
            return pixels::paint({120, 120}, theme,
                                 [&](QPainter& painter) {
                                     paintPictogram(painter, QRectF(0, 0, 120, 120), sign, theme,
                                                    theme.color(Role::Ink));
                                 })
                .pixel(x, y);
        };
        EXPECT_TRUE(pixels::near(colourAt(Pictogram::StopHand, 60, 8), theme.color(Role::Stop), 4));
        EXPECT_TRUE(pixels::near(colourAt(Pictogram::Caution, 35, 95), theme.color(Role::Caution), 4));
        EXPECT_TRUE(pixels::near(colourAt(Pictogram::Tick, 60, 20), theme.color(Role::Go), 4));
    }
}

TEST(Pictogram, everyPhaseAndStationHasASign)
{
    for (const auto& entry : Codes<Phase>::table)
        EXPECT_NE(signOf(entry.first), Pictogram::None) << entry.second;
    for (const auto& entry : Codes<Station>::table)
        EXPECT_NE(signOf(entry.first), Pictogram::None) << entry.second;
}

} // namespace
} // namespace strandbench
