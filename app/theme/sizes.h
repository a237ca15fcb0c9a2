// SPDX-License-Identifier: GPL-3.0-or-later
// The measures of look and touch, in millimetres.
#pragma once

namespace strandbench::sizes {

inline constexpr double ribbon = 20;      ///< height of the ribbon's blocks
inline constexpr double answer = 24;      ///< height of the three answers
inline constexpr double target = 20;      ///< least short side of a touch target at the bench
inline constexpr double denseTarget = 14; ///< elsewhere (set-up, supervisor)
inline constexpr double gap = 4;          ///< least gap between targets
inline constexpr double margin = 3;       ///< to the glass's edge
inline constexpr double radius = 2;       ///< of corners
inline constexpr double edge = 0.6;       ///< of a control's outline

} // namespace strandbench::sizes
