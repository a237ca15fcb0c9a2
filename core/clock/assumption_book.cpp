// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/assumption_book.h"

#include <algorithm>

namespace strandbench {

const Assumptions& AssumptionBook::at(const Instant& moment) const
{
    for (const Earlier& each : earlier)
        if (moment.utcMs < each.untilUtcMs)
            return each.assumptions;
    return now;
}

void AssumptionBook::change(const Assumptions& next, const Instant& moment, const std::optional<Instant>& oldestRunning)
{
    // The clock of the wall may have been put back: the list stays in order all the same.
    const qint64 before = earlier.empty() ? moment.utcMs : std::max(earlier.back().untilUtcMs, moment.utcMs);
    earlier.push_back({before, now});
    std::erase_if(earlier,
                  [&](const Earlier& each) { return !oldestRunning || each.untilUtcMs <= oldestRunning->utcMs; });
    now = next;
}

} // namespace strandbench
