// SPDX-License-Identifier: GPL-3.0-or-later
// Our assumptions, with no source: one table, shown as assumptions and editable in bench set-up.
#pragma once

#include "air/shop_room.h"
#include "cure/test_piece.h"
#include "substrate/decision.h"
#include "quantity/quantity.h"

namespace strandbench {

struct Assumptions {
    Duration kneading = seconds(45);               ///< from 'hardener in' to spreading
    TemperatureStep fillerOverAir = kelvinStep(0); ///< filler and hardener at the start: as the air, or so much warmer
    MassRate spreading = gramsPerMinute(45);
    Fraction edgesAtGel = Fraction::ofOne(0.75); ///< clearing the edges begins, as a share of the gel time
    Length board = millimetres(250);             ///< square
    Fraction boardLossShare = Fraction::ofHundred(10);
    Mass boardLossEach = grams(2);       ///< a batch
    Length proud = millimetres(1.0);     ///< over the opening
    Length leftLow = millimetres(0.5);   ///< fibre filler, for the finish on the last face
    Length skimBeyond = millimetres(10); ///< all round the opening
    Length backingLap = millimetres(50);
    Length holeBothFaces = millimetres(50);      ///< up to this across, both faces filled, no backing
    Length holeNoRearAccess = millimetres(25);   ///< over this without rear access: a bonded backing first
    Fraction bridgeShare = Fraction::ofOne(0.5); ///< of a hole's height, laid first where a filler only bridges
    Duration beforePrimer = minutes(60);         ///< after the last sanding, at 20 degC
    Duration layPuddle = seconds(90);            ///< laying puddle and bead, before the hardener goes in
    Duration sandLift = minutes(5);              ///< sanding and dusting off one lift
    Duration turnPanel = minutes(5);             ///< stripping the dam, sanding its residue, turning
    HeatTransfer faceFront = overTheLayer;       ///< from the fresh layer to the air
    HeatTransfer faceBack = behindTheStack;      ///< from behind the panel
    Length boardThickness = mixingBoard(celsius(25)).thickness;
    ThermalMaterial boardMaterial = mixingBoard(celsius(25)).material;
    /// Glass and polyester, through the thickness, as in Bogetti and Gillespie, J. Compos. Mater. 25 (1991) 239.
    ThermalMaterial laminate{kilogramsPerCubicMetre(1890), joulesPerKilogramKelvin(1260), wattsPerMetreKelvin(0.2163)};
    /// Plain carbon steel and pure aluminium: Incropera, Table A.1, rounded.
    ThermalMaterial steel{kilogramsPerCubicMetre(7850), joulesPerKilogramKelvin(434), wattsPerMetreKelvin(60)};
    ThermalMaterial aluminium{kilogramsPerCubicMetre(2702), joulesPerKilogramKelvin(903), wattsPerMetreKelvin(237)};
    Length backing = millimetres(2);        ///< a bonded backing's thickness
    Length leastUnder = millimetres(0.3);   ///< what is left of the panel below this holds no heat worth counting
    Temperature laminatePeak = celsius(90); ///< laminate and SMC are kept under this
    Temperature bondSeamPeak = celsius(80); ///< and the adhesive of a bond seam
    DecisionLimits decision;
    ShopRoom room; ///< that vapours go into
};

} // namespace strandbench
