// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/hatch.h"

#include "pictures/picture_text.h"

#include <QLineF>
#include <QVector>

#include <cmath>

namespace strandbench {
namespace {

QVector<QLineF> slanted(const QRectF& box, double pitch, bool rising)
{
    QVector<QLineF> lines;
    const double height = box.height();
    const double across = pitch * std::sqrt(2.0);
    for (double x = box.left() - height; x < box.right(); x += across)
        lines << (rising ? QLineF(x, box.bottom(), x + height, box.top())
                         : QLineF(x, box.top(), x + height, box.bottom()));
    return lines;
}

/// A number from 0 to 1 that is always the same for the same place in the grid.
double scatter(int row, int column, int which)
{
    unsigned mixed = static_cast<unsigned>(row) * 73856093U ^ static_cast<unsigned>(column) * 19349663U ^
                     static_cast<unsigned>(which) * 83492791U;
    mixed ^= mixed >> 13U;
    mixed *= 0x5bd1e995U;
    mixed ^= mixed >> 15U;
    return static_cast<double>(mixed % 1024U) / 1023.0;
}

/// Short strokes strewn over a staggered grid, each a little off its place and tilted its own way, but alike
/// in every painting.
QVector<QLineF> strokes(const QRectF& box, double pitch, double length, double slope)
{
    QVector<QLineF> lines;
    int row = 0;
    for (double y = box.top(); y < box.bottom() + pitch; y += pitch * 0.62, ++row) {
        int column = 0;
        for (double x = box.left() - pitch + (row % 2) * pitch * 0.5; x < box.right() + pitch; x += pitch, ++column) {
            const double rise = (2 * scatter(row, column, 0) - 1) * slope * length;
            const double left = x + (scatter(row, column, 1) - 0.5) * pitch * 0.6;
            const double middle = y + (scatter(row, column, 2) - 0.5) * pitch * 0.3;
            lines << QLineF(left, middle - rise / 2, left + length, middle + rise / 2);
        }
    }
    return lines;
}

QVector<QLineF> rows(const QRectF& box, double pitch)
{
    QVector<QLineF> lines;
    const int count = std::max(1, static_cast<int>(box.height() / pitch));
    for (int i = 0; i < count; ++i) {
        const double y = box.top() + box.height() * (i + 0.5) / count;
        lines << QLineF(box.left(), y, box.right(), y);
    }
    return lines;
}

QVector<QLineF> uprights(const QRectF& box, double pitch)
{
    QVector<QLineF> lines;
    for (double x = box.left() + pitch / 2; x < box.right(); x += pitch)
        lines << QLineF(x, box.top(), x, box.bottom());
    return lines;
}

QColor hatchOf(Material material, const Theme& theme)
{
    switch (material) {
    case Material::Laminate:
        return theme.color(Role::LaminateHatch);
    case Material::Smc:
        return theme.color(Role::SmcFleck);
    case Material::Carbon:
        return inkUpon(theme, groundOf(material, theme));
    case Material::Filler:
    case Material::FillerLater:
        return theme.color(Role::FillerFleck);
    default:
        return theme.color(Role::MetalHatch);
    }
}

QPen dashedPen(const QColor& color, double width)
{
    QPen pen(color, width, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({7, 5});
    return pen;
}

void drawFlecks(QPainter& painter, const QRectF& box, Material material, const Theme& theme, double mm)
{
    const QColor hatch = hatchOf(material, theme);
    painter.setPen(QPen(hatch, std::max(1.0, mm * 0.22), Qt::SolidLine, Qt::FlatCap));
    switch (material) {
    case Material::Carbon: // as it is woven: upright and across
        painter.drawLines(uprights(box, mm * 2.4));
        painter.drawLines(rows(box, mm * 2.4));
        break;
    case Material::Laminate:
        painter.drawLines(slanted(box, mm * 2.1, true));
        painter.drawLines(slanted(box, mm * 2.1, false));
        break;
    case Material::Smc:
        painter.setPen(QPen(hatch, std::max(1.2, mm * 0.3), Qt::SolidLine, Qt::RoundCap));
        painter.drawLines(strokes(box, mm * 3.4, mm * 1.5, 0.8));
        break;
    case Material::Steel:
    case Material::Galvanised:
        painter.drawLines(slanted(box, mm * 1.8, true));
        break;
    case Material::Aluminium:
        painter.setPen(dashedPen(hatch, std::max(1.0, mm * 0.2)));
        painter.drawLines(rows(box, mm * 3.0));
        break;
    case Material::Plastic:
        painter.setPen(QPen(hatch, std::max(1.6, mm * 0.45), Qt::SolidLine, Qt::RoundCap));
        painter.drawLines(strokes(box, mm * 2.6, 0.01, 0));
        break;
    case Material::Filler:
        painter.drawLines(strokes(box, mm * 2.1, mm * 1.15, 0.9));
        break;
    case Material::FillerLater:
        painter.drawLines(strokes(box, mm * 4.2, mm * 1.15, 0.9));
        break;
    case Material::Adhesive:
        painter.drawLines(uprights(box, mm * 1.2));
        break;
    default:
        break;
    }
}

} // namespace

Material materialOf(Substrate substrate)
{
    switch (substrate) {
    case Substrate::Laminate:
        return Material::Laminate;
    case Substrate::Smc:
        return Material::Smc;
    case Substrate::Steel:
        return Material::Steel;
    case Substrate::Galvanised:
        return Material::Galvanised;
    case Substrate::Aluminium:
        return Material::Aluminium;
    case Substrate::Magnesium:
        return Material::Aluminium;
    case Substrate::Carbon:
        return Material::Carbon;
    case Substrate::Thermoplastic:
    case Substrate::FlexiblePolyurethane:
    case Substrate::CastThermoset:
    case Substrate::Unknown:
        return Material::Plastic;
    }
    Q_UNREACHABLE();
}

QColor groundOf(Material material, const Theme& theme)
{
    switch (material) {
    case Material::Laminate:
        return theme.color(Role::LaminateFill);
    case Material::Smc:
        return theme.color(Role::SmcFill);
    case Material::Steel:
    case Material::Galvanised:
        return theme.color(Role::MetalFill);
    case Material::Aluminium:
    case Material::Plastic:
        return theme.color(Role::ZincFill);
    case Material::Carbon:
        return theme.color(Role::MetalHatch).darker(190);
    case Material::Filler:
        return theme.color(Role::FillerFill);
    case Material::FillerLater:
        return theme.color(Role::FillerSecond);
    case Material::Finish:
        return theme.color(Role::FinishFill);
    case Material::Hardener:
        return theme.color(Role::HardenerFill);
    case Material::Adhesive:
        return theme.color(Role::ZincFill);
    case Material::Weld:
        return theme.color(Role::MetalHatch);
    case Material::Paint:
        return theme.color(Role::Action);
    case Material::Tape:
        return theme.color(Role::Caution);
    }
    Q_UNREACHABLE();
}

QPen outlinePen(const Theme& theme, double widthMm)
{
    return QPen(theme.color(Role::Ink), std::max(1.0, theme.metrics().pixelsPerMillimetre() * widthMm), Qt::SolidLine,
                Qt::RoundCap, Qt::RoundJoin);
}

void paintMaterial(QPainter& painter, const QPainterPath& area, Material material, const Theme& theme, double scale)
{
    if (area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillPath(area, groundOf(material, theme));
    painter.setClipPath(area, Qt::IntersectClip);
    drawFlecks(painter, area.boundingRect(), material, theme, theme.metrics().pixelsPerMillimetre() * scale);
    painter.restore();
}

void paintPiece(QPainter& painter, const QPainterPath& area, Material material, const Theme& theme, double scale,
                double widthMm)
{
    paintMaterial(painter, area, material, theme, scale);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.strokePath(area, outlinePen(theme, widthMm));
    painter.restore();
}

void paintZincSkin(QPainter& painter, const QPainterPath& area, const Theme& theme)
{
    const double skin = std::max(2.0, theme.metrics().pixelsPerMillimetre() * 0.7);
    painter.save();
    painter.setClipPath(area, Qt::IntersectClip);
    painter.strokePath(area, QPen(theme.color(Role::ZincFill), 2 * skin));
    painter.restore();
    painter.strokePath(area, outlinePen(theme));
}

} // namespace strandbench
