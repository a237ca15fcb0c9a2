// SPDX-License-Identifier: GPL-3.0-or-later
// A plan in the place of another: what changes, what stays as it was mixed, which steps are open again.
#pragma once

#include "plan/plan_difference.h"
#include "screens/job/station_screens.h"

namespace strandbench {

class ReplanScreen final : public Screen {
    Q_OBJECT
public:
    /// The repair has a plan whose answers were corrected; `plan` is what takes its place, and fills.
    ReplanScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, const Ways& ways,
                 QWidget* parent = nullptr);

private:
    void buildFigures(const PlanDifference& difference);
    QWidget* buildSteps(const PlanDifference& difference);
    void buildSide(const PlanDifference& difference, const Ways& ways);
};

} // namespace strandbench
