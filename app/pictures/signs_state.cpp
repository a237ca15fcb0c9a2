// SPDX-License-Identifier: GPL-3.0-or-later
// Signs that tell a state. Shape and meaning after ISO 3864-1: octagon or bar stops, triangle warns.
#include "pictures/signwriter.h"

namespace strandbench {
namespace {

QPolygonF octagon(double inset)
{
    const double low = inset;
    const double high = Signwriter::side - inset;
    const double cut = (high - low) * 0.29289; // 1 - 1/sqrt(2): all eight sides alike
    return {{low + cut, low},   {high - cut, low}, {high, low + cut}, {high, high - cut},
            {high - cut, high}, {low + cut, high}, {low, high - cut}, {low, low + cut}};
}

void stopHand(const Signwriter& w)
{
    QPainter& p = w.painter();
    p.setPen(Qt::NoPen);
    p.setBrush(w.color(Role::Stop));
    p.drawPolygon(octagon(0.4));
    p.fillPath(flatHand(0.92), w.color(Role::OnStop));
}

void caution(const Signwriter& w)
{
    QPainter& p = w.painter();
    p.setPen(QPen(w.color(Role::OnCaution), 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(w.color(Role::Caution));
    p.drawPolygon(QPolygonF{{12, 1.8}, {23, 21.6}, {1, 21.6}});
    p.setPen(Qt::NoPen);
    p.setBrush(w.color(Role::OnCaution));
    QPainterPath bar;
    bar.moveTo(10.5, 8.9);
    bar.quadTo(12, 7.2, 13.5, 8.9);
    bar.lineTo(12.8, 15.4);
    bar.quadTo(12, 16.2, 11.2, 15.4);
    bar.closeSubpath();
    p.drawPath(bar);
    p.drawEllipse(QPointF(12, 18.5), 1.4, 1.4);
}

void tick(const Signwriter& w)
{
    QPainter& p = w.painter();
    p.setPen(Qt::NoPen);
    p.setBrush(w.color(Role::Go));
    p.drawEllipse(QPointF(12, 12), 11.4, 11.4);
    p.setPen(QPen(w.color(Role::OnGo), 2.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(QPolygonF{{6.4, 12.6}, {10.4, 16.6}, {17.8, 8.2}});
}

void question(const Signwriter& w)
{
    QPainterPath hook(QPointF(7, 8.2));
    hook.cubicTo(7, 4.4, 9.2, 2.6, 12, 2.6);
    hook.cubicTo(15, 2.6, 17.2, 4.6, 17.2, 7.6);
    hook.cubicTo(17.2, 11.6, 12, 11.6, 12, 15.8);
    w.stroke(hook, 3.0);
    w.dot({12, 20.9}, 1.9);
}

void wait(const Signwriter& w)
{
    w.line({6, 2.4}, {18, 2.4});
    w.line({6, 21.6}, {18, 21.6});
    QPainterPath glass(QPointF(7.5, 2.4));
    glass.cubicTo(7.5, 8, 11.2, 9.6, 11.2, 12);
    glass.cubicTo(11.2, 14.4, 7.5, 16, 7.5, 21.6);
    glass.moveTo(16.5, 2.4);
    glass.cubicTo(16.5, 8, 12.8, 9.6, 12.8, 12);
    glass.cubicTo(12.8, 14.4, 16.5, 16, 16.5, 21.6);
    w.stroke(glass);
    w.polygon({{9.6, 19.6}, {12, 16.8}, {14.4, 19.6}}, true, 1.0);
}

void parked(const Signwriter& w)
{
    w.polygon(octagon(1.2), false);
    w.fill(flatHand(0.78));
}

} // namespace

SignDrawer stateSign(Pictogram sign)
{
    switch (sign) {
    case Pictogram::StopHand:
        return stopHand;
    case Pictogram::Caution:
        return caution;
    case Pictogram::Tick:
        return tick;
    case Pictogram::Question:
        return question;
    case Pictogram::Wait:
        return wait;
    case Pictogram::Parked:
        return parked;
    default:
        return nullptr;
    }
}

} // namespace strandbench
