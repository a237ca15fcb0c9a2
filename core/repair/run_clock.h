// SPDX-License-Identifier: GPL-3.0-or-later
// What the clock of a batch shows: time and what has been told of it.
#pragma once

#include "clock/batch_clock.h"
#include "repair/repair.h"

namespace strandbench {

/// The face of a batch's clock. The phases go by the plan's times, but never behind what was told: edges that
/// are clear, or a layer that has gelled, mean hands off until it sands; what sands is being sanded.
[[nodiscard]] ClockFace clockOf(const BatchRun& run, const Assumptions& assumptions, const Instant& now);

} // namespace strandbench
