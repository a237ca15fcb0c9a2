// SPDX-License-Identifier: GPL-3.0-or-later
// Repairs, labels and glasses that the tests of the pictures share.
#pragma once

#include "pictures/section_picture.h"
#include "touch_rules/glass.h"

#include <ostream>

namespace strandbench::rules {

/// So that a test case is named by its glass, not by its bytes.
inline void PrintTo(const Glass& glass, std::ostream* out) { *out << glass.name.toStdString(); }

} // namespace strandbench::rules

namespace strandbench::samples {

/// The SMC hole of 60 x 40 mm, 3.5 mm thick, filled from both faces, with 0.5 mm of finish.
[[nodiscard]] SectionDrawing smcHole();
/// One of every kind that is filled, with lifts and finish.
[[nodiscard]] std::vector<SectionDrawing> everyKind();
[[nodiscard]] SectionLabels labels(const SectionDrawing& drawing);
/// The same in longer words, as another language may need.
[[nodiscard]] SectionLabels longLabels(const SectionDrawing& drawing);
[[nodiscard]] Theme themeFor(const rules::Glass& glass, DayNight dayNight = DayNight::Day);

} // namespace strandbench::samples
