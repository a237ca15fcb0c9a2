// SPDX-License-Identifier: GPL-3.0-or-later
// Filler and hardener as they were really weighed, keyed in or taken over from the scale.
#pragma once

#include "screens/job/figures_screen.h"

namespace strandbench {

/// What keeps its band is the share of the two: outside the sheet's the batch is refused. Expects a batch with a
/// forecast. filler: taken over already; empty: not weighed yet.
[[nodiscard]] Screen* makeWeighScreen(const Surroundings& around, const Repair& repair, BatchRef batch,
                                      const std::optional<Mass>& filler, QWidget* parent,
                                      std::function<void()> changeUnits);

/// How far what is weighed may be from what is planned, as shares: far beyond any band, so that what was weighed can
/// be told, and is then refused.
inline constexpr double leastWeighed = 0.1;
inline constexpr double mostWeighed = 4.0;

} // namespace strandbench
