// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/clock_watch.h"

#include <cmath>

namespace strandbench {
namespace {

Duration fromMs(qint64 ms) { return seconds(static_cast<double>(ms) / 1e3); }

bool sameBoot(const Instant& a, const Instant& b) { return !a.bootId.isEmpty() && a.bootId == b.bootId; }

bool atLeast(Duration by, Duration least) { return std::abs(inSeconds(by)) >= inSeconds(least); }

} // namespace

std::vector<ClockJumped> ClockWatch::look()
{
    const Instant now = m_clock.now();
    const Duration asleep = m_clock.asleep();
    std::vector<ClockJumped> jumps;
    if (m_last && !sameBoot(*m_last, now))
        jumps.push_back({ClockJump::Restarted, fromMs(now.utcMs - m_last->utcMs)});
    if (m_last && sameBoot(*m_last, now)) {
        const Duration wall = fromMs(now.utcMs - m_last->utcMs - (now.boottimeMs - m_last->boottimeMs));
        if (atLeast(wall, leastStep))
            jumps.push_back({ClockJump::WallStepped, wall});
        if (m_asleep && asleep - *m_asleep >= leastSleep)
            jumps.push_back({ClockJump::Slept, asleep - *m_asleep});
    }
    if (m_last && m_last->utcOffsetSeconds != now.utcOffsetSeconds)
        jumps.push_back(
            {ClockJump::OffsetChanged, seconds(static_cast<double>(now.utcOffsetSeconds - m_last->utcOffsetSeconds))});
    m_last = now;
    m_asleep = asleep;
    return jumps;
}

} // namespace strandbench
