// SPDX-License-Identifier: GPL-3.0-or-later
// Control charts of a series: whether it only scatters, or something has changed. Formulas and rules as the
// NIST/SEMATECH e-Handbook of Statistical Methods gives them, sections 6.3.2 and 6.3.3. Values are pure numbers: ratios
// or shares.
#pragma once

#include "quantity/codes.h"
#include "quantity/fault.h"

#include <vector>

namespace strandbench {

struct ControlLimits {
    double centre = 0;
    double lower = 0;
    double upper = 0;
    [[nodiscard]] bool holds(double value) const { return value >= lower && value <= upper; } ///< on a limit: within
};

/// Individuals and moving ranges (6.3.2.2): centre the mean, limits 3 average moving ranges / 1.128 away; of the ranges
/// the upper limit is 3.267 average ranges.
struct IndividualsChart {
    std::vector<double> values;
    std::vector<double> movingRanges; ///< one less; between neighbours
    ControlLimits limits;
    ControlLimits rangeLimits;
    double sigma = 0; ///< average moving range / 1.128
};
/// values: at least two, in the order of time, all finite.
[[nodiscard]] Checked<IndividualsChart> individualsChart(const std::vector<double>& values);

/// What in a series is unlikely to be scatter (6.3.2, the Western Electric rules and the two trend rules).
enum class RunRule {
    BeyondThreeSigma,
    TwoOfThreeBeyondTwo, ///< on one side
    FourOfFiveBeyondOne, ///< on one side
    EightOnOneSide,
    SixTrending,         ///< each higher, or each lower, than the one before
    FourteenAlternating, ///< up and down by turns
};
template <> struct Codes<RunRule> {
    static constexpr std::array<std::pair<RunRule, const char*>, 6> table{{
        {RunRule::BeyondThreeSigma, "beyond_three_sigma"},
        {RunRule::TwoOfThreeBeyondTwo, "two_of_three_beyond_two"},
        {RunRule::FourOfFiveBeyondOne, "four_of_five_beyond_one"},
        {RunRule::EightOnOneSide, "eight_on_one_side"},
        {RunRule::SixTrending, "six_trending"},
        {RunRule::FourteenAlternating, "fourteen_alternating"},
    }};
};

struct RunSignal {
    RunRule rule = RunRule::BeyondThreeSigma;
    std::size_t at = 0; ///< the value that completes it
    bool operator==(const RunSignal&) const = default;
};
/// Every rule at every value that completes it, by value, then in the order of the rules. sigma: 0 or more; with 0 only
/// the rules without one are looked at.
[[nodiscard]] std::vector<RunSignal> runSignals(const std::vector<double>& values, double centre, double sigma);

/// Exponentially weighted moving average (6.3.2.4): each is weight x value + (1 - weight) x the one before, the first
/// target; limits width x sigma x sqrt(weight / (2 - weight)) about the target.
struct EwmaChart {
    std::vector<double> averages; ///< one more than the values: begins with the target
    ControlLimits limits;
};
/// weight: above 0, at most 1; 0.2 to 0.3 is usual. sigma: of the values, 0 or more.
[[nodiscard]] EwmaChart ewmaChart(const std::vector<double>& values, double target, double sigma, double weight = 0.3,
                                  double width = 3);

/// Shares of samples (6.3.3.2): centre all hits over all tried, limits 3 sqrt(p (1 - p) / n) about it, within 0 and 1,
/// for each sample by its own size.
struct ShareSample {
    int hits = 0;
    int tried = 0; ///< above 0
};
struct ShareChart {
    std::vector<double> shares;
    double centre = 0;
    std::vector<ControlLimits> limits; ///< one a sample
};
/// Faults: no sample, a sample of nothing, more hits than tried.
[[nodiscard]] Checked<ShareChart> shareChart(const std::vector<ShareSample>& samples);

} // namespace strandbench
