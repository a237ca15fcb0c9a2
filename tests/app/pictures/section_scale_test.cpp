// SPDX-License-Identifier: GPL-3.0-or-later
// The section's scale, measured in what was painted.
#include "pictures/section_layout.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench {
namespace {

struct Measured {
    double exaggeration = 0;
    double across = 0;         ///< pixels a millimetre, from the finish's width a quarter millimetre deep
    std::vector<double> lines; ///< y of the ink lines down the middle: skim, contour, fibre filler, floor, ...
};

Measured measure(const SectionDrawing& drawing, const Theme& theme, double widthAtQuarterMm)
{
    Measured measured;
    const QSize size(1100, 700);
    const QImage image = pixels::paint(size, theme, [&](QPainter& painter) {
        measured.exaggeration = paintSection(painter, QRectF(QPointF(), QSizeF(size)), drawing, theme);
    });
    measured.lines = pixels::linesDown(image, size.width() / 2, theme.color(Role::Ink));
    if (measured.lines.size() < 4)
        return measured;
    const int quarter = static_cast<int>((measured.lines[1] + measured.lines[2]) / 2);
    const double line = theme.metrics().pixelsPerMillimetre() * 0.35;
    measured.across = (pixels::spanInRow(image, quarter, theme.color(Role::FinishFill)) + line) / widthAtQuarterMm;
    return measured;
}

TEST(SectionScale, aHolesDepthIsDrawnAsManyTimesAsItSays)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const Measured m = measure(samples::smcHole(), theme, 74 - 2 * 4 * 0.25);
    ASSERT_EQ(m.lines.size(), 5U);
    const double down = m.across * m.exaggeration;
    EXPECT_NEAR(m.lines[4] - m.lines[1], 3.5 * down, 0.02 * 3.5 * down);  // the panel
    EXPECT_NEAR(m.lines[3] - m.lines[1], 1.75 * down, 0.02 * 3.5 * down); // each face to the middle
    EXPECT_NEAR(m.lines[2] - m.lines[1], 0.5 * down, 2.0);                // left low, filled by the finish
}

TEST(SectionScale, aDentsDepthIsDrawnAsManyTimesAsItSays)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const SectionDrawing dent = samples::everyKind()[3];
    // Parabola of depth 5 over 120: a quarter millimetre deep it is 120 sqrt(1 - 0.25 / 5) wide.
    const Measured m = measure(dent, theme, 120 * std::sqrt(1 - 0.25 / 5));
    ASSERT_GE(m.lines.size(), 5U);
    const double down = m.across * m.exaggeration;
    EXPECT_NEAR(m.lines[3] - m.lines[1], 5 * down, 0.02 * 5 * down);
    EXPECT_NEAR(m.lines[2] - m.lines[1], 0.5 * down, 2.0);
    EXPECT_NEAR(m.lines[4] - m.lines[3], 0.8 * down, 2.0); // the sheet below
}

TEST(SectionScale, aCrackIsDrawnAcrossWithItsBevel)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const SectionDrawing crack = samples::everyKind()[2];
    EXPECT_NEAR(inMillimetres(crack.drawnOpening()), 2 * 3 * 3, 1e-9);
    const Measured m = measure(crack, theme, 18 - 2 * 3 * 0.25);
    ASSERT_GE(m.lines.size(), 5U);
    const double down = m.across * m.exaggeration;
    EXPECT_NEAR(m.lines[3] - m.lines[1], 3 * down, 0.03 * 3 * down);
}

TEST(SectionScale, exaggerationIsWholeOrHalfAndNeverBelowOne)
{
    for (const rules::Glass& glass : rules::glasses()) {
        const Theme theme = samples::themeFor(glass);
        for (const SectionDrawing& drawing : samples::everyKind())
            for (const QSizeF& mm : {QSizeF(140, 62), QSizeF(124, 80), QSizeF(42, 12), QSizeF(20, 30)}) {
                const SectionLayout layout =
                    layOutSection(QRectF(0, 0, theme.px(mm.width()), theme.px(mm.height())), drawing, theme);
                EXPECT_EQ(std::fmod(2 * layout.exaggeration, 1.0), 0.0);
                EXPECT_GE(layout.exaggeration, 1.0);
                EXPECT_LE(layout.exaggeration, greatestExaggeration);
                EXPECT_NEAR(layout.toPixels.m22() / layout.toPixels.m11(), layout.exaggeration, 1e-9);
            }
    }
}

TEST(SectionScale, theSectionStaysInItsRoom)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    for (const SectionDrawing& drawing : samples::everyKind()) {
        const QRectF room(0, 0, theme.px(140), theme.px(62));
        const SectionLayout layout = layOutSection(room, drawing, theme);
        for (const SectionPiece& piece : layout.shape.pieces)
            EXPECT_TRUE(room.contains(layout.toPixels.map(piece.area).boundingRect()));
    }
}

TEST(SectionScale, aBackingIsDrawnBehindTheHoleOnceItIsPrepared)
{
    SectionDrawing hole = samples::everyKind()[1]; // 20 mm across, 8 mm thick, reached from the front alone
    const double plain = shapeOf(hole).bottom;
    EXPECT_NEAR(plain, 8, 1e-9);
    hole.backing = millimetres(2);
    hole.backingLap = millimetres(10);
    const SectionShape shape = shapeOf(hole);
    EXPECT_NEAR(shape.bottom, 10, 1e-9);
    const QRectF backing = shape.pieces.back().area.boundingRect();
    EXPECT_NEAR(backing.top(), 8, 1e-9) << "against the back of the panel";
    EXPECT_NEAR(backing.width(), 20 + 2 * 10, 1e-9) << "lapping the hole's edge";
    hole.backingLap = millimetres(500); // further than the picture reaches: it ends where the panel does
    EXPECT_NEAR(shapeOf(hole).pieces.back().area.boundingRect().right(), shape.reach, 1e-9);
    hole.progress.prepared = false;
    EXPECT_NEAR(shapeOf(hole).bottom, plain, 1e-9);
}

TEST(SectionScale, aPlanWithABackingStepIsDrawnWithOne)
{
    Assessment found;
    found.substrate = Substrate::Laminate;
    found.damage = samples::everyKind()[1].damage;
    found.rearAccess = false;
    RepairPlan plan;
    EXPECT_EQ(SectionDrawing::of(found, plan, Assumptions{}).backing.value(), 0.0);
    plan.prep.push_back({QStringLiteral("backing_through"), seconds(0), seconds(0), {}, {}});
    const SectionDrawing drawing = SectionDrawing::of(found, plan, Assumptions{});
    EXPECT_GT(drawing.backing.value(), 0.0);
    EXPECT_NEAR(inMillimetres(drawing.backingLap), 50, 1e-9) << "common practice: 50 mm all round";
}

TEST(SectionScale, liftsFillTheCavityButForTheFinish)
{
    const SectionShape shape = shapeOf(samples::smcHole());
    QPainterPath all;
    for (const SectionSlab& slab : shape.slabs)
        all = all.united(slab.area);
    const QRectF cavity = shape.cavity.boundingRect();
    EXPECT_NEAR(all.boundingRect().top(), cavity.top(), 1e-6);
    EXPECT_NEAR(all.boundingRect().bottom(), cavity.bottom(), 1e-6);
    EXPECT_NEAR(shape.slabs[0].area.boundingRect().top(), 0.5, 1e-6);
    EXPECT_NEAR(shape.slabs[2].area.boundingRect().height(), 0.5, 1e-6);
}

TEST(SectionScale, progressShowsWhatIsLaidAndWhichFaceIsUp)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const auto paint = [&](SectionProgress progress) {
        SectionDrawing drawing = samples::smcHole();
        drawing.progress = progress;
        return pixels::paint({600, 300}, theme,
                             [&](QPainter& painter) { paintSection(painter, QRectF(0, 0, 600, 300), drawing, theme); });
    };
    const std::vector<QImage> stages{paint({}),
                                     paint({true, 0, false, false}),
                                     paint({true, 1, false, false}),
                                     paint({true, 1, true, false}),
                                     paint({true, 2, true, false}),
                                     paint({true, 2, false, true})};
    for (std::size_t i = 0; i < stages.size(); ++i)
        for (std::size_t j = i + 1; j < stages.size(); ++j)
            EXPECT_GT(pixels::difference(stages[i], stages[j]), 0.01) << i << " and " << j;
    // Turned, the laid front face is below: its filler is in the lower half.
    const int middle = stages[3].width() / 2;
    const auto rowOfFiller = [&](const QImage& image) {
        for (int y = 0; y < image.height(); ++y)
            if (pixels::near(image.pixel(middle, y), theme.color(Role::FillerFill), 6))
                return y;
        return -1;
    };
    EXPECT_LT(rowOfFiller(stages[2]), 150);
    EXPECT_GT(rowOfFiller(stages[3]), 140);
}

} // namespace
} // namespace strandbench
