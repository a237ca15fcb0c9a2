// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/at_rate.h"

namespace strandbench {

CureCase atRate(const CureCase& sheet, LogRate rate)
{
    CureCase changed = sheet;
    changed.kinetics.k1 = sheet.kinetics.k1 * rate.multiplier();
    changed.kinetics.k2 = sheet.kinetics.k2 * rate.multiplier();
    return changed;
}

} // namespace strandbench
