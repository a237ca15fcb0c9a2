// SPDX-License-Identifier: GPL-3.0-or-later
#include "watch.h"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace strandbench::curebench {
namespace {

/// How far the profile's slope is followed to see whether its crest still rises, as a share of the step.
constexpr double glance = 1e-4;
/// K below the highest so far from which on a step may hide something higher.
constexpr double near = 0.05;

/// A profile's node of the greatest value; values stand two apart.
std::size_t topOf(const double* value, std::size_t count)
{
    std::size_t top = 0;
    for (std::size_t i = 1; i < count; ++i)
        top = value[2 * i] > value[2 * top] ? i : top;
    return top;
}

/// The greatest value of the parabola through the highest node and its neighbours, as in the engine's marks.
double crest(const std::vector<double>& place, const double* value)
{
    const std::size_t top = topOf(value, place.size());
    const double high = value[2 * top];
    if (top == 0 || top + 1 == place.size())
        return high;
    const double left = place[top] - place[top - 1];
    const double right = place[top + 1] - place[top];
    const double rise = (high - value[2 * top - 2]) / left;
    const double fall = (value[2 * top + 2] - high) / right;
    const double curvature = (fall - rise) / (left + right);
    if (curvature >= 0.0)
        return high;
    const double slope = (rise * right + fall * left) / (left + right);
    return high - slope * slope / (4.0 * curvature);
}

/// The moment at which a watch that is below zero at `from` and not at `to` reaches it.
template <class Reach> double moment(const Reach& reach, double from, double to, double last)
{
    const double first = reach(from);
    if (first >= 0.0)
        return from;
    std::uintmax_t most = 50;
    const auto [below, above] = boost::math::tools::toms748_solve(reach, from, to, first, last,
                                                                  boost::math::tools::eps_tolerance<double>(30), most);
    return (below + above) / 2.0;
}

} // namespace

Watch::Watch(const System& system, const CureCase& cureCase)
    : m_system(system),
      m_gelAt(cureCase.kinetics.gel.value()),
      m_sandAt(cureCase.kinetics.sand.value()),
      m_found(nothing()),
      m_scratch(system.size())
{
    m_found.peak = 0.0;
}

Found Watch::nothing()
{
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    return {none, none, none, 0};
}

void Watch::begin(const double* y)
{
    m_hot = crest(m_system.grid().place, fresh(y));
    m_found.peak = m_hot + m_system.airKelvin();
}

void Watch::take(const LastStep& step, double from, double to, const double* y)
{
    ++m_found.steps;
    takeMarks(step, from, to, y);
    takePeak(step, from, to, y);
}

void Watch::takeMarks(const LastStep& step, double from, double to, const double* y)
{
    const std::vector<double>& place = m_system.grid().place;
    if (std::isnan(m_found.gel)) {
        const double over = crest(place, fresh(y) + 1) - m_gelAt;
        if (over >= 0.0)
            m_found.gel = moment(
                [&](double second) {
                    step.at(second, m_scratch.data());
                    return crest(place, fresh(m_scratch.data()) + 1) - m_gelAt;
                },
                from, to, over);
    }
    const double over = y[m_system.size() - 1] - m_sandAt;
    if (std::isnan(m_found.sand) && over >= 0.0)
        m_found.sand = moment(
            [&](double second) {
                step.at(second, m_scratch.data());
                return m_scratch.back() - m_sandAt;
            },
            from, to, over);
}

void Watch::takePeak(const LastStep& step, double from, double to, const double* y)
{
    const std::vector<double>& place = m_system.grid().place;
    const double before = m_hot;
    const bool wasRising = m_isRising;
    m_hot = crest(place, fresh(y));
    const double best = m_found.peak - m_system.airKelvin();
    if (std::max(m_hot, before) < best - near) {
        m_isRising = m_hot > before;
        return;
    }
    const double* slope = step.slope();
    for (std::size_t i = 0; i < m_scratch.size(); ++i)
        m_scratch[i] = y[i] + glance * (to - from) * slope[i];
    m_isRising = crest(place, fresh(m_scratch.data())) > m_hot;
    double highest = m_hot;
    if (wasRising && !m_isRising) {
        std::uintmax_t most = 30;
        const auto coldness = [&](double second) {
            step.at(second, m_scratch.data());
            return -crest(place, fresh(m_scratch.data()));
        };
        highest = std::max(highest, -boost::math::tools::brent_find_minima(coldness, from, to, 20, most).second);
    }
    m_found.peak = std::max(m_found.peak, highest + m_system.airKelvin());
}

} // namespace strandbench::curebench
