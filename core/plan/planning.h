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

/// What lies under a layer, from the back face towards it: what is left of the panel below the cavity, or a
/// backing, then the lifts of the other face and those below on this one, cured and as warm as the panel.
[[nodiscard]] std::vector<StackLayer> stackUnder(const Job& job, const std::vector<Lift>& below);
/// The lowest of what the filler, the panel and a bond seam may come to.
[[nodiscard]] Temperature peakLimit(const Job& job);

/// Lifts with how each cures, side by side.
struct LaidLifts {
    std::vector<Lift> lifts;
    std::vector<LayerCure> cures;
};
/// The lifts of every face, front first: of equal thickness, the fewest that stay within the sheet's greatest
/// lift and under the peak limit, what the last is built proud included. They add up to the face's height.
/// The reason when heat leaves no lift, or the cure has no answer.
[[nodiscard]] CureAnswer<LaidLifts> planLifts(const Job& job);
/// 'In one go it reaches so much': when heat, not only the sheet, asks for more than one lift.
[[nodiscard]] std::optional<Reason> oneGoTooHot(const Job& job, const std::vector<Lift>& lifts);

/// The greatest lift of this day on this panel, where heat allows less than the sheet does.
[[nodiscard]] std::optional<Reason> greatestToday(const Job& job);

/// What one lift takes before losses: its slice of the cavity, and on a face's last lift the proud part.
[[nodiscard]] Volume liftVolume(const Job& job, const std::vector<Lift>& lifts, std::size_t index);

/// How a volume is mixed: batches alike, each spread before its edges must be cleared and no wider than
/// the board.
struct Mixing {
    std::vector<Batch> batches;
    Mass needed; ///< without what is left on the board
    Mass boardLoss;
};
struct MixingTask {
    const ProductSheet& sheet;
    Volume volume; ///< finished, before shrinkage
    LayerCure layer;
    int lift = 0; ///< or coat
};
/// The reason when no batch can be spread in time: gels_too_fast.
[[nodiscard]] CureAnswer<Mixing> planBatches(const MixingTask& task, const Job& job);

/// Shrinkage of a finished volume: what must be mixed more.
[[nodiscard]] Volume shrinkageOf(Volume finished, const ProductSheet& sheet);

[[nodiscard]] CureAnswer<Finish> planFinish(const Job& job, const std::vector<Lift>& lifts);

/// The steps of the book that apply, in its order, with their figures.
[[nodiscard]] std::vector<Step> planSteps(const Job& job, const std::vector<StepRule>& rules);
/// How long after the last sanding before primer: an hour at 20 degC, longer where it cures slower.
[[nodiscard]] Duration beforePrimer(const Job& job);

/// Fills in timeline and readyForPrimer from everything else.
void planTimeline(RepairPlan& plan, const Job& job);

} // namespace strandbench::planning
