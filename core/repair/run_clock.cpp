// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/run_clock.h"

#include <algorithm>

namespace strandbench {

ClockFace clockOf(const BatchRun& run, const Assumptions& assumptions, const Instant& now)
{
    const BatchTimes& times = earlyTimes(run);
    ClockFace face = readClock(times, assumptions, elapsed(run.hardenerIn, now));
    if (run.sands) {
        if (face.phase <= Phase::Sand)
            enter(face, {Phase::Sand, std::min(elapsed(run.hardenerIn, *run.sands), times.sand),
                         times.sand + times.easySanding});
        return face;
    }
    std::optional<Duration> off;
    for (const std::optional<Instant>& told : {run.edgesClear, run.panelGelled}) {
        if (told)
            off = std::min(off.value_or(times.gel), elapsed(run.hardenerIn, *told));
    }
    if (off && face.phase <= Phase::HandsOff)
        enter(face, {Phase::HandsOff, *off, times.sand});
    return face;
}

const BatchTimes& earlyTimes(const BatchRun& run) { return run.howSure() ? run.howSure()->early : run.times(); }

const BatchTimes& lateTimes(const BatchRun& run) { return run.howSure() ? run.howSure()->late : run.times(); }

std::vector<PhaseSpan> phasesOf(const BatchRun& run, const Assumptions& assumptions)
{
    return phasesOf(run.times(), earlyTimes(run), lateTimes(run), assumptions);
}

} // namespace strandbench
