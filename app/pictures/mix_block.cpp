// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/mix_block.h"

#include "pictures/enter_key.h"
#include "pictures/phase_look.h"
#include "pictures/pictogram.h"
#include "pictures/picture_access.h"
#include "pictures/picture_text.h"
#include "theme/sizes.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

struct BlockLayout {
    QRectF sign;
    PictureText job;
    PictureText phase;
    PictureText time;
    TextReport report;
};

/// The job's line. A number too long for it keeps its end, by which jobs are told apart: "…000417-M84".
PictureText fitJob(const Theme& theme, const MixBlockText& text, const QRectF& place)
{
    const QString turn = text.turn > 0 ? QString::number(text.turn) + u" · "_s : QString();
    const auto fit = [&](const QString& job) {
        return fitLine(theme, turn + job, place, TextRole::Small, false, Qt::AlignLeft | Qt::AlignVCenter);
    };
    return fit(shortened(text.job, PartKept::End, [&](const QString& job) { return fit(job).fits; }));
}

/// timeMm: how high the time is wanted.
BlockLayout layOut(const QRectF& room, const MixBlockText& text, const Theme& theme, double timeMm)
{
    BlockLayout layout;
    const QRectF inner = room.adjusted(theme.px(2), theme.px(1.5), -theme.px(2), -theme.px(1.5));
    const double side = std::min(theme.px(8) * 1.0, inner.height());
    layout.sign = QRectF(inner.left(), inner.center().y() - side / 2, side, side);
    const double textLeft = layout.sign.right() + theme.px(2);
    const double rest = inner.right() - textLeft;
    // The time takes what it needs, but never more than half of the rest.
    const double wanted = lineSize(theme, text.time, timeMm, true).width();
    const double least = lineSize(theme, text.time, Theme::size(TextRole::BigFigure).leastMm, true).width();
    const double timeWidth = std::clamp(wanted, least, std::max(least, 0.5 * rest));
    layout.time = fitLine(theme, text.time, QRectF(inner.right() - timeWidth, inner.top(), timeWidth, inner.height()),
                          TextRole::BigFigure, true, Qt::AlignRight | Qt::AlignVCenter);
    const QRectF words(textLeft, inner.top(), rest - timeWidth - theme.px(2), inner.height());
    const double half = words.height() / 2;
    layout.job = fitJob(theme, text, QRectF(words.topLeft(), QSizeF(words.width(), half)));
    layout.phase = fitLine(theme, text.phase, QRectF(words.left(), words.top() + half, words.width(), half),
                           TextRole::Body, true, Qt::AlignLeft | Qt::AlignVCenter);
    layout.report.add(layout.job);
    layout.report.add(layout.phase);
    layout.report.add(layout.time);
    return layout;
}

/// On a block too narrow for all side by side: sign and time, the phase below them, the job at the foot.
BlockLayout layOutNarrow(const QRectF& room, const MixBlockText& text, const Theme& theme)
{
    BlockLayout layout;
    const QRectF inner = room.adjusted(theme.px(1.5), theme.px(1), -theme.px(1.5), -theme.px(1));
    const QRectF top(inner.left(), inner.top(), inner.width(), inner.height() * 0.4);
    layout.sign = QRectF(top.left(), top.top(), top.height(), top.height());
    layout.time = fitLine(theme, text.time, top.adjusted(top.height() + theme.px(1), 0, 0, 0), TextRole::BigFigure,
                          true, Qt::AlignRight | Qt::AlignVCenter);
    const QRectF phase(inner.left(), top.bottom(), inner.width(), inner.height() * 0.32);
    layout.phase = fitLine(theme, text.phase, phase, TextRole::Body, true, Qt::AlignLeft | Qt::AlignVCenter);
    layout.job = fitJob(theme, text, QRectF(phase.bottomLeft(), inner.bottomRight()));
    layout.report.add(layout.job);
    layout.report.add(layout.phase);
    layout.report.add(layout.time);
    return layout;
}

/// The time at a size that reads across the bench; smaller only where the phase would not be whole.
BlockLayout layOut(const QRectF& room, const MixBlockText& text, const Theme& theme)
{
    if (room.width() < theme.px(MixBlock::wideMm))
        return layOutNarrow(room, text, theme);
    constexpr double acrossTheBench = 7.0; // mm
    BlockLayout layout = layOut(room, text, theme, acrossTheBench);
    return layout.phase.fits ? layout : layOut(room, text, theme, Theme::size(TextRole::BigFigure).leastMm);
}

void paintWords(QPainter& painter, const BlockLayout& layout, Pictogram sign, const Theme& theme, const QColor& ink)
{
    paintPictogram(painter, layout.sign, sign, theme, ink);
    drawText(painter, layout.job, ink);
    drawText(painter, layout.phase, ink);
    drawText(painter, layout.time, ink);
}

} // namespace

MixBlock::MixBlock(const Theme& theme, const QString& name, QWidget* parent) : QAbstractButton(parent), m_theme(theme)
{
    setObjectName(name);
    installPictureAccess();
}

void MixBlock::setShown(const ClockFace& face, const MixBlockText& text)
{
    m_face = face;
    m_text = text;
    // The name changes with job and phase only: a reader is not to be told every second.
    QString spoken = text.job + u", "_s + text.phase;
    if (text.turn > 0)
        spoken += u", "_s + text.spokenTurn;
    if (accessibleName() != spoken)
        setAccessibleName(spoken);
    setToolTip(text.job);
    update();
}

bool MixBlock::textFits() const { return layOut(rect(), m_text, m_theme).report.fits; }

double MixBlock::smallestTextMm() const { return layOut(rect(), m_text, m_theme).report.smallestMm; }

QSize MixBlock::sizeHint() const { return {m_theme.px(68), m_theme.px(sizes::ribbon)}; }

QSize MixBlock::minimumSizeHint() const { return {m_theme.px(narrowMm), m_theme.px(sizes::ribbon)}; }

void MixBlock::keyPressEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyPressEvent(event);
}

void MixBlock::keyReleaseEvent(QKeyEvent* event)
{
    if (!leftToTheWindow(*event))
        QAbstractButton::keyReleaseEvent(event);
}

void MixBlock::paintEvent(QPaintEvent*)
{
    const BlockLayout layout = layOut(rect(), m_text, m_theme);
    const PhaseLook look = lookOf(m_face.phase, m_theme);
    constexpr double calmSteps = 10; // reduced motion: it runs down by tenths
    double left = std::clamp(1.0 - m_face.phaseGone.value(), 0.0, 1.0);
    if (m_theme.reducedMotion())
        left = std::floor(left * calmSteps) / calmSteps; // never more than is left
    const QRectF room(rect());
    const QRectF filled(room.left(), room.top(), room.width() * left, room.height());
    const double radius = m_theme.px(sizes::radius);
    QPainterPath block;
    block.addRoundedRect(room, radius, radius);

    const Pictogram sign = m_text.turn > 0 ? Pictogram::Caution : signOf(m_face.phase);

    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipPath(block);
    painter.fillRect(room, m_theme.color(Role::RibbonBlock));
    painter.fillRect(filled, look.ground);
    // Two inks, each where its ground is: the words read whole while the fill runs through them.
    painter.setClipRect(QRectF(filled.topRight(), room.bottomRight()), Qt::IntersectClip);
    paintWords(painter, layout, sign, m_theme, m_theme.color(Role::OnRibbon));
    painter.setClipPath(block);
    painter.setClipRect(filled, Qt::IntersectClip);
    paintWords(painter, layout, sign, m_theme, look.ink);
    painter.setClipPath(block);
    if (isDown())
        painter.fillRect(room, m_theme.color(Role::Pressed));
    // Block and ribbon are both dark: the edge tells where the one ends.
    const double pen = m_theme.metrics().pixelsPerMillimetre() * (hasFocus() || isDown() ? 1.0 : sizes::edge);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_theme.color(Role::OnRibbon), pen));
    painter.drawRoundedRect(room.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2), radius, radius);
}

} // namespace strandbench
