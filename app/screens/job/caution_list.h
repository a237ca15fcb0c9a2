// SPDX-License-Identifier: GPL-3.0-or-later
// Cautions as they stand at a step: its sign, what to put on or do, and why.
#pragma once

#include "words/words.h"

#include <vector>

class QWidget;

namespace strandbench {

class Theme;

/// Below each other, with the why; they shrink in step. The texts are named caution_0, caution_0_why, ...
[[nodiscard]] QWidget* cautionList(const std::vector<CautionText>& cautions, const Theme& theme, QWidget* parent);

/// Side by side, so many in a row, without the why.
[[nodiscard]] QWidget* cautionStrip(const std::vector<CautionText>& cautions, const Theme& theme, QWidget* parent,
                                    int columns);

} // namespace strandbench
