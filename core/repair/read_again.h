// SPDX-License-Identifier: GPL-3.0-or-later
// A reading while a batch cures: the prediction goes on from the state reached, in the air and with the panel as read.
#pragma once

#include "plan/planner.h"
#include "repair/repair.h"

namespace strandbench {

/// What a bare panel beside the repair comes to by now, by what was read of it last: as one lump it follows the air,
/// T = T_air + (T_read - T_air) exp(-t / tau), tau = sum(rho cp d) / (h_front + h_back) (Incropera et al., Fundamentals
/// of Heat and Mass Transfer, 5.1, eqs. 5.6 and 5.7). Of a batch without a panel under it the filler itself is taken.
[[nodiscard]] Temperature panelByNow(const BatchRun& run, Duration sinceHardener);

/// A batch that cures, after a reading: its case goes on from the state reached in the air as read, warmer or colder
/// by what the panel is off panelByNow(). Whether what warms or cools it stays, nobody told: expected is that it goes;
/// the early end reckons that a warmth stays, the late end that a chill does. Empty when the batch sands, came from no
/// cure, its sheet is not loaded, or the cure has no answer.
[[nodiscard]] std::optional<PredictedAgain> predictAgain(const BatchRun& run, const Reading& reading,
                                                         const Instant& now, const PlanningSet& planning);

/// The acts of one reading: the reading, and what it makes of every batch of the repair that cures.
[[nodiscard]] std::vector<Payload> readWhileCuring(const Repair& repair, const Reading& reading, const Instant& now,
                                                   const PlanningSet& planning);

} // namespace strandbench
