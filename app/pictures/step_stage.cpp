// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_stage.h"

#include "pictures/drawing.h"
#include "pictures/section_layout.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {

namespace {

constexpr double stageWidth = 200;
constexpr double stageHeight = 100;

/// A drop hanging at `tip`, `height` units tall.
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

} // namespace

StepStage::StepStage(QPainter& painter, const QRectF& rect, const SectionDrawing& drawing, const Theme& theme)
    : m_painter(painter), m_drawing(drawing), m_theme(theme)
{
    const double scale = std::min(rect.width() / stageWidth, rect.height() / stageHeight);
    m_toPixels.translate(rect.center().x() - scale * stageWidth / 2, rect.center().y() - scale * stageHeight / 2);
    m_toPixels.scale(scale, scale);
}

Material StepStage::material() const
{
    return m_drawing.substrateKnown ? materialOf(m_drawing.substrate) : Material::Plastic;
}

void StepStage::piece(const QPainterPath& shape, Material material, double widthMm) const
{
    paintPiece(m_painter, m_toPixels.map(shape), material, m_theme, 1.0, widthMm);
}

void StepStage::piece(const QRectF& box, Material material, double radius) const
{
    QPainterPath path;
    path.addRoundedRect(box, radius, radius);
    piece(path, material);
}

void StepStage::fill(const QPainterPath& shape, Role role, double opacity) const
{
    QColor color = m_theme.color(role);
    color.setAlphaF(static_cast<float>(opacity));
    m_painter.fillPath(m_toPixels.map(shape), color);
}

void StepStage::outline(const QPainterPath& shape, Role role, double widthMm, bool dashed) const
{
    QPen pen(m_theme.color(role), std::max(1.0, m_theme.metrics().pixelsPerMillimetre() * widthMm), Qt::SolidLine,
             Qt::RoundCap, Qt::RoundJoin);
    if (dashed) {
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern({4, 3});
    }
    m_painter.strokePath(m_toPixels.map(shape), pen);
}

void StepStage::line(QPointF from, QPointF to, Role role, double widthMm, bool dashed) const
{
    QPainterPath path(from);
    path.lineTo(to);
    outline(path, role, widthMm, dashed);
}

void StepStage::arrow(QPointF from, QPointF to, Role role, double widthMm) const
{
    line(from, to, role, widthMm);
    const QLineF along(to, from);
    QPainterPath head;
    for (const double turn : {-32.0, 32.0}) {
        QLineF barb = along;
        barb.setLength(std::min(6.0, along.length() * 0.45));
        barb.setAngle(along.angle() + turn);
        head.moveTo(to);
        head.lineTo(barb.p2());
    }
    outline(head, role, widthMm);
}

void StepStage::bothWays(QPointF from, QPointF to, Role role) const
{
    const QPointF middle = (from + to) / 2;
    arrow(middle, from, role, 0.6);
    arrow(middle, to, role, 0.6);
}

void StepStage::dots(const std::vector<QPointF>& at, double radius, Role role) const
{
    for (const QPointF& each : at) {
        QPainterPath dot;
        dot.addEllipse(each, radius, radius);
        fill(dot, role);
    }
}

std::vector<QPointF> StepStage::strewn(const QRectF& over, int count)
{
    std::vector<QPointF> dots;
    // The plastic number's fractional multiples: even, and never in rows.
    for (int i = 1; i <= count; ++i)
        dots.emplace_back(over.left() + over.width() * std::fmod(i * 0.7548776662, 1.0),
                          over.top() + over.height() * std::fmod(i * 0.5698402910, 1.0));
    return dots;
}

void StepStage::drops(const std::vector<QPointF>& tips, double height) const
{
    for (const QPointF& tip : tips) {
        fill(dropAt(tip, height), Role::Action);
        outline(dropAt(tip, height), Role::Ink, 0.25);
    }
}

void StepStage::act(const QString& step, QPointF by) const
{
    paintDrawing(m_painter, map(QRectF(by, QSizeF(stageWidth, stageHeight))), u"steps/"_s + step, m_theme);
}

void StepStage::panelFromAbove(bool painted) const
{
    piece(QRectF(4, 8, 192, 84), painted ? Material::Paint : material());
}

QPainterPath StepStage::damageFromAbove() const
{
    QPainterPath path;
    switch (m_drawing.damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
        path.addPolygon(QPolygonF{{74, 52},
                                  {80, 40},
                                  {92, 42},
                                  {99, 33},
                                  {110, 39},
                                  {124, 38},
                                  {127, 50},
                                  {120, 61},
                                  {107, 59},
                                  {98, 67},
                                  {88, 60},
                                  {80, 62}});
        path.closeSubpath();
        break;
    case DamageKind::Dent:
        path.addEllipse(QPointF(100, 50), 34, 20);
        break;
    case DamageKind::Gouge:
        path.moveTo(62, 56);
        path.cubicTo(80, 40, 120, 36, 138, 44);
        path.cubicTo(120, 50, 84, 60, 62, 56);
        break;
    case DamageKind::Crack:
        path.moveTo(54, 56);
        for (const QPointF& at :
             {QPointF(72, 47), QPointF(86, 54), QPointF(104, 44), QPointF(120, 49), QPointF(140, 46)})
            path.lineTo(at);
        break;
    case DamageKind::WeldSeam:
    case DamageKind::BondSeam:
        path.addRect(QRectF(4, 44, 192, 12));
        break;
    }
    return path;
}

void StepStage::drawDamage() const
{
    const QPainterPath shape = damageFromAbove();
    switch (m_drawing.damage.kind) {
    case DamageKind::Crack:
        outline(shape, Role::Ink, 0.9);
        return;
    case DamageKind::Dent:
        for (const double share : {1.0, 0.66, 0.33}) {
            QPainterPath ring;
            ring.addEllipse(QPointF(100, 50), 34 * share, 20 * share);
            outline(ring, Role::Ink, 0.4);
        }
        return;
    case DamageKind::WeldSeam:
    case DamageKind::BondSeam:
        piece(shape, m_drawing.damage.kind == DamageKind::WeldSeam ? Material::Weld : Material::Adhesive);
        return;
    default:
        fill(shape, Role::Card);
        outline(shape, Role::Ink, 0.6);
    }
}

StagedSection StepStage::staged(const QRectF& box, const SectionProgress& progress) const
{
    SectionDrawing drawing = m_drawing;
    drawing.progress = progress;
    if (progress.liftsLaid == 0 && !progress.finished) { // nothing of what comes later, not even dashed
        drawing.lifts.clear();
        drawing.finish = Length();
        drawing.backing = Length();
    }
    if (progress.finished && drawing.lifts.empty()) { // without a plan: each face filled in one
        for (int face = 0; face < drawing.faces; ++face)
            drawing.lifts.push_back(
                {face == 0 ? Face::Front : Face::Back, drawing.faceHeight, FillerClass::MixedStrand, {}, {}});
        drawing.progress.liftsLaid = drawing.faces;
    }
    const SectionLayout layout = layOutSection(map(box), drawing, m_theme);
    paintLayout(m_painter, layout, drawing, m_theme);
    const QTransform toStage = layout.toPixels * m_toPixels.inverted();
    return {toStage.map(QPointF(0, progress.turned ? layout.shape.bottom : 0.0)).y(), toStage};
}

SectionProgress StepStage::prepared() const { return {true, 0, false, false}; }

SectionProgress StepStage::finished() const { return {true, static_cast<int>(m_drawing.lifts.size()), false, true}; }

} // namespace strandbench
