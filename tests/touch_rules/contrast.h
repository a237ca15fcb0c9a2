// SPDX-License-Identifier: GPL-3.0-or-later
// Contrast of two colours after WCAG 2.x: relative luminance of sRGB, ratio (L1 + 0.05) / (L2 + 0.05).
#pragma once

#include <QColor>

namespace strandbench::rules {

/// 0 (black) to 1 (white); alpha is ignored.
[[nodiscard]] double relativeLuminance(const QColor& color);
/// 1 to 21, the order of the two does not matter.
[[nodiscard]] double contrastRatio(const QColor& one, const QColor& other);

} // namespace strandbench::rules
