// SPDX-License-Identifier: GPL-3.0-or-later
// Signs of the work with the filler, and of the stations of the walk.
#include "pictures/signwriter.h"

namespace strandbench {
namespace {

void spreader(const Signwriter& w) { w.polygon({{2, 15.6}, {15.4, 4}, {22.4, 10.4}, {9.4, 20.6}}, true, 0.8); }

void knead(const Signwriter& w)
{
    QPainterPath bag(QPointF(8.6, 3));
    bag.cubicTo(14, 6, 9.2, 9, 10.4, 12);
    bag.cubicTo(9.2, 15, 14, 18, 8.6, 21);
    bag.lineTo(15.4, 21);
    bag.cubicTo(10, 18, 14.8, 15, 13.6, 12);
    bag.cubicTo(14.8, 9, 10, 6, 15.4, 3);
    bag.closeSubpath();
    w.stroke(bag);
    w.arrow({1.5, 12}, {7.2, 12}, 3.0);
    w.arrow({22.5, 12}, {16.8, 12}, 3.0);
}

void mix(const Signwriter& w)
{
    QPainterPath puddle(QPointF(2, 21.5));
    puddle.cubicTo(2, 16.4, 5, 15.4, 12, 15.4);
    puddle.cubicTo(19, 15.4, 22, 16.4, 22, 21.5);
    puddle.closeSubpath();
    w.fill(puddle);
    w.stroke(puddle, 1.0);
    w.polygon({{14, 3}, {20, 9}, {14.6, 10.4}, {12.6, 8.4}}, false);
    w.line({12.2, 10.8}, {10, 13}, 2.6);
    w.line({17, 3}, {20, 6}, 2.6);
}

void filledBevel(const Signwriter& w, double top)
{
    w.polygon({{6, top}, {18, top}, {15, top + 6}, {9, top + 6}}, true, 1.0);
    w.line({1.5, top}, {6, top});
    w.line({18, top}, {22.5, top});
}

void clearEdges(const Signwriter& w)
{
    filledBevel(w, 15);
    w.arrow({9, 10.4}, {2.6, 4}, 3.4);
    w.arrow({15, 10.4}, {21.4, 4}, 3.4);
}

void handsOff(const Signwriter& w)
{
    w.stroke(flatHand(0.96), 1.6);
    w.line({3, 21}, {21, 3}, 2.6);
}

void sandingBlock(const Signwriter& w)
{
    w.box({2, 5, 20, 9}, 2.2, true);
    w.dashes({2, 18}, {22, 18}, 3.2, 1.0, 2.4);
}

void harder(const Signwriter& w)
{
    w.polygon({{4, 17.5}, {6.5, 9}, {13, 6}, {19, 10}, {21.5, 17.5}, {13, 21}}, false);
    w.polyline({{6.5, 9}, {12, 12}, {19, 10}});
    w.line({12, 12}, {13, 21});
    w.line({3.5, 2.5}, {6.5, 5.2});
    w.line({9.5, 1.6}, {10.4, 3.6});
}

void turn(const Signwriter& w)
{
    w.arc({12, 12}, 9.5, 25, 130);
    w.head({21, 8.2}, -68, 3.4);
    w.arc({12, 12}, 9.5, 205, 130);
    w.head({3, 15.8}, 112, 3.4);
    w.line({6.5, 12}, {17.5, 12}, 3.0);
}

void finish(const Signwriter& w)
{
    w.line({1.5, 20.5}, {22.5, 20.5});
    QPainterPath skim(QPointF(2, 18.8));
    skim.cubicTo(6, 15.6, 9, 15.6, 13, 15.6);
    skim.lineTo(13, 18.8);
    skim.closeSubpath();
    w.fill(skim);
    w.polygon({{13.6, 16.4}, {18.4, 4}, {21.6, 5.3}, {16.2, 17.4}}, true, 1.0);
}

void assess(const Signwriter& w)
{
    QPainterPath shoe(QPointF(5, 13.5));
    shoe.lineTo(5, 9.4);
    shoe.arcTo(QRectF(5, 2.4, 14, 14), 180, -180);
    shoe.lineTo(19, 13.5);
    QPainter& p = w.painter();
    p.strokePath(shoe, QPen(w.ink(), 4.6, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    w.box({2.7, 15, 4.6, 3}, 0.2, true);
    w.box({16.7, 15, 4.6, 3}, 0.2, true);
    w.line({1.5, 22}, {22.5, 22});
}

void prepare(const Signwriter& w)
{
    for (const double y : {4.6, 12.0, 19.4}) {
        w.polyline({{2.2, y}, {4.2, y + 2}, {8, y - 2.4}}, 1.9);
        w.line({12, y}, {22, y});
    }
}

void decide(const Signwriter& w)
{
    w.line({12, 22}, {12, 13.5});
    w.arrow({12, 13.5}, {4, 4}, 4.0);
    w.arrow({12, 13.5}, {20, 4}, 4.0);
}

void handOver(const Signwriter& w)
{
    w.polyline({{15.5, 10}, {15.5, 2}, {2.5, 2}, {2.5, 22}, {15.5, 22}, {15.5, 19.5}});
    w.line({6, 6.6}, {12, 6.6});
    w.line({6, 11}, {9.6, 11});
    w.arrow({8.5, 15}, {22, 15}, 3.8);
}

void inspect(const Signwriter& w)
{
    QPainterPath eye(QPointF(1.5, 12));
    eye.cubicTo(6, 4.6, 18, 4.6, 22.5, 12);
    eye.cubicTo(18, 19.4, 6, 19.4, 1.5, 12);
    w.stroke(eye);
    w.dot({12, 12}, 3.5);
}

} // namespace

SignDrawer workSign(Pictogram sign)
{
    switch (sign) {
    case Pictogram::Spreader:
        return spreader;
    case Pictogram::Knead:
        return knead;
    case Pictogram::Mix:
        return mix;
    case Pictogram::ClearEdges:
        return clearEdges;
    case Pictogram::HandsOff:
        return handsOff;
    case Pictogram::SandingBlock:
        return sandingBlock;
    case Pictogram::Harder:
        return harder;
    case Pictogram::Turn:
        return turn;
    case Pictogram::Finish:
        return finish;
    case Pictogram::Inspect:
        return inspect;
    case Pictogram::Assess:
        return assess;
    case Pictogram::Prepare:
        return prepare;
    case Pictogram::Decide:
        return decide;
    case Pictogram::HandOver:
        return handOver;
    default:
        return nullptr;
    }
}

} // namespace strandbench
