// SPDX-License-Identifier: GPL-3.0-or-later
// An attempt beside the model answer, on one time axis.
#pragma once

#include "practice/model_answer.h"

namespace strandbench {

/// What was done from when to when, from the beginning of preparing. A moment has no length.
struct ReplayEntry {
    QString code; ///< a preparing step's; mix, spread, clear_edges, gel, sand, turn, coat, before_primer
    std::optional<int> lift;
    Duration start;
    Duration length;
    bool operator==(const ReplayEntry&) const = default;
};

struct Replay {
    std::vector<ReplayEntry> pupil;
    std::vector<ReplayEntry> model;
    Duration end; ///< of the later of the two
    bool operator==(const Replay&) const = default;
};

/// The work as it was attempted: steps take what the book has for them, mixing and spreading what the planner reckons
/// with, edges, sanding and primer come when the pupil had them. Gels are the engine's for the batch as it was mixed.
/// `hand` is what is right with the pupil's answers and filler; empty where either of the two stops.
[[nodiscard]] std::vector<ReplayEntry> replayOf(const Attempt& attempt, const ModelAnswer& hand,
                                                const PlanningSet& shop);

/// Both, the model answer being that of the panel's truth.
[[nodiscard]] Replay replayBeside(const Attempt& attempt, const ModelAnswer& hand, const ModelAnswer& truth,
                                  const PlanningSet& shop);

} // namespace strandbench
