// SPDX-License-Identifier: GPL-3.0-or-later
// Lifts as an apprentice laid them: where they lie, what they take, and how they cure.
#pragma once

#include "practice/model_answer.h"

namespace strandbench {

/// One lift of an attempt in its place.
struct PlacedLift {
    std::size_t index = 0;         ///< in the attempt
    Length floor;                  ///< of its face
    bool top = false;              ///< reaches the surface, and is built proud of it
    Length laid;                   ///< as thick as it lay, what is proud included
    const Lift* planned = nullptr; ///< of the plan, at this depth: its stack and its filler
};

/// Closer than this to the surface, a face is full: what a rule shows (an assumption).
[[nodiscard]] inline Length levelWithin() { return millimetres(0.5); }

/// The lifts of an attempt that lie on a face which the plan fills, in the order they were laid. The answer is a plan
/// that fills, and outlives what is given back.
[[nodiscard]] std::vector<PlacedLift> placeLifts(const Attempt& attempt, const ModelAnswer& answer,
                                                 const PlanningSet& shop);

/// The plan with the lifts and coats as they were laid in place of its own: what a section of this repair shows.
[[nodiscard]] RepairPlan planAsLaid(const Attempt& attempt, const ModelAnswer& answer, const PlanningSet& shop);

/// The sheet of the filler at a lift's depth.
[[nodiscard]] const ProductSheet& sheetOf(const PlacedLift& lift, const ModelAnswer& answer, const PlanningSet& shop);

/// What such a lift takes in so many batches, by the planner's own allowances: shrinkage, board and spreader.
[[nodiscard]] Mass takes(const PlacedLift& lift, const AttemptedLift& attempted, const ModelAnswer& answer,
                         const PlanningSet& shop);

/// Filler and hardener of a batch by what lies on the board. The share is 0 where there is no puddle.
[[nodiscard]] Mix mixOf(const MixedBatch& batch, const ProductSheet& sheet);

/// How the lift cures with this share of hardener, on the stack that the plan has at its depth. The reason where the
/// engine has no answer: beyond_the_model (a share outside 0.1 to 10 %, or a layer outside 0.2 to 60 mm), never_sands,
/// cure_unsolved.
[[nodiscard]] CureAnswer<LayerCure> cureOf(const PlacedLift& lift, Fraction hardener, const PlanningSet& shop);
/// When its puddle gels on the board; puddles outside 0.2 to 60 mm high are beyond_the_model.
[[nodiscard]] CureAnswer<Duration> boardGelOf(const Mix& mix, Fraction hardener, const ModelAnswer& answer,
                                              const ProductSheet& sheet, const PlanningSet& shop);

/// The conversion of the exposed face at a moment, found by asking when each is reached; 0 before it begins.
[[nodiscard]] Fraction faceConversionAt(const CureCase& cureCase, Duration at);

} // namespace strandbench
