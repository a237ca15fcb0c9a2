// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/hold_button.h"

#include "theme/sizes.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace strandbench {

namespace {

constexpr int frameMs = 16;
constexpr int calmSteps = 4;      // reduced motion: quarters of the ring instead of a sweep
constexpr double ringWidth = 1.8; // mm

bool actsByKey(const QKeyEvent* event) { return event->key() == Qt::Key_Space || event->key() == Qt::Key_Select; }

// From the middle of the top, clockwise, as a clock's hand goes.
QPainterPath ringPath(const QRectF& r, double radius)
{
    QPainterPath path(QPointF(r.center().x(), r.top()));
    const double d = 2 * radius;
    path.arcTo(QRectF(r.right() - d, r.top(), d, d), 90, -90);
    path.arcTo(QRectF(r.right() - d, r.bottom() - d, d, d), 0, -90);
    path.arcTo(QRectF(r.left(), r.bottom() - d, d, d), 270, -90);
    path.arcTo(QRectF(r.left(), r.top(), d, d), 180, -90);
    path.closeSubpath();
    return path;
}

} // namespace

HoldButton::HoldButton(const Theme& theme, const QString& name, Kind kind, QWidget* parent)
    : TapButton(theme, name, kind, parent)
{
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.setInterval(theme.reducedMotion() ? holdMs / calmSteps : frameMs);
    connect(&m_timer, &QTimer::timeout, this, &HoldButton::tick);
}

double HoldButton::progress() const
{
    if (!m_holding)
        return 0;
    return std::min(1.0, static_cast<double>(m_since.elapsed()) / holdMs);
}

void HoldButton::begin()
{
    if (m_holding || !isEnabled())
        return;
    m_holding = true;
    m_since.start();
    m_timer.start();
    setDown(true);
}

void HoldButton::letGo()
{
    m_holding = false;
    m_timer.stop();
    setDown(false);
    update();
}

// The timer only wakes us; the clock says whether the second is over.
void HoldButton::tick()
{
    if (m_since.elapsed() < holdMs) {
        update();
        return;
    }
    letGo();
    Q_EMIT held();
}

void HoldButton::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton)
        begin();
    event->accept();
}

void HoldButton::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton)
        letGo();
    event->accept();
}

void HoldButton::mouseMoveEvent(QMouseEvent* event)
{
    if (m_holding && !rect().contains(event->position().toPoint()))
        letGo();
    event->accept();
}

void HoldButton::keyPressEvent(QKeyEvent* event)
{
    if (!actsByKey(event)) {
        TapButton::keyPressEvent(event);
        return;
    }
    if (!event->isAutoRepeat())
        begin();
    event->accept();
}

void HoldButton::keyReleaseEvent(QKeyEvent* event)
{
    if (!actsByKey(event)) {
        TapButton::keyReleaseEvent(event);
        return;
    }
    if (!event->isAutoRepeat())
        letGo();
    event->accept();
}

void HoldButton::hideEvent(QHideEvent* event)
{
    letGo();
    TapButton::hideEvent(event);
}

void HoldButton::focusOutEvent(QFocusEvent* event)
{
    letGo();
    TapButton::focusOutEvent(event);
}

void HoldButton::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::EnabledChange && !isEnabled())
        letGo();
    TapButton::changeEvent(event);
}

void HoldButton::paintProgress(QPainter& painter, const QRectF& rect)
{
    const double gone = progress();
    const double share = theme().reducedMotion() ? std::floor(gone * calmSteps) / calmSteps : gone;
    if (share <= 0)
        return;
    const double width = std::max(2, theme().px(ringWidth));
    const QRectF line = rect.adjusted(width / 2, width / 2, -width / 2, -width / 2);
    const QPainterPath ring = ringPath(line, theme().px(sizes::radius));
    const bool filled = kind() == Kind::Way || kind() == Kind::Go;
    QPen pen(theme().color(filled ? Role::OnAction : (kind() == Kind::Stop ? Role::Stop : Role::Action)), width);
    pen.setCapStyle(Qt::FlatCap);
    // One dash as long as the share gone, then a gap longer than what is left (in pen widths).
    const double length = ring.length() / width;
    pen.setDashPattern({std::max(0.01, share * length), 2 * length});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(ring);
}

} // namespace strandbench
