// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/kinetics.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace strandbench::cure {
namespace {

/// Below this conversion the slope of alpha^m is held: it has none at zero for m < 1.
constexpr double leastForSlope = 1e-4;
/// The same for the ceiling's room, whose power has no slope at zero for n < 1.
constexpr double leastRoomForSlope = 1e-6;

/// A step that goes below this is taken back.
constexpr double leastKelvin = 1.0;

double powerOf(double conversion, double m)
{
    if (m == 0.0)
        return 1.0;
    // At half the cost of std::pow, a few units in the last place less exact.
    return conversion > 0.0 ? std::exp(m * std::log(conversion)) : 0.0;
}

} // namespace

Kinetics::Kinetics(const CureKinetics& kinetics, Fraction hardener)
    : m_m(kinetics.law.m),
      m_n(kinetics.law.n),
      m_overR(kinetics.law.activationEnergyJoulesPerMole / gasConstant),
      m_reference(inKelvin(kinetics.reference)),
      m_a0(kinetics.law.maxConversionAtReference),
      m_a1(kinetics.law.maxConversionPerKelvin)
{
    const double phi = std::pow(hardener.value() / kinetics.referenceHardener.value(), kinetics.law.hardenerExponent);
    m_k1 = inPerSecond(kinetics.k1) * phi;
    m_k2 = inPerSecond(kinetics.k2) * phi;
}

double Kinetics::speed(double kelvin, double room) const
{
    if (!(kelvin > leastKelvin))
        return std::numeric_limits<double>::quiet_NaN();
    return std::exp(m_n * std::log(room) - m_overR * (1.0 / kelvin - 1.0 / m_reference));
}

double Kinetics::ceiling(double kelvin) const { return std::clamp(m_a0 + m_a1 * (kelvin - m_reference), 0.0, 1.0); }

double Kinetics::rate(double kelvin, double conversion) const
{
    const double room = ceiling(kelvin) - conversion;
    if (room <= 0.0)
        return 0.0;
    return speed(kelvin, room) * (m_k1 + m_k2 * powerOf(conversion, m_m));
}

double Kinetics::slopeOfDrive(double conversion, double ofConversion) const
{
    if (conversion > leastForSlope)
        return m_k2 * m_m * ofConversion / conversion;
    // Nothing starts a reaction that only feeds on itself: it rests at zero, and a slope would only shorten steps.
    if (conversion <= 0.0 && m_k1 == 0.0)
        return 0.0;
    return m_k2 * m_m * std::pow(leastForSlope, m_m - 1.0);
}

LocalRate Kinetics::local(double kelvin, double conversion) const
{
    const double top = ceiling(kelvin);
    const double room = top - conversion;
    if (room <= 0.0)
        return {};
    const double fast = speed(kelvin, room);
    const double ofConversion = powerOf(conversion, m_m);
    LocalRate local;
    local.rate = fast * (m_k1 + m_k2 * ofConversion);
    const double byRoom = local.rate * m_n / std::max(room, leastRoomForSlope);
    const double topSlope = top > 0.0 && top < 1.0 ? m_a1 : 0.0;
    local.byTemperature = local.rate * m_overR / (kelvin * kelvin) + byRoom * topSlope;
    local.byConversion = fast * slopeOfDrive(conversion, ofConversion) - byRoom;
    return local;
}

double Kinetics::highestRate(double kelvin) const
{
    double highest = 0.0;
    for (int i = 0; i < 20; ++i)
        highest = std::max(highest, rate(kelvin, 0.05 * i));
    return highest;
}

} // namespace strandbench::cure
