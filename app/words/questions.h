// SPDX-License-Identifier: GPL-3.0-or-later
// The questions of the assessment and how to tell the answers; only app/words includes this.
#pragma once

#include "words/names.h"

namespace strandbench::words {

/// The question as asked on the glass, at most ten words.
[[nodiscard]] QString questionSentence(const QString& code);
/// How to tell one answer from the others: one short line; what is one of Substrate, Damage, Weld, Surface,
/// Zone, Moisture, Core.
[[nodiscard]] QString hintOf(NameOf what, const QString& code);
/// The answers to a question of yes or no: title and how to tell.
[[nodiscard]] QString yesNoTitle(const QString& question, bool answer);
[[nodiscard]] QString yesNoHint(const QString& question, bool answer);

} // namespace strandbench::words
