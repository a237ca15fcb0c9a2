// SPDX-License-Identifier: GPL-3.0-or-later
// The decision table and the step book as JSON, and the ones that the program carries.
#pragma once

#include "plan/step_book.h"
#include "quantity/fault.h"
#include "substrate/decision.h"

namespace strandbench {

/// Reads a decision table: {"short_strand":{"frp":{"suitability":"yes","reason":"code"}, ...}, ...}.
/// Every fibre-reinforced class and every column must be there, with a reason in every cell.
[[nodiscard]] Checked<DecisionTable> readDecisionTable(const QByteArray& json);
/// resources/decision/table.json; throws std::logic_error when it does not parse.
[[nodiscard]] const DecisionTable& builtInTable();

/// Reads a step book: {"prepare":[{"code","hands_on_s","waiting_s","cautions":[],"when":[],"arguments":[]}],
/// "finish":[...]}. Conditions and arguments must be known to the planner; codes must not repeat.
[[nodiscard]] Checked<StepBook> readStepBook(const QByteArray& json);
/// resources/steps/steps.json; throws std::logic_error when it does not parse.
[[nodiscard]] const StepBook& builtInSteps();

} // namespace strandbench
