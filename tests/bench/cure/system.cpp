// SPDX-License-Identifier: GPL-3.0-or-later
#include "system.h"

#include "cure/slab.h"

#include <algorithm>
#include <cmath>

namespace strandbench::curebench {

System::System(const CureCase& cureCase, int cells)
    : m_grid(cure::makeGrid(cureCase, cells)),
      m_law(cureCase.kinetics, cureCase.hardener),
      m_air(inKelvin(cureCase.air.front().temperature)),
      m_front(cureCase.front.value()),
      m_back(cureCase.back.value()),
      m_start(m_grid.nodes() + m_grid.freshNodes())
{
    for (std::size_t node = 0; node < m_grid.nodes(); ++node) {
        m_perCapacity.push_back(1.0 / m_grid.capacity[node]);
        m_start[kelvinAt(node)] = m_grid.start[node] - m_air;
    }
    for (std::size_t i = 0; i < m_grid.freshNodes(); ++i) {
        m_rise.push_back(m_grid.reacting[i] * m_perCapacity[m_grid.fresh + i]);
        m_start[conversionAt(i)] = cureCase.initialConversion.value();
    }
}

void System::rates(const double* y, double* out) const
{
    const std::size_t last = m_grid.nodes() - 1;
    double inflow = -m_back * y[0];
    for (std::size_t node = 0; node <= last; ++node) {
        const std::size_t at = kelvinAt(node);
        const double onward =
            node == last ? m_front * y[at] : m_grid.conductance[node] * (y[at] - y[kelvinAt(node + 1)]);
        out[at] = (inflow - onward) * m_perCapacity[node];
        inflow = onward;
        if (node < m_grid.fresh)
            continue;
        const double rate = m_law.rate(m_air + y[at], y[at + 1]);
        out[at + 1] = rate;
        out[at] += m_rise[node - m_grid.fresh] * rate;
    }
}

double System::differenceFromEngine(const CureCase& cureCase, const std::vector<double>& y) const
{
    const cure::Slab slab(m_grid, m_law, cureCase.front.value(), cureCase.back.value());
    cure::State state = slab.start(0.0);
    for (std::size_t node = 0; node < m_grid.nodes(); ++node)
        state.kelvin[node] = m_air + y[kelvinAt(node)];
    for (std::size_t i = 0; i < m_grid.freshNodes(); ++i)
        state.conversion[i] = y[conversionAt(i)];
    cure::State theirs = state;
    slab.rates(state, m_air, theirs);
    std::vector<double> ours(size());
    rates(y.data(), ours.data());
    double heat = 0.0;
    double greatestHeat = 1e-300;
    for (std::size_t node = 0; node < m_grid.nodes(); ++node) {
        heat = std::max(heat, std::abs(theirs.kelvin[node] - ours[kelvinAt(node)] * m_grid.capacity[node]));
        greatestHeat = std::max(greatestHeat, std::abs(theirs.kelvin[node]));
    }
    double rate = 0.0;
    double greatestRate = 1e-300;
    for (std::size_t i = 0; i < m_grid.freshNodes(); ++i) {
        rate = std::max(rate, std::abs(theirs.conversion[i] - ours[conversionAt(i)]));
        greatestRate = std::max(greatestRate, std::abs(theirs.conversion[i]));
    }
    return std::max(heat / greatestHeat, rate / greatestRate);
}

} // namespace strandbench::curebench
