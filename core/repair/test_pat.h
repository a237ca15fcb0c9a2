// SPDX-License-Identifier: GPL-3.0-or-later
// A test pat of a lot: the smallest mix that a bead can be laid for, left on the board until it gels.
#pragma once

#include "learning/lot_belief.h"
#include "mix/mix.h"
#include "plan/cure_engine.h"
#include "repair/lot_book.h"

namespace strandbench {

/// Puddle and bead of a pat: smallestBeadMix().
[[nodiscard]] Mix patMix(const ProductSheet& sheet);

/// The act of putting a pat's hardener in, with when it is to gel in this air: by the sheet, as expected of the lot, at
/// its earliest and at its latest. The lot is named, its hardener's not empty; lotOfFiller may be.
[[nodiscard]] CureAnswer<PatMixed> patMixed(const ProductSheet& sheet, const QString& hardenerLot,
                                            const QString& lotOfFiller, Temperature air, const CureEngine& engine,
                                            const LotBelief& lot);

} // namespace strandbench
