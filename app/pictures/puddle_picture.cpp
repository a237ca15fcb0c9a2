// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/puddle_picture.h"

#include "pictures/hatch.h"
#include "pictures/picture_access.h"
#include "pictures/puddle_layout.h"

#include <QPainter>

namespace strandbench {
namespace {

QPainterPath circleIn(const QRectF& box)
{
    QPainterPath path;
    path.addEllipse(box);
    return path;
}

/// A dimension below a run of the bead: bracket as on a drawing.
void paintBracket(QPainter& painter, double left, double right, double y, const Theme& theme)
{
    const double up = theme.px(1.8);
    painter.setPen(outlinePen(theme, 0.35));
    painter.drawPolyline(QPolygonF{{left, y - up}, {left, y}, {right, y}, {right, y - up}});
}

void paintPuddle(QPainter& painter, const PuddleLayout& layout, const Theme& theme)
{
    paintMaterial(painter, circleIn(layout.puddle), Material::Filler, theme, layout.trueSize ? 1.0 : 0.7);
    painter.setBrush(Qt::NoBrush);
    // The edge lies inside of the true circle: the puddle is as wide as it says, not a line wider.
    const double pen = theme.metrics().pixelsPerMillimetre() * 0.4;
    painter.setPen(QPen(theme.color(Role::FillerFleck), pen));
    painter.drawEllipse(layout.puddle.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2));
    for (const QRectF& run : layout.runs)
        painter.fillRect(run, theme.color(Role::HardenerFill));
}

void paintArc(QPainter& painter, const PuddleLayout& layout, const Theme& theme)
{
    painter.save();
    painter.setClipRect(layout.arcRoom);
    const QPainterPath circle = circleIn(layout.arcCircle);
    QPainterPath room;
    room.addRect(layout.arcRoom);
    paintMaterial(painter, circle.intersected(room), Material::Filler, theme);
    painter.restore();
    // The ruler on a strip of its own, so that its figures read.
    const double top = layout.rulerY - theme.px(0.8);
    const double bottom = layout.rulerY + theme.px(11);
    painter.fillRect(QRectF(QPointF(layout.arcCircle.left(), top), QPointF(layout.arcRoom.right(), bottom)),
                     theme.color(Role::Card));
    painter.setPen(outlinePen(theme, 0.3));
    painter.drawLine(QPointF(layout.arcCircle.left(), layout.rulerY), QPointF(layout.arcRoom.right(), layout.rulerY));
    for (const RulerTick& tick : layout.ticks) {
        painter.setPen(outlinePen(theme, tick.figure.empty() ? 0.2 : 0.35));
        painter.drawLine(QPointF(tick.x, layout.rulerY), QPointF(tick.x, layout.rulerY + tick.length));
        drawText(painter, tick.figure, theme.color(Role::Ink));
    }
    painter.save();
    painter.setClipRect(layout.arcRoom);
    const double pen = theme.metrics().pixelsPerMillimetre() * 0.8;
    painter.setPen(QPen(theme.color(Role::FillerFleck), pen));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(layout.arcCircle.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2));
    painter.restore();
}

void paintAcrossSign(QPainter& painter, const QRectF& place, const Theme& theme)
{
    const double r = place.width() * 0.42;
    const QPointF c = place.center();
    const double a = r * 0.34;
    painter.setPen(outlinePen(theme, 0.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(c, r, r);
    painter.drawLine(c - QPointF(r, 0), c + QPointF(r, 0));
    for (const double side : {-1.0, 1.0}) {
        const QPointF tip = c + QPointF(side * r, 0);
        painter.drawPolyline(QPolygonF{tip + QPointF(-side * a, -a), tip, tip + QPointF(-side * a, a)});
    }
}

void paintBeadFigure(QPainter& painter, const PuddleLayout& layout, const Theme& theme)
{
    if (layout.beadLabel.empty())
        return;
    const bool inPuddle = layout.trueSize;
    if (inPuddle && layout.runs.size() == 1) {
        const QRectF& run = layout.runs.front();
        paintBracket(painter, run.left(), run.right(), run.bottom() + theme.px(3), theme);
    }
    if (!inPuddle) {
        const bool onBead = layout.trueBead.contains(layout.beadLabel.place.center());
        drawText(painter, layout.beadLabel,
                 onBead ? inkUpon(theme, theme.color(Role::HardenerFill)) : theme.color(Role::Ink));
        return;
    }
    const QColor ground = theme.color(Role::FillerFill);
    const double pad = theme.px(0.6);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawRoundedRect(inkOf(layout.beadLabel).adjusted(-pad, 0, pad, 0), pad, pad);
    drawText(painter, layout.beadLabel, inkUpon(theme, ground));
}

} // namespace

PuddlePicture::PuddlePicture(const Theme& theme, const QString& name, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    setObjectName(name);
    installPictureAccess();
}

void PuddlePicture::setMix(const Mix& mix, const PuddleLabels& labels)
{
    m_mix = mix;
    m_labels = labels;
    update();
}

bool PuddlePicture::drawnTrueSize() const { return layOutPuddle(rect(), m_mix, m_labels, m_theme).trueSize; }

double PuddlePicture::drawnPuddleMm() const { return layOutPuddle(rect(), m_mix, m_labels, m_theme).puddleMm; }

double PuddlePicture::drawnBeadMm() const { return layOutPuddle(rect(), m_mix, m_labels, m_theme).beadMm; }

bool PuddlePicture::textFits() const { return layOutPuddle(rect(), m_mix, m_labels, m_theme).report().fits; }

double PuddlePicture::smallestTextMm() const
{
    return layOutPuddle(rect(), m_mix, m_labels, m_theme).report().smallestMm;
}

QSize PuddlePicture::minimumSizeHint() const { return {m_theme.px(80), m_theme.px(42)}; }

void PuddlePicture::paintEvent(QPaintEvent*)
{
    const PuddleLayout layout = layOutPuddle(rect(), m_mix, m_labels, m_theme);
    if (layout.puddle.isEmpty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (!layout.trueSize)
        paintArc(painter, layout, m_theme);
    paintPuddle(painter, layout, m_theme);
    if (!layout.trueBead.isEmpty())
        painter.fillRect(layout.trueBead, m_theme.color(Role::HardenerFill));
    paintAcrossSign(painter, layout.puddleSign, m_theme);
    drawText(painter, layout.heading, m_theme.color(Role::Ink));
    drawText(painter, layout.reduced, m_theme.color(Role::MutedInk));
    drawText(painter, layout.puddleLabel, m_theme.color(Role::Ink));
    paintBeadFigure(painter, layout, m_theme);
}

} // namespace strandbench
