// SPDX-License-Identifier: GPL-3.0-or-later
// What figures lead to, worked out beside the glass while they are stepped.
#pragma once

#include "plan/forecast.h"
#include "screens/job/figures_screen.h"

namespace strandbench::outlooks {

/// "Board sets in 06:05. Gels on the panel in 06:26, sands from 10:50. Hottest 58 °C."
[[nodiscard]] QString ofForecast(const std::optional<BatchForecast>& forecast, const Words& words);

using Verdict = FiguresScreen::Spec::Verdict;
using Outlook = std::function<std::function<Verdict()>(const std::vector<std::optional<double>>&)>;

/// Air, panel and humidity before there is a plan: what would be planned with them. The repair has all else answered.
[[nodiscard]] Outlook ofReadingForPlan(const Surroundings& around, const Repair& repair);
/// The same read again before a batch: what becomes of that batch, with the product that the bench uses.
[[nodiscard]] Outlook ofReadingForBatch(const Surroundings& around, const Repair& repair, BatchRef batch = {});

/// The same read while a batch cures: what becomes of it from the state reached.
[[nodiscard]] Outlook ofReadingWhileCuring(const Surroundings& around, const BatchRun& run);

} // namespace strandbench::outlooks
