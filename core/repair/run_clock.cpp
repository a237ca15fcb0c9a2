// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/run_clock.h"

#include <algorithm>

namespace strandbench {
namespace {

/// Puts the face into a phase that was reached at `from` and lasts until `to`, both since the hardener.
void enter(ClockFace& face, Phase phase, Duration from, Duration to)
{
    const Duration since = face.sinceHardener;
    face.phase = phase;
    face.toNextPhase = std::max(Duration(to - since), seconds(0));
    const double whole = (to - from).value();
    face.phaseGone = Fraction::ofOne(whole > 0 ? std::clamp((since - from).value() / whole, 0.0, 1.0) : 1.0);
}

} // namespace

ClockFace clockOf(const BatchRun& run, const Assumptions& assumptions, const Instant& now)
{
    const BatchTimes& times = run.mixed.times;
    ClockFace face = readClock(times, assumptions, elapsed(run.hardenerIn, now));
    if (run.sands) {
        if (face.phase < Phase::Sand)
            enter(face, Phase::Sand, elapsed(run.hardenerIn, *run.sands), times.sand + times.easySanding);
        return face;
    }
    std::optional<Instant> off = run.edgesClear;
    if (run.panelGelled && (!off || run.panelGelled->utcMs < off->utcMs))
        off = run.panelGelled;
    if (off && face.phase < Phase::HandsOff)
        enter(face, Phase::HandsOff, elapsed(run.hardenerIn, *off), times.sand);
    return face;
}

} // namespace strandbench
