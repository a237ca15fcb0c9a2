// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the machine's clocks went on as one, looked at again and again. A jump changes no running time (see
// elapsed()), but whoever looks at the clock of the wall is told, and across a restart the steps of that clock are made
// good.
#pragma once

#include "clock/clock.h"
#include "quantity/codes.h"

#include <optional>
#include <vector>

namespace strandbench {

enum class ClockJump {
    WallStepped,   ///< somebody, or the network, set the clock of the wall
    Slept,         ///< the machine was suspended
    OffsetChanged, ///< summer time, or another time zone
    Restarted,     ///< the machine was; the time between is known by the clock of the wall alone
};
template <> struct Codes<ClockJump> {
    static constexpr std::array<std::pair<ClockJump, const char*>, 4> table{{
        {ClockJump::WallStepped, "wall_stepped"},
        {ClockJump::Slept, "slept"},
        {ClockJump::OffsetChanged, "offset_changed"},
        {ClockJump::Restarted, "restarted"},
    }};
};

/// An event of the bench. What it means for batches told before it: restate() in repair/restate.h.
struct ClockJumped {
    ClockJump kind = ClockJump::WallStepped;
    Duration by; ///< forward above 0; below 0 of a restart: the clock of the wall stands behind what was written before
    bool operator==(const ClockJumped&) const = default;
}; // clock_jumped

/// The least step of the wall's clock that counts, and the least sleep. A wall that is slewed moves the boot clock with
/// it and never shows.
inline const Duration leastStep = seconds(0.5);
inline const Duration leastSleep = seconds(1);

class ClockWatch {
public:
    /// The clock must outlive the watch.
    explicit ClockWatch(const Clock& clock) : m_clock(clock) {}

    /// Where the looking goes on from: the newest event that was written before the program started.
    void goOnFrom(const Instant& lastKnown) { m_last = lastKnown; }
    /// What has jumped since the last look; the first look has nothing to compare with.
    [[nodiscard]] std::vector<ClockJumped> look();

private:
    const Clock& m_clock;
    std::optional<Instant> m_last;
    std::optional<Duration> m_asleep; ///< at the last look of this program
};

} // namespace strandbench
