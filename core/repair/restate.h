// SPDX-License-Identifier: GPL-3.0-or-later
// Making a step of the wall's clock good in what was told before it, so that elapsed() stays right across a restart.
#pragma once

#include "repair/repair.h"

namespace strandbench {

/// A moment as the wall's clock would have told it, had it been set then as it was after a step. at: right after the
/// step. What was told later stays; within one boot the boot clock says which is later, across boots the wall's own
/// reading before the step.
[[nodiscard]] Instant restated(const Instant& told, const Instant& at, Duration by);

/// The same for every moment that the clocks of a repair's batches go by.
void restate(Repair& repair, const Instant& at, Duration by);

} // namespace strandbench
