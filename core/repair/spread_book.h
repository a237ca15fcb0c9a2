// SPDX-License-Identifier: GPL-3.0-or-later
// How fast each person spreads, from what the log holds: filler over the time from the end of kneading to clear edges.
#pragma once

#include "repair/event.h"

#include <map>

namespace strandbench {

struct SpreadLearnt {
    static constexpr std::size_t atLeast = 5; ///< batches before anything is said; an assumption
    static constexpr std::size_t newest = 12; ///< batches that count; an assumption

    MassRate rate;    ///< the median: one batch that was left lying changes it little
    MassRate slowest; ///< of those that count
    MassRate quickest;
    std::size_t batches = 0;
    bool operator==(const SpreadLearnt&) const = default;
};

class SpreadBook {
public:
    /// Takes in one more event; most are none of its business.
    void add(const Event& event);
    /// Of the newest batches whose edges this person told clear, each at least a second beyond the kneading and between
    /// slowestSpread() and quickestSpread(): a tap at once, or one that was forgotten, tells nothing. Empty while there
    /// are too few, and of nobody.
    [[nodiscard]] std::optional<SpreadLearnt> of(const QString& person, Duration kneading) const;

private:
    struct Batch {
        Mass filler;
        Instant hardenerIn;
    };
    struct Spread {
        Mass filler;
        Duration toClear;
        Instant at;
    };
    std::map<std::pair<QUuid, BatchRef>, Batch> m_wet;
    std::map<QString, std::vector<Spread>> m_spread; ///< by person, in the order told
};

/// What the assumption may be changed to (plan/assumption_table): beyond it a rate is not believed.
[[nodiscard]] MassRate slowestSpread();
[[nodiscard]] MassRate quickestSpread();

} // namespace strandbench
