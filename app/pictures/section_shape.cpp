// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/section_shape.h"

#include <QPolygonF>

#include <algorithm>

namespace strandbench {
namespace {

constexpr double drillRadius = 1.4; // mm: a hole of 2.4 to 3.2 mm (AC 43.13-1B, stop drilling)

QPainterPath closed(const QPolygonF& points)
{
    QPainterPath path;
    path.addPolygon(points);
    path.closeSubpath();
    return path;
}

/// Everything that the kinds below need, in millimetres.
struct Measures {
    double thickness;
    double depth;
    double opening;
    double floor;
    double height;
    Material material;
};

Measures measuresOf(const SectionDrawing& drawing)
{
    const Damage& damage = drawing.damage;
    Measures m{};
    m.depth = inMillimetres(damage.depth);
    m.thickness = inMillimetres(damage.panelThickness);
    if (m.thickness <= 0)
        m.thickness = damage.kind == DamageKind::Hole || damage.kind == DamageKind::RustHole ? m.depth : 3.0;
    m.opening = inMillimetres(drawing.drawnOpening());
    m.floor = inMillimetres(drawing.floorLength);
    m.height = inMillimetres(drawing.faceHeight);
    m.material = drawing.substrateKnown ? materialOf(drawing.substrate) : Material::Plastic;
    return m;
}

void setReach(SectionShape& shape, const SectionDrawing& drawing, double least)
{
    const double beside = std::max({0.2 * shape.opening, 1.25 * inMillimetres(drawing.skimBeyond), least});
    shape.reach = shape.opening / 2 + beside;
}

void strip(SectionShape& shape, double thickness, Material material)
{
    QPainterPath panel;
    panel.addRect(QRectF(-shape.reach, 0, 2 * shape.reach, thickness));
    shape.pieces.push_back({panel.subtracted(shape.cavity), material});
    shape.bottom = thickness;
    shape.skins = {0, thickness};
}

/// The edge as it was found: torn, not bevelled.
QPainterPath tornHole(double width, double thickness)
{
    QPolygonF outline;
    constexpr int teeth = 5;
    for (int i = 0; i <= teeth; ++i)
        outline << QPointF(-width / 2 + (i % 2 == 0 ? 0.0 : 0.04 * width), thickness * i / teeth);
    for (int i = teeth; i >= 0; --i)
        outline << QPointF(width / 2 - (i % 2 == 0 ? 0.035 * width : 0.0), thickness * i / teeth);
    return closed(outline);
}

QPainterPath bevelled(double opening, double floor, double from, double to)
{
    return closed({{-opening / 2, from}, {opening / 2, from}, {floor / 2, to}, {-floor / 2, to}});
}

/// A backing bonded behind a hole. Where it laps further than the picture reaches, it runs out of it as the panel does.
void bondBacking(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    const double thick = inMillimetres(drawing.backing);
    if (thick <= 0)
        return;
    const double half = std::min(shape.reach, m.floor / 2 + inMillimetres(drawing.backingLap));
    QPainterPath backing;
    backing.addRect(QRectF(-half, m.thickness, 2 * half, thick));
    shape.pieces.push_back({backing, Material::Laminate});
    shape.bottom = m.thickness + thick;
}

void hole(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    const bool prepared = drawing.progress.prepared;
    shape.opening = prepared ? m.opening : inMillimetres(drawing.damage.length);
    setReach(shape, drawing, 0);
    if (!prepared)
        shape.cavity = tornHole(shape.opening, m.thickness);
    else if (drawing.faces == 2)
        shape.cavity = bevelled(m.opening, m.floor, 0, m.height)
                           .united(bevelled(m.opening, m.floor, m.thickness, m.thickness - m.height));
    else
        shape.cavity = bevelled(m.opening, m.floor, 0, m.thickness);
    strip(shape, m.thickness, m.material);
    if (drawing.faces == 2 && prepared)
        shape.openingAt = m.thickness;
    if (prepared)
        bondBacking(shape, drawing, m);
}

/// A parabola of depth d over the opening, as geometry counts a dent and a seam.
QPainterPath cap(double opening, double depth)
{
    QPainterPath path(QPointF(-opening / 2, 0));
    path.quadTo(QPointF(0, 2 * depth), QPointF(opening / 2, 0)); // a quadratic arc is that parabola
    path.closeSubpath();
    return path;
}

void dent(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    shape.opening = m.opening;
    setReach(shape, drawing, 0);
    shape.cavity = cap(m.opening, m.depth);
    QPainterPath sheet(QPointF(-shape.reach, 0));
    sheet.lineTo(-m.opening / 2, 0);
    sheet.quadTo(QPointF(0, 2 * m.depth), QPointF(m.opening / 2, 0));
    sheet.lineTo(shape.reach, 0);
    sheet.lineTo(shape.reach, m.thickness);
    sheet.lineTo(m.opening / 2, m.thickness);
    sheet.quadTo(QPointF(0, 2 * m.depth + m.thickness), QPointF(-m.opening / 2, m.thickness));
    sheet.lineTo(-shape.reach, m.thickness);
    sheet.closeSubpath();
    shape.pieces.push_back({sheet, m.material});
    shape.bottom = m.thickness + m.depth;
}

void gouge(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    shape.opening = m.opening;
    setReach(shape, drawing, 0);
    shape.cavity = bevelled(m.opening, 0, 0, m.depth);
    strip(shape, std::max(m.thickness, m.depth), m.material);
}

void crack(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    const double thickness = std::max(m.thickness, m.depth);
    shape.opening = m.opening;
    setReach(shape, drawing, 5 * drillRadius);
    const bool prepared = drawing.progress.prepared;
    if (prepared)
        shape.cavity = bevelled(m.opening, 0, 0, m.depth);
    strip(shape, thickness, m.material);
    const double beside = (shape.reach + shape.opening / 2) / 2;
    if (prepared) {
        shape.drilled = {{-beside, thickness / 2}, {beside, thickness / 2}};
        return;
    }
    QPainterPath line(QPointF(0, 0));
    const double jag = 0.04 * shape.reach;
    line.lineTo(jag, 0.3 * m.depth);
    line.lineTo(-jag, 0.62 * m.depth);
    line.lineTo(jag * 0.4, m.depth);
    shape.cracks.push_back(line);
}

/// Sheets lapped and joined here and there: what spot and stitch welds look like cut through one of them.
void lappedSheets(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    setReach(shape, drawing, 0);
    const double lap = 0.35 * shape.reach;
    const auto sheet = [&](double left, double right, double top) {
        QPainterPath whole;
        whole.addRect(QRectF(QPointF(left, top), QPointF(right, top + m.thickness)));
        return whole;
    };
    QPainterPath nugget;
    nugget.addEllipse(QPointF(0, m.thickness), 0.12 * shape.reach, 0.7 * m.thickness);
    shape.pieces.push_back({sheet(-shape.reach, lap, 0).subtracted(nugget), m.material});
    shape.pieces.push_back({sheet(-lap, shape.reach, m.thickness).subtracted(nugget), m.material});
    shape.pieces.push_back({nugget, Material::Weld});
    shape.bottom = 2 * m.thickness;
}

void weldSeam(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    if (drawing.damage.weld && *drawing.damage.weld != WeldKind::Solid)
        return lappedSheets(shape, drawing, m);
    shape.opening = m.opening;
    setReach(shape, drawing, 0);
    shape.cavity = cap(m.opening, m.depth);
    // Two sheets drawn down to the weld, their joint at the lowest point of the cap.
    const auto sheet = [&](double side) {
        QPainterPath whole;
        whole.moveTo(side * shape.reach, 0);
        whole.lineTo(side * m.opening / 2, 0);
        whole.quadTo(QPointF(side * m.opening / 4, m.depth), QPointF(0, m.depth)); // half of the same parabola
        whole.lineTo(0, m.depth + m.thickness);
        whole.quadTo(QPointF(side * m.opening / 4, m.depth + m.thickness), QPointF(side * m.opening / 2, m.thickness));
        whole.lineTo(side * shape.reach, m.thickness);
        whole.closeSubpath();
        return whole;
    };
    shape.pieces.push_back({sheet(-1), m.material});
    shape.pieces.push_back({sheet(1), m.material});
    const double half = 0.06 * shape.reach;
    const double low = m.depth + m.thickness;
    QPainterPath bead(QPointF(-half, m.depth));
    bead.lineTo(half, m.depth);
    bead.lineTo(0.5 * half, low);
    bead.quadTo(QPointF(0, low + 0.5 * m.thickness), QPointF(-0.5 * half, low)); // root run
    bead.closeSubpath();
    shape.pieces.push_back({bead.subtracted(shape.cavity), Material::Weld});
    shape.bottom = low + 0.25 * m.thickness;
}

void bondSeam(SectionShape& shape, const SectionDrawing& drawing, const Measures& m)
{
    shape.opening = m.opening;
    setReach(shape, drawing, 0.7 * m.opening);
    const double bond = 0.3 * m.thickness;
    const double half = m.opening / 2;
    const double drop = m.thickness + bond;
    const double depth = std::min(m.depth, m.thickness);
    shape.cavity = bevelled(m.opening, 0, 0, depth);
    // The lower sheet is set down by its thickness and the bond line; adhesive stands in the gap beside the
    // upper sheet up to the groove's bottom.
    const double gap = 0.06 * m.opening;
    const double edge = depth * (1 - gap / half);
    const double far = shape.reach * 0.84;
    const QPainterPath lower = closed({{-shape.reach, 0},
                                       {-half, 0},
                                       {0, depth},
                                       {0, drop},
                                       {far, drop},
                                       {far, drop + m.thickness},
                                       {-0.1 * m.opening, drop + m.thickness},
                                       {-half, m.thickness},
                                       {-shape.reach, m.thickness}});
    const QPainterPath upper =
        closed({{half, 0}, {shape.reach, 0}, {shape.reach, m.thickness}, {gap, m.thickness}, {gap, edge}});
    const QPainterPath adhesive =
        closed({{0, depth}, {gap, edge}, {gap, m.thickness}, {far * 0.96, m.thickness}, {far * 0.96, drop}, {0, drop}});
    shape.pieces.push_back({adhesive, Material::Adhesive});
    shape.pieces.push_back({lower, m.material});
    shape.pieces.push_back({upper, m.material});
    shape.bottom = drop + m.thickness;
}

QPainterPath between(const QPainterPath& cavity, double top, double bottom)
{
    QPainterPath slab;
    const QRectF box = cavity.boundingRect();
    slab.addRect(QRectF(box.left() - 1, top, box.width() + 2, bottom - top));
    return cavity.intersected(slab);
}

/// Lifts stack from each face's floor to its surface; the front's last one stops below the contour for the
/// finish. Returns the height that the fibre filler of the front face reaches (y, downwards).
double layLifts(SectionShape& shape, const SectionDrawing& drawing, double height, double total)
{
    const double low = inMillimetres(drawing.leftLow);
    double front = height;
    double back = height;
    for (std::size_t i = 0; i < drawing.lifts.size(); ++i) {
        const Lift& lift = drawing.lifts[i];
        const bool isFront = lift.face == Face::Front;
        double& floor = isFront ? front : back;
        const double top = floor - inMillimetres(lift.thickness);
        const double drawnTop = isFront && inMillimetres(drawing.finish) > 0 ? std::max(top, low) : std::max(top, 0.0);
        SectionSlab slab;
        slab.lift = static_cast<int>(i);
        slab.laid = slab.lift < drawing.progress.liftsLaid;
        slab.area =
            isFront ? between(shape.cavity, drawnTop, floor) : between(shape.cavity, total - floor, total - drawnTop);
        floor = drawnTop;
        shape.slabs.push_back(slab);
    }
    return front;
}

void layFinish(SectionShape& shape, const SectionDrawing& drawing, double fibreTop)
{
    const double finish = inMillimetres(drawing.finish);
    if (finish <= 0)
        return;
    const double top = fibreTop - finish;
    SectionSlab slab;
    slab.lift = -1;
    slab.laid = drawing.progress.finished;
    slab.area = between(shape.cavity, std::max(top, 0.0), fibreTop);
    const double edge = shape.opening / 2;
    const double beyond = edge + inMillimetres(drawing.skimBeyond);
    if (top < 0) {
        slab.area = slab.area.united(closed({{-beyond, 0}, {-edge, top}, {edge, top}, {beyond, 0}}));
        shape.top = std::min(shape.top, top);
    } else {
        shape.feather = closed({{-beyond, 0}, {-edge, 0}, {edge, 0}, {beyond, 0}});
    }
    shape.slabs.push_back(slab);
}

} // namespace

SectionShape shapeOf(const SectionDrawing& drawing)
{
    SectionShape shape;
    const Measures m = measuresOf(drawing);
    if (drawing.panelOnly) {
        shape.reach = 15 * m.thickness;
        strip(shape, m.thickness, m.material);
        return shape;
    }
    switch (drawing.damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
        hole(shape, drawing, m);
        break;
    case DamageKind::Dent:
        dent(shape, drawing, m);
        break;
    case DamageKind::Gouge:
        gouge(shape, drawing, m);
        break;
    case DamageKind::Crack:
        crack(shape, drawing, m);
        break;
    case DamageKind::WeldSeam:
        weldSeam(shape, drawing, m);
        break;
    case DamageKind::BondSeam:
        bondSeam(shape, drawing, m);
        break;
    }
    shape.leftEdge = -shape.opening / 2;
    const bool through = drawing.damage.kind == DamageKind::Hole || drawing.damage.kind == DamageKind::RustHole;
    const double height = m.height > 0 ? m.height : m.depth;
    if (!shape.cavity.isEmpty()) {
        const double fibreTop = layLifts(shape, drawing, height, through ? m.thickness : height);
        layFinish(shape, drawing, fibreTop);
    }
    return shape;
}

} // namespace strandbench
