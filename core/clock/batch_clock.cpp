// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/batch_clock.h"

#include <algorithm>

namespace strandbench {
namespace {

/// How much of 'harder' the ribbon draws, as a share of everything before it: ours, a matter of looks.
constexpr double harderShare = 0.15;

} // namespace

std::vector<PhaseSpan> phasesOf(const BatchTimes& times, const Assumptions& assumptions)
{
    const Duration edges = times.gel * assumptions.edgesAtGel.value();
    const Duration easyUntil = times.sand + times.easySanding;
    std::vector<PhaseSpan> spans;
    Duration at = seconds(0);
    const auto until = [&](Phase phase, Duration end) {
        if (end <= at)
            return;
        spans.push_back({phase, at, end, end, end});
        at = end;
    };
    until(Phase::Knead, std::min(assumptions.kneading, edges));
    until(Phase::Spread, edges);
    until(Phase::ClearEdges, times.gel);
    until(Phase::HandsOff, times.sand);
    until(Phase::Sand, easyUntil);
    until(Phase::Harder, easyUntil * (1.0 + harderShare));
    return spans;
}

std::vector<PhaseSpan> phasesOf(const BatchTimes& times, const BatchTimes& early, const BatchTimes& late,
                                const Assumptions& assumptions)
{
    std::vector<PhaseSpan> spans = phasesOf(times, assumptions);
    const auto endIn = [](const std::vector<PhaseSpan>& all, const PhaseSpan& span) {
        const auto same = std::ranges::find(all, span.phase, &PhaseSpan::phase);
        return same == all.end() ? span.to : same->to;
    };
    const std::vector<PhaseSpan> first = phasesOf(early, assumptions);
    const std::vector<PhaseSpan> last = phasesOf(late, assumptions);
    for (PhaseSpan& each : spans) {
        each.toEarly = std::min(each.to, endIn(first, each));
        each.toLate = std::max(each.to, endIn(last, each));
    }
    return spans;
}

ActTimes alarmsOf(const BatchTimes& early, const BatchTimes& late, const Assumptions& assumptions)
{
    return {early.gel * assumptions.edgesAtGel.value(), early.gel, late.sand,
            std::max(late.sand, Duration(early.sand + early.easySanding))};
}

void enter(ClockFace& face, const PhaseSpan& span)
{
    const Duration since = face.sinceHardener;
    const double whole = (span.to - span.from).value();
    face.phase = span.phase;
    face.toNextPhase = std::max(Duration(span.to - since), seconds(0));
    face.phaseGone = Fraction::ofOne(whole > 0 ? std::clamp((since - span.from).value() / whole, 0.0, 1.0) : 1.0);
}

ClockFace readClock(const BatchTimes& times, const Assumptions& assumptions, Duration sinceHardener)
{
    const std::vector<PhaseSpan> spans = phasesOf(times, assumptions);
    ClockFace face;
    face.sinceHardener = sinceHardener;
    face.boardSetsIn = std::max(Duration(times.boardGel - sinceHardener), seconds(0));
    face.phase = Phase::Harder;
    face.toNextPhase = seconds(0);
    face.phaseGone = Fraction::ofOne(1);
    for (const PhaseSpan& each : spans) {
        if (each.phase == Phase::Harder || sinceHardener >= each.to)
            continue;
        enter(face, each);
        break;
    }
    return face;
}

} // namespace strandbench
