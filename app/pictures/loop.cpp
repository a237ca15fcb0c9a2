// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/loop.h"

#include "theme/theme.h"

#include <QEvent>
#include <QWidget>

#include <stdexcept>

namespace strandbench {

Loop::Loop(const Theme& theme, QWidget* picture)
    : QObject(picture), m_picture(picture), m_still(false), m_reducedMotion(theme.reducedMotion())
{
    m_beat.setInterval(beatMs);
    connect(&m_beat, &QTimer::timeout, this, &Loop::next);
    picture->installEventFilter(this);
}

void Loop::setFrames(int frames)
{
    if (frames < 1)
        throw std::invalid_argument("Loop::setFrames: frames must be 1 or more");
    m_frames = frames;
    m_frame = 1;
    arrange(m_picture->isVisible());
}

void Loop::setStill(bool still)
{
    m_still = still;
    arrange(m_picture->isVisible());
}

void Loop::next()
{
    m_frame = m_frame % m_frames + 1;
    m_picture->update();
}

bool Loop::eventFilter(QObject* object, QEvent* event)
{
    if (event->type() == QEvent::Show)
        arrange(true);
    else if (event->type() == QEvent::Hide)
        arrange(false);
    return QObject::eventFilter(object, event);
}

void Loop::arrange(bool shown)
{
    if (shown && m_frames > 1 && !m_still && !m_reducedMotion) {
        m_beat.start();
        return;
    }
    m_beat.stop();
    m_frame = 1;
    m_picture->update();
}

} // namespace strandbench
