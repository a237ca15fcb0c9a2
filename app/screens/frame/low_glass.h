// SPDX-License-Identifier: GPL-3.0-or-later
// Some glasses are too low for a large figure with lines above and below it.
#pragma once

class QWidget;

namespace strandbench {

class Theme;

/// Whether a window is lower than 133 mm; false when there is none. A screen asks it of its parent while it is built:
/// it has no size of its own then.
[[nodiscard]] bool isLowGlass(const QWidget* window, const Theme& theme);

} // namespace strandbench
