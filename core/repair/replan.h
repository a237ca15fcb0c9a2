// SPDX-License-Identifier: GPL-3.0-or-later
// A plan in the place of another: what stays frozen, and which steps are open again. Inside core/repair only.
#pragma once

#include "repair/repair.h"

namespace strandbench::replan {

/// What the new plan would lose of what is done: "batch 1", "lift 0", "prepare"; empty when it keeps all.
[[nodiscard]] QString lostBy(const Repair& repair, const RepairPlan& plan);

/// Sets the counts of steps done by what the new plan still has of them. Call it while the old plan is in place.
void countSteps(Repair& repair, const RepairPlan& plan);

} // namespace strandbench::replan
