// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/any_key.h"

#include <QKeyEvent>

namespace strandbench {
namespace {

bool hasOwnMeaning(const QKeyEvent& press)
{
    switch (press.key()) {
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Escape:
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Meta:
    case Qt::Key_Super_L:
    case Qt::Key_Super_R:
    case Qt::Key_Menu:
    case Qt::Key_CapsLock:
    case Qt::Key_NumLock:
    case Qt::Key_ScrollLock:
        return true;
    default:
        break;
    }
    const QString typed = press.text();
    return typed.size() == 1 && (typed[0].isDigit() || typed[0] == u'.' || typed[0] == u',');
}

} // namespace

bool AnyKey::meansWayOn(const QKeyEvent& press, const Instant& now)
{
    constexpr Qt::KeyboardModifiers commands = Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier;
    const bool meant = m_footSwitch != 0 ? press.key() == m_footSwitch : !hasOwnMeaning(press);
    return meant && !(press.modifiers() & commands) && m_rest.passes(press, now);
}

} // namespace strandbench
