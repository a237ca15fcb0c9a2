// SPDX-License-Identifier: GPL-3.0-or-later
// What repairs tell of the lots that went into them: the gels and 'it sands' of each batch, lot by lot.
#pragma once

#include "learning/lot.h"
#include "repair/repair.h"

#include <map>
#include <tuple>

namespace strandbench {

/// What learns together: a product's sheet and the hardener's lot.
struct LotOfProduct {
    QString sheetId;
    QString hardenerLot; ///< never empty: of a lot that nobody told nothing is learnt
    bool operator==(const LotOfProduct&) const = default;
    bool operator<(const LotOfProduct& other) const
    {
        return std::tie(sheetId, hardenerLot) < std::tie(other.sheetId, other.hardenerLot);
    }
};

/// One batch of a lot.
struct BatchOfLot {
    QUuid repair;
    BatchRef batch;
    Instant hardenerIn;
    BatchTimes predicted; ///< by the sheet, for this batch
    BatchTold told;       ///< empty in all where the technician told nothing
};

/// The batches of each lot, oldest first by the clock of the wall. A batch without a hardener lot is left out; a gel
/// that was told at once, or in the very moment, tells nothing.
[[nodiscard]] std::map<LotOfProduct, std::vector<BatchOfLot>> lotsToldBy(const std::vector<Repair>& repairs);

/// What was told alone, in the same order: as learnLot() takes it.
[[nodiscard]] std::vector<BatchTold> toldOf(const std::vector<BatchOfLot>& batches);

} // namespace strandbench
