// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/belief.h"

#include <boost/math/distributions/normal.hpp>

namespace strandbench {
namespace {

double squared(double value) { return value * value; }

} // namespace

Belief afterSeeing(const Belief& before, LogRate seen, double spread)
{
    const double known = 1.0 / squared(before.spread);
    const double fresh = 1.0 / squared(spread);
    const double mean = (known * before.mean.value() + fresh * seen.value()) / (known + fresh);
    return {LogRate::ofLogarithm(mean), 1.0 / std::sqrt(known + fresh)};
}

Belief afterSeeingAtLeast(const Belief& before, LogRate least, double spread)
{
    const boost::math::normal standard;
    const double variance = squared(before.spread);
    const double all = variance + squared(spread);
    const double z = (before.mean.value() - least.value()) / std::sqrt(all);
    const double steepness = pdf(standard, z) / cdf(standard, z);
    const double mean = before.mean.value() + variance * steepness / std::sqrt(all);
    return {LogRate::ofLogarithm(mean), std::sqrt(variance - squared(variance) * steepness * (steepness + z) / all)};
}

Belief ofTheNext(const Belief& truth, double spread) { return {truth.mean, std::hypot(truth.spread, spread)}; }

LogRateRange middleOf(const Belief& belief, Fraction share)
{
    const boost::math::normal spread(belief.mean.value(), belief.spread);
    const double tail = (1.0 - share.value()) / 2.0;
    return {LogRate::ofLogarithm(quantile(spread, tail)), LogRate::ofLogarithm(quantile(complement(spread, tail)))};
}

} // namespace strandbench
