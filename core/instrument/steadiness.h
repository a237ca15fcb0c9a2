// SPDX-License-Identifier: GPL-3.0-or-later
// When a reading may be taken over: it stands still, and it is of now.
#pragma once

#include "quantity/quantity.h"

#include <deque>
#include <optional>

namespace strandbench {

/// Of one value in the unit of the caller's choice. A reading counts once several one after another say the same: one
/// that lost a digit on the way, or came while the hand was still at the pot, stands alone.
class Steadiness {
public:
    static constexpr int atLeast = 3; ///< readings; an assumption
    /// They span at least this, so that three out of one gust do not count. An assumption.
    [[nodiscard]] static Duration span() { return seconds(1); }
    /// After this without a reading the newest is of another time. An assumption.
    [[nodiscard]] static Duration stale() { return seconds(3); }

    /// within: how far apart they may be and still say the same; 0 or more.
    explicit Steadiness(double within) : m_within(within) {}

    /// steady: what the instrument says of itself; false begins anew. now: of a clock that never goes back.
    void take(double value, std::optional<bool> steady, Duration now);
    void restart() { m_taken.clear(); }
    [[nodiscard]] std::optional<double> newest(Duration now) const; ///< live; nothing once it is stale
    [[nodiscard]] std::optional<double> steady(Duration now) const; ///< the newest, when it may be taken over

private:
    struct Taken {
        double value;
        Duration at;
        bool counts;
    };
    double m_within;
    std::deque<Taken> m_taken; ///< all that agree with the newest and each other, and are not too old
};

} // namespace strandbench
