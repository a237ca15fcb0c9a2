// SPDX-License-Identifier: GPL-3.0-or-later
// The phases of a running batch and the next act that is due.
#pragma once

#include "plan/assumptions.h"
#include "plan/repair_plan.h"

#include <vector>

namespace strandbench {

enum class Phase { Knead, Spread, ClearEdges, HandsOff, Sand, Harder };
template <> struct Codes<Phase> {
    static constexpr std::array<std::pair<Phase, const char*>, 6> table{{
        {Phase::Knead, "knead"},
        {Phase::Spread, "spread"},
        {Phase::ClearEdges, "clear_edges"},
        {Phase::HandsOff, "hands_off"},
        {Phase::Sand, "sand"},
        {Phase::Harder, "harder"},
    }};
};

struct PhaseSpan {
    Phase phase = Phase::Knead;
    Duration from;
    Duration to;
    Duration toEarly = to; ///< when it may end at the earliest
    Duration toLate = to;  ///< and at the latest
    bool operator==(const PhaseSpan&) const = default;
};

/// The phases of a batch from 'hardener in', without gaps: knead, spread until the edges' time (a share of
/// the layer's gel), clear edges until gel, hands off until it sands, sand while it sands easily, harder.
/// A phase that has no time in it is left out. The last ends where the ribbon is drawn to.
[[nodiscard]] std::vector<PhaseSpan> phasesOf(const BatchTimes& times, const Assumptions& assumptions);
/// The same with what each end may come to.
[[nodiscard]] std::vector<PhaseSpan> phasesOf(const BatchTimes& times, const BatchTimes& early, const BatchTimes& late,
                                              const Assumptions& assumptions);

/// The times by which a clock counts: its early ends. Edges and gel must not be met late; and from the early end on it
/// may be tested whether it sands. What it must not be too early for, goes by the late ends: see alarmsOf().
struct ActTimes {
    Duration edges;     ///< to be clear: by the early end
    Duration gel;       ///< by the early end
    Duration sandFrom;  ///< it sands: by the late end
    Duration sandUntil; ///< it sands easily: by the early end, but not before it sands
    bool operator==(const ActTimes&) const = default;
};
/// When a person is to be called for each act of a batch.
[[nodiscard]] ActTimes alarmsOf(const BatchTimes& early, const BatchTimes& late, const Assumptions& assumptions);

/// What a clock shows at one moment.
struct ClockFace {
    Phase phase = Phase::Knead;
    Duration sinceHardener;
    Duration toNextPhase; ///< 0 in the last phase
    Duration boardSetsIn; ///< 0 when it has
    Fraction phaseGone;   ///< of the present phase
    bool operator==(const ClockFace&) const = default;
};

/// Puts the face into a phase: what is left of it and gone, by face.sinceHardener. A phase without time is over.
void enter(ClockFace& face, const PhaseSpan& span);

[[nodiscard]] ClockFace readClock(const BatchTimes& times, const Assumptions& assumptions, Duration sinceHardener);

} // namespace strandbench
