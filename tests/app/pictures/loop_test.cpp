// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/loop.h"

#include "pictures/drawing.h"
#include "pictures/drawing_widget.h"
#include "pictures/step_picture.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Theme themeWith(bool reducedMotion) { return Theme(Metrics(3.0), DayNight::Day, Hand::Right, reducedMotion); }

TEST(Loop, runsWhileItsPictureIsSeenAndStandsStillWhileItIsNot)
{
    const Theme theme = themeWith(false);
    DrawingWidget act(theme, u"acts/knead"_s, u"Knead"_s);
    EXPECT_FALSE(act.loop().isRunning());
    act.show();
    EXPECT_TRUE(act.loop().isRunning());
    act.loop().next();
    EXPECT_EQ(act.loop().frame(), 2);
    act.hide();
    EXPECT_FALSE(act.loop().isRunning());
    EXPECT_EQ(act.loop().frame(), 1);
}

TEST(Loop, standsStillWhenItIsTold)
{
    const Theme theme = themeWith(false);
    DrawingWidget act(theme, u"acts/press_in"_s, u"Press in"_s);
    act.show();
    act.loop().next();
    act.loop().setStill(true);
    EXPECT_FALSE(act.loop().isRunning());
    EXPECT_EQ(act.loop().frame(), 1);
    act.hide();
    act.show();
    EXPECT_FALSE(act.loop().isRunning());
    act.loop().setStill(false);
    EXPECT_TRUE(act.loop().isRunning());
}

TEST(Loop, nothingMovesUnderReducedMotion)
{
    const Theme theme = themeWith(true);
    DrawingWidget act(theme, u"acts/knead"_s, u"Knead"_s);
    StepPicture step(theme, u"step"_s);
    step.setStep(u"bevel"_s, samples::smcHole());
    act.show();
    step.show();
    EXPECT_FALSE(act.loop().isRunning());
    EXPECT_FALSE(step.loop().isRunning());
    act.loop().setStill(false);
    EXPECT_FALSE(act.loop().isRunning());
}

TEST(Loop, goesRoundAndADrawingWithoutFramesDoesNotRun)
{
    const Theme theme = themeWith(false);
    DrawingWidget act(theme, u"acts/knead"_s, u"Knead"_s);
    const int frames = framesOf(u"acts/knead"_s);
    EXPECT_GT(frames, 1);
    for (int i = 0; i < frames; ++i)
        act.loop().next();
    EXPECT_EQ(act.loop().frame(), 1);
    act.show();
    act.setDrawing(u"tools/drill"_s);
    EXPECT_FALSE(act.loop().isRunning());
    EXPECT_THROW(act.loop().setFrames(0), std::invalid_argument);
}

TEST(Loop, everyFrameOfAnActIsAnotherPicture)
{
    const Theme theme = themeWith(false);
    for (const QString& name : drawingsIn(u"acts"_s)) {
        std::vector<QImage> frames;
        for (int frame = 1; frame <= framesOf(name); ++frame)
            frames.push_back(pixels::paint({120, 120}, theme, [&](QPainter& painter) {
                paintDrawing(painter, QRectF(0, 0, 120, 120), name, theme, {std::nullopt, frame});
            }));
        for (std::size_t i = 0; i < frames.size(); ++i)
            for (std::size_t j = i + 1; j < frames.size(); ++j)
                EXPECT_GT(pixels::difference(frames[i], frames[j]), 0.02) << name.toStdString() << i << j;
    }
}

TEST(Loop, theStepsWhoseMotionExplainsMoveAndTheOthersStand)
{
    const Theme theme = themeWith(false);
    const QStringList moving{u"bevel"_s, u"bevel_both"_s, u"stop_drill"_s};
    for (const QString& code : stepsWithPicture()) {
        const int frames = framesOfStep(code, samples::smcHole());
        EXPECT_EQ(frames > 1, moving.contains(code)) << code.toStdString();
        std::vector<QImage> pictures;
        for (int frame = 1; frame <= frames; ++frame)
            pictures.push_back(pixels::paint({400, 200}, theme, [&](QPainter& painter) {
                paintStepPicture(painter, QRectF(0, 0, 400, 200), code, samples::smcHole(), theme, frame);
            }));
        for (std::size_t i = 1; i < pictures.size(); ++i)
            EXPECT_GT(pixels::difference(pictures[i - 1], pictures[i]), 0.002) << code.toStdString() << i;
    }
}

} // namespace
} // namespace strandbench
