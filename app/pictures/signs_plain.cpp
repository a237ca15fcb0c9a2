// SPDX-License-Identifier: GPL-3.0-or-later
// Signs of keys and things: the way about, set-up, instruments.
#include "pictures/signwriter.h"

namespace strandbench {
namespace {

void takeIn(const Signwriter& w)
{
    w.polyline({{2.5, 11}, {2.5, 21.5}, {21.5, 21.5}, {21.5, 11}});
    w.arrow({12, 2.5}, {12, 16}, 4.6);
}

void minus(const Signwriter& w) { w.line({3.5, 12}, {20.5, 12}, 2.8); }

void plus(const Signwriter& w)
{
    minus(w);
    w.line({12, 3.5}, {12, 20.5}, 2.8);
}

void setUp(const Signwriter& w)
{
    const std::array<std::pair<double, double>, 3> sliders{{{5, 8}, {12, 16}, {19, 10}}};
    for (const auto& [y, x] : sliders) {
        w.line({2, y}, {x - 2.6, y});
        w.line({x + 2.6, y}, {22, y});
        w.ring({x, y}, 2.4);
    }
}

void thermometer(const Signwriter& w)
{
    QPainterPath glass(QPointF(7.6, 13.6));
    glass.lineTo(7.6, 4.6);
    glass.arcTo(QRectF(7.6, 1.6, 6, 6), 180, -180);
    glass.lineTo(13.6, 13.6);
    w.stroke(glass);
    w.arc({10.6, 17.6}, 5.0, 127, 286);
    w.dot({10.6, 17.6}, 2.7);
    w.line({10.6, 8.5}, {10.6, 16}, 1.8);
    for (const double y : {5.0, 8.6, 12.2})
        w.line({17.2, y}, {20.6, y}, 1.6);
}

void lamp(const Signwriter& w)
{
    w.line({12, 1.6}, {12, 4.5});
    QPainterPath shade(QPointF(4, 12));
    shade.cubicTo(4, 7, 8, 4.5, 12, 4.5);
    shade.cubicTo(16, 4.5, 20, 7, 20, 12);
    shade.closeSubpath();
    w.fill(shade);
    w.stroke(shade);
    for (const double x : {6.0, 12.0, 18.0})
        w.dashes({x, 15.2}, {x + (x - 12) * 0.35, 22.6}, 3.0, 1.2);
}

} // namespace

SignDrawer plainSign(Pictogram sign)
{
    switch (sign) {
    case Pictogram::TakeIn:
        return takeIn;
    case Pictogram::Minus:
        return minus;
    case Pictogram::Plus:
        return plus;
    case Pictogram::SetUp:
        return setUp;
    case Pictogram::Thermometer:
        return thermometer;
    case Pictogram::Lamp:
        return lamp;
    default:
        return nullptr;
    }
}

} // namespace strandbench
