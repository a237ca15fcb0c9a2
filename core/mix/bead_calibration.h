// SPDX-License-Identifier: GPL-3.0-or-later
// What a tube's nozzle lays at this bench: beads laid straight, measured and weighed.
#pragma once

#include "quantity/fault.h"
#include "quantity/quantity.h"

#include <vector>

namespace strandbench {

/// One bead: laid straight on the board, its length by the ruler, its mass by the scale.
struct LaidBead {
    Length length;
    Mass mass;
    bool operator==(const LaidBead&) const = default;
};

struct BeadCalibration {
    static constexpr std::size_t atLeast = 3; ///< beads

    LinearDensity mean; ///< of the beads, each for itself
    /// Standard deviation of one bead (divided by one less than their number) as a share of the mean: how far the next
    /// mix by the bead may be off its hardener.
    Fraction spread;
    bool operator==(const BeadCalibration&) const = default;
};

/// The most that beads may scatter to be of use (an assumption): a hardener share of 2 % laid by such a bead lies
/// within 1.6 to 2.4 % in about nineteen of twenty mixes.
[[nodiscard]] constexpr Fraction widestBeadSpread() { return Fraction::ofHundred(10); }

/// Faults, of every field at once: "beads" (OutOfRange: fewer than three, allowed 3, 20), "beads[1].length_mm" (20 to
/// 1000), "beads[1].mass_g" (0.05 to 100), "beads[1].mg_per_mm" (OutOfRange: 1 to 500 mg/mm, a slip between the two).
/// Lastly "spread_percent" (OutOfRange): they scatter too far, to be laid again.
[[nodiscard]] Checked<BeadCalibration> calibrateBead(const std::vector<LaidBead>& beads);

} // namespace strandbench
