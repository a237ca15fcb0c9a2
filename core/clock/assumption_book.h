// SPDX-License-Identifier: GPL-3.0-or-later
// The bench's assumptions, and those that held before a change: a batch that runs keeps the ones of its start.
#pragma once

#include "clock/clock.h"
#include "plan/assumptions.h"

#include <optional>
#include <vector>

namespace strandbench {

struct AssumptionBook {
    struct Earlier {
        qint64 untilUtcMs = 0;
        Assumptions assumptions;
    };
    Assumptions now;
    std::vector<Earlier> earlier; ///< oldest first

    /// Those that held at a moment, by the clock of the wall.
    [[nodiscard]] const Assumptions& at(const Instant& moment) const;
    /// From a moment on others hold. What held before is kept while a batch is running that began under it;
    /// oldestRunning is the 'hardener in' of the oldest such batch, empty when none runs.
    void change(const Assumptions& next, const Instant& moment, const std::optional<Instant>& oldestRunning);
};

} // namespace strandbench
