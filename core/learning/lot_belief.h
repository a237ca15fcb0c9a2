// SPDX-License-Identifier: GPL-3.0-or-later
// What is believed of a lot, and what that was made from.
#pragma once

#include "learning/belief.h"

namespace strandbench {

struct LotBelief {
    Belief rate;       ///< of the lot, against its sheet
    int batches = 0;   ///< of this lot that are in it; 0: nothing was seen of it yet
    int otherLots = 0; ///< of the same product that its prior was made from, beside the sheet
    bool operator==(const LotBelief&) const = default;
};

} // namespace strandbench
