// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/solve.h"

#include "cure/marks.h"

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

using cure::State;

constexpr int stepBudget = 20'000;
constexpr double firstStep = 0.5;
constexpr double greatestGrowth = 5.0;
constexpr double greatestShrink = 0.1;

/// The next step's length after an error of order 4.
double factorFor(double error)
{
    if (!std::isfinite(error))
        return greatestShrink;
    return std::clamp(0.9 * std::pow(std::max(error, 1e-12), -0.25), greatestShrink, greatestGrowth);
}

bool isEnough(CureUntil until, const cure::Marks& marks, const State& state)
{
    return until != CureUntil::Horizon && marks.found() && (until == CureUntil::Marks || marks.peakIsPast(state));
}

} // namespace

CureOutcome solveCure(const CureCase& cureCase, const CureFineness& fineness)
{
    const int cells = fineness.cells.value_or(cure::cellsFor(cureCase));
    cure::Slab slab(cure::makeGrid(cureCase, cells), cure::Kinetics(cureCase.kinetics, cureCase.hardener),
                    cureCase.front.value(), cureCase.back.value());
    const cure::Air air(cureCase.air);
    cure::Stepper stepper(slab, air, fineness.tolerance);
    cure::Marks marks(cureCase, slab.grid());
    State state = slab.start(cureCase.initialConversion.value());
    marks.begin(state);

    const double horizon = inSeconds(cureCase.horizon);
    double second = 0.0;
    double h = std::min(firstStep, horizon);
    int steps = 0;
    while (second < horizon && !isEnough(fineness.until, marks, state)) {
        if (++steps > stepBudget)
            return tl::unexpected(CureDifficulty{CureDifficulty::Kind::TooManySteps, seconds(second)});
        const double end = std::min(horizon, air.nextBend(second));
        // Never leaves a sliver for the next step.
        const double step = second + 1.01 * h >= end ? end - second : h;
        if (second + step <= second)
            return tl::unexpected(CureDifficulty{CureDifficulty::Kind::StepTooSmall, seconds(second)});
        const double error = stepper.attempt(state, second, step);
        if (error <= 1.0) {
            stepper.prepareDense();
            const double next = step == end - second ? end : second + step;
            marks.take(cure::Trace(stepper, state, second, next));
            state = stepper.after();
            second = next;
        }
        h = step * factorFor(error);
    }
    CureResult result = marks.finish(state);
    result.cells = static_cast<int>(slab.grid().nodes()) - 1;
    result.steps = steps;
    return result;
}

} // namespace strandbench
