// SPDX-License-Identifier: GPL-3.0-or-later
// Rates of a reaction, typed like every other quantity.
#pragma once

#include "quantity/quantity.h"

#include <boost/units/systems/si/frequency.hpp>

namespace strandbench {

/// Shares per second: a rate constant of the cure law.
using Rate = boost::units::quantity<si::frequency>;

[[nodiscard]] inline Rate perSecond(double v) { return v * si::hertz; }
[[nodiscard]] inline double inPerSecond(Rate q) { return q.value(); }

} // namespace strandbench
