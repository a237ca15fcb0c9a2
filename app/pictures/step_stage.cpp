// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/step_stage.h"

#include "pictures/picture_text.h"
#include "pictures/section_layout.h"
#include "pictures/signwriter.h"

#include <algorithm>
#include <cmath>

namespace strandbench {

namespace {

constexpr double stageWidth = 200;
constexpr double stageHeight = 100;

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

void StepStage::sign(Pictogram sign, const QRectF& box, Role ink) const
{
    paintPictogram(m_painter, map(box), sign, m_theme, m_theme.color(ink));
}

void StepStage::disc(Pictogram sign, const QRectF& box, Role ground, Role ink) const
{
    paintSignOnDisc(m_painter, map(box), sign, m_theme, m_theme.color(ground), m_theme.color(ink));
}

void StepStage::figure(const QString& text, const QRectF& box, Role ink) const
{
    drawText(m_painter, fitLine(m_theme, text, map(box), TextRole::Title, true), m_theme.color(ink));
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

void StepStage::block(QPointF at, double width, const QString& grit) const
{
    const QRectF body(at, QSizeF(width, 0.42 * width));
    QPainterPath shape;
    shape.addRoundedRect(body, 4, 4);
    fill(shape, Role::Ink);
    const QRectF paper(body.left(), body.bottom() + 0.6, width, 3);
    const int number = grit.toInt(); // the finer the grit, the smaller its teeth
    const double half = number >= 320 ? 0.8 : number >= 180 ? 1.2 : 1.8;
    for (double x = paper.left() + half; x < paper.right() - half * 0.5; x += 2.4 * half) {
        QPainterPath tooth;
        tooth.addPolygon(QPolygonF{{x - half, paper.top()}, {x + half, paper.top()}, {x, paper.bottom()}});
        fill(tooth, Role::Ink);
    }
    if (!grit.isEmpty())
        figure(grit, body, Role::Card);
}

void StepStage::cloth(QPointF c, double s, bool wet) const
{
    QPainterPath path(c + QPointF(-s, -0.5 * s));
    path.cubicTo(c + QPointF(-0.4 * s, -0.9 * s), c + QPointF(0.2 * s, -0.3 * s), c + QPointF(s, -0.6 * s));
    path.cubicTo(c + QPointF(0.8 * s, -0.1 * s), c + QPointF(1.1 * s, 0.3 * s), c + QPointF(0.9 * s, 0.7 * s));
    path.cubicTo(c + QPointF(0.3 * s, 0.4 * s), c + QPointF(-0.3 * s, 0.9 * s), c + QPointF(-0.9 * s, 0.6 * s));
    path.cubicTo(c + QPointF(-0.7 * s, 0.2 * s), c + QPointF(-1.1 * s, -0.1 * s), c + QPointF(-s, -0.5 * s));
    fill(path, wet ? Role::Action : Role::Card);
    outline(path, Role::Ink, 0.6);
    QPainterPath fold(c + QPointF(-0.5 * s, -0.2 * s));
    fold.cubicTo(c + QPointF(-0.1 * s, 0.1 * s), c + QPointF(0.2 * s, -0.1 * s), c + QPointF(0.6 * s, 0.2 * s));
    outline(fold, wet ? Role::OnAction : Role::Ink, 0.4);
}

void StepStage::discSander(QPointF c, double r) const
{
    QPainterPath disc;
    disc.addEllipse(c, r, r);
    fill(disc, Role::Ink);
    for (const double share : {0.72, 0.4}) {
        QPainterPath ring;
        ring.addEllipse(c, r * share, r * share);
        outline(ring, Role::Card, 0.4);
    }
    QPainterPath handle;
    handle.addRoundedRect(QRectF(c.x() + 0.5 * r, c.y() - 0.3 * r, 2.4 * r, 0.6 * r), 0.3 * r, 0.3 * r);
    fill(handle, Role::Ink);
    outline(handle, Role::Card, 0.3);
}

void StepStage::drops(const std::vector<QPointF>& tips, double height) const
{
    for (const QPointF& tip : tips) {
        fill(dropAt(tip, height), Role::Action);
        outline(dropAt(tip, height), Role::Ink, 0.25);
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

} // namespace strandbench
