// SPDX-License-Identifier: GPL-3.0-or-later
// A cure with how sure it is: solved at the belief's middle and at both ends.
#pragma once

#include "cure/solve.h"
#include "learning/belief.h"

namespace strandbench {

/// One end of what a batch may do.
struct CureMarks {
    std::optional<Duration> gel;
    std::optional<Duration> sand;
    Temperature peak;
    bool operator==(const CureMarks&) const = default;
};

struct CureRange {
    CureResult expected; ///< at the belief's mean
    CureMarks early;     ///< at its fast end: gel and sand come first
    CureMarks late;
    Temperature hottest; ///< the highest peak of the three: of a thick layer it can be the slow end's
};

/// The same case with its reaction so much faster; heat, stack and air stay.
[[nodiscard]] CureCase atRate(const CureCase& sheet, LogRate rate);

/// Solves the case of a batch as the sheet has it at the mean and at both ends of this share of the belief, which is of
/// the batch itself, its own scatter included. The difficulty of whichever of the three has one.
[[nodiscard]] tl::expected<CureRange, CureDifficulty> predictCure(const CureCase& sheet, const Belief& batch,
                                                                  Fraction share, const CureFineness& fineness = {});

} // namespace strandbench
