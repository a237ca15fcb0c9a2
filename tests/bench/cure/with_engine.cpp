// SPDX-License-Identifier: GPL-3.0-or-later
#include "solvers.h"

#include "cure/solve.h"

#include <limits>

namespace strandbench::curebench {

Found solveWithEngine(const CureCase& cureCase, int cells, double tolerance)
{
    const CureOutcome outcome = solveCure(cureCase, {cells, tolerance, CureUntil::Horizon});
    if (!outcome)
        return Watch::nothing();
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    return {outcome->gel ? inSeconds(*outcome->gel) : none, outcome->sand ? inSeconds(*outcome->sand) : none,
            inKelvin(outcome->peak), outcome->steps};
}

} // namespace strandbench::curebench
