// SPDX-License-Identifier: GPL-3.0-or-later
// What mixing needs of a sheet: simple figures, near those of the trade.
#pragma once

#include "material/sheet.h"

namespace strandbench::test {

inline ProductSheet mixSheet()
{
    ProductSheet sheet;
    sheet.density = gramsPerMillilitre(1.5);
    sheet.beadMass = milligramsPerMillimetre(23);
    sheet.hardenerNominal = Fraction::ofHundred(2);
    sheet.hardenerLow = Fraction::ofHundred(1.5);
    sheet.hardenerHigh = Fraction::ofHundred(2.5);
    sheet.hardenerLowCaution = Fraction::ofHundred(1.2);
    sheet.hardenerHighCaution = Fraction::ofHundred(3.0);
    return sheet;
}

} // namespace strandbench::test
