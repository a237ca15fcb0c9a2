// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/signwriter.h"

#include <QTransform>

#include <cmath>
#include <numbers>

namespace strandbench {

QPen Signwriter::pen(double width) const { return QPen(m_ink, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin); }

void Signwriter::stroke(const QPainterPath& path, double width) const { m_painter.strokePath(path, pen(width)); }

void Signwriter::fill(const QPainterPath& path) const { m_painter.fillPath(path, m_ink); }

void Signwriter::line(QPointF from, QPointF to, double width) const { polyline(QPolygonF{from, to}, width); }

void Signwriter::polyline(const QPolygonF& points, double width) const
{
    m_painter.setPen(pen(width));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolyline(points);
}

void Signwriter::polygon(const QPolygonF& points, bool filled, double width) const
{
    m_painter.setPen(pen(width));
    m_painter.setBrush(filled ? QBrush(m_ink) : QBrush(Qt::NoBrush));
    m_painter.drawPolygon(points);
}

void Signwriter::box(const QRectF& rect, double radius, bool filled, double width) const
{
    m_painter.setPen(filled ? QPen(Qt::NoPen) : pen(width));
    m_painter.setBrush(filled ? QBrush(m_ink) : QBrush(Qt::NoBrush));
    m_painter.drawRoundedRect(rect, radius, radius);
}

void Signwriter::ring(QPointF centre, double radius, double width) const
{
    m_painter.setPen(pen(width));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawEllipse(centre, radius, radius);
}

void Signwriter::dot(QPointF centre, double radius) const
{
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_ink);
    m_painter.drawEllipse(centre, radius, radius);
}

void Signwriter::arc(QPointF centre, double radius, double from, double span, double width) const
{
    const QRectF circle(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
    QPainterPath path;
    path.arcMoveTo(circle, from);
    path.arcTo(circle, from, span);
    stroke(path, width);
}

void Signwriter::arrow(QPointF from, QPointF to, double size, double width) const
{
    line(from, to, width);
    const QPointF along = to - from;
    head(to, std::atan2(-along.y(), along.x()) * 180.0 / std::numbers::pi, size, width);
}

void Signwriter::head(QPointF tip, double degrees, double size, double width) const
{
    QPolygonF barb{QPointF(-size, -size), QPointF(0, 0), QPointF(-size, size)};
    QTransform turned;
    turned.translate(tip.x(), tip.y());
    turned.rotate(-degrees);
    polyline(turned.map(barb), width);
}

void Signwriter::dashes(QPointF from, QPointF to, double dash, double gap, double width) const
{
    QPen dashed = pen(width);
    dashed.setCapStyle(Qt::FlatCap);
    dashed.setDashPattern({dash / width, gap / width});
    m_painter.setPen(dashed);
    m_painter.drawLine(from, to);
}

QPainterPath flatHand(double scale)
{
    QPainterPath hand;
    hand.setFillRule(Qt::WindingFill);
    const std::array<std::pair<double, double>, 4> fingers{{{6.2, 6.6}, {8.9, 4.6}, {11.6, 4.6}, {14.3, 6.4}}};
    for (const auto& [left, top] : fingers)
        hand.addRoundedRect(QRectF(left, top, 2.3, 10.0), 1.15, 1.15);
    hand.addRoundedRect(QRectF(6.2, 11.4, 10.4, 8.6), 2.8, 2.8);
    QPainterPath thumb;
    thumb.addRoundedRect(QRectF(-1.3, -7.2, 2.6, 8.6), 1.3, 1.3);
    QTransform turned;
    turned.translate(15.2, 17.0);
    turned.rotate(38);
    hand.addPath(turned.map(thumb));
    QTransform sized;
    sized.translate(12, 12);
    sized.scale(scale, scale);
    sized.translate(-12.2, -12.2);
    return sized.map(hand.simplified());
}

QPainterPath dropAt(QPointF tip, double height)
{
    const double r = height * 0.34;
    QPainterPath drop(tip);
    const QPointF low = tip + QPointF(0, height);
    drop.cubicTo(tip + QPointF(r * 0.4, height * 0.3), tip + QPointF(r, height * 0.45),
                 tip + QPointF(r, height * 0.66));
    drop.cubicTo(tip + QPointF(r, height * 0.86), low + QPointF(r * 0.5, 0), low);
    drop.cubicTo(low - QPointF(r * 0.5, 0), tip + QPointF(-r, height * 0.86), tip + QPointF(-r, height * 0.66));
    drop.cubicTo(tip + QPointF(-r, height * 0.45), tip + QPointF(-r * 0.4, height * 0.3), tip);
    return drop;
}

} // namespace strandbench
