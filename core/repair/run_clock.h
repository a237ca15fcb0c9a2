// SPDX-License-Identifier: GPL-3.0-or-later
// What the clock of a batch shows: time and what has been told of it.
#pragma once

#include "clock/batch_clock.h"
#include "repair/repair.h"

namespace strandbench {

/// The face of a batch's clock. The phases go by the plan's times, but never behind what was told: edges that
/// are clear, or a layer that has gelled, mean hands off until it sands; what sands is being sanded.
/// It counts to the early ends of what was predicted.
[[nodiscard]] ClockFace clockOf(const BatchRun& run, const Assumptions& assumptions, const Instant& now);

/// Its early and its late ends; of a batch that says nothing of them its times.
[[nodiscard]] const BatchTimes& earlyTimes(const BatchRun& run);
[[nodiscard]] const BatchTimes& lateTimes(const BatchRun& run);
/// Its phases to time scale, with how sure their ends are.
[[nodiscard]] std::vector<PhaseSpan> phasesOf(const BatchRun& run, const Assumptions& assumptions);

} // namespace strandbench
