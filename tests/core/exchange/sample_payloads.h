// SPDX-License-Identifier: GPL-3.0-or-later
// One of every kind of payload, made by hand: on the grid of storage, and no field at its
// default, so that a forgotten one shows.
#pragma once

#include "repair/event.h"

namespace strandbench {

[[nodiscard]] Assessment sampleAssessment();
[[nodiscard]] RepairPlan samplePlan();
[[nodiscard]] RepairPlan sampleStop();
/// Every kind at least once; every question once.
[[nodiscard]] std::vector<Payload> samplePayloads();

} // namespace strandbench
