// SPDX-License-Identifier: GPL-3.0-or-later
// One pair of hands: when running batches need it, whether two acts fall together, and how long to hold a batch
// back so that they do not.
//
// The rule (ours, with no source; what binds the hands is common practice):
// - Kneading and spreading bind the hands from 'hardener in': kneading, then filler mass / spreading rate, at the
//   longest until the edges are due.
// - Clearing the edges binds them from edgesAtGel of the layer's gel time until it gels. Neither may be late.
// - Sanding binds them for sandLift in one go (dust and wet filler do not mix, so it is not laid down half done), at
//   any moment within the time in which it sands easily. It may shift within that time; where the time is shorter
//   than sandLift, the time counts. A lift laid in several batches is sanded once, by its last batch's times.
// - What was told goes before what was planned: edges that are clear, or a layer that gelled, bind nothing more; a
//   sanding that has begun ends sandLift after 'it sands'. What is past its time binds nothing more either: nothing
//   is saved by holding another batch back for it.
// - Two acts that may not be late collide when they overlap. A sanding collides when no order of all sandings leaves
//   each its place between those acts. The second kind is the softer one: sanded later it is only harder work.
#pragma once

#include "plan/assumptions.h"
#include "repair/repair.h"

namespace strandbench {

enum class HandAct { Spread, Edges, Sand };
template <> struct Codes<HandAct> {
    static constexpr std::array<std::pair<HandAct, const char*>, 3> table{
        {{HandAct::Spread, "spread"}, {HandAct::Edges, "edges"}, {HandAct::Sand, "sand"}}};
};

/// An act and when it may be done, from now on. It takes all of from..to, a sanding `takes` anywhere within.
struct HandSpan {
    HandAct act = HandAct::Spread;
    Duration from;
    Duration to;
    Duration takes;
    bool operator==(const HandSpan&) const = default;
};

/// What one batch still needs hands for.
struct HandsOf {
    QUuid repair;
    BatchRef batch;
    std::vector<HandSpan> acts; ///< by time
};

/// What a batch asks for from the moment its hardener goes in.
[[nodiscard]] std::vector<HandSpan> handActs(Mass filler, const BatchTimes& times, const Assumptions& assumptions);
/// What a running batch still asks for, counted from now.
[[nodiscard]] HandsOf handsOf(const QUuid& repair, const BatchRun& run, const Assumptions& assumptions,
                              const Instant& now);
/// What every running batch of a repair still asks for; only the last of a lift is sanded.
[[nodiscard]] std::vector<HandsOf> handsOf(const Repair& repair, const Assumptions& assumptions, const Instant& now);

/// One side of a collision.
struct HandsNeeded {
    QUuid repair;
    BatchRef batch;
    HandSpan span;
};
/// Two acts for one pair of hands.
struct HandsCollide {
    HandsNeeded first;  ///< what must not wait: what runs before what is not mixed yet, else what ends first; a
                        ///< sanding never before another act
    HandsNeeded second; ///< what has to give way
    Duration at;        ///< from now until both are due
    /// hands_edges, hands_spread or hands_sand by what has to give way or, softer, only be sanded later; arguments:
    /// the code of the first act, the time until it is due.
    [[nodiscard]] Reason reason() const;
    [[nodiscard]] bool soft() const { return second.span.act == HandAct::Sand; }
};

/// A batch that would collide when it is mixed now.
struct HoldBack {
    HandsCollide collision; ///< the first that mixing now brings; one that may not be late before a soft one
    Duration delay;         ///< the least, in whole seconds, that frees the hands of all
};

/// Judges mixing a batch now beside what runs. Collisions that are there without it are not its fault and are left
/// out: what they push out of its time binds nothing. Empty: mix.
[[nodiscard]] std::optional<HoldBack> judgeHands(const std::vector<HandsOf>& running, const HandsOf& next);
/// The next moment at which what runs already needs two pairs of hands.
[[nodiscard]] std::optional<HandsCollide> nextCollision(const std::vector<HandsOf>& running);

} // namespace strandbench
