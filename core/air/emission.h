// SPDX-License-Identifier: GPL-3.0-or-later
// How much of its styrene a filler gives off.
#pragma once

#include "quantity/quantity.h"

namespace strandbench {

/// What is spread, as 40 CFR 63, Subpart VVVV, Table 3 has it for open moulding.
enum class Spreading {
    Resin,   ///< applied without a spray, worked in and covered: 0.014 H^2.275
    GelCoat, ///< a thin film in the open air: 0.445 H^1.675
};

/// Styrene given off as a share of the mass that is spread. H, its share by mass, is above 0 and at most 0.6, which is
/// beyond any filler; the table that the tests hold it to ends at 0.48. Throws std::logic_error outside. No figure for
/// putty was found: the truth is taken to lie between the two.
[[nodiscard]] Fraction styreneGivenOff(Spreading spreading, Fraction styrene);

} // namespace strandbench
