// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/alarm_button.h"

#include "pictures/enter_key.h"
#include "pictures/pictogram.h"
#include "pictures/picture_text.h"
#include "theme/sizes.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <chrono>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// Longer than a person needs to see what has come, and shorter than anybody takes to answer it: ours.
constexpr std::chrono::milliseconds restMs{500};
const Duration restTime = seconds(0.5);
constexpr TextSize headlineSize{8.4, 4.0}; // mm: as large as a sentence, never smaller than a button's title
constexpr double thickEdge = 1.2;          // mm
constexpr double focusInset = 1.8;         // mm, clear of the thick edge
constexpr double focusWidth = 0.8;         // mm
constexpr double plateMm = 0.5;            // around the sign
constexpr double sideMargin = 2.4;         // mm, of sign and text, clear of edge and focus

Pictogram signOfAlarm(AlarmKind kind)
{
    switch (kind) {
    case AlarmKind::Gels:
        return Pictogram::StopHand;
    case AlarmKind::SandFrom:
        return Pictogram::Tick;
    case AlarmKind::EdgesSoon:
    case AlarmKind::SandUntil:
        break;
    }
    return Pictogram::Caution;
}

} // namespace

AlarmColors colorsOf(AlarmKind kind)
{
    switch (kind) {
    case AlarmKind::Gels:
        return {Role::Stop, Role::OnStop};
    case AlarmKind::SandFrom:
        return {Role::Go, Role::OnGo};
    case AlarmKind::EdgesSoon:
    case AlarmKind::SandUntil:
        break;
    }
    return {Role::Caution, Role::OnCaution};
}

AlarmButton::AlarmButton(const Theme& theme, const QString& name, QWidget* parent)
    : QAbstractButton(parent), m_theme(theme)
{
    setObjectName(name);
    setFocusPolicy(Qt::TabFocus); // taps leave the keyboard's ring where it was
    m_rests.setSingleShot(true);
    m_rests.setInterval(restMs);
}

bool AlarmButton::setAlarm(const AlarmShown& alarm, const Instant& now)
{
    const bool another = !m_shown || alarm.kind != m_alarm.kind || alarm.second != m_alarm.second;
    m_shown = true;
    m_alarm = alarm;
    if (another) {
        ++m_alarms;
        rest(now);
    }
    update();
    return another;
}

void AlarmButton::forget()
{
    m_shown = false;
    setDown(false);
}

void AlarmButton::setInverted(bool inverted)
{
    m_inverted = inverted;
    update();
}

void AlarmButton::rest(const Instant& now)
{
    m_restsFrom = now;
    m_rests.start();
}

void AlarmButton::tick(const Instant& now)
{
    if (elapsed(m_restsFrom, now) >= restTime)
        m_rests.stop();
}

QString AlarmButton::spoken() const
{
    return m_alarm.second.isEmpty() ? m_alarm.headline : m_alarm.headline + u", "_s + m_alarm.second;
}

bool AlarmButton::hitButton(const QPoint& at) const { return !m_rests.isActive() && rect().contains(at); }

void AlarmButton::mousePressEvent(QMouseEvent* event)
{
    m_pressedAt = m_alarms;
    QAbstractButton::mousePressEvent(event);
}

void AlarmButton::mouseReleaseEvent(QMouseEvent* event)
{
    letGoOfOlder();
    QAbstractButton::mouseReleaseEvent(event);
}

void AlarmButton::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

void AlarmButton::keyPressEvent(QKeyEvent* event)
{
    if (leftToTheWindow(*event))
        return;
    if (!m_rests.isActive() && !isDown())
        m_pressedAt = m_alarms;
    if (!m_rests.isActive())
        QAbstractButton::keyPressEvent(event);
}

void AlarmButton::keyReleaseEvent(QKeyEvent* event)
{
    if (leftToTheWindow(*event))
        return;
    letGoOfOlder();
    QAbstractButton::keyReleaseEvent(event);
}

/// What was pressed while another alarm stood here does not answer this one.
void AlarmButton::letGoOfOlder()
{
    if (m_pressedAt != m_alarms)
        setDown(false);
}

AlarmButton::Arranged AlarmButton::arranged() const
{
    const auto arrange = [this](const QString& second) {
        TapContent content;
        content.title = {m_alarm.headline, headlineSize, true, 99};
        content.second = {second, Theme::size(TextRole::Small), false, 99};
        content.sign = true;
        const double side = m_theme.px(sideMargin); // to the edge and the ring of the keyboard, sign plate and all
        return arrangeTap(m_theme, QRectF(rect()).adjusted(side, 0, -side, 0), content);
    };
    // The headline stays whole; where both do not fit the second line gives way, from its end.
    const auto fits = [&](const QString& second) { return arrange(second).stack.fits; };
    QString second = shortened(m_alarm.second, PartKept::Beginning, fits);
    if (!fits(second))
        second.clear();
    return {arrange(second), second};
}

std::vector<ShownText> AlarmButton::shownTexts() const
{
    const auto [layout, second] = arranged();
    std::vector<ShownText> shown;
    const auto add = [&, &layout = layout](const QString& text, const FittedText& fitted, QRectF where) {
        if (layout.alignment & Qt::AlignHCenter)
            where.setLeft(where.center().x() - fitted.width / 2);
        where.setWidth(fitted.width);
        shown.push_back({text, where, fitted.emMm, layout.stack.fits});
    };
    add(m_alarm.headline, layout.stack.texts[0], layout.title);
    if (!second.isEmpty())
        add(second, layout.stack.texts[1], layout.second);
    return shown;
}

void AlarmButton::paintFace(QPainter& painter, const QColor& face, const QColor& ink) const
{
    // An edge that stands still is all the more of one.
    const bool thick = isDown() || m_theme.reducedMotion();
    const double pen = std::max(1, m_theme.px(thick ? thickEdge : sizes::edge));
    const double radius = m_theme.px(sizes::radius);
    const QRectF outline = QRectF(rect()).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2);
    painter.setPen(QPen(ink, pen));
    painter.setBrush(face);
    painter.drawRoundedRect(outline, radius, radius);
    if (isDown()) {
        painter.setBrush(m_theme.color(Role::Pressed));
        painter.drawRoundedRect(outline, radius, radius);
    }
    if (!hasFocus())
        return;
    const double inset = m_theme.px(focusInset);
    painter.setPen(QPen(ink, std::max(2, m_theme.px(focusWidth))));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset), radius / 2, radius / 2);
}

void AlarmButton::paintEvent(QPaintEvent*)
{
    const auto [ground, on] = colorsOf(m_alarm.kind);
    const QColor face = m_theme.color(m_inverted ? Role::Card : ground);
    const QColor ink = m_theme.color(m_inverted ? Role::Ink : on);
    const auto [layout, second] = arranged();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFace(painter, face, ink);
    // The sign has its alarm's colour: without a plate its outline would be lost in the face.
    const double plate = m_theme.px(plateMm);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme.color(Role::Card));
    painter.drawRoundedRect(layout.mark.adjusted(-plate, -plate, plate, plate), plate, plate);
    painter.save();
    paintPictogram(painter, layout.mark, signOfAlarm(m_alarm.kind), m_theme, ink);
    painter.restore();
    drawFitted(painter, layout.title, layout.stack.texts[0], layout.alignment | Qt::AlignTop, ink);
    drawFitted(painter, layout.second, layout.stack.texts[1], layout.alignment | Qt::AlignTop, ink);
}

} // namespace strandbench
