// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan changes of the one before it, for a person to accept.
#pragma once

#include "plan/planner.h"

#include <optional>
#include <vector>

namespace strandbench {

/// One figure that is not as it was. A side is empty where there is no such thing. Codes: filler, faces,
/// lifts_to_lay, batches_to_mix, filler_to_mix, hardener_to_mix, finish_thickness, steps_open.
struct PlanChange {
    QString code;
    std::optional<Argument> before;
    std::optional<Argument> now;
    bool operator==(const PlanChange&) const = default;
};

struct PlanDifference {
    std::vector<PlanChange> figures; ///< only those that differ
    std::vector<QString> opened;     ///< codes of preparing steps that are to be done again, or are new
    std::vector<QString> dropped;    ///< codes of preparing steps not done yet that are no longer there
    int kept = 0;                    ///< batches that stay as they were mixed
    bool operator==(const PlanDifference&) const = default;
};

/// What is still to be done by either plan, side by side. Both are plans that fill.
[[nodiscard]] PlanDifference planDifference(const RepairPlan& before, const RepairPlan& now, const PlanProgress& done);

} // namespace strandbench
