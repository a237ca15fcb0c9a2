// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/stepper.h"

#include <boost/numeric/odeint/stepper/rosenbrock4.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace strandbench::cure {
namespace {

/// Errors are weighed against these: a tolerance of 1e-4 keeps a step's temperature to 10 mK.
constexpr double kelvinScale = 100.0;
/// Conversion's, beside its own size: an early error grows with the reaction that feeds itself, so that what is small
/// is held nearly as closely, for its part, as what is large.
constexpr double conversionScale = 0.003;

/// The method's tables, row by stage: what earlier stages give to the argument and to the right-hand side.
struct Tables {
    Tables()
    {
        const boost::numeric::odeint::default_rosenbrock_coefficients<double> c;
        gamma = c.gamma;
        time = {0.0, c.c2, c.c3, c.c4, 1.0, 1.0};
        // Boost 1.74 gives d4 without its minus; the row sums of the method's own tables want it.
        slope = {c.d1, c.d2, c.d3, -std::abs(c.d4), 0.0, 0.0};
        argument[1] = {c.a21};
        argument[2] = {c.a31, c.a32};
        argument[3] = {c.a41, c.a42, c.a43};
        argument[4] = {c.a51, c.a52, c.a53, c.a54};
        argument[5] = {c.a51, c.a52, c.a53, c.a54, 1.0};
        side[1] = {c.c21};
        side[2] = {c.c31, c.c32};
        side[3] = {c.c41, c.c42, c.c43};
        side[4] = {c.c51, c.c52, c.c53, c.c54};
        side[5] = {c.c61, c.c62, c.c63, c.c64, c.c65};
        third = {c.d21, c.d22, c.d23, c.d24, c.d25};
        fourth = {c.d31, c.d32, c.d33, c.d34, c.d35};
    }
    double gamma;
    std::array<double, 6> time;
    std::array<double, 6> slope;
    std::array<std::array<double, 5>, 6> argument{};
    std::array<std::array<double, 5>, 6> side{};
    std::array<double, 5> third;
    std::array<double, 5> fourth;
};

const Tables& tables()
{
    static const Tables only;
    return only;
}

void resize(State& state, const Grid& grid)
{
    state.kelvin.assign(grid.nodes(), 0.0);
    state.conversion.assign(grid.freshNodes(), 0.0);
}

/// out = base + the sum over the first `count` stages of their weight times themselves.
template <std::size_t count>
void combine(const std::vector<double>& base, const std::array<const double*, 5>& stages,
             const std::array<double, 5>& weights, std::vector<double>& out)
{
    for (std::size_t i = 0; i < base.size(); ++i) {
        double sum = base[i];
        for (std::size_t stage = 0; stage < count; ++stage)
            sum += weights[stage] * stages[stage][i];
        out[i] = sum;
    }
}

/// The same with each sum times a weight of the node: what earlier stages leave on the right-hand side.
template <std::size_t count>
void addScaled(const std::vector<double>& scale, const std::array<const double*, 5>& stages,
               const std::array<double, 5>& weights, std::vector<double>& out)
{
    for (std::size_t i = 0; i < out.size(); ++i) {
        double sum = 0.0;
        for (std::size_t stage = 0; stage < count; ++stage)
            sum += weights[stage] * stages[stage][i];
        out[i] += scale[i] * sum;
    }
}

} // namespace

Stepper::Stepper(Slab& slab, const Air& air, double tolerance) : m_slab(slab), m_air(air), m_tolerance(tolerance)
{
    for (State& stage : m_stages)
        resize(stage, slab.grid());
    for (State* state : {&m_argument, &m_after, &m_third, &m_fourth, &m_nothing})
        resize(*state, slab.grid());
    for (std::size_t stage = 0; stage < m_kelvins.size(); ++stage) {
        m_kelvins[stage] = m_stages[stage].kelvin.data();
        m_conversions[stage] = m_stages[stage].conversion.data();
    }
}

template <std::size_t stage> void Stepper::runStage(const State& before, const Moment& moment)
{
    const Tables& table = tables();
    State& out = m_stages[stage];
    if constexpr (stage > 0) {
        combine<stage>(before.kelvin, m_kelvins, table.argument[stage], m_argument.kelvin);
        combine<stage>(before.conversion, m_conversions, table.argument[stage], m_argument.conversion);
        m_slab.rates(m_argument, moment.air + moment.airSlope * table.time[stage] * moment.h, out);
        std::array<double, 5> side = table.side[stage];
        for (double& each : side)
            each /= moment.h;
        addScaled<stage>(m_slab.grid().capacity, m_kelvins, side, out.kelvin);
        combine<stage>(out.conversion, m_conversions, side, out.conversion);
    }
    const double bySlope = moment.h * table.slope[stage] * moment.airSlope;
    out.kelvin.front() += bySlope * m_slab.back();
    out.kelvin.back() += bySlope * m_slab.front();
    m_slab.solve(out);
}

double Stepper::attempt(const State& before, double second, double h)
{
    const Moment moment{h, m_air.at(second), m_air.slopeAfter(second)};
    if (!m_slab.factor(before, moment.air, 1.0 / (tables().gamma * h), m_stages[0]))
        return std::numeric_limits<double>::infinity();
    runStage<0>(before, moment);
    runStage<1>(before, moment);
    runStage<2>(before, moment);
    runStage<3>(before, moment);
    runStage<4>(before, moment);
    runStage<5>(before, moment);
    for (std::size_t i = 0; i < m_after.kelvin.size(); ++i)
        m_after.kelvin[i] = m_argument.kelvin[i] + m_stages[5].kelvin[i];
    for (std::size_t i = 0; i < m_after.conversion.size(); ++i)
        m_after.conversion[i] = m_argument.conversion[i] + m_stages[5].conversion[i];
    return errorOf(before);
}

double Stepper::errorOf(const State& before) const
{
    // Sums carry a NaN along, which a maximum would lose.
    double worst = 0.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < m_after.kelvin.size(); ++i) {
        worst = std::max(worst, std::abs(m_stages[5].kelvin[i]) / kelvinScale);
        sum += m_after.kelvin[i];
    }
    for (std::size_t i = 0; i < m_after.conversion.size(); ++i) {
        const double scale = conversionScale + std::max(before.conversion[i], m_after.conversion[i]);
        worst = std::max(worst, std::abs(m_stages[5].conversion[i]) / scale);
        sum += m_after.conversion[i];
    }
    if (!std::isfinite(sum))
        return std::numeric_limits<double>::infinity();
    return worst / m_tolerance;
}

void Stepper::prepareDense()
{
    const Tables& table = tables();
    combine<5>(m_nothing.kelvin, m_kelvins, table.third, m_third.kelvin);
    combine<5>(m_nothing.conversion, m_conversions, table.third, m_third.conversion);
    combine<5>(m_nothing.kelvin, m_kelvins, table.fourth, m_fourth.kelvin);
    combine<5>(m_nothing.conversion, m_conversions, table.fourth, m_fourth.conversion);
}

void Stepper::at(const State& before, double share, State& out) const
{
    const double rest = 1.0 - share;
    const auto blend = [&](const std::vector<double>& from, const std::vector<double>& to,
                           const std::vector<double>& third, const std::vector<double>& fourth,
                           std::vector<double>& result) {
        result.resize(from.size());
        for (std::size_t i = 0; i < from.size(); ++i)
            result[i] = from[i] * rest + share * (to[i] + rest * (third[i] + share * fourth[i]));
    };
    blend(before.kelvin, m_after.kelvin, m_third.kelvin, m_fourth.kelvin, out.kelvin);
    blend(before.conversion, m_after.conversion, m_third.conversion, m_fourth.conversion, out.conversion);
}

} // namespace strandbench::cure
