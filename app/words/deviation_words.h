// SPDX-License-Identifier: GPL-3.0-or-later
// A deviation in words: what was read or done, and the limit behind it.
#pragma once

#include "review/deviations.h"
#include "words/words.h"

namespace strandbench {

/// "Batch 1: panel at 28.5 °C; at most 28 °C"
[[nodiscard]] QString deviationText(const Deviation& deviation, const Words& words);

/// "2 deviations", "no deviations"
[[nodiscard]] QString deviationCount(int count);

} // namespace strandbench
