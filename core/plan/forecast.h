// SPDX-License-Identifier: GPL-3.0-or-later
// A batch as it is about to be mixed, or was: with the hardener laid, in the air and on the panel of now, of the lot
// in the hand; and how sure that is.
#pragma once

#include "learning/lot_belief.h"
#include "plan/cure_engine.h"
#include "plan/how_sure.h"

namespace strandbench {

struct BatchForecast {
    BatchTimes times; ///< at the belief's mean
    Temperature peak;
    CureCase cureCase; ///< of the layer, at the belief's mean
    HowSure howSure;
};

/// What is known of a batch that is to be laid.
struct PlannedBatch {
    const Batch& batch;
    const CureCase& layer; ///< of the lift or coat that it belongs to: its thickness, and what it lies on
    const ProductSheet& sheet;
};

/// The batch with this reading and this share of hardener, as its lot is believed to cure. A share outside the
/// sheet's band is solved all the same; whether it may be used says judgeHardener().
[[nodiscard]] CureAnswer<BatchForecast> forecastBatch(const PlannedBatch& planned, const Reading& reading,
                                                      Fraction hardener, const CureEngine& engine,
                                                      const LotBelief& lot);

/// A layer and the puddle that it was laid from, both as the sheet has them.
struct BatchCases {
    CureCase layer;
    CureCase puddle;
};
/// What may come of a batch: the ends need not lie in the same air as the middle.
struct CasesInRange {
    BatchCases expected;
    BatchCases early;
    BatchCases late;
};
/// Solves a batch at the mean of its belief, at both ends of what of it is shown, and by the sheet. The belief is of
/// the batch itself, its own scatter included.
[[nodiscard]] CureAnswer<BatchForecast> solveForecast(const CasesInRange& bySheet, const ProductSheet& sheet,
                                                      const CureEngine& engine, const LotBelief& batch);

} // namespace strandbench
