// SPDX-License-Identifier: GPL-3.0-or-later
// Puddle, bead and mass: what is laid on the board for what is wanted.
#pragma once

#include "material/sheet.h"
#include "quantity/reason.h"

namespace strandbench {

/// Bead against puddle: the trade's three points 2 in - 1 in, 4 in - 4 in, 8 in - 12 in are met exactly,
/// with a power law from point to point (log-log) and the end slopes carried on. Common practice, no
/// source. puddle > 0.
[[nodiscard]] Length beadForPuddle(Length puddle);
/// The inverse of beadForPuddle.
[[nodiscard]] Length puddleForBead(Length bead);

/// One mix as it is laid: what the technician sees on the mix screen.
struct Mix {
    Length puddle;       ///< across
    Length puddleHeight; ///< from mass, density and width: a flat round puddle
    Length bead;         ///< straight, in all
    Mass filler;
    Mass hardener;
    Fraction hardenerShare; ///< of filler mass
    bool operator==(const Mix&) const = default;
};

/// Sizes a mix from the puddle's width. filler = bead x bead mass / hardener share.
[[nodiscard]] Mix mixForPuddle(Length puddle, const ProductSheet& sheet);
/// Sizes a mix from the mass of filler.
[[nodiscard]] Mix mixForFiller(Mass filler, const ProductSheet& sheet);

/// The same masses, laid by the bead that the sheet has now: bead, puddle and its height.
[[nodiscard]] Mix laidAgain(Mix mix, const ProductSheet& sheet);

/// A 2-in puddle (about 29 g with the default nozzle): below it a bead is too coarse.
[[nodiscard]] Mass smallestBeadMix(const ProductSheet& sheet);

/// Advice on a mix: weigh_small (below the smallest bead mix), puddle_small (below 1 in), split_large
/// (above 10 in), wider_than_board.
[[nodiscard]] Reasons mixAdvice(const Mix& mix, const ProductSheet& sheet, Length board);

enum class HardenerVerdict { Within, Caution, Refused };
/// Judges a hardener share against the sheet's band.
[[nodiscard]] HardenerVerdict judgeHardener(Fraction share, const ProductSheet& sheet);

} // namespace strandbench
