// SPDX-License-Identifier: GPL-3.0-or-later
// A batch as it is about to be mixed, or was: with the hardener laid, in the air and on the panel of now.
#pragma once

#include "plan/cure_engine.h"

namespace strandbench {

struct BatchForecast {
    BatchTimes times;
    Temperature peak;
    CureCase cureCase; ///< of the layer
};

/// What is known of a planned batch.
struct PlannedBatch {
    const Batch& batch;
    const CureCase& layer; ///< of the lift or coat that it belongs to
    const ProductSheet& sheet;
};

/// The planned batch with this reading and this share of hardener. A share outside the sheet's band is solved all
/// the same; whether it may be used says judgeHardener().
[[nodiscard]] CureAnswer<BatchForecast> forecastBatch(const PlannedBatch& planned, const Reading& reading,
                                                      Fraction hardener, const CureEngine& engine);

} // namespace strandbench
