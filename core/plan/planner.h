// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/assumptions.h"
#include "plan/cure_engine.h"
#include "plan/repair_plan.h"
#include "plan/step_book.h"

namespace strandbench {

/// What a plan is made with: passed in, never reached for.
struct PlanningSet {
    const DecisionTable& table;
    const Catalogue& catalogue;
    const StepBook& steps;
    Assumptions assumptions;
    const CureEngine& engine;
};

/// Plans a repair. On a stop the plan holds only the stops and what was rejected.
/// Pure: the same assessment and set give the same plan.
[[nodiscard]] RepairPlan planRepair(const Assessment& assessment, const PlanningSet& set);

/// How far a plan has been carried out.
struct PlanProgress {
    int steps = 0;           ///< of preparing, done
    int frozenBatches = 0;   ///< of fibre filler: mixed, or of a lift that has begun
    int sandedBatches = 0;   ///< of fibre filler: nothing of theirs is left to do
    int mixedFinishing = 0;  ///< batches of finishing filler
    int sandedFinishing = 0; ///< and of these, sanded
    bool operator==(const PlanProgress&) const = default;
};

/// Plans the rest of a repair after an answer was corrected. The batches that are frozen stay with their lifts, and
/// with them the preparing; what they hold counts, by volume, in the cavity as it is answered now. Once finishing
/// filler is mixed, nothing of fibre filler is added. The products of the plan before come first in their classes, in
/// the versions that it names. With nothing frozen it is planRepair(), but that steps done
/// alike take no more time.
[[nodiscard]] RepairPlan replanRepair(const Assessment& assessment, const PlanningSet& set, const RepairPlan& before,
                                      const PlanProgress& done);

/// The sheets that a plan was made with.
[[nodiscard]] std::vector<SheetVersion> versionsIn(const RepairPlan& plan);

/// How many of the first `done` steps the new list has in the same places, with the same figures.
[[nodiscard]] int stepsStillDone(const std::vector<Step>& before, const std::vector<Step>& now, int done);

} // namespace strandbench
