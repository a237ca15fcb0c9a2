// SPDX-License-Identifier: GPL-3.0-or-later
// Signs of the steps that prepare a panel.
#include "pictures/signwriter.h"

namespace strandbench {
namespace {

void gear(const Signwriter& w)
{
    QPainterPath goggles;
    goggles.moveTo(3, 8);
    goggles.lineTo(21, 8);
    goggles.cubicTo(23, 8, 22.6, 17.4, 18.6, 17.4);
    goggles.cubicTo(15, 17.4, 14, 14.4, 12, 14.4);
    goggles.cubicTo(10, 14.4, 9, 17.4, 5.4, 17.4);
    goggles.cubicTo(1.4, 17.4, 1, 8, 3, 8);
    w.stroke(goggles);
    w.line({6, 12.4}, {8.4, 10.4}, 1.6);
    w.line({15.6, 12.4}, {18, 10.4}, 1.6);
}

void wash(const Signwriter& w)
{
    w.box({3, 12.5, 18, 9}, 2.4, true);
    w.fill(dropAt({7, 2}, 8));
    w.fill(dropAt({13, 4}, 6.4));
    w.ring({18.6, 6}, 2.2, 1.6);
}

void clothShape(const Signwriter& w, bool filled)
{
    QPainterPath cloth(QPointF(3, 13));
    cloth.cubicTo(8, 9.5, 11, 15, 15, 12);
    cloth.cubicTo(18, 10, 20, 11.5, 21.5, 13);
    cloth.cubicTo(19.5, 16, 21.5, 18.5, 20.5, 21.5);
    cloth.cubicTo(15, 19.5, 9, 22.5, 3.5, 21);
    cloth.cubicTo(4.5, 18, 2, 16, 3, 13);
    if (filled)
        w.fill(cloth);
    w.stroke(cloth);
}

void cloth(const Signwriter& w)
{
    clothShape(w, true);
    w.fill(dropAt({12, 1.5}, 7.6));
}

void wipe(const Signwriter& w)
{
    clothShape(w, false);
    w.arrow({3, 5.5}, {21, 5.5}, 3.8);
}

void stripPaint(const Signwriter& w)
{
    w.ring({12, 12}, 10, 1.8);
    w.ring({12, 12}, 3.2, 1.8);
    w.arrow({15.6, 12}, {20.4, 12}, 2.2, 1.6);
    w.arrow({8.4, 12}, {3.6, 12}, 2.2, 1.6);
}

void cutToSound(const Signwriter& w)
{
    QPolygonF teeth;
    for (int i = 0; i <= 5; ++i)
        teeth << QPointF(2.5 + 3.8 * i, i % 2 == 0 ? 16.0 : 20.5);
    w.polyline({{2.5, 16}, {2.5, 9}, {21.5, 9}, {21.5, 20.5}});
    w.polyline(teeth);
    w.dashes({1.5, 4.5}, {22.5, 4.5}, 3.4, 1.6);
}

void magnifier(const Signwriter& w)
{
    w.ring({10, 10}, 8);
    w.line({16, 16}, {22, 22}, 3.2);
    w.polyline({{5.4, 11}, {8.4, 8.6}, {11, 11.4}, {14.6, 8.6}}, 1.6);
}

void drill(const Signwriter& w)
{
    w.polygon({{2, 3.5}, {13, 3.5}, {13, 9.5}, {9, 9.5}, {8, 16}, {4, 16}, {5, 9.5}, {2, 9.5}}, true, 1.2);
    w.line({14.4, 6.5}, {20, 6.5}, 2.4);
    w.line({20, 6.5}, {23, 6.5}, 1.2);
    w.ring({18, 18}, 3.4);
}

void dry(const Signwriter& w)
{
    w.stroke(dropAt({7, 3}, 17));
    for (const double y : {6.0, 12.0, 18.0}) {
        QPainterPath wave(QPointF(15, y));
        wave.cubicTo(17, y - 3, 19.4, y + 3, 22, y);
        w.stroke(wave);
    }
}

void mirrored(const Signwriter& w, const QPolygonF& left)
{
    QPolygonF right;
    for (const QPointF& each : left)
        right << QPointF(Signwriter::side - each.x(), each.y());
    w.polygon(left, true, 1.2);
    w.polygon(right, true, 1.2);
}

void bevel(const Signwriter& w)
{
    mirrored(w, {{1.6, 9}, {3.4, 9}, {9.4, 19.4}, {1.6, 19.4}});
    w.arrow({12, 1.6}, {12, 9.6}, 3.2);
}

void bevelBack(const Signwriter& w) { mirrored(w, {{1.6, 4}, {4, 4}, {10, 12}, {4, 20}, {1.6, 20}}); }

void abradeBack(const Signwriter& w)
{
    w.line({1.5, 3.5}, {9, 3.5}, 2.4);
    w.line({15, 3.5}, {22.5, 3.5}, 2.4);
    w.dashes({2, 8.4}, {22, 8.4}, 3.2, 1.0, 2.0);
    w.box({2, 12.2, 20, 8}, 2.2, true);
}

void backing(const Signwriter& w)
{
    w.line({1.5, 7}, {8, 7}, 3.2);
    w.line({16, 7}, {22.5, 7}, 3.2);
    w.dashes({3, 13}, {21, 13}, 2.8, 1.2, 2.0);
    w.dashes({4.4, 17.4}, {21, 17.4}, 2.8, 1.2, 2.0);
}

void dam(const Signwriter& w)
{
    w.polyline({{1.5, 6}, {6, 6}, {9, 13}, {1.5, 13}});
    w.polyline({{22.5, 6}, {18, 6}, {15, 13}, {22.5, 13}});
    w.line({4, 17}, {20, 17}, 2.8);
}

void coarsePaper(const Signwriter& w)
{
    w.box({2, 4, 20, 7}, 2.2, true);
    for (int i = 0; i < 5; ++i) {
        const double x = 3.6 + 4.2 * i;
        w.polygon({{x - 1.4, 14}, {x + 1.4, 14}, {x, 16.6}}, true, 0.8);
    }
    w.line({1.5, 20.8}, {22.5, 20.8});
}

void dust(const Signwriter& w)
{
    w.polygon({{22, 2.5}, {15, 9.5}, {6.5, 9.5}, {11.5, 4.5}}, true, 1.4);
    for (const QPointF& each :
         {QPointF(4, 15), QPointF(9, 13.4), QPointF(7.4, 18.6), QPointF(13, 16.6), QPointF(3.6, 21), QPointF(12, 21.4)})
        w.dot(each, 1.25);
}

void flashOff(const Signwriter& w)
{
    w.line({2, 21}, {22, 21}, 2.4);
    for (const double x : {5.5, 12.0, 18.5}) {
        QPainterPath vapour(QPointF(x, 16.6));
        vapour.cubicTo(x - 3.4, 13, x + 3.4, 9.6, x, 6);
        w.stroke(vapour);
        w.head({x, 5}, 90, 2.4, 1.8);
    }
}

void ownTools(const Signwriter& w)
{
    w.box({2, 9, 20, 12.5}, 2, false);
    w.polyline({{8, 9}, {8, 4}, {16, 4}, {16, 9}});
    w.line({2, 14.5}, {22, 14.5});
    w.box({10, 12.8, 4, 4}, 0.8, true);
}

void dewDrop(const Signwriter& w)
{
    w.arc({7, 15.6}, 5, 127, 286);
    w.line({4, 11.4}, {4, 4.4});
    w.line({10, 11.4}, {10, 4.4});
    w.arc({7, 4.4}, 3, 0, 180);
    w.dot({7, 15.6}, 2.6);
    w.fill(dropAt({18.4, 6}, 11));
}

} // namespace

SignDrawer prepSign(Pictogram sign)
{
    switch (sign) {
    case Pictogram::Gear:
        return gear;
    case Pictogram::Wash:
        return wash;
    case Pictogram::Cloth:
        return cloth;
    case Pictogram::Wipe:
        return wipe;
    case Pictogram::StripPaint:
        return stripPaint;
    case Pictogram::CutToSound:
        return cutToSound;
    case Pictogram::Magnifier:
        return magnifier;
    case Pictogram::Drill:
        return drill;
    case Pictogram::Dry:
        return dry;
    case Pictogram::Bevel:
        return bevel;
    case Pictogram::BevelBack:
        return bevelBack;
    case Pictogram::AbradeBack:
        return abradeBack;
    case Pictogram::Backing:
        return backing;
    case Pictogram::Dam:
        return dam;
    case Pictogram::CoarsePaper:
        return coarsePaper;
    case Pictogram::Dust:
        return dust;
    case Pictogram::FlashOff:
        return flashOff;
    case Pictogram::OwnTools:
        return ownTools;
    case Pictogram::DewDrop:
        return dewDrop;
    default:
        return nullptr;
    }
}

} // namespace strandbench
