// SPDX-License-Identifier: GPL-3.0-or-later
// A case as a general-purpose solver sees it: y' = f(y), on the engine's own grid.
#pragma once

#include "cure/grid.h"
#include "cure/kinetics.h"

#include <cstddef>
#include <vector>

namespace strandbench::curebench {

/// Unknowns from the back to the front: kelvins above the air a stack node, then kelvins above the air and
/// conversion a fresh node, in turn, so that nothing is further than two places from what it depends on.
/// The same equations as cure::Slab's, laid out so that a solver needs no copies. The air holds still.
class System {
public:
    System(const CureCase& cureCase, int cells);

    /// How far from the diagonal the Jacobian reaches, either way.
    static constexpr std::size_t band = 2;

    [[nodiscard]] std::size_t size() const { return m_start.size(); }
    [[nodiscard]] const std::vector<double>& start() const { return m_start; }
    [[nodiscard]] const cure::Grid& grid() const { return m_grid; }
    [[nodiscard]] double airKelvin() const { return m_air; }
    [[nodiscard]] std::size_t kelvinAt(std::size_t node) const
    {
        return node < m_grid.fresh ? node : 2 * node - m_grid.fresh;
    }
    [[nodiscard]] std::size_t conversionAt(std::size_t freshNode) const { return m_grid.fresh + 2 * freshNode + 1; }
    [[nodiscard]] bool isConversion(std::size_t unknown) const
    {
        return unknown >= m_grid.fresh && (unknown - m_grid.fresh) % 2 == 1;
    }

    void rates(const double* y, double* out) const;
    /// Calls put(row, column, value) for every place that is not always zero.
    template <class Put> void jacobian(const double* y, const Put& put) const;
    /// The greatest difference between these rates at y and the engine's own, against the engine's greatest.
    [[nodiscard]] double differenceFromEngine(const CureCase& cureCase, const std::vector<double>& y) const;

private:
    cure::Grid m_grid;
    cure::Kinetics m_law;
    double m_air;
    double m_front;
    double m_back;
    std::vector<double> m_perCapacity; ///< m2 K/J a node
    std::vector<double> m_rise;        ///< K a fresh node: of its whole reaction, with all the node's capacity
    std::vector<double> m_start;
};

template <class Put> void System::jacobian(const double* y, const Put& put) const
{
    const std::size_t last = m_grid.nodes() - 1;
    for (std::size_t node = 0; node <= last; ++node) {
        const std::size_t row = kelvinAt(node);
        const double below = node == 0 ? m_back : m_grid.conductance[node - 1];
        const double above = node == last ? m_front : m_grid.conductance[node];
        double own = -(below + above) * m_perCapacity[node];
        if (node > 0)
            put(row, kelvinAt(node - 1), below * m_perCapacity[node]);
        if (node < last)
            put(row, kelvinAt(node + 1), above * m_perCapacity[node]);
        if (node >= m_grid.fresh) {
            const double rise = m_rise[node - m_grid.fresh];
            const cure::LocalRate local = m_law.local(m_air + y[row], y[row + 1]);
            own += rise * local.byTemperature;
            put(row, row + 1, rise * local.byConversion);
            put(row + 1, row, local.byTemperature);
            put(row + 1, row + 1, local.byConversion);
        }
        put(row, row, own);
    }
}

} // namespace strandbench::curebench
