// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers by which the bench learns, each with its reason. Spreads are standard deviations of the log rate.
#pragma once

#include "quantity/quantity.h"

namespace strandbench {

struct LearningRules {
    /// From batch to batch of one lot. A bead laid by hand is up to 20 % off (cure-model): read as two spreads, and the
    /// rate goes with hardener to the power 0.7, that makes 0.07. A panel read half a kelvin off makes 0.034 (50 kJ/mol
    /// at 25 degC). Together 0.078.
    double batch = 0.08;
    /// From lot to lot of one product: lots gel within about 12 % of each other, read as two spreads. Our assumption;
    /// never more than lets the sheet's own range hold.
    double lot = 0.06;
    /// A sheet that states one time and no range is read as 10 % either way, two spreads. Our assumption.
    double sheetAtLeast = 0.05;
    /// So many spreads off what was expected of it, and a batch is held: of those that belong, 1 in 370 is (0.27 %,
    /// any table of the normal distribution). A forgotten bead, or hardener twice, is far beyond.
    double gate = 3.0;
    /// So many held in a row on one side, and the lot really is different: three forgotten beads in a row are less
    /// likely than another lot in the tube. Our assumption.
    int reopenAfter = 3;
    /// How wide the belief is then opened: half or twice the sheet's rate is within one spread of it. Our assumption.
    double reopened = 0.7;
    /// How long a batch teaches: a tube of hardener keeps for about a year, and what is older is of no lot that is
    /// still open. Our assumption.
    Duration remembered = minutes(400.0 * 24 * 60);
    /// What part of the belief the clock's edges hold.
    Fraction shown = Fraction::ofHundred(90);
};

} // namespace strandbench
