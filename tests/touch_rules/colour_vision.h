// SPDX-License-Identifier: GPL-3.0-or-later
// How a picture looks to somebody who does not see all colours, and whether two pictures can still be told apart.
#pragma once

#include <QColor>
#include <QImage>

#include <array>

namespace strandbench::rules {

enum class Vision {
    Full,
    Protanopia,   ///< no cones for long waves: red is dark
    Deuteranopia, ///< none for middle waves
    Tritanopia,   ///< none for short waves
    Grey,         ///< no colour at all: the relative luminance of WCAG 2.x
};
inline constexpr std::array<Vision, 5> everyVision{Vision::Full, Vision::Protanopia, Vision::Deuteranopia,
                                                   Vision::Tritanopia, Vision::Grey};
[[nodiscard]] const char* nameOf(Vision vision);

/// Row by row, for linear RGB.
using ColourMatrix = std::array<std::array<double, 3>, 3>;
[[nodiscard]] const ColourMatrix& matrixOf(Vision vision);

/// The colour as it is seen; alpha stays.
[[nodiscard]] QColor seen(const QColor& color, Vision vision);

/// What WCAG 2.2 (1.4.11) asks of a graphic that is needed to understand.
inline constexpr double leastGraphicRatio = 3.0;
/// Of a hatch: a grating of 2 mm at arm's length has some five periods a degree, where people see a modulation of one
/// in a hundred (F. W. Campbell, J. G. Robson, J. Physiol. 197, 1968, 551-566); 1.5 : 1 is one of one in five.
inline constexpr double leastHatchRatio = 1.5;

/// Square millimetres where two pictures of one size differ by at least a ratio of luminances as they are seen. Hue
/// alone counts for nothing, so a state told by colour alone comes out as 0.
[[nodiscard]] double differenceMm2(const QImage& one, const QImage& other, Vision vision, double pixelsPerMillimetre,
                                   double leastRatio = leastGraphicRatio);

/// The least difference by which two states are told apart: 3 mm² is the ink of one letter at the least size that is
/// read at arm's length: 3.4 mm em, so some 2.5 mm of height, two strokes of it 0.5 mm thick and as much again across.
inline constexpr double leastDifferenceMm2 = 3.0;

} // namespace strandbench::rules
