// SPDX-License-Identifier: GPL-3.0-or-later
// Typed quantities. Every boundary of core speaks these; no bare double means millimetres here and
// inches there. The types are Boost.Units quantities in SI units (metre, kilogram, second, kelvin), so
// that a length times a length is an area and a missing factor does not compile.
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/dimensionless.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/power.hpp>
#include <boost/units/systems/si/energy.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/volume.hpp>

#include <compare>

namespace strandbench {

namespace si = boost::units::si;

using Length = boost::units::quantity<si::length>;
using Area = boost::units::quantity<si::area>;
using Volume = boost::units::quantity<si::volume>;
using Mass = boost::units::quantity<si::mass>;
using Density = boost::units::quantity<si::mass_density>;
using Duration = boost::units::quantity<si::time>;
/// A point on the thermodynamic scale, in kelvin. Differences are TemperatureStep.
using Temperature = boost::units::quantity<boost::units::absolute<si::temperature>>;
using TemperatureStep = boost::units::quantity<si::temperature>;
/// Mass per length: what a tube's nozzle lays, per length of bead.
using LinearDensity = boost::units::divide_typeof_helper<Mass, Length>::type;
/// Mass per time: how fast a technician spreads.
using MassRate = boost::units::divide_typeof_helper<Mass, Duration>::type;
using SpecificEnergy = boost::units::divide_typeof_helper<boost::units::quantity<si::energy>, Mass>::type;
using SpecificHeat = boost::units::divide_typeof_helper<SpecificEnergy, TemperatureStep>::type;
using Conductivity = boost::units::divide_typeof_helper<
    boost::units::divide_typeof_helper<boost::units::quantity<si::power>, Length>::type, TemperatureStep>::type;
using HeatTransfer = boost::units::divide_typeof_helper<
    boost::units::divide_typeof_helper<boost::units::quantity<si::power>, Area>::type, TemperatureStep>::type;

/// A pure number with a name: a share of a whole. 1 is the whole; percent() gives 100 for it.
class Fraction {
public:
    constexpr Fraction() = default;
    [[nodiscard]] static constexpr Fraction ofOne(double share) { return Fraction(share); }
    [[nodiscard]] static constexpr Fraction ofHundred(double percent) { return Fraction(percent / 100.0); }
    [[nodiscard]] constexpr double value() const { return m_share; }
    [[nodiscard]] constexpr double percent() const { return m_share * 100.0; }
    constexpr auto operator<=>(const Fraction&) const = default;

private:
    constexpr explicit Fraction(double share) : m_share(share) {}
    double m_share = 0.0;
};

/// Celsius to kelvin offset, exact by definition (BIPM SI brochure, 9th ed., 2.3.1).
inline constexpr double zeroCelsiusInKelvin = 273.15;

// Makers: a number and its unit become a quantity.
[[nodiscard]] inline Length metres(double v) { return v * si::metre; }
[[nodiscard]] inline Length millimetres(double v) { return v * 1e-3 * si::metre; }
/// International inch, exactly 25.4 mm (NIST SP 811, app. B.8).
[[nodiscard]] inline Length inches(double v) { return v * 25.4e-3 * si::metre; }
[[nodiscard]] inline Area squareMillimetres(double v) { return v * 1e-6 * si::square_metre; }
[[nodiscard]] inline Volume millilitres(double v) { return v * 1e-6 * si::cubic_metre; }
[[nodiscard]] inline Volume cubicMillimetres(double v) { return v * 1e-9 * si::cubic_metre; }
[[nodiscard]] inline Mass grams(double v) { return v * 1e-3 * si::kilogram; }
[[nodiscard]] inline Duration seconds(double v) { return v * si::second; }
[[nodiscard]] inline Duration minutes(double v) { return v * 60.0 * si::second; }
[[nodiscard]] inline Temperature kelvin(double v) { return v * boost::units::absolute<si::temperature>(); }
[[nodiscard]] inline Temperature celsius(double v) { return kelvin(v + zeroCelsiusInKelvin); }
[[nodiscard]] inline TemperatureStep kelvinStep(double v) { return v * si::kelvin; }
[[nodiscard]] inline Density gramsPerMillilitre(double v) { return v * 1000.0 * si::kilogram / si::cubic_metre; }
[[nodiscard]] inline Density kilogramsPerCubicMetre(double v) { return v * si::kilogram / si::cubic_metre; }
[[nodiscard]] inline LinearDensity milligramsPerMillimetre(double v) { return v * 1e-3 * si::kilogram / si::metre; }
[[nodiscard]] inline MassRate gramsPerMinute(double v) { return v * 1e-3 / 60.0 * si::kilogram / si::second; }
[[nodiscard]] inline SpecificEnergy joulesPerKilogram(double v) { return v * si::joule / si::kilogram; }
[[nodiscard]] inline SpecificHeat joulesPerKilogramKelvin(double v)
{
    return v * si::joule / si::kilogram / si::kelvin;
}
[[nodiscard]] inline Conductivity wattsPerMetreKelvin(double v) { return v * si::watt / si::metre / si::kelvin; }
[[nodiscard]] inline HeatTransfer wattsPerSquareMetreKelvin(double v)
{
    return v * si::watt / si::square_metre / si::kelvin;
}

// Readers: a quantity becomes a number in the unit that the name says.
[[nodiscard]] inline double inMetres(Length q) { return q.value(); }
[[nodiscard]] inline double inMillimetres(Length q) { return q.value() * 1e3; }
[[nodiscard]] inline double inInches(Length q) { return q.value() / 25.4e-3; }
[[nodiscard]] inline double inSquareMillimetres(Area q) { return q.value() * 1e6; }
[[nodiscard]] inline double inMillilitres(Volume q) { return q.value() * 1e6; }
[[nodiscard]] inline double inGrams(Mass q) { return q.value() * 1e3; }
[[nodiscard]] inline double inSeconds(Duration q) { return q.value(); }
[[nodiscard]] inline double inMinutes(Duration q) { return q.value() / 60.0; }
[[nodiscard]] inline double inKelvin(Temperature q) { return q.value(); }
[[nodiscard]] inline double inCelsius(Temperature q) { return q.value() - zeroCelsiusInKelvin; }
[[nodiscard]] inline double inFahrenheit(Temperature q) { return inCelsius(q) * 1.8 + 32.0; }
[[nodiscard]] inline double inKelvinStep(TemperatureStep q) { return q.value(); }
[[nodiscard]] inline double inGramsPerMillilitre(Density q) { return q.value() / 1000.0; }
[[nodiscard]] inline double inKilogramsPerCubicMetre(Density q) { return q.value(); }
[[nodiscard]] inline double inMilligramsPerMillimetre(LinearDensity q) { return q.value() * 1e3; }
[[nodiscard]] inline double inGramsPerMinute(MassRate q) { return q.value() * 60e3; }

} // namespace strandbench
