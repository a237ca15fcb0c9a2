// SPDX-License-Identifier: GPL-3.0-or-later
// What is believed of a log rate: a normal distribution, and how it changes with what is seen.
#pragma once

#include "learning/log_rate.h"

namespace strandbench {

/// Normal with this mean and standard deviation; the spread is of the log rate: 0.1 is about 10 % of the rate.
struct Belief {
    LogRate mean;
    double spread = 0; ///< over 0
    bool operator==(const Belief&) const = default;
};

struct LogRateRange {
    LogRate low; ///< the slow end: marks come late
    LogRate high;
    bool operator==(const LogRateRange&) const = default;
};

/// The belief after one rate was seen, itself normal about the truth with a known spread: precisions add, the mean is
/// weighted by them (Gelman et al., Bayesian Data Analysis, 3rd ed., eqs. 2.11 and 2.12).
[[nodiscard]] Belief afterSeeing(const Belief& before, LogRate seen, double spread);

/// The belief after it was seen that a rate, itself normal about the truth with a known spread, is this or more: first
/// and second moment of the exact posterior (Rasmussen and Williams, Gaussian Processes for Machine Learning, 3.9,
/// eqs. 3.82 and 3.85). The bound must not be more than eight spreads over the belief.
[[nodiscard]] Belief afterSeeingAtLeast(const Belief& before, LogRate least, double spread);

/// What the next one is believed to be, of those that scatter about the truth with this spread.
[[nodiscard]] Belief ofTheNext(const Belief& truth, double spread);

/// The middle part of the belief that holds this share of it, 0 to 1 without the ends.
[[nodiscard]] LogRateRange middleOf(const Belief& belief, Fraction share);

} // namespace strandbench
