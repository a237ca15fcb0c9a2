// SPDX-License-Identifier: GPL-3.0-or-later
// A glass that went to sleep is woken when something rings.
#pragma once

namespace strandbench {

/// Under X11: ends the screen saver and switches the screen on. Elsewhere nothing: there the desktop alone may do it.
void wakeScreen();

} // namespace strandbench
