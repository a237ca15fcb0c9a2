// SPDX-License-Identifier: GPL-3.0-or-later
// The heat and cure equations on a grid: rates of every node, and the linear system of a stage. Inside cure only.
#pragma once

#include "cure/grid.h"
#include "cure/kinetics.h"

namespace strandbench::cure {

/// Temperatures of all nodes, conversions of the fresh ones.
struct State {
    std::vector<double> kelvin;
    std::vector<double> conversion;
};

/// The air's temperature as straight lines, in seconds and kelvin.
class Air {
public:
    explicit Air(const std::vector<AirPoint>& points);
    [[nodiscard]] double at(double second) const;
    /// K/s just after this moment.
    [[nodiscard]] double slopeAfter(double second) const;
    /// The first bend after this moment, infinity when there is none.
    [[nodiscard]] double nextBend(double second) const;

private:
    std::vector<double> m_seconds;
    std::vector<double> m_kelvin;
};

/// C dT/dt = conduction + convection at both faces + heat of reaction; dalpha/dt = the law of cure.
/// Lateral conduction is neglected: a repair is wide against its thickness. Contacts are perfect.
class Slab {
public:
    Slab(Grid grid, const Kinetics& kinetics, double front, double back);

    [[nodiscard]] const Grid& grid() const { return m_grid; }
    [[nodiscard]] State start(double conversion) const;

    /// W/m2 a node and 1/s a fresh node, at this temperature of the air.
    void rates(const State& state, double airKelvin, State& out) const;
    /// Linearises here and factors (M/(gamma h) - J), M the capacities. False when it cannot be: a step
    /// so long that the reaction's own growth outruns it, or a state that is no state.
    /// Gives the rates at the state on the way.
    bool factor(const State& state, double airKelvin, double inverseStep, State& rates);
    /// Solves the factored system in place. Conversions are eliminated node by node, so that what remains is
    /// one tridiagonal solve (the Thomas algorithm).
    void solve(State& rightHandSide) const;
    /// What the air's slope adds to the heat of the two face nodes, W/(m2 s) a K/s.
    [[nodiscard]] double front() const { return m_front; }
    [[nodiscard]] double back() const { return m_back; }

private:
    void conduct(const State& state, double airKelvin, std::vector<double>& out) const;

    Grid m_grid;
    Kinetics m_kinetics;
    double m_front;
    double m_back;
    std::vector<double> m_diagonal; ///< factored: its inverse
    std::vector<double> m_lower;    ///< factored: multipliers
    std::vector<double> m_byConversion;
    std::vector<double> m_byTemperature;
    std::vector<double> m_inverse; ///< 1 / (1/(gamma h) - dg/dalpha)
};

} // namespace strandbench::cure
