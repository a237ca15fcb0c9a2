// SPDX-License-Identifier: GPL-3.0-or-later
// A share that was counted, and how far the true one may be from it.
#pragma once

#include "quantity/quantity.h"

namespace strandbench {

struct ProportionInterval {
    Fraction low;
    Fraction high;
};

/// The interval that holds the true share with this confidence, equal on both sides: Jeffreys', as Boost.Math's
/// binomial distribution gives it; closed with 0 where there is no hit and with 1 where all are (Brown, Cai and
/// DasGupta, Statistical Science 16 (2001) 101). hits: 0 to tried; tried: above 0; confidence: between 0 and 1.
[[nodiscard]] ProportionInterval proportionInterval(int hits, int tried, Fraction confidence);

} // namespace strandbench
