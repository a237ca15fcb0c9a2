// SPDX-License-Identifier: GPL-3.0-or-later
// What the batches that are still to be mixed take off the shelf.
#pragma once

#include "repair/mixing.h"
#include "repair/stock_book.h"

namespace strandbench {

/// The batches of a plan that are not mixed yet, fibre filler first. repair: what was done of the plan; of another, or
/// of none, everything is still to be mixed.
[[nodiscard]] std::vector<BatchRef> stillToMix(const Repair& repair, const RepairPlan& plan);

/// The sheet whose months count for a lot: its own; of hardener, which stands with every filler, the one that lets it
/// stand open for the shortest time. Null when none is loaded.
[[nodiscard]] const ProductSheet* sheetOfStock(const StockLot& lot, const Catalogue& catalogue);

/// One need for each product, in the order of the batches, the hardener last. lotsInHand: by product, those that are
/// open at the bench; of a product without one the lot is taken that is next on the shelf, and a product of which there
/// is neither is left out.
[[nodiscard]] std::vector<StockNeed> stockNeedsOf(const RepairPlan& plan, const std::vector<BatchInHand>& toMix,
                                                  const std::map<QString, QString>& lotsInHand,
                                                  const Catalogue& catalogue, const StockBook& stock);

} // namespace strandbench
