// SPDX-License-Identifier: GPL-3.0-or-later
// What is next on a repair, in a word and a line, as its card says it.
#pragma once

#include "bench/bench.h"
#include "pictures/pictogram.h"
#include "pictures/section_picture.h"
#include "words/words.h"

namespace strandbench {

struct NextWords {
    QString what;
    QString detail;
    Pictogram sign = Pictogram::None;
};

/// running: the batch of this repair whose clock runs and whose next act comes first.
[[nodiscard]] NextWords nextWords(const Repair& repair, const std::optional<RunningMix>& running, const Words& words);

/// How far the repair is, for its picture.
[[nodiscard]] SectionProgress progressOf(const Repair& repair);

} // namespace strandbench
