// SPDX-License-Identifier: GPL-3.0-or-later
// How sure a batch's times are, and what that stands on.
#pragma once

#include "learning/belief.h"
#include "plan/repair_plan.h"

namespace strandbench {

struct HowSure {
    BatchTimes sheet;    ///< by the sheet alone, for this batch: what its gels are held against
    BatchTimes early;    ///< at the fast end of the belief: what must not be late goes by it
    BatchTimes late;     ///< at its slow end: what must not be early goes by it
    Temperature hottest; ///< the highest peak of middle and ends
    Belief rate;         ///< of this batch, its own scatter included
    int batches = 0;     ///< of its lot that it was learnt from; 0: from the sheet
    int otherLots = 0;   ///< and of its product's other lots
    bool operator==(const HowSure&) const = default;
};

} // namespace strandbench
