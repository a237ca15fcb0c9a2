// SPDX-License-Identifier: GPL-3.0-or-later
// What a supervisor looks at first.
#pragma once

#include "review/deviations.h"

namespace strandbench {

/// How much a deviation says about the repair itself. The order is ours; there is no source.
enum class Weight {
    First,  ///< the bond, the cure or a stop: the repair may not hold
    Look,   ///< a limit or a clock that may have mattered
    Record, ///< the record alone is poorer for it
};
template <> struct Codes<Weight> {
    static constexpr std::array<std::pair<Weight, const char*>, 3> table{
        {{Weight::First, "first"}, {Weight::Look, "look"}, {Weight::Record, "record"}}};
};

[[nodiscard]] Weight weightOf(DeviationKind kind);

/// The heavier before the lighter, otherwise as they stand.
void sortByWeight(std::vector<DeviationKind>& kinds);

/// True when the first needs eyes before the second: it has more of the first weight, or as many and more of the next.
[[nodiscard]] bool needsEyesBefore(const std::vector<DeviationKind>& one, const std::vector<DeviationKind>& other);

} // namespace strandbench
