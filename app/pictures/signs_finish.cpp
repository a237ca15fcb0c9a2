// SPDX-License-Identifier: GPL-3.0-or-later
// Signs of the steps that finish a repair and of the tests before it is handed over.
#include "pictures/signwriter.h"

namespace strandbench {
namespace {

constexpr std::array<std::pair<double, double>, 9> speckle{
    {{4, 15}, {8, 18.6}, {9.6, 13.6}, {13, 16.8}, {16.6, 13.8}, {18.6, 18.4}, {5, 21}, {13, 21.4}, {21, 15.4}}};

void guideCoat(const Signwriter& w)
{
    w.box({7.6, 2, 6, 3.4}, 0.8, true);
    w.line({14, 3.7}, {17, 3.7}, 1.4);
    w.polyline({{10.6, 6}, {10.6, 8.4}}, 2.0);
    for (const auto& [x, y] : speckle)
        w.dot({x, y}, 1.3);
}

void guideCoatGone(const Signwriter& w)
{
    w.box({2, 2, 20, 20}, 2, false);
    for (const QPointF& each : {QPointF(6, 6), QPointF(10, 6.6), QPointF(6.4, 10)})
        w.dot(each, 1.1);
    w.polyline({{7.6, 14}, {11.4, 17.8}, {18.6, 9}}, 2.6);
}

void paperSheet(const Signwriter& w)
{
    QPainterPath sheet(QPointF(3, 3));
    sheet.lineTo(21, 3);
    sheet.lineTo(21, 17.5);
    sheet.cubicTo(21, 22.5, 14.8, 22.5, 14.8, 17.5);
    sheet.lineTo(3, 17.5);
    sheet.closeSubpath();
    w.stroke(sheet);
}

void paper(const Signwriter& w)
{
    paperSheet(w);
    for (const double x : {7.0, 12.0, 17.0})
        for (const double y : {7.4, 12.8})
            w.dot({x, y}, 1.2);
}

void finePaper(const Signwriter& w)
{
    paperSheet(w);
    for (int column = 0; column < 5; ++column)
        for (int row = 0; row < 3; ++row)
            w.dot({6 + 3.0 * column, 6.6 + 3.6 * row}, 0.7);
}

void airGun(const Signwriter& w)
{
    w.polygon({{13, 5}, {22, 5}, {22, 10}, {20.4, 10}, {19, 20}, {14.6, 20}, {15.8, 10}, {13, 10}}, true, 1.2);
    w.line({13, 7.5}, {9.4, 7.5}, 2.2);
    w.line({6.4, 7.5}, {1.6, 7.5}, 1.8);
    w.line({6.2, 5}, {2.4, 2.6}, 1.8);
    w.line({6.2, 10}, {2.4, 12.4}, 1.8);
}

void rakingLight(const Signwriter& w)
{
    w.polygon({{2, 7}, {6.6, 3.4}, {9.6, 7.2}, {5, 10.8}}, true, 1.2);
    w.line({10.6, 9.6}, {14.4, 12.4}, 1.8);
    w.line({11.4, 5.6}, {18, 7}, 1.8);
    w.line({7.6, 12.4}, {8.6, 15}, 1.8);
    QPainterPath ground(QPointF(1.5, 20));
    ground.lineTo(9, 20);
    ground.cubicTo(12, 16, 16, 16, 19, 20);
    ground.lineTo(22.5, 20);
    w.stroke(ground);
}

void pinholeNone(const Signwriter& w)
{
    w.ring({12, 12}, 10);
    for (const QPointF& each : {QPointF(9, 8.6), QPointF(15.4, 11), QPointF(10.6, 15.6)})
        w.ring(each, 1.3, 1.4);
    w.line({5, 19}, {19, 5});
}

void cureClock(const Signwriter& w)
{
    w.ring({12, 12}, 10);
    w.polyline({{12, 5.6}, {12, 12}, {16.6, 14.8}}, 2.2);
}

void straightedge(const Signwriter& w)
{
    w.box({1.5, 5, 21, 6}, 0.8, false);
    for (const double x : {6.0, 10.0, 14.0, 18.0})
        w.line({x, 8}, {x, 11}, 1.4);
    QPainterPath ground(QPointF(1.5, 15));
    ground.cubicTo(7, 15, 8, 20, 12, 20);
    ground.cubicTo(16, 20, 17, 15, 22.5, 15);
    w.stroke(ground);
}

void nail(const Signwriter& w)
{
    QPainterPath finger(QPointF(21.6, 4));
    finger.lineTo(11, 10);
    finger.cubicTo(6.4, 12.8, 9.6, 18, 14, 15.4);
    finger.lineTo(22, 11);
    w.stroke(finger);
    QPainterPath tip(QPointF(12.4, 9.6));
    tip.cubicTo(7, 11, 5.4, 14, 5, 18.6);
    tip.cubicTo(9.6, 17.6, 12, 15.6, 13.4, 12.6);
    tip.closeSubpath();
    w.fill(tip);
    w.line({1.5, 21.6}, {22.5, 21.6});
}

void tapCoin(const Signwriter& w)
{
    w.ring({8, 12.2}, 6.4);
    w.ring({8, 12.2}, 2.4, 1.6);
    w.line({1.5, 21.4}, {22.5, 21.4});
    w.arc({8, 18.6}, 10.6, 8, 44, 1.8);
    w.arc({8, 18.6}, 14.6, 8, 44, 1.8);
}

void noEdge(const Signwriter& w)
{
    w.line({1.5, 14}, {22.5, 14}, 2.4);
    QPainterPath feather(QPointF(3.5, 18));
    feather.lineTo(20.5, 18);
    feather.cubicTo(17, 18.6, 16, 21.6, 12, 21.6);
    feather.cubicTo(8, 21.6, 7, 18.6, 3.5, 18);
    w.fill(feather);
    w.arrow({12, 3.5}, {2.6, 9}, 3.0, 1.8);
    w.arrow({12, 3.5}, {21.4, 9}, 3.0, 1.8);
}

} // namespace

SignDrawer finishSign(Pictogram sign)
{
    switch (sign) {
    case Pictogram::GuideCoat:
        return guideCoat;
    case Pictogram::GuideCoatGone:
        return guideCoatGone;
    case Pictogram::Paper:
        return paper;
    case Pictogram::FinePaper:
        return finePaper;
    case Pictogram::AirGun:
        return airGun;
    case Pictogram::RakingLight:
        return rakingLight;
    case Pictogram::PinholeNone:
        return pinholeNone;
    case Pictogram::CureClock:
        return cureClock;
    case Pictogram::Straightedge:
        return straightedge;
    case Pictogram::Nail:
        return nail;
    case Pictogram::TapCoin:
        return tapCoin;
    case Pictogram::NoEdge:
        return noEdge;
    default:
        return nullptr;
    }
}

} // namespace strandbench
