// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/ghs_pictogram.h"

#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

constexpr double side = 24; // units of the square that holds the pictogram
const QColor ink(0x10, 0x10, 0x10);
const QColor frame(0xD6, 0x00, 0x1C);
const QColor ground(Qt::white);

/// In units of the square; the symbol stays within 7.6 units of the middle, measured along both axes together.
class Hand {
public:
    explicit Hand(QPainter& painter) : m_painter(painter) {}

    void fill(const QPainterPath& path, const QColor& color = ink) const { m_painter.fillPath(path, color); }
    void dot(QPointF at, double rx, double ry, const QColor& color = ink) const
    {
        QPainterPath path;
        path.addEllipse(at, rx, ry);
        fill(path, color);
    }
    void line(const QPolygonF& points, double width, const QColor& color = ink) const
    {
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(color, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        m_painter.drawPolyline(points);
    }
    void polygon(const QPolygonF& points, const QColor& color = ink) const
    {
        QPainterPath path;
        path.addPolygon(points);
        path.closeSubpath();
        fill(path, color);
    }
    void ring(QPointF at, double radius, double width) const
    {
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(ink, width));
        m_painter.drawEllipse(at, radius, radius);
    }

private:
    QPainter& m_painter;
};

/// A flame standing on `foot`, `height` tall, with the white tongue within.
void flameOn(const Hand& hand, QPointF foot, double height)
{
    const auto at = [&](double x, double y) { return foot + QPointF(x, -y) * (height / 10); };
    QPainterPath outer(at(0.3, 10));
    outer.cubicTo(at(1.2, 7.4), at(3.6, 6), at(3.6, 3.2));
    outer.cubicTo(at(3.6, 1.2), at(2, 0), at(0, 0));
    outer.cubicTo(at(-2, 0), at(-3.6, 1.2), at(-3.6, 3.2));
    outer.cubicTo(at(-3.6, 4.6), at(-2.9, 5.6), at(-2.4, 6.6));
    outer.cubicTo(at(-2, 5.9), at(-1.9, 5.4), at(-1.7, 4.8));
    outer.cubicTo(at(-0.6, 6), at(0.2, 8), at(0.3, 10));
    hand.fill(outer);
    QPainterPath inner(at(0.4, 4.6));
    inner.cubicTo(at(0.7, 3.4), at(1.7, 2.9), at(1.7, 1.9));
    inner.cubicTo(at(1.7, 0.9), at(0.9, 0.6), at(0, 0.6));
    inner.cubicTo(at(-0.9, 0.6), at(-1.6, 1), at(-1.6, 1.9));
    inner.cubicTo(at(-1.6, 2.9), at(0, 3.2), at(0.4, 4.6));
    hand.fill(inner, ground);
}

void bomb(const Hand& hand)
{
    hand.dot({11, 14}, 3, 3);
    for (const auto& [from, to] : std::initializer_list<std::pair<QPointF, QPointF>>{{{13.6, 11}, {16, 8}},
                                                                                     {{14.6, 13}, {18, 12}},
                                                                                     {{11.6, 10.2}, {12, 6.6}},
                                                                                     {{8.4, 11.6}, {6.6, 9.6}},
                                                                                     {{14.4, 15.6}, {16.6, 16.4}},
                                                                                     {{8, 15}, {5.8, 15.2}}})
        hand.line({from, to}, 1.1);
    hand.polygon({{12, 5.2}, {13, 7.6}, {15.4, 7.2}, {13.8, 9}, {14.6, 10.6}, {12.6, 9.6}, {10.6, 10.4}, {11.2, 8}});
}

void flame(const Hand& hand)
{
    flameOn(hand, {12, 16.2}, 11);
    hand.line({{7.8, 17.2}, {16.2, 17.2}}, 1.3);
}

void flameOverCircle(const Hand& hand)
{
    flameOn(hand, {12, 12.2}, 7.8);
    hand.ring({12, 14.6}, 2.5, 1.2);
    hand.line({{8.2, 18}, {15.8, 18}}, 1.2);
}

void cylinder(const Hand& hand)
{
    hand.line({{7, 15.2}, {14.4, 10.6}}, 4);
    hand.line({{15.8, 9.8}, {17, 9}}, 1.8);
}

void corrosion(const Hand& hand)
{
    hand.line({{6.8, 8.2}, {10.4, 9.8}}, 2);
    hand.line({{17.2, 8.2}, {13.6, 9.8}}, 2);
    for (const double x : {9.6, 14.4}) {
        hand.dot({x, 12}, 0.55, 0.8);
        hand.dot({x, 13.9}, 0.55, 0.8);
    }
    hand.polygon({{5.8, 15.4}, {8.6, 15.4}, {9.2, 16.3}, {10, 15.4}, {11.6, 15.4}, {11.6, 17}, {7.4, 17}});
    QPainterPath palm(QPointF(12.6, 17.2));
    palm.cubicTo({12.6, 15.6}, {13.2, 15.2}, {13.8, 15.2});
    palm.cubicTo({14.2, 16.4}, {14.8, 16.4}, {15.2, 15.2});
    palm.lineTo(18.2, 15.2);
    palm.lineTo(17.2, 16.4);
    palm.cubicTo({16.4, 17.2}, {14.4, 17.2}, {12.6, 17.2});
    hand.fill(palm);
}

void skull(const Hand& hand)
{
    hand.line({{7.4, 14.2}, {16.6, 17.4}}, 1.3);
    hand.line({{16.6, 14.2}, {7.4, 17.4}}, 1.3);
    hand.dot({12, 9.6}, 3.9, 3.7);
    hand.polygon({{10, 12}, {14, 12}, {13.8, 14.8}, {10.2, 14.8}});
    hand.dot({10.4, 10.1}, 1.05, 1.15, ground);
    hand.dot({13.6, 10.1}, 1.05, 1.15, ground);
    hand.polygon({{12, 11.4}, {11.4, 12.5}, {12.6, 12.5}}, ground);
}

void exclamation(const Hand& hand)
{
    QPainterPath bar(QPointF(10.5, 6.4));
    bar.quadTo({12, 4.6}, {13.5, 6.4});
    bar.lineTo(12.9, 13.6);
    bar.quadTo({12, 14.5}, {11.1, 13.6});
    bar.closeSubpath();
    hand.fill(bar);
    hand.dot({12, 17.2}, 1.45, 1.45);
}

void healthHazard(const Hand& hand)
{
    hand.dot({12, 7.4}, 2.3, 2.6);
    QPainterPath bust(QPointF(6.4, 16.4));
    bust.cubicTo({6.6, 12}, {8.6, 10.8}, {10.8, 10.4});
    bust.lineTo(13.2, 10.4);
    bust.cubicTo({15.4, 10.8}, {17.4, 12}, {17.6, 16.4});
    bust.lineTo(14.4, 17.4);
    bust.lineTo(9.6, 17.4);
    bust.closeSubpath();
    hand.fill(bust);
    QPolygonF star;
    for (int i = 0; i < 12; ++i) {
        const double angle = i * std::acos(-1.0) / 6;
        const double radius = i % 2 == 0 ? 3.5 : 1.3;
        star << QPointF(12, 13.8) + radius * QPointF(std::sin(angle), -std::cos(angle));
    }
    hand.polygon(star, ground);
}

void environment(const Hand& hand)
{
    hand.line({{10, 15.6}, {10, 8.4}}, 1.2);
    hand.line({{10, 11}, {7.6, 8.8}}, 0.9);
    hand.line({{10, 9.8}, {12.2, 7.4}}, 0.9);
    hand.line({{10, 8.4}, {10.2, 6.4}}, 0.9);
    hand.line({{10, 13}, {12, 11.2}}, 0.9);
    hand.line({{5.6, 15.6}, {11.4, 15.6}}, 1.1);
    QPainterPath fish(QPointF(11.2, 16.2));
    fish.quadTo({14, 12.6}, {16.6, 15});
    fish.lineTo(18.2, 13.8);
    fish.lineTo(17.8, 16.8);
    fish.lineTo(16.6, 16);
    fish.quadTo({14, 18.4}, {11.2, 16.2});
    hand.fill(fish);
    hand.dot({13.2, 15.4}, 0.45, 0.45, ground);
}

using Drawer = void (*)(const Hand&);

Drawer drawerOf(GhsPictogram pictogram)
{
    constexpr std::array<Drawer, Codes<GhsPictogram>::table.size()> drawers{
        bomb, flame, flameOverCircle, cylinder, corrosion, skull, exclamation, healthHazard, environment};
    return drawers.at(static_cast<std::size_t>(pictogram));
}

} // namespace

void paintGhsPictogram(QPainter& painter, const QRectF& rect, GhsPictogram pictogram)
{
    if (rect.isEmpty())
        return;
    const double size = std::min(rect.width(), rect.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.center().x() - size / 2, rect.center().y() - size / 2);
    painter.scale(size / side, size / side);
    painter.setPen(QPen(frame, 1.7, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(ground);
    painter.drawPolygon(QPolygonF{{12, 1.4}, {22.6, 12}, {12, 22.6}, {1.4, 12}});
    drawerOf(pictogram)(Hand(painter));
    painter.restore();
}

void paintGhsPictograms(QPainter& painter, const QRectF& rect, const std::vector<GhsPictogram>& pictograms)
{
    if (pictograms.empty())
        return;
    const auto sizeIn = [&](std::size_t rows) {
        const std::size_t columns = (pictograms.size() + rows - 1) / rows;
        return std::min(rect.width() / static_cast<double>(columns), rect.height() / static_cast<double>(rows));
    };
    const std::size_t rows = sizeIn(2) > sizeIn(1) ? 2 : 1;
    const std::size_t columns = (pictograms.size() + rows - 1) / rows;
    const double size = sizeIn(rows);
    const QPointF corner =
        rect.center() - QPointF(size * static_cast<double>(columns), size * static_cast<double>(rows)) / 2;
    for (std::size_t i = 0; i < pictograms.size(); ++i) {
        const QPointF at(static_cast<double>(i % columns) * size, static_cast<double>(i / columns) * size);
        paintGhsPictogram(painter, {corner + at, QSizeF(size, size)}, pictograms[i]);
    }
}

} // namespace strandbench
