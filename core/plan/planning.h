// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of planning, one after another; planRepair() calls them in this order. Inside plan only.
#pragma once

#include "plan/planner.h"

namespace strandbench::planning {

/// What every part needs to know of the repair.
struct Job {
    const Assessment& assessment; ///< whole: every answer that the damage asks for is there
    const PlanningSet& set;
    const ProductSheet& sheet;  ///< of the fibre filler chosen
    const ProductSheet& finish; ///< of the finishing filler
    Cavity cavity;
    bool backing; ///< a bonded backing comes first
};

/// True when a hole needs a bonded backing (common practice, no source: over 50 mm, or over 25 mm without rear access).
[[nodiscard]] bool needsBacking(const Assessment& assessment, const Assumptions& assumptions);

/// The lifts of every face, front first: of equal thickness, the last one with what it is built proud still
/// within the sheet's greatest lift. They add up to the face's height.
[[nodiscard]] std::vector<Lift> planLifts(const Job& job);

/// What one lift takes before losses: its slice of the cavity, and on a face's last lift the proud part.
[[nodiscard]] Volume liftVolume(const Job& job, const std::vector<Lift>& lifts, std::size_t index);
/// What the lift is laid to, what is built proud included.
[[nodiscard]] Length laidThickness(const Job& job, const std::vector<Lift>& lifts, std::size_t index);

/// How a volume is mixed: batches alike, each spread before its edges must be cleared and no wider than
/// the board. Empty when no batch can be spread in time.
struct Mixing {
    std::vector<Batch> batches;
    Mass needed; ///< without what is left on the board
    Mass boardLoss;
};
struct MixingTask {
    const ProductSheet& sheet;
    Volume volume; ///< finished, before shrinkage
    Length laid;
    int lift = 0; ///< or coat
};
[[nodiscard]] Mixing planBatches(const MixingTask& task, const Reading& reading, const PlanningSet& set);

/// Shrinkage of a finished volume: what must be mixed more.
[[nodiscard]] Volume shrinkageOf(Volume finished, const ProductSheet& sheet);

[[nodiscard]] Finish planFinish(const Job& job);

/// The steps of the book that apply, in its order, with their figures.
[[nodiscard]] std::vector<Step> planSteps(const Job& job, const std::vector<StepRule>& rules);
/// How long after the last sanding before primer: an hour at 20 degC, longer where it cures slower.
[[nodiscard]] Duration beforePrimer(const Job& job);

/// Fills in timeline and readyForPrimer from everything else.
void planTimeline(RepairPlan& plan, const Job& job);

} // namespace strandbench::planning
