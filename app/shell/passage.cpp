// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/passage.h"

#include "theme/theme.h"

#include <QEvent>

namespace strandbench {
namespace {

/// Where a screen comes from, in steps of the shift.
QPoint sideOf(Heading heading)
{
    switch (heading) {
    case Heading::None:
        return {0, 0};
    case Heading::On:
        return {1, 0};
    case Heading::Back:
        return {-1, 0};
    case Heading::Into:
        return {0, 1};
    case Heading::Out:
        return {0, -1};
    }
    Q_UNREACHABLE();
}

} // namespace

Heading headingTo(Place from, Place to, bool back, bool same)
{
    if (isHelp(from) != isHelp(to))
        return isHelp(to) ? Heading::Into : Heading::Out;
    if (back || (to == Place::Home && from != Place::Home))
        return Heading::Back;
    return from == to && same ? Heading::None : Heading::On;
}

Passage::Passage(QObject* parent) : QObject(parent)
{
    m_motion.setDuration(lastsMs);
    m_motion.setEasingCurve(QEasingCurve::OutCubic);
    connect(&m_motion, &QVariantAnimation::valueChanged, this, [this](const QVariant& away) {
        if (m_screen)
            m_screen->move(m_place + away.toPoint());
    });
}

void Passage::begin(QWidget* screen, Heading heading, const Theme& theme)
{
    stand();
    m_heading = heading;
    if (heading == Heading::None || m_motion.duration() == 0 || theme.reducedMotion() || !screen->isVisible())
        return;
    m_screen = screen;
    m_place = screen->pos();
    screen->installEventFilter(this);
    screen->lower(); // it passes below the ribbon
    const QPoint away = sideOf(heading) * theme.px(shiftMm);
    m_motion.setStartValue(away);
    m_motion.setEndValue(QPoint(0, 0));
    m_motion.start();
    screen->move(m_place + away); // its first picture is painted there
}

void Passage::setLasting(int forMs) { m_motion.setDuration(forMs); }

bool Passage::eventFilter(QObject* object, QEvent* event)
{
    const QPoint away = m_motion.currentValue().toPoint();
    if (object == m_screen && event->type() == QEvent::Resize) { // another glass, or an alarm takes room above
        m_place = m_screen->pos();
        stand();
    } else if (object == m_screen && event->type() == QEvent::Move && m_screen->pos() != m_place + away) {
        m_place = m_screen->pos(); // the layout put it where it belongs
        m_screen->move(m_place + away);
    }
    return QObject::eventFilter(object, event);
}

void Passage::stand()
{
    m_motion.stop();
    if (!m_screen)
        return;
    m_screen->removeEventFilter(this);
    m_screen->move(m_place);
    m_screen.clear();
}

} // namespace strandbench
