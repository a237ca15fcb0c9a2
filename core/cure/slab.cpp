// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/slab.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace strandbench::cure {

Air::Air(const std::vector<AirPoint>& points)
{
    for (const AirPoint& point : points) {
        m_seconds.push_back(inSeconds(point.at));
        m_kelvin.push_back(inKelvin(point.temperature));
    }
}

double Air::at(double second) const
{
    const auto next = std::upper_bound(m_seconds.begin(), m_seconds.end(), second);
    if (next == m_seconds.begin())
        return m_kelvin.front();
    if (next == m_seconds.end())
        return m_kelvin.back();
    const auto i = static_cast<std::size_t>(next - m_seconds.begin());
    return std::lerp(m_kelvin[i - 1], m_kelvin[i], (second - m_seconds[i - 1]) / (m_seconds[i] - m_seconds[i - 1]));
}

double Air::slopeAfter(double second) const
{
    const auto next = std::upper_bound(m_seconds.begin(), m_seconds.end(), second);
    if (next == m_seconds.begin() || next == m_seconds.end())
        return 0.0;
    const auto i = static_cast<std::size_t>(next - m_seconds.begin());
    return (m_kelvin[i] - m_kelvin[i - 1]) / (m_seconds[i] - m_seconds[i - 1]);
}

double Air::nextBend(double second) const
{
    const auto next = std::upper_bound(m_seconds.begin(), m_seconds.end(), second);
    return next == m_seconds.end() ? std::numeric_limits<double>::infinity() : *next;
}

Slab::Slab(Grid grid, const Kinetics& kinetics, double front, double back)
    : m_grid(std::move(grid)),
      m_kinetics(kinetics),
      m_front(front),
      m_back(back),
      m_diagonal(m_grid.nodes()),
      m_lower(m_grid.nodes()),
      m_byConversion(m_grid.freshNodes()),
      m_byTemperature(m_grid.freshNodes()),
      m_inverse(m_grid.freshNodes())
{}

State Slab::start(double conversion) const
{
    return {m_grid.start, std::vector<double>(m_grid.freshNodes(), conversion)};
}

void Slab::conduct(const State& state, double airKelvin, std::vector<double>& out) const
{
    const std::vector<double>& kelvin = state.kelvin;
    const std::size_t last = kelvin.size() - 1;
    double inflow = m_back * (airKelvin - kelvin[0]);
    for (std::size_t i = 0; i < last; ++i) {
        const double onward = m_grid.conductance[i] * (kelvin[i] - kelvin[i + 1]);
        out[i] = inflow - onward;
        inflow = onward;
    }
    out[last] = inflow + m_front * (airKelvin - kelvin[last]);
}

void Slab::rates(const State& state, double airKelvin, State& out) const
{
    conduct(state, airKelvin, out.kelvin);
    for (std::size_t i = 0; i < state.conversion.size(); ++i) {
        const double rate = m_kinetics.rate(state.kelvin[m_grid.fresh + i], state.conversion[i]);
        out.conversion[i] = rate;
        out.kelvin[m_grid.fresh + i] += m_grid.reacting[i] * rate;
    }
}

bool Slab::factor(const State& state, double airKelvin, double inverseStep, State& rates)
{
    conduct(state, airKelvin, rates.kelvin);
    const std::size_t last = m_grid.nodes() - 1;
    for (std::size_t i = 0; i <= last; ++i)
        m_diagonal[i] = m_grid.capacity[i] * inverseStep + (i == 0 ? m_back : m_grid.conductance[i - 1]) +
                        (i == last ? m_front : m_grid.conductance[i]);
    for (std::size_t i = 0; i < m_grid.freshNodes(); ++i) {
        const std::size_t node = m_grid.fresh + i;
        const LocalRate local = m_kinetics.local(state.kelvin[node], state.conversion[i]);
        const double pivot = inverseStep - local.byConversion;
        if (!(pivot > 0.0) || !std::isfinite(local.rate))
            return false;
        rates.conversion[i] = local.rate;
        rates.kelvin[node] += m_grid.reacting[i] * local.rate;
        m_inverse[i] = 1.0 / pivot;
        m_byConversion[i] = m_grid.reacting[i] * local.byConversion * m_inverse[i];
        m_byTemperature[i] = local.byTemperature;
        // (1 + dg/dalpha / pivot) = inverseStep / pivot
        m_diagonal[node] -= m_grid.reacting[i] * local.byTemperature * inverseStep * m_inverse[i];
    }
    for (std::size_t i = 0; i <= last; ++i) {
        if (i > 0) {
            m_lower[i] = m_grid.conductance[i - 1] * m_diagonal[i - 1];
            m_diagonal[i] -= m_lower[i] * m_grid.conductance[i - 1];
        }
        if (!(m_diagonal[i] > 0.0))
            return false;
        m_diagonal[i] = 1.0 / m_diagonal[i];
    }
    return true;
}

void Slab::solve(State& side) const
{
    std::vector<double>& kelvin = side.kelvin;
    const std::size_t last = m_grid.nodes() - 1;
    for (std::size_t i = 0; i < m_grid.freshNodes(); ++i)
        kelvin[m_grid.fresh + i] += m_byConversion[i] * side.conversion[i];
    for (std::size_t i = 1; i <= last; ++i)
        kelvin[i] += m_lower[i] * kelvin[i - 1];
    kelvin[last] *= m_diagonal[last];
    for (std::size_t i = last; i-- > 0;)
        kelvin[i] = (kelvin[i] + m_grid.conductance[i] * kelvin[i + 1]) * m_diagonal[i];
    for (std::size_t i = 0; i < m_grid.freshNodes(); ++i)
        side.conversion[i] = (side.conversion[i] + m_byTemperature[i] * kelvin[m_grid.fresh + i]) * m_inverse[i];
}

} // namespace strandbench::cure
