// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's figures in words: short names for what stands below a bar, and what a run of gels says.
#pragma once

#include "review/figures.h"
#include "words/words.h"

namespace strandbench {

/// A kind of deviation in two or three words: "Panel too cold".
[[nodiscard]] QString deviationName(DeviationKind kind);
/// A part of the job in a word: "Sanding".
[[nodiscard]] QString jobPartName(JobPart part);
/// What a run rule found, with the number of the gel that completes it: "gel 31 lies outside the limits".
[[nodiscard]] QString runText(const RunSignal& signal);
/// How much slower or faster than the sheet a time is that takes so many times as long: "12 % slower than the sheet".
[[nodiscard]] QString againstSheet(double ratio, const Words& words);

} // namespace strandbench
