// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/review_ask.h"

namespace strandbench {

ReviewAsk reviewAskOf(const Bench& bench)
{
    const DeviationLimits limits = limitsFrom(bench.assumptions());
    const auto catalogue = std::make_shared<const Catalogue>(bench.planning().catalogue);
    ReviewAsk ask;
    ask.mark = digestMark(*catalogue, limits);
    ask.digest = [catalogue, limits](const std::vector<Event>& events) { return digestOf(events, *catalogue, limits); };
    return ask;
}

} // namespace strandbench
