// SPDX-License-Identifier: GPL-3.0-or-later
// What practice is tried with: the delivered panels, and the shop that the program plans with.
#pragma once

#include "plan/planner.h"
#include "practice/panel.h"

#include <functional>
#include <string>

namespace strandbench::test {

/// The panels of demo/practice; a failure of the test that asks where they do not read.
[[nodiscard]] const std::vector<PracticePanel>& deliveredPanels();
[[nodiscard]] const PracticePanel& delivered(const QString& id);
/// The program's own table, steps, demo sheets and assumptions.
[[nodiscard]] const PlanningSet& shop();

} // namespace strandbench::test
