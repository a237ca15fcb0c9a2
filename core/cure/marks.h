// SPDX-License-Identifier: GPL-3.0-or-later
// What is watched for while the steps go on: gel, sand, peak, and the curve. Inside cure only.
#pragma once

#include "cure/cure_result.h"
#include "cure/trace.h"

namespace strandbench::cure {

class Marks {
public:
    Marks(const CureCase& cureCase, const Grid& grid);

    void begin(const State& start);
    /// Goes on from a state that was set anew.
    void goOnFrom(double second, const State& state);
    /// Takes in one accepted step.
    void take(const Trace& step);
    /// True when gel and sand are found.
    [[nodiscard]] bool found() const { return m_result.gel && m_result.sand; }
    /// True when nothing can come to be hotter than the peak: no place with all its heat still to come, nor
    /// the stack or the air.
    [[nodiscard]] bool peakIsPast(const State& state) const;
    [[nodiscard]] CureResult finish(const State& end);

private:
    [[nodiscard]] double hottest(const State& state) const;
    [[nodiscard]] double mostCured(const State& state) const;
    [[nodiscard]] double mean(const State& state) const;
    void addPoint(double second, const State& state, double highest);
    void findMarks(const Trace& step);
    void findPeak(const Trace& step);
    void offerPeak(double kelvin, double second);

    const Grid& m_grid;
    Kinetics m_law;
    double m_gelAt;
    double m_sandAt;
    double m_wholeRise;        ///< K, of full conversion
    double m_hottestAir = 0.0; ///< K, at any time
    double m_peak = 0.0;
    double m_peakSecond = 0.0;
    State m_scratch;
    CureResult m_result;
};

} // namespace strandbench::cure
