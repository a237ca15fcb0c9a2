// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of planning, one after another; planRepair() calls them in this order. Inside plan only.
#pragma once

#include "plan/planner.h"

namespace strandbench::planning {

/// What is laid already and stays as it is, when a plan takes the place of another.
struct Frozen {
    std::vector<Lift> lifts;
    std::vector<Batch> batches;              ///< of these lifts, all
    std::vector<const ProductSheet*> sheets; ///< of each lift
};

/// What every part needs to know of the repair.
struct Job {
    const Assessment& assessment; ///< whole: every answer that the damage asks for is there
    const PlanningSet& set;
    const ProductSheet& sheet;  ///< of the fibre filler chosen
    const ProductSheet& finish; ///< of the finishing filler
    Cavity cavity;
    bool backing;                         ///< a bonded backing comes first
    const ProductSheet* bridge = nullptr; ///< of the first lift over a backing, where another filler bridges
    Frozen frozen = {};
};

/// The sheet of a lift's own filler.
[[nodiscard]] const ProductSheet& sheetOf(const Job& job, const Lift& lift);

/// True when a hole needs a bonded backing (common practice, no source: over 50 mm, or over 25 mm without rear access).
[[nodiscard]] bool needsBacking(const Assessment& assessment, const Assumptions& assumptions);

/// What lies under a layer, from the back face towards it: what is left of the panel below the cavity, or a
/// backing, then the lifts of the other face and those below on this one, cured and as warm as the panel.
[[nodiscard]] std::vector<StackLayer> stackUnder(const Job& job, const std::vector<Lift>& below);
/// The lowest of what the filler, the panel and a bond seam may come to.
[[nodiscard]] Temperature peakLimit(const Job& job);

/// A lift's place in its face, measured from the floor, and how it cures.
struct LaidLift {
    Lift lift;
    Length floor;
    LayerCure cure;
    bool last = false; ///< of its face: built proud
};
/// The lifts of every face that are still to be laid, front first: of equal thickness, the fewest that stay within
/// the sheet's greatest lift and under the peak limit, what the last is built proud included. With those that are
/// frozen they add up to the face's height. Where a filler bridges, its lifts come first and the rest over them.
/// The reason when heat leaves no lift, or the cure has no answer.
[[nodiscard]] CureAnswer<std::vector<LaidLift>> planLifts(const Job& job);
/// What a face holds of what is frozen: none, some of its height, or all of it and proud.
[[nodiscard]] Length laidHeight(const Job& job, Face face);
/// 'In one go it reaches so much': when heat, not only the sheet, asks for more than one lift.
[[nodiscard]] std::optional<Reason> oneGoTooHot(const Job& job, const std::vector<Lift>& lifts);

/// The greatest lift of this day on this panel, where heat allows less than the sheet does.
[[nodiscard]] std::optional<Reason> greatestToday(const Job& job);

/// What one lift takes before losses: its slice of the cavity, and on a face's last lift the proud part.
[[nodiscard]] Volume liftVolume(const Job& job, const LaidLift& laid);

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

/// What of a mixed batch went onto the panel: without what stays on the board.
[[nodiscard]] Mass onThePanel(const Batch& batch, const Assumptions& assumptions);
/// Shrinkage of a finished volume: what must be mixed more.
[[nodiscard]] Volume shrinkageOf(Volume finished, const ProductSheet& sheet);

[[nodiscard]] CureAnswer<Finish> planFinish(const Job& job, const std::vector<Lift>& lifts);

/// The steps of the book that apply, in its order, with their figures.
[[nodiscard]] std::vector<Step> planSteps(const Job& job, const std::vector<StepRule>& rules);
/// How long after the last sanding before primer: an hour at 20 degC, longer where it cures slower.
[[nodiscard]] Duration beforePrimer(const Job& job);

/// Fills in timeline and readyForPrimer from everything else; what is done already takes no more time.
void planTimeline(RepairPlan& plan, const Job& job, const PlanProgress& done);

} // namespace strandbench::planning
