// SPDX-License-Identifier: GPL-3.0-or-later
// The room that the bench stands in, as it is assumed: its air, how often that is changed, and what a wipe gives off.
#pragma once

#include "quantity/quantity.h"
#include "quantity/rate.h"

namespace strandbench {

/// Air changes are of fresh air.
[[nodiscard]] inline Rate changesPerHour(double v) { return perSecond(v / 3600.0); }
[[nodiscard]] inline double inChangesPerHour(Rate q) { return inPerSecond(q) * 3600.0; }

[[nodiscard]] inline Volume cubicMetres(double v) { return v * si::cubic_metre; }
[[nodiscard]] inline double inCubicMetres(Volume q) { return q.value(); }

/// Ours, with no source: every shop's own figures take their place.
struct ShopRoom {
    Volume air = cubicMetres(200);    ///< that the vapours mix with; above 0
    Rate changes = changesPerHour(2); ///< 0 or more; doors shut, no extraction
    Mass wipe = grams(15);            ///< of solvent that one wiping down takes, all of which is given off
    Duration wipeGone = minutes(10);  ///< until it is given off; above 0
};

} // namespace strandbench
