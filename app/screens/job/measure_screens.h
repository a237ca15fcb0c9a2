// SPDX-License-Identifier: GPL-3.0-or-later
// The two screens of figures: the size of a damage, and air, panel and humidity.
#pragma once

#include "screens/job/figures_screen.h"

namespace strandbench {

[[nodiscard]] Screen* makeSizeScreen(const Surroundings& around, const Repair& repair, QWidget* parent,
                                     std::function<void()> changeUnits);

/// The reading of an assessment; answered before, it corrects.
[[nodiscard]] Screen* makeReadingScreen(const Surroundings& around, const Repair& repair, QWidget* parent,
                                        std::function<void()> changeUnits);

/// Reading air and panel again at a step of preparing: confirming records the reading and the step.
[[nodiscard]] Screen* makeReadAgainScreen(const Surroundings& around, const Repair& repair, int step, QWidget* parent,
                                          std::function<void()> changeUnits);

/// Reading air and panel again before a batch is mixed: confirming records the reading.
[[nodiscard]] Screen* makeReadBeforeMixScreen(const Surroundings& around, const Repair& repair, BatchRef batch,
                                              QWidget* parent, std::function<void()> changeUnits);

/// Reading air and panel while a batch cures: confirming records the reading and what it makes of every batch of the
/// repair that cures.
[[nodiscard]] Screen* makeReadWhileCuringScreen(const Surroundings& around, const Repair& repair, BatchRef batch,
                                                QWidget* parent, std::function<void()> changeUnits);

} // namespace strandbench
