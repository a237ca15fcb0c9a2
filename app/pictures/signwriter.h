// SPDX-License-Identifier: GPL-3.0-or-later
// One hand for all signs: a square of 24 units, strokes of 2 units with round ends, in one ink.
#pragma once

#include "pictures/pictogram.h"

#include <QPainterPath>
#include <QPolygonF>

namespace strandbench {

/// Draws in units of the sign's square, 0..24 both ways.
class Signwriter {
public:
    static constexpr double side = 24.0;
    static constexpr double weight = 2.0;

    Signwriter(QPainter& painter, const Theme& theme, const QColor& ink)
        : m_painter(painter), m_theme(theme), m_ink(ink)
    {}

    [[nodiscard]] QPainter& painter() const { return m_painter; }
    [[nodiscard]] const QColor& ink() const { return m_ink; }
    [[nodiscard]] QColor color(Role role) const { return m_theme.color(role); }

    void stroke(const QPainterPath& path, double width = weight) const;
    void fill(const QPainterPath& path) const;
    void line(QPointF from, QPointF to, double width = weight) const;
    void polyline(const QPolygonF& points, double width = weight) const;
    void polygon(const QPolygonF& points, bool filled, double width = weight) const;
    void box(const QRectF& rect, double radius, bool filled, double width = weight) const;
    void ring(QPointF centre, double radius, double width = weight) const;
    void dot(QPointF centre, double radius) const;
    /// Part of a circle in degrees, counter-clockwise from three o'clock.
    void arc(QPointF centre, double radius, double from, double span, double width = weight) const;
    /// A straight line with an open arrow head at its end.
    void arrow(QPointF from, QPointF to, double head = 3.6, double width = weight) const;
    /// An open arrow head at `tip`, pointing along `degrees` (counter-clockwise from three o'clock).
    void head(QPointF tip, double degrees, double size = 3.6, double width = weight) const;
    void dashes(QPointF from, QPointF to, double dash, double gap, double width = weight) const;

private:
    [[nodiscard]] QPen pen(double width) const;

    QPainter& m_painter;
    const Theme& m_theme;
    QColor m_ink;
};

using SignDrawer = void (*)(const Signwriter&);

// Each file holds the signs of one kind; null for a sign of another file.
[[nodiscard]] SignDrawer stateSign(Pictogram sign);
[[nodiscard]] SignDrawer plainSign(Pictogram sign);
[[nodiscard]] SignDrawer workSign(Pictogram sign);
[[nodiscard]] SignDrawer prepSign(Pictogram sign);
[[nodiscard]] SignDrawer finishSign(Pictogram sign);

/// The outline of a flat hand, palm to the reader, in the 24-unit square; scaled about the middle.
[[nodiscard]] QPainterPath flatHand(double scale = 1.0);
/// A drop hanging at `tip`, `height` units tall.
[[nodiscard]] QPainterPath dropAt(QPointF tip, double height);

} // namespace strandbench
