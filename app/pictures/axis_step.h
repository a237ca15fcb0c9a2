// SPDX-License-Identifier: GPL-3.0-or-later
// Steps of an axis that people count in.
#pragma once

namespace strandbench {

/// A step of 1, 2 or 5 times a power of ten that divides a span of more than 0 into about so many parts, at most that
/// many.
[[nodiscard]] double niceStep(double span, int parts);

} // namespace strandbench
