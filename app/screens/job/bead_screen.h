// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "screens/job/figures_screen.h"

namespace strandbench {

/// The hardener as it was laid or weighed, when it is not what was planned: what it does to the times, shown while
/// the figure is stepped; outside the sheet's band the batch is refused. Expects a batch with a forecast.
[[nodiscard]] Screen* makeBeadScreen(const Surroundings& around, const Repair& repair, BatchRef batch, QWidget* parent,
                                     std::function<void()> changeUnits);

/// What the sheet's band says to a share of hardener; not allowed where the mix must not be used.
[[nodiscard]] FiguresScreen::Spec::Verdict judgedHardener(Fraction share, const ProductSheet& sheet,
                                                          const Words& words);

} // namespace strandbench
