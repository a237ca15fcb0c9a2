// SPDX-License-Identifier: GPL-3.0-or-later
// The repair description and the plan as headless commands speak them.
#pragma once

#include "plan/repair_plan.h"
#include "quantity/fault.h"

#include <QJsonObject>

#include <functional>

namespace strandbench {

/// Reads a repair description. Left out and therefore 'not assessed' (no fault): surface, zone, moisture,
/// weld, adhesive_cured, rear_access. A depth_mm of a hole other than the panel's thickness is a fault.
/// weld and adhesive_cured stand in "damage" or at the root, not in both.
[[nodiscard]] Checked<Assessment> readAssessment(const QByteArray& json);

/// Renders a reason's text; passed in, since words are not core's business.
using TextOf = std::function<QString(const Reason&)>;
struct PlanTexts {
    TextOf reason;                            ///< of reasons, stops and rejections
    std::function<QString(const Step&)> step; ///< of prep steps
};

/// The plan result, key by key as the headless contract gives it. Numbers in full precision.
[[nodiscard]] QJsonObject planToJson(const RepairPlan& plan, const PlanTexts& texts);

/// A number rounded to the 15 significant decimal digits that a double holds, so that 101.6 stays 101.6.
[[nodiscard]] double tidy(double value);

} // namespace strandbench
