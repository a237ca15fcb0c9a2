// SPDX-License-Identifier: GPL-3.0-or-later
// The law of cure in plain SI numbers, for the solver's inner loops. Inside cure only.
#pragma once

#include "cure/cure_case.h"

namespace strandbench::cure {

/// CODATA 2018, exact since the SI of 2019, J/(mol K).
inline constexpr double gasConstant = 8.314462618;

/// A rate and how it leans on temperature and conversion.
struct LocalRate {
    double rate = 0;          ///< 1/s
    double byTemperature = 0; ///< 1/(s K)
    double byConversion = 0;  ///< 1/s
};

class Kinetics {
public:
    Kinetics(const CureKinetics& kinetics, Fraction hardener);

    /// 1/s at kelvin and conversion; not a number below 1 K, so that a step which went there is taken back.
    [[nodiscard]] double rate(double kelvin, double conversion) const;
    /// The same with its derivatives; alpha^(m-1) is bounded near zero.
    [[nodiscard]] LocalRate local(double kelvin, double conversion) const;
    [[nodiscard]] double ceiling(double kelvin) const;
    /// The highest rate that the layer can come to when it goes through at this temperature, 1/s.
    [[nodiscard]] double highestRate(double kelvin) const;

private:
    /// A(T) times room^n, 1/s by the drive k1 + k2 alpha^m.
    [[nodiscard]] double speed(double kelvin, double room) const;
    [[nodiscard]] double slopeOfDrive(double conversion, double ofConversion) const;

    double m_k1; ///< times phi(c)
    double m_k2;
    double m_m;
    double m_n;
    double m_overR; ///< E/R, K
    double m_reference;
    double m_a0;
    double m_a1;
};

} // namespace strandbench::cure
