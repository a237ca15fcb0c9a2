// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/product.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace strandbench {

Belief priorOf(const ProductSheet& sheet, const LearningRules& rules)
{
    // The whole range is four spreads.
    const double stated = std::log(sheet.working.late / sheet.working.early) / 4.0;
    return {LogRate(), std::max(stated, rules.sheetAtLeast)};
}

std::optional<LotMean> meanOf(const LotLearnt& learnt, const std::vector<BatchTold>& batches)
{
    double sum = 0;
    int found = 0;
    for (std::size_t i = 0; i < batches.size(); ++i)
        if (learnt.lessons[i] == BatchLesson::Counted) {
            sum += batches[i].gel()->value();
            ++found;
        }
    if (found == 0 || learnt.different)
        return std::nullopt;
    return LotMean{LogRate::ofLogarithm(sum / found), found};
}

Belief priorOfNewLot(const Belief& sheet, const std::vector<LotMean>& others, const LearningRules& rules)
{
    // The sheet's range holds both: where the product's mean lies, and how its lots scatter about it.
    const double lot = std::min(rules.lot, sheet.spread * std::numbers::sqrt2 / 2.0);
    Belief product{sheet.mean, std::sqrt(sheet.spread * sheet.spread - lot * lot)};
    for (const LotMean& each : others)
        product = afterSeeing(product, each.mean, std::hypot(lot, rules.batch / std::sqrt(each.batches)));
    return ofTheNext(product, lot);
}

} // namespace strandbench
