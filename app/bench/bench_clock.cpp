// SPDX-License-Identifier: GPL-3.0-or-later
// What the bench hears of time: alarms of its batches, jumps of its clocks.
#include "bench/bench.h"
#include "repair/restate.h"

namespace strandbench {

std::vector<DueAlarm> Bench::alarms() const
{
    const Instant now = m_parts.clock.now();
    std::vector<DueAlarm> due;
    for (const auto& [id, repair] : m_repairs)
        for (const BatchRun& run : repair.runs)
            if (const auto alarm = alarmOf(repair, run, assumptionsOf(run), now))
                due.push_back(*alarm);
    mostUrgentFirst(due);
    return due;
}

void Bench::watchClock()
{
    for (const ClockJumped& each : m_watch.look()) {
        const Instant now = m_parts.clock.now();
        m_newestJump = DatedJump{each, now};
        makeGood(each, now);
        if (!looksOnly()) // the copy that has the bench writes it
            write({benchSubject(), {}, each, now, {}}, [](const std::optional<LogFailure>& failure) {
                if (failure)
                    qWarning("a jump of the clock was not written: %s", qPrintable(failure->detail));
            });
    }
}

void Bench::makeGood(const ClockJumped& jump, const Instant& at)
{
    if (jump.kind == ClockJump::WallStepped)
        for (auto& [id, repair] : m_repairs)
            restate(repair, at, jump.by);
}

} // namespace strandbench
