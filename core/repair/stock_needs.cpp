// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/stock_needs.h"

#include <algorithm>

namespace strandbench {
namespace {

/// The lot of a product that is taken; empty when none is known.
QString lotOf(const QString& product, const std::map<QString, QString>& inHand, const StockLedger& ledger)
{
    const auto told = inHand.find(product);
    if (told != inHand.end() && !told->second.isEmpty())
        return told->second;
    const StockState* next = ledger.nextOf(product);
    return next ? next->of.lot : QString();
}

} // namespace

std::vector<BatchRef> stillToMix(const Repair& repair, const RepairPlan& plan)
{
    const bool ofThis = repair.plan && *repair.plan == plan;
    std::vector<BatchRef> left;
    for (const bool finishing : {false, true}) {
        const int count = static_cast<int>(finishing ? plan.finish.batches.size() : plan.batches.size());
        for (int i = 0; i < count; ++i)
            if (const BatchRef ref{finishing, i}; !ofThis || !repair.run(ref))
                left.push_back(ref);
    }
    return left;
}

const ProductSheet* sheetOfStock(const StockLot& lot, const Catalogue& catalogue)
{
    if (lot.product != hardenerProduct)
        return catalogue.byId(lot.product);
    const auto& sheets = catalogue.sheets();
    const auto strictest =
        std::min_element(sheets.begin(), sheets.end(), [](const ProductSheet& a, const ProductSheet& b) {
            return std::pair(a.monthsOpened, a.monthsSealed) < std::pair(b.monthsOpened, b.monthsSealed);
        });
    return strictest == sheets.end() ? nullptr : &*strictest;
}

std::vector<StockNeed> stockNeedsOf(const RepairPlan& plan, const std::vector<BatchInHand>& toMix,
                                    const std::map<QString, QString>& lotsInHand, const Catalogue& catalogue,
                                    const StockBook& stock)
{
    std::vector<std::pair<QString, Mass>> amounts;
    const auto take = [&](const QString& product, Mass amount) {
        const auto same =
            std::find_if(amounts.begin(), amounts.end(), [&](const auto& each) { return each.first == product; });
        if (same == amounts.end())
            amounts.emplace_back(product, amount);
        else
            same->second += amount;
    };
    Mass hardener = grams(0);
    for (const BatchInHand& each : toMix) {
        take(each.sheet ? each.sheet->id : sheetIdOf(plan, each.ref), each.batch.mix.filler);
        hardener += each.batch.mix.hardener;
    }
    if (!toMix.empty())
        amounts.emplace_back(hardenerProduct, hardener);
    std::vector<StockNeed> needs;
    for (const auto& [product, amount] : amounts) {
        const StockLot lot{product, lotOf(product, lotsInHand, stock.ledger())};
        if (!lot.lot.isEmpty())
            needs.push_back({lot, amount, sheetOfStock(lot, catalogue), stock.tried(lot)});
    }
    return needs;
}

} // namespace strandbench
