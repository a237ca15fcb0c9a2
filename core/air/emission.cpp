// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/emission.h"

#include <cmath>
#include <stdexcept>

namespace strandbench {

Fraction styreneGivenOff(Spreading spreading, Fraction styrene)
{
    if (!(styrene > Fraction()) || styrene > Fraction::ofHundred(60))
        throw std::logic_error("a share of styrene that no filler has");
    const double percent = styrene.percent();
    const double kilogramsPerMegagram =
        spreading == Spreading::Resin ? 0.014 * std::pow(percent, 2.275) : 0.445 * std::pow(percent, 1.675);
    return Fraction::ofOne(kilogramsPerMegagram / 1000);
}

} // namespace strandbench
