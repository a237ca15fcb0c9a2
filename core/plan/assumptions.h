// SPDX-License-Identifier: GPL-3.0-or-later
// Our assumptions, with no source: one table, shown as assumptions and editable in bench set-up.
#pragma once

#include "substrate/decision.h"
#include "quantity/quantity.h"

namespace strandbench {

struct Assumptions {
    Duration kneading = seconds(45); ///< from 'hardener in' to spreading
    MassRate spreading = gramsPerMinute(45);
    Fraction edgesAtGel = Fraction::ofOne(0.75); ///< clearing the edges begins, as a share of the gel time
    Length board = millimetres(250);             ///< square
    Fraction boardLossShare = Fraction::ofHundred(10);
    Mass boardLossEach = grams(2);       ///< a batch
    Length proud = millimetres(1.0);     ///< over the opening
    Length leftLow = millimetres(0.5);   ///< fibre filler, for the finish on the last face
    Length skimBeyond = millimetres(10); ///< all round the opening
    Length backingLap = millimetres(50);
    Length holeBothFaces = millimetres(50);    ///< up to this across, both faces filled, no backing
    Length holeNoRearAccess = millimetres(25); ///< over this without rear access: a bonded backing first
    Duration beforePrimer = minutes(60);       ///< after the last sanding, at 20 degC
    Duration layPuddle = seconds(90);          ///< laying puddle and bead, before the hardener goes in
    Duration sandLift = minutes(5);            ///< sanding and dusting off one lift
    Duration turnPanel = minutes(5);           ///< stripping the dam, sanding its residue, turning
    DecisionLimits decision;
};

} // namespace strandbench
