// SPDX-License-Identifier: GPL-3.0-or-later
// What a supervisor reads while a day is looked through.
#pragma once

#include "review/day_review.h"
#include "review/job_timeline.h"
#include "review/warranty.h"
#include "words/words.h"

namespace strandbench {

/// How a repair stands: "to look through", "signed off".
[[nodiscard]] QString standingText(Standing standing);
/// A thing that the record lacks, as one sentence.
[[nodiscard]] QString lackingText(const Lacking& lacking, const Words& words);
/// A part of the timeline in a word or two: "preparing".
[[nodiscard]] QString spanName(SpanKind kind);
/// By what it is narrowed: "person".
[[nodiscard]] QString narrowName(NarrowBy by);
/// A value of it as a person knows it; catalogue: for products; bench: the one that is told.
[[nodiscard]] QString narrowValue(const Narrowing& narrowing, const Catalogue& catalogue, const QString& ownBench,
                                  const Words& words);

} // namespace strandbench
