// SPDX-License-Identifier: GPL-3.0-or-later
// Time on a practice panel: as fast as the shop's, or several times as fast.
#pragma once

#include "clock/clock.h"

#include <algorithm>
#include <array>

namespace strandbench {

class PacedTime {
public:
    static constexpr std::array<int, 3> paces{1, 5, 20};

    explicit PacedTime(const Clock& clock) : m_clock(&clock), m_since(clock.now()) {}
    /// From now on it is counted anew.
    void restart()
    {
        m_before = seconds(0);
        m_since = m_clock->now();
    }
    [[nodiscard]] Duration gone() const { return m_before + elapsed(m_since, m_clock->now()) * double(m_pace); }
    [[nodiscard]] int pace() const { return m_pace; }
    /// What is gone stays gone: only from now on it runs at the next pace, after the fastest at the shop's again.
    void nextPace()
    {
        m_before = gone();
        m_since = m_clock->now();
        const auto* const now = std::find(paces.begin(), paces.end(), m_pace);
        m_pace = now + 1 == paces.end() ? paces.front() : *(now + 1);
    }

private:
    const Clock* m_clock;
    Instant m_since;
    Duration m_before = seconds(0);
    int m_pace = paces.front();
};

} // namespace strandbench
