// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/greatest_lift.h"

#include "cure/solve.h"

namespace strandbench {
namespace {

constexpr int scanSteps = 10;
/// A lift is told to a tenth of this, and laid to no more than tenths of a millimetre.
const Length close = millimetres(0.01);

} // namespace

std::optional<Length> greatestLift(const std::function<CureCase(Length)>& caseOf, Temperature limit, Length most)
{
    const auto within = [&](Length thickness) {
        CureFineness peakOnly;
        peakOnly.until = CureUntil::Peak;
        const CureOutcome result = solveCure(caseOf(thickness), peakOnly);
        return result && result->peak < limit;
    };
    Length good = millimetres(0);
    Length bad = most;
    bool any = false;
    for (int step = 1; step <= scanSteps; ++step) {
        const Length thickness = most * (static_cast<double>(step) / scanSteps);
        if (!within(thickness)) {
            bad = thickness;
            break;
        }
        good = thickness;
        any = true;
    }
    if (!any)
        return std::nullopt;
    if (good >= most)
        return most;
    while (bad - good > close) {
        const Length middle = (good + bad) / 2.0;
        (within(middle) ? good : bad) = middle;
    }
    return good;
}

} // namespace strandbench
