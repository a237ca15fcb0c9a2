// SPDX-License-Identifier: GPL-3.0-or-later
// Words of what was answered, and of what a new plan changes.
#pragma once

#include "words/words.h"

namespace strandbench::words {

/// What a question was answered with: "SMC", "60 × 40 mm, 3.5 mm deep"; empty when it was not.
[[nodiscard]] QString answerValue(const Assessment& assessment, Question question, const Words& words);
/// The name of a PlanChange, by its code.
[[nodiscard]] QString planChangeName(const QString& code);
/// A figure of a PlanChange.
[[nodiscard]] QString planFigure(const Argument& figure, const Words& words);
/// A step in two or three words, for a list: "bevel".
[[nodiscard]] QString stepName(const QString& code);

} // namespace strandbench::words
