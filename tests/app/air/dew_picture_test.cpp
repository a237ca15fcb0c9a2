// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of dew margins: every text whole at every size, and marks that differ without their colour.
#include "pictures/dew_picture.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

DewDay dayOf(std::vector<DewMark> marks)
{
    DewDay day;
    day.marks = std::move(marks);
    day.least = 3;
    day.leastName = u"limit 3.0 °C"_s;
    day.belowName = u"below the limit"_s;
    day.degrees = [](double degrees) { return QString::number(degrees, 'f', 1) + u" °C"_s; };
    day.minute = [](int minute) { return u"%1:%2"_s.arg(minute / 60).arg(minute % 60, 2, 10, QLatin1Char('0')); };
    return day;
}

const Theme theme(Metrics(4.6), DayNight::Day, Hand::Right);

QImage paintedGrey(const DewDay& day)
{
    DewPicture picture(theme, u"dew"_s);
    picture.resize(theme.px(100), theme.px(50));
    picture.setDay(day);
    QImage image(picture.size(), QImage::Format_RGB32);
    image.fill(Qt::white);
    picture.render(&image);
    return image.convertToFormat(QImage::Format_Grayscale8);
}

TEST(DewPicture, EveryTextIsWholeAtEverySize)
{
    const std::vector<DewDay> days{dayOf({{480, 5, false}}), dayOf({{1, 2.9, true}, {1439, 12.5, false}}),
                                   dayOf({{480, -4.2, true}, {481, -4.1, true}}),
                                   dayOf({{600, 3, false}, {601, 3, false}})};
    for (const DewDay& day : days)
        for (const double width : {60.0, 90.0, 130.0, 200.0})
            for (const double height : {34.0, 50.0, 90.0}) {
                DewPicture picture(theme, u"dew"_s);
                picture.resize(theme.px(width), theme.px(height));
                picture.setDay(day);
                EXPECT_TRUE(picture.textFits()) << width << " x " << height << ", first " << day.marks[0].minute;
                EXPECT_GE(picture.smallestTextMm(), 3.4);
            }
}

TEST(DewPicture, WithoutReadingsSaysNothing)
{
    DewPicture picture(theme, u"dew"_s);
    EXPECT_TRUE(picture.textFits());
    EXPECT_EQ(picture.smallestTextMm(), 0);
}

TEST(DewPicture, AMarkBelowIsAnotherShape)
{
    // The same place told to be within and below: without its colour it still looks otherwise.
    EXPECT_NE(paintedGrey(dayOf({{480, 2.99, true}})), paintedGrey(dayOf({{480, 2.99, false}})));
}

TEST(DewPicture, LaterIsFartherRightAndMoreIsHigher) // metamorphic
{
    const QImage base = paintedGrey(dayOf({{480, 4, false}, {540, 4, false}}));
    EXPECT_NE(base, paintedGrey(dayOf({{480, 4, false}, {540, 5, false}})));
    EXPECT_NE(base, paintedGrey(dayOf({{480, 4, false}, {510, 4, false}})));
}

} // namespace
} // namespace strandbench::test
