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

} // namespace strandbench
