// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/axis_step.h"

#include <cmath>
#include <initializer_list>

namespace strandbench {

double niceStep(double span, int parts)
{
    const double rough = span / parts;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double step : {1.0, 2.0, 5.0})
        if (rough <= step * power)
            return step * power;
    return 10.0 * power;
}

} // namespace strandbench
