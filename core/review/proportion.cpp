// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/proportion.h"

#include <boost/math/distributions/binomial.hpp>

namespace strandbench {

ProportionInterval proportionInterval(int hits, int tried, Fraction confidence)
{
    using Binomial = boost::math::binomial_distribution<>;
    const double side = (1 - confidence.value()) / 2;
    const auto by = Binomial::jeffreys_prior_interval;
    return {Fraction::ofOne(hits == 0 ? 0 : Binomial::find_lower_bound_on_p(tried, hits, side, by)),
            Fraction::ofOne(hits == tried ? 1 : Binomial::find_upper_bound_on_p(tried, hits, side, by))};
}

} // namespace strandbench
