// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the font files apart that the font package mixes up.
#pragma once

namespace strandbench {

/// B612's monospaced files name "B612" as their family, too, and Qt then draws B612 monospaced in its
/// regular weight. This leaves the monospaced files out of this process's font configuration. It runs by itself
/// when the application object is made, before Qt reads the fonts; calling it again does nothing.
void leaveOutMonospacedB612();

} // namespace strandbench
