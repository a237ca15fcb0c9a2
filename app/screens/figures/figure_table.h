// SPDX-License-Identifier: GPL-3.0-or-later
// The table behind a chart: a row for each thing in it, what stands out with a sign.
#pragma once

#include "screens/figures/figure_told.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

/// How tall a row is: mm.
[[nodiscard]] double figureRowHeight(const Surroundings& around);
/// The row of this number; its texts are named "figure_row_<n>" and "figure_row_<n>_rest".
[[nodiscard]] PagedRows::MakeRow figureRow(const Surroundings& around, const FigureRow& row, std::size_t number);

} // namespace strandbench
