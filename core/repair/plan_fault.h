// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a plan can be accepted for a repair. Inside core/repair only.
#pragma once

#include "repair/repair.h"

namespace strandbench {

/// Why it cannot; empty when it can: a stop, a plan of other answers, batches of layers that it does not have, or one
/// that loses what is frozen.
[[nodiscard]] std::optional<Fault> planFault(const Repair& repair, const PlanAccepted& accepted);

} // namespace strandbench
