// SPDX-License-Identifier: GPL-3.0-or-later
// One accepted step and everything between its ends. Inside cure only.
#pragma once

#include "cure/stepper.h"

namespace strandbench::cure {

class Trace {
public:
    /// The stepper has made the step and has its dense output ready. Seconds.
    Trace(const Stepper& stepper, const State& before, double from, double to)
        : m_stepper(stepper), m_before(before), m_from(from), m_to(to)
    {}

    [[nodiscard]] const State& after() const { return m_stepper.after(); }
    [[nodiscard]] double second(double share) const { return share < 1.0 ? m_from + share * (m_to - m_from) : m_to; }
    /// The state at a share of the step, 0 to 1.
    void at(double share, State& out) const { m_stepper.at(m_before, share, out); }

private:
    const Stepper& m_stepper;
    const State& m_before;
    double m_from;
    double m_to;
};

} // namespace strandbench::cure
