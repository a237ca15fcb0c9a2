// SPDX-License-Identifier: GPL-3.0-or-later
// One step in time with its error and its dense output. Inside cure only.
#pragma once

#include "cure/slab.h"

#include <array>

namespace strandbench::cure {

/// The Rosenbrock method RODAS: six stages, order 4 with an embedded order 3, stiffly accurate, dense output
/// of order 3 (Hairer and Wanner, Solving Ordinary Differential Equations II, IV.7). Coefficients as Boost.Odeint
/// publishes them.
class Stepper {
public:
    Stepper(Slab& slab, const Air& air, double tolerance);

    /// Tries a step of h seconds from `before`. Gives the error against the tolerance, above 1 when the
    /// step is to be taken back, infinity when there is none.
    [[nodiscard]] double attempt(const State& before, double second, double h);
    /// Where the last attempt came to.
    [[nodiscard]] const State& after() const { return m_after; }
    /// Readies dense output of the last attempt.
    void prepareDense();
    /// The state at a share of the last step, 0 to 1.
    void at(const State& before, double share, State& out) const;

private:
    /// One step's length, and the air at its start.
    struct Moment {
        double h;
        double air;
        double airSlope;
    };
    template <std::size_t stage> void runStage(const State& before, const Moment& moment);
    [[nodiscard]] double errorOf(const State& before) const;

    Slab& m_slab;
    const Air& m_air;
    double m_tolerance;
    std::array<State, 6> m_stages;
    std::array<const double*, 5> m_kelvins{}; ///< of the first five stages
    std::array<const double*, 5> m_conversions{};
    State m_argument;
    State m_after;
    State m_third;
    State m_fourth;
    State m_nothing;
};

} // namespace strandbench::cure
