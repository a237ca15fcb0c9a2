// SPDX-License-Identifier: GPL-3.0-or-later
// The right answer to a panel: what decision table, planner and cure engine make of it. Nothing here is canned.
#pragma once

#include "plan/planner.h"
#include "practice/attempt.h"

namespace strandbench {

struct ModelAnswer {
    Assessment assessment;
    RepairPlan plan; ///< with its stops where it is one
    /// Codes of steps to offer beside the right ones, in no order that tells: of the book and of the trade's warnings,
    /// none of which belongs here.
    std::vector<QString> falseSteps;
    [[nodiscard]] bool fill() const { return plan.fill; }
};

[[nodiscard]] ModelAnswer modelAnswer(const Assessment& assessment, const PlanningSet& shop);
/// The same as if this filler suited everywhere: what goes on from there is judged by the filler in the hand.
[[nodiscard]] ModelAnswer modelAnswerWith(FillerClass filler, const Assessment& assessment, const PlanningSet& shop);

/// The model answer as an attempt: what a pupil does who does everything right from that assessment on.
[[nodiscard]] Attempt perfectAttempt(const ModelAnswer& answer, const PlanningSet& shop);

/// Steps that do harm (common practice; blowing off: 29 CFR 1910.242(b)) and belong nowhere.
[[nodiscard]] const std::vector<QString>& harmfulSteps();
/// What a step is done for, where the book has one for metal and one for the rest.
[[nodiscard]] QString actOf(const QString& step);
/// The step that is done in the place of this one on another panel; empty when there is none.
[[nodiscard]] QString insteadOfStep(const QString& step);
/// Whether it matters which of two acts comes first, where the book has an order for them.
[[nodiscard]] bool orderMatters(const QString& before, const QString& after);

} // namespace strandbench
