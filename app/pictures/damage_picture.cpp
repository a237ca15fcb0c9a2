// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of each substrate and the shape of each damage, as on the answers of an assessment.
#include "pictures/hatch.h"
#include "pictures/pictogram.h"
#include "pictures/section_picture.h"

#include <QLineF>

#include <algorithm>

namespace strandbench {
namespace {

QPainterPath boxPath(const QRectF& box)
{
    QPainterPath path;
    path.addRect(box);
    return path;
}

QRectF slab(const QRectF& rect, double widthShare, double height)
{
    QRectF box(0, 0, rect.width() * widthShare, std::min(height, rect.height()));
    box.moveCenter(rect.center());
    return box;
}

/// A broken end: teeth, and for a laminate the fibres of its cloth standing out of them.
QPainterPath broken(const QRectF& box, double teethDepth)
{
    QPainterPath path(box.topLeft());
    path.lineTo(box.right() - teethDepth, box.top());
    for (int i = 1; i <= 4; ++i)
        path.lineTo(box.right() - (i % 2 == 1 ? 0.0 : teethDepth), box.top() + box.height() * (i - 0.25) / 4);
    path.lineTo(box.right() - teethDepth * 0.6, box.bottom());
    path.lineTo(box.bottomLeft());
    path.closeSubpath();
    return path;
}

void laminate(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const QRectF box = slab(rect, 0.84, 8 * ppmm).translated(-0.08 * rect.width(), 0);
    painter.setPen(outlinePen(theme, 0.3));
    for (int i = 0; i < 5; ++i) {
        const double y = box.top() + box.height() * (i + 0.6) / 5.4;
        painter.drawLine(QPointF(box.right() - 3 * ppmm, y),
                         QPointF(box.right() + 0.11 * rect.width(), y + (i % 2 == 0 ? -1.0 : 1.2) * ppmm));
    }
    paintPiece(painter, broken(box, 2.4 * ppmm), Material::Laminate, theme, 0.9);
}

void smc(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const QRectF box = slab(rect, 0.96, 7 * ppmm).translated(0, -1.5 * ppmm);
    QPainterPath moulded = boxPath(box); // ribs and bosses on the moulded back
    for (const double x : {0.16, 0.62}) {
        const double left = box.left() + x * box.width();
        QPainterPath rib;
        rib.addPolygon(QPolygonF{{left, box.bottom() - 1},
                                 {left + 4 * ppmm, box.bottom() - 1},
                                 {left + 3.2 * ppmm, box.bottom() + 3.4 * ppmm},
                                 {left + 0.8 * ppmm, box.bottom() + 3.4 * ppmm}});
        rib.closeSubpath();
        moulded = moulded.united(rib);
    }
    paintPiece(painter, moulded, Material::Smc, theme, 0.8);
}

void metal(QPainter& painter, const QRectF& rect, Material material, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const QRectF box = slab(rect, 0.96, (material == Material::Steel ? 2.6 : 3.4) * ppmm);
    if (material != Material::Galvanised) {
        paintPiece(painter, boxPath(box), material, theme, 0.8);
        return;
    }
    const double skin = 1.0 * ppmm;
    const QRectF outer = box.adjusted(0, -skin * 0.6, 0, skin * 0.6);
    painter.fillRect(outer, theme.color(Role::ZincFill));
    painter.setPen(outlinePen(theme));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(outer);
    paintPiece(painter, boxPath(outer.adjusted(0, skin, 0, -skin)), Material::Steel, theme, 0.8);
}

void bent(QPainter& painter, const QRectF& rect, double sag, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const QRectF box = slab(rect, 0.92, 3.4 * ppmm);
    const double down = sag * rect.height();
    QPainterPath path(box.topLeft());
    path.quadTo(QPointF(box.center().x(), box.top() + down), box.topRight());
    path.lineTo(box.bottomRight());
    path.quadTo(QPointF(box.center().x(), box.bottom() + down), box.bottomLeft());
    path.closeSubpath();
    paintPiece(painter, path.translated(0, -down / 4), Material::Plastic, theme, 0.8);
}

/// From above: two sheets and what joins them, so that solid, spot and stitch differ by shape.
void weldFromAbove(QPainter& painter, const QRectF& rect, WeldKind weld, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const QRectF box = slab(rect, 0.96, 0.78 * rect.height());
    const double middle = box.center().y();
    paintPiece(painter, boxPath(QRectF(box.topLeft(), QPointF(box.right(), middle))), Material::Steel, theme);
    const QRectF front(QPointF(box.left(), middle), box.bottomRight());
    painter.fillRect(front, theme.color(Role::ZincFill));
    painter.strokePath(boxPath(front), outlinePen(theme));
    const double r = std::min(2.0 * ppmm, 0.12 * box.height() + 1);
    painter.setPen(outlinePen(theme, 0.3));
    painter.setBrush(theme.color(Role::MetalHatch));
    if (weld == WeldKind::Spot) {
        for (int i = 0; i < 4; ++i)
            painter.drawEllipse(QPointF(box.left() + box.width() * (i + 0.5) / 4, middle + 2.2 * r), 1.1 * r, 1.1 * r);
        return;
    }
    const int scales = std::max(8, static_cast<int>(box.width() / (1.1 * r)));
    for (int i = 0; i <= scales; ++i) {
        const bool gap = weld == WeldKind::Stitch && (i / 4) % 2 == 1;
        if (!gap)
            painter.drawEllipse(QPointF(box.left() + r + (box.width() - 2 * r) * i / scales, middle), r, r);
    }
}

Substrate usualSubstrate(DamageKind damage)
{
    switch (damage) {
    case DamageKind::Dent:
    case DamageKind::RustHole:
    case DamageKind::WeldSeam:
        return Substrate::Steel;
    case DamageKind::Gouge:
    case DamageKind::Crack:
    case DamageKind::Hole:
    case DamageKind::BondSeam:
        return Substrate::Laminate;
    }
    Q_UNREACHABLE();
}

} // namespace

void paintSubstrate(QPainter& painter, const QRectF& rect, Substrate substrate, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    switch (substrate) {
    case Substrate::Laminate:
        laminate(painter, rect, theme);
        break;
    case Substrate::Smc:
        smc(painter, rect, theme);
        break;
    case Substrate::Steel:
        metal(painter, rect, Material::Steel, theme);
        break;
    case Substrate::Galvanised:
        metal(painter, rect, Material::Galvanised, theme);
        break;
    case Substrate::Aluminium:
        metal(painter, rect, Material::Aluminium, theme);
        break;
    case Substrate::Magnesium:
        metal(painter, rect.adjusted(0.2 * rect.width(), 0, 0, 0), Material::Aluminium, theme);
        break;
    case Substrate::Carbon:
        paintPiece(painter, boxPath(slab(rect, 0.96, 8 * ppmm)), Material::Carbon, theme, 0.6);
        break;
    case Substrate::Thermoplastic:
        bent(painter, rect, 0.3, theme);
        break;
    case Substrate::FlexiblePolyurethane:
        bent(painter, rect, 0.9, theme);
        break;
    case Substrate::CastThermoset:
        paintPiece(painter, broken(slab(rect, 0.9, 8 * ppmm), 1.2 * ppmm), Material::Plastic, theme, 0.9);
        break;
    case Substrate::Unknown:
        paintPictogram(painter, slab(rect, 1, 12 * ppmm), Pictogram::Question, theme, theme.color(Role::Stop));
        break;
    }
    painter.restore();
}

void paintDamage(QPainter& painter, const QRectF& rect, DamageKind damage, std::optional<WeldKind> weld,
                 const Theme& theme)
{
    if (damage == DamageKind::WeldSeam && weld) {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        weldFromAbove(painter, rect, *weld, theme);
        painter.restore();
        return;
    }
    Assessment found;
    found.substrate = usualSubstrate(damage);
    found.damage = Damage{};
    found.damage->kind = damage;
    // The room's height sets how deep it is drawn: a panel is wide and thin, a dent shallow.
    const double share = damage == DamageKind::Dent ? 0.3 : 0.5;
    paintSection(painter, slab(rect, 1, share * rect.width()), SectionDrawing::of(found), theme);
}

} // namespace strandbench
