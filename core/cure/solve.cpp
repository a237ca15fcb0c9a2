// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/solve.h"

#include "cure/marks.h"

#include <algorithm>
#include <cmath>
#include <limits>

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

/// What readings found, one after another: the state is so much warmer from there on.
class Found {
public:
    explicit Found(const std::vector<FoundWarmer>& all) : m_all(all) {}

    [[nodiscard]] double next() const
    {
        return m_next < m_all.size() ? inSeconds(m_all[m_next].at) : std::numeric_limits<double>::infinity();
    }
    /// Warms the state by all that was found up to this second; true when there was any.
    bool warm(State& state, double second)
    {
        const std::size_t before = m_next;
        for (; next() <= second; ++m_next)
            for (double& kelvin : state.kelvin)
                kelvin += m_all[m_next].by.value();
        return m_next > before;
    }

private:
    const std::vector<FoundWarmer>& m_all;
    std::size_t m_next = 0;
};

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
    Found found(cureCase.found);
    found.warm(state, 0.0);
    marks.begin(state);

    const double horizon = inSeconds(cureCase.horizon);
    double second = 0.0;
    double h = std::min(firstStep, horizon);
    int steps = 0;
    while (second < horizon && (!isEnough(fineness.until, marks, state) || found.next() < horizon)) {
        if (++steps > stepBudget)
            return tl::unexpected(CureDifficulty{CureDifficulty::Kind::TooManySteps, seconds(second)});
        const double end = std::min({horizon, air.nextBend(second), found.next()});
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
        if (found.warm(state, second))
            marks.goOnFrom(second, state);
    }
    CureResult result = marks.finish(state);
    result.cells = static_cast<int>(slab.grid().nodes()) - 1;
    result.steps = steps;
    return result;
}

} // namespace strandbench
