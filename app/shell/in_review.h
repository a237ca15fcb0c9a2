// SPDX-License-Identifier: GPL-3.0-or-later
// What the window keeps while a day is looked through.
#pragma once

#include "screens/record/day_review_screen.h"

namespace strandbench {

struct InReview {
    ReviewWish wish;
    std::vector<RepairDigest> read; ///< all of the day that is shown
    NarrowBy by = NarrowBy::Nothing;
    QString ownBench; ///< this bench's origin; empty until it was read
};

} // namespace strandbench
