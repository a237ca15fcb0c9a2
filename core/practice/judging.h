// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of marking, in the order of the work. Inside practice only.
#pragma once

#include "practice/marking.h"

namespace strandbench::practice {

/// What every part needs to know of the attempt.
struct Situation {
    const PracticePanel& panel;
    const ModelAnswer& truth;
    const Attempt& attempt;
    const PlanningSet& shop;
    const ModelAnswer& own; ///< what is right on the pupil's own answers
};

using Arguments = std::vector<Argument>;

/// A mark that was reached.
[[nodiscard]] Mark judged(DecisionPoint decision, bool right, Arguments given, Arguments expected, Reason rule);
[[nodiscard]] Mark notReached(DecisionPoint decision);
[[nodiscard]] Arguments codesAsArguments(const std::vector<QString>& codes);
/// The rule of a decision that has but one.
[[nodiscard]] Reason ruleOf(DecisionPoint decision, Arguments arguments = {});

void markIdentifying(const Situation& situation, std::vector<Mark>& marks);
void markDeciding(const Situation& situation, std::vector<Mark>& marks);

/// From here on `hand` is what is right with the filler in the pupil's hand; it fills.
void markPreparing(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks);
void markFace(const Situation& situation, const ModelAnswer& hand, Face face, std::vector<Mark>& marks);
/// One lift's thickness, amount, hardener, edges and sanding.
void markLift(const Situation& situation, const ModelAnswer& hand, const PlacedLift& lift, std::vector<Mark>& marks);
void markTurning(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks);
void markFinishing(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks);

} // namespace strandbench::practice
