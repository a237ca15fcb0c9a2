// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be reordered: products of which less may be used than the shop wants to have.
#pragma once

#include "stock/ledger.h"

namespace strandbench {

/// One product as it stands against the level below which it is reordered.
struct ReorderLine {
    QString product; ///< a sheet's id, or hardenerProduct
    Mass usable;     ///< over all its lots, as StockLedger::usable()
    Mass below;      ///< the level; 0: it is never reordered
    [[nodiscard]] bool due() const { return usable < below; }
    bool operator==(const ReorderLine&) const = default;
};

/// A line for each product that was ever on the shelf: those that are due first, then by product. levels: what the shop
/// has set; a product without a level of its own is reordered when less than one package is left, the largest that came
/// in of it (of one that was only ever counted: never).
[[nodiscard]] std::vector<ReorderLine> reorderLines(const StockLedger& ledger, const std::map<QString, Mass>& levels);

} // namespace strandbench
