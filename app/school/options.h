// SPDX-License-Identifier: GPL-3.0-or-later
// What is offered beside the right answer: the same for the same panel, in an order that tells nothing.
#pragma once

#include "practice/practice_run.h"

namespace strandbench {

/// Codes of stops: those of the panel, those of the pupil's answers, and others.
[[nodiscard]] std::vector<QString> stopOptions(const PracticeRun& run, const PlanningSet& shop);
/// Codes of what may be done instead of filling, likewise.
[[nodiscard]] std::vector<QString> insteadOptions(const PracticeRun& run, const PlanningSet& shop);
/// Codes of steps: those of the plan of the pupil's own answers, and false ones.
[[nodiscard]] std::vector<QString> stepOptions(const PracticeRun& run);

} // namespace strandbench
