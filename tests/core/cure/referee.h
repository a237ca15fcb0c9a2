// SPDX-License-Identifier: GPL-3.0-or-later
// The cure equations once more, written down plainly: spectral elements through the thickness, and in time the
// msbdf method of the GNU Scientific Library with an exact Jacobian.
#pragma once

#include "cure/cure_case.h"

#include <optional>

namespace strandbench::test {

struct Verdict {
    std::optional<double> gel; ///< s
    std::optional<double> sand;
    double peak = 0.0;         ///< K
    double hottestAtEnd = 0.0; ///< K
    int unknowns = 0;
    int steps = 0;
};

/// With so many elements in the fresh layer. Air of one temperature only. Throws when the library gives up.
[[nodiscard]] Verdict judge(const CureCase& cureCase, int elements, double tolerance = 1e-8);

/// With ever more elements until twice in a row the next finer verdict moves by no more than a fifth of what the
/// engine is allowed.
/// Throws when that does not come about.
[[nodiscard]] Verdict convergedVerdict(const CureCase& cureCase);

/// What the engine's peak is allowed to be off: 0.5 K, or 1 % of the rise above the lowest starting temperature.
[[nodiscard]] double allowedAtPeak(const CureCase& cureCase, double peak);

} // namespace strandbench::test
