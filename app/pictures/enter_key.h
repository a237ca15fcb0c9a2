// SPDX-License-Identifier: GPL-3.0-or-later
// Enter belongs to the window: it alone knows a foot switch that bounces from a press that is meant.
#pragma once

#include <QKeyEvent>

namespace strandbench {

/// Leaves a press or release of Enter to whoever stands around the button; false for any other key.
inline bool leftToTheWindow(QKeyEvent& event)
{
    if (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter)
        return false;
    event.ignore();
    return true;
}

} // namespace strandbench
