// SPDX-License-Identifier: GPL-3.0-or-later
// Accuracy as one number, so that solvers can be set to the same, and the time each then takes.
#pragma once

#include "watch.h"

#include <functional>
#include <optional>
#include <string>

namespace strandbench::curebench {

/// A solver of one case, by its tolerance.
struct Contender {
    std::string name;
    std::function<Found(double tolerance)> solve;
};

struct Accuracy {
    double gel;  ///< s off
    double sand; ///< s off
    double peak; ///< K off
    /// The worst of the three as a share of what the engine may be off: 0.5 % of a time, and of the peak 0.5 K
    /// or 1 % of its rise.
    double share;
};

[[nodiscard]] Accuracy accuracyOf(const Found& found, const Found& reference, double startKelvin);

/// The loosest tolerance of a ladder with eight rungs to the power of ten that is as accurate as the target.
[[nodiscard]] std::optional<double> loosestFor(const Contender& contender, const Found& reference, double startKelvin,
                                               double targetShare);

/// Median milliseconds of each, all on this one thread and in turn, so that a busy moment meets every one.
[[nodiscard]] std::vector<double> timesOf(const std::vector<std::function<void()>>& runs, int rounds);

} // namespace strandbench::curebench
