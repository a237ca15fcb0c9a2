// SPDX-License-Identifier: GPL-3.0-or-later
// One accepted step and everything between its ends. Inside cure only.
#pragma once

#include "cure/stepper.h"

namespace strandbench::cure {

/// Between the ends stands the method's dense output; while the air's temperature runs, a step of its own to the
/// moment asked for: a face that is held to the air follows it within a step that is long for it, and there dense
/// output strays by kelvins.
class Trace {
public:
    /// `stepper` has made the step and has its dense output ready; `probe` is another one on the same slab.
    Trace(const Stepper& stepper, Stepper& probe, const State& before, double second, double h, bool airRuns)
        : m_stepper(stepper), m_probe(probe), m_before(before), m_second(second), m_h(h), m_airRuns(airRuns)
    {}

    [[nodiscard]] const State& after() const { return m_stepper.after(); }
    [[nodiscard]] double second(double share) const { return m_second + share * m_h; }
    /// The state at a share of the step, 0 to 1.
    void at(double share, State& out) const
    {
        if (m_airRuns && share > 0.0 && m_probe.attempt(m_before, m_second, share * m_h) <= mostError)
            out = m_probe.after();
        else
            m_stepper.at(m_before, share, out);
    }

private:
    /// A shorter step is better than the whole one, but for what rounding makes of it.
    static constexpr double mostError = 2.0;

    const Stepper& m_stepper;
    Stepper& m_probe;
    const State& m_before;
    double m_second;
    double m_h;
    bool m_airRuns;
};

} // namespace strandbench::cure
