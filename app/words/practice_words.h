// SPDX-License-Identifier: GPL-3.0-or-later
// Marks, rules and consequences of a practice panel, as a person reads them.
#pragma once

#include "practice/marking.h"
#include "words/words.h"

namespace strandbench {

[[nodiscard]] QString skillName(Skill skill);               ///< "identify", as it stands within a list
[[nodiscard]] QString decisionName(DecisionPoint decision); ///< "Which filler": at most four words
/// The decision with its lift or face: "Hardener, lift 2".
[[nodiscard]] QString decisionTold(const Mark& mark, const Words& words);
/// Why it is so, with its tolerance; empty where that hangs on what was not reached.
[[nodiscard]] QString ruleTold(const Mark& mark, const Words& words);
/// What it would have come to, in one sentence.
[[nodiscard]] QString consequenceTold(const Reason& what, const Words& words);
/// The sheet's word on it, said to be the sheet's; empty where it has none.
[[nodiscard]] QString sheetsWordTold(const Consequence& consequence, const Words& words);
/// What the pupil decided, and what would have been right.
[[nodiscard]] QString givenTold(const Mark& mark, const Words& words);
[[nodiscard]] QString expectedTold(const Mark& mark, const Words& words);
/// The whole in a sentence: whether it is passed, and what keeps it from being.
[[nodiscard]] QString outcomeTold(const Outcome& outcome);
/// What the panel led into.
[[nodiscard]] QString trapTold(TrapKind trap);

// What is offered to choose from.
[[nodiscard]] QString stopTold(const QString& code);
[[nodiscard]] QString insteadTold(const QString& code);
[[nodiscard]] QString stepTold(const QString& code, const RepairPlan& plan, const Words& words);
[[nodiscard]] QString testTold(InspectionTest test);

} // namespace strandbench
