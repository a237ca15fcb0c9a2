// SPDX-License-Identifier: GPL-3.0-or-later
// What the batches of one lot teach: each is counted, held or left with its reason.
#pragma once

#include "learning/belief.h"
#include "learning/learning_rules.h"

#include <vector>

namespace strandbench {

/// What was told of one batch, as log rates against the sheet's own prediction for that batch.
struct BatchTold {
    std::optional<LogRate> board;   ///< from the gel on the mixing board
    std::optional<LogRate> panel;   ///< from the gel on the panel
    std::optional<LogRate> sandsBy; ///< from 'it sands', which says that it sands by then, not since when

    /// The gel of the batch: of both places their mean, for they share one bead and one temperature.
    [[nodiscard]] std::optional<LogRate> gel() const;
};

enum class BatchLesson {
    Silent,  ///< nothing was told that teaches
    Counted, ///< its gel is in the belief
    Bound,   ///< only 'it sands' was told: it bounds the belief from below
    Held,    ///< outside the gate: it moves nothing unless the belief comes to meet it
    Before,  ///< counted once; since then the lot has shown itself to be different
};

struct LotLearnt {
    Belief rate;                      ///< of the lot
    std::vector<BatchLesson> lessons; ///< one a batch, in their order
    int counted = 0;                  ///< batches in the belief, bounds included
    bool different = false;           ///< the gate was opened anew: the lot is not what its prior said
};

/// Learns from the batches of a lot, oldest first.
[[nodiscard]] LotLearnt learnLot(const Belief& prior, const std::vector<BatchTold>& batches,
                                 const LearningRules& rules = {});

} // namespace strandbench
