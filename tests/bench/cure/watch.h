// SPDX-License-Identifier: GPL-3.0-or-later
// Gel, sand and peak out of a general-purpose solver's steps, as the engine defines them.
#pragma once

#include "system.h"

namespace strandbench::curebench {

/// Seconds and kelvin; a mark that is not reached is not a number.
struct Found {
    double gel;
    double sand;
    double peak;
    int steps = 0;
};

/// The solver's last step, between whose ends it can tell the state.
class LastStep {
public:
    virtual ~LastStep() = default;
    virtual void at(double second, double* y) const = 0;
    /// y' at its end.
    [[nodiscard]] virtual const double* slope() const = 0;
};

/// Looks at each step's end, and searches within a step only when something lies there; it keeps no curve.
/// So a general-purpose solver has less to do here than the engine has.
class Watch {
public:
    Watch(const System& system, const CureCase& cureCase);

    void begin(const double* y);
    void take(const LastStep& step, double from, double to, const double* y);
    [[nodiscard]] Found found() const { return m_found; }
    /// For a solver that gave up: as far off as can be.
    [[nodiscard]] static Found nothing();

private:
    [[nodiscard]] const double* fresh(const double* y) const { return y + m_system.grid().fresh; }
    void takeMarks(const LastStep& step, double from, double to, const double* y);
    void takePeak(const LastStep& step, double from, double to, const double* y);

    const System& m_system;
    double m_gelAt;
    double m_sandAt;
    Found m_found;
    double m_hot = 0.0;     ///< at the last step's end
    bool m_isRising = true; ///< there
    std::vector<double> m_scratch;
};

} // namespace strandbench::curebench
