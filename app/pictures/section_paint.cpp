// SPDX-License-Identifier: GPL-3.0-or-later
// Painting a section that has been laid out.
#include "pictures/section_layout.h"

#include <algorithm>

namespace strandbench {
namespace {

double hatchScale(const SectionLayout& layout, const Theme& theme)
{
    // A thin panel on a card takes a closer hatch, so that it still reads as one.
    const double height = std::abs(layout.toPixels.m22()) * (layout.shape.bottom - layout.shape.top);
    return std::clamp(theme.metrics().mm(height) / 18.0, 0.55, 1.0);
}

void paintPieces(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    const double scale = hatchScale(layout, theme);
    for (const SectionPiece& piece : layout.shape.pieces) {
        const QPainterPath area = layout.toPixels.map(piece.area);
        paintPiece(painter, area, piece.material, theme, scale);
        if (piece.material == Material::Galvanised)
            paintZincSkin(painter, area, theme);
    }
}

void paintCavity(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    const QPainterPath cavity = layout.toPixels.map(layout.shape.cavity);
    if (cavity.isEmpty())
        return;
    painter.fillPath(cavity, theme.color(Role::Hole));
    QPen dashed = outlinePen(theme, 0.25);
    dashed.setDashPattern({5, 4});
    for (const SectionSlab& slab : layout.shape.slabs)
        if (!slab.laid)
            painter.strokePath(layout.toPixels.map(slab.area), dashed);
}

void paintSlabs(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    const double scale = hatchScale(layout, theme);
    const SectionSlab* previous = nullptr;
    bool later = false;
    for (const SectionSlab& slab : layout.shape.slabs) {
        if (!slab.laid)
            continue;
        Material material = Material::Finish;
        if (slab.lift >= 0) {
            later = previous != nullptr && !later; // neighbours differ, so that their border shows
            material = later ? Material::FillerLater : Material::Filler;
        }
        previous = &slab;
        paintPiece(painter, layout.toPixels.map(slab.area), material, theme, scale);
    }
}

/// The skim runs out to nothing beyond the opening. Its skin there has no thickness to scale; it is drawn as
/// thin as a line upon the contour.
void paintFeather(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    const bool finished = std::any_of(layout.shape.slabs.begin(), layout.shape.slabs.end(),
                                      [](const SectionSlab& slab) { return slab.lift < 0 && slab.laid; });
    if (!finished || layout.shape.feather.elementCount() < 4)
        return;
    const double up = theme.metrics().pixelsPerMillimetre() * (layout.turned ? -0.5 : 0.5);
    const auto at = [&](int i) { return QPointF(layout.toPixels.map(QPointF(layout.shape.feather.elementAt(i)))); };
    QPainterPath skin;
    skin.addPolygon(QPolygonF{at(0), at(1) - QPointF(0, up), at(2) - QPointF(0, up), at(3)});
    skin.closeSubpath();
    paintPiece(painter, skin, Material::Finish, theme, 1.0, 0.25);
}

void paintRust(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    const QRectF box = layout.toPixels.mapRect(layout.shape.cavity.boundingRect());
    const double r = theme.metrics().pixelsPerMillimetre() * 0.55;
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(Role::FillerFleck));
    for (int i = 0; i < 14; ++i) {
        const double inward = r * (1 + 1.4 * ((i * 5) % 4));
        const double y = box.top() + box.height() * (i + 0.5) / 14;
        painter.drawEllipse(QPointF(i % 2 == 0 ? box.left() - inward : box.right() + inward, y), r, r);
    }
}

void paintCrackMarks(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const double panel = std::abs(layout.toPixels.m22()) * layout.shape.bottom;
    const double radius = std::clamp(1.4 * layout.toPixels.m11(), std::min(ppmm, 0.3 * panel), 0.3 * panel);
    painter.setPen(outlinePen(theme, 0.45));
    painter.setBrush(theme.color(Role::Card));
    for (const QPointF& hole : layout.shape.drilled)
        painter.drawEllipse(layout.toPixels.map(hole), radius, radius);
    painter.setBrush(Qt::NoBrush);
    for (const QPainterPath& crack : layout.shape.cracks)
        painter.strokePath(layout.toPixels.map(crack), outlinePen(theme, 0.7));
}

void paintInside(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    bool later = false;
    int seen = 0;
    for (std::size_t i = 0; i < layout.shape.slabs.size(); ++i) {
        const SectionSlab& slab = layout.shape.slabs[i];
        if (slab.laid && slab.lift >= 0)
            later = seen++ > 0 && !later;
        const QColor ground =
            !slab.laid ? theme.color(Role::Hole) : groundOf(later ? Material::FillerLater : Material::Filler, theme);
        for (const SectionInside& each : layout.inside) {
            if (each.slab != static_cast<int>(i))
                continue;
            const double pad = theme.metrics().pixelsPerMillimetre() * 0.8;
            painter.setPen(Qt::NoPen);
            painter.setBrush(ground); // no flecks behind the letters
            painter.drawRoundedRect(inkOf(each.text).adjusted(-pad, pad * 0.6, pad, -pad * 0.6), pad, pad);
            drawText(painter, each.text, inkUpon(theme, ground));
        }
    }
}

void paintDimension(QPainter& painter, const SectionLayout& layout, const Theme& theme)
{
    if (layout.openingLine.isNull())
        return;
    const QLineF& line = layout.openingLine;
    const double up = theme.metrics().pixelsPerMillimetre() * 2.6;
    painter.setPen(outlinePen(theme, 0.35));
    painter.drawLine(line);
    painter.drawLine(line.p1(), line.p1() - QPointF(0, up));
    painter.drawLine(line.p2(), line.p2() - QPointF(0, up));
    if (layout.extensionFrom < line.y1() - 2 * up) {
        QPen thin = outlinePen(theme, 0.2);
        thin.setDashPattern({6, 5});
        painter.setPen(thin);
        painter.drawLine(QPointF(line.x1(), layout.extensionFrom), line.p1());
        painter.drawLine(QPointF(line.x2(), layout.extensionFrom), line.p2());
    }
    drawText(painter, layout.opening, theme.color(Role::Ink));
}

} // namespace

void paintLayout(QPainter& painter, const SectionLayout& layout, const SectionDrawing& drawing, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintCavity(painter, layout, theme);
    paintPieces(painter, layout, theme);
    if (!drawing.panelOnly && drawing.damage.kind == DamageKind::RustHole)
        paintRust(painter, layout, theme);
    paintFeather(painter, layout, theme);
    paintSlabs(painter, layout, theme);
    paintCrackMarks(painter, layout, theme);
    paintDimension(painter, layout, theme);
    paintInside(painter, layout, theme);
    for (const SectionCallout& each : layout.callouts) {
        painter.setPen(outlinePen(theme, 0.3));
        painter.drawPolyline(QPolygonF{each.from, each.elbow, each.to});
        painter.setBrush(theme.color(Role::Ink));
        painter.drawEllipse(each.to, theme.px(0.5), theme.px(0.5));
        drawText(painter, each.text, theme.color(Role::Ink));
    }
    for (const PictureText& each : layout.note)
        drawText(painter, each, theme.color(Role::MutedInk));
    painter.restore();
}

double paintSection(QPainter& painter, const QRectF& rect, const SectionDrawing& drawing, const Theme& theme)
{
    const SectionLayout layout = layOutSection(rect, drawing, theme);
    paintLayout(painter, layout, drawing, theme);
    return layout.exaggeration;
}

} // namespace strandbench
