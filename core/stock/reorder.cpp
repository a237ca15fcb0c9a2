// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/reorder.h"

#include <algorithm>

namespace strandbench {

std::vector<ReorderLine> reorderLines(const StockLedger& ledger, const std::map<QString, Mass>& levels)
{
    std::map<QString, Mass> packages;
    for (const StockState* each : ledger.all()) {
        Mass& largest = packages[each->of.product];
        largest = std::max(largest, each->each);
    }
    std::vector<ReorderLine> lines;
    for (const auto& [product, package] : packages) {
        const auto set = levels.find(product);
        lines.push_back({product, ledger.usable(product), set == levels.end() ? package : set->second});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const ReorderLine& a, const ReorderLine& b) { return a.due() && !b.due(); });
    return lines;
}

} // namespace strandbench
