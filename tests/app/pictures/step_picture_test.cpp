// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/rules.h"
#include "pictures/step_picture.h"
#include "repair/repair.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QImage pictureOf(const QString& code, const SectionDrawing& drawing, DayNight dayNight = DayNight::Day)
{
    const Theme theme(Metrics(3.0), dayNight, Hand::Right);
    return pixels::paint({400, 200}, theme, [&](QPainter& painter) {
        paintStepPicture(painter, QRectF(0, 0, 400, 200), code, drawing, theme);
    });
}

double painted(const QImage& image, DayNight dayNight)
{
    const Theme theme(Metrics(3.0), dayNight, Hand::Right);
    QImage blank(image.size(), image.format());
    blank.fill(theme.color(Role::Card));
    return pixels::difference(image, blank);
}

TEST(StepPicture, everyStepIsDrawnForEveryKindOfDamage)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night})
        for (const SectionDrawing& drawing : samples::everyKind())
            for (const QString& code : stepsWithPicture())
                EXPECT_GT(painted(pictureOf(code, drawing, dayNight), dayNight), 0.04) << code.toStdString();
}

TEST(StepPicture, everyStepOfTheBookAndOfTheHandOverHasAScene)
{
    const StepBook book = builtInSteps();
    for (const auto& steps : {book.prepare, book.finish})
        for (const auto& step : steps)
            EXPECT_TRUE(hasStepPicture(step.code)) << step.code.toStdString();
    for (const QString& test : handOverTests())
        EXPECT_TRUE(hasStepPicture(test)) << test.toStdString();
    EXPECT_FALSE(hasStepPicture(u"a_step_added_later"_s));
}

TEST(StepPicture, noTwoStepsShareAPicture)
{
    const QStringList codes = stepsWithPicture();
    std::vector<QImage> pictures;
    for (const QString& code : codes)
        pictures.push_back(pictureOf(code, samples::smcHole()));
    for (std::size_t i = 0; i < pictures.size(); ++i)
        for (std::size_t j = i + 1; j < pictures.size(); ++j)
            EXPECT_GT(pixels::difference(pictures[i], pictures[j]), 0.003)
                << codes[static_cast<qsizetype>(i)].toStdString() << " and "
                << codes[static_cast<qsizetype>(j)].toStdString();
}

TEST(StepPicture, aStepWithoutAPictureShowsTheSectionAndItsSign)
{
    const QImage later = pictureOf(u"a_step_added_later"_s, samples::smcHole());
    EXPECT_GT(painted(later, DayNight::Day), 0.04);
    for (const QString& code : stepsWithPicture())
        EXPECT_GT(pixels::difference(later, pictureOf(code, samples::smcHole())), 0.003) << code.toStdString();
}

TEST(StepPicture, theRepairIsDrawnFilledEvenWithoutAPlan)
{
    SectionDrawing bare = samples::smcHole();
    bare.lifts.clear();
    bare.finish = Length();
    bare.leftLow = Length();
    const QImage image = pictureOf(u"sand_180"_s, bare);
    const Theme theme(Metrics(3.0), DayNight::Day, Hand::Right);
    int filler = 0;
    for (int y = 0; y < image.height(); ++y)
        filler += pixels::near(image.pixel(image.width() / 2, y), theme.color(Role::FillerFill), 6) ? 1 : 0;
    EXPECT_GT(filler, 10);
}

TEST(StepPicture, nothingIsPaintedOutsideOfItsRoom)
{
    const Theme theme(Metrics(3.0), DayNight::Day, Hand::Right);
    for (const SectionDrawing& drawing : samples::everyKind())
        for (const QString& code : stepsWithPicture()) {
            const QImage image = pixels::paint({480, 260}, theme, [&](QPainter& painter) {
                paintStepPicture(painter, QRectF(40, 30, 400, 200), code, drawing, theme);
            });
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x) {
                    const bool inside = x >= 38 && x <= 442 && y >= 28 && y <= 232;
                    ASSERT_TRUE(inside || pixels::near(image.pixel(x, y), theme.color(Role::Card), 4))
                        << code.toStdString() << " at " << x << ", " << y;
                }
        }
}

} // namespace
} // namespace strandbench
