// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as a person types and reads them: metric and US customary, decimal comma and point.
// The symbols mm, in, g, oz, °C, °F, ml, fl oz and % are international and are not translated.
#pragma once

#include "quantity/codes.h"
#include "quantity/fault.h"
#include "quantity/quantity.h"

#include <QLocale>
#include <QString>

namespace strandbench {

enum class UnitSystem { Metric, UsCustomary };
template <> struct Codes<UnitSystem> {
    static constexpr std::array<std::pair<UnitSystem, const char*>, 2> table{{
        {UnitSystem::Metric, "metric"},
        {UnitSystem::UsCustomary, "us"},
    }};
};

// Exact conversions: NIST SP 811 (2008), appendix B.8. The US fluid ounce is 231/128 cubic inch.
[[nodiscard]] inline Mass ounces(double v) { return grams(v * 28.349523125); }
[[nodiscard]] inline Mass pounds(double v) { return grams(v * 453.59237); }
[[nodiscard]] inline Length feet(double v) { return inches(v * 12.0); }
[[nodiscard]] inline Volume fluidOunces(double v) { return millilitres(v * 29.5735295625); }
[[nodiscard]] inline Temperature fahrenheit(double v) { return celsius((v - 32.0) / 1.8); }
[[nodiscard]] inline double inOunces(Mass q) { return inGrams(q) / 28.349523125; }
[[nodiscard]] inline double inPounds(Mass q) { return inGrams(q) / 453.59237; }
[[nodiscard]] inline double inFluidOunces(Volume q) { return inMillilitres(q) / 29.5735295625; }
[[nodiscard]] inline double inFahrenheitStep(TemperatureStep q) { return inKelvinStep(q) * 1.8; }

/// What a reader lets through, both ends included. A value beyond is an OutOfRange fault that gives the
/// ends in the unit that was typed.
template <class Q> struct Range {
    Q lowest;
    Q highest;
};

// What is readable at all, when the caller knows nothing narrower.
[[nodiscard]] inline Range<double> anyNumber() { return {-1e9, 1e9}; }
[[nodiscard]] inline Range<Length> anyLength() { return {millimetres(0), metres(100)}; }
[[nodiscard]] inline Range<Mass> anyMass() { return {grams(0), grams(1e6)}; }
[[nodiscard]] inline Range<Temperature> anyTemperature() { return {celsius(-100), celsius(500)}; }
[[nodiscard]] inline Range<Fraction> anyPercent() { return {Fraction(), Fraction::ofHundred(100)}; }
[[nodiscard]] inline Range<Duration> anyDuration() { return {seconds(0), minutes(7 * 24 * 60)}; }

// Readers. A number has at most one decimal sign, comma or point; digits are never grouped ("1,234" is a
// little over one). A unit may follow. Faults: Empty, TooLong (over 40 characters), NotReadable (allowed: an
// example), OutOfRange. Letters of a unit may be small or large.

/// A bare number, a ratio for one: no unit. May be negative.
[[nodiscard]] Checked<double> parseNumber(const QString& text, const QString& field,
                                          const Range<double>& allowed = anyNumber());
/// Units mm, cm, m, in, ", ft, '; without one: mm or in. In inches fractions too: "2 5/16", "5/16", "2-5/16".
[[nodiscard]] Checked<Length> parseLength(const QString& text, UnitSystem system, const QString& field,
                                          const Range<Length>& allowed = anyLength());
/// Units g, kg, oz, lb; without one: g or oz.
[[nodiscard]] Checked<Mass> parseMass(const QString& text, UnitSystem system, const QString& field,
                                      const Range<Mass>& allowed = anyMass());
/// Units °C, C, °F, F; without one: °C or °F. May be negative.
[[nodiscard]] Checked<Temperature> parseTemperature(const QString& text, UnitSystem system, const QString& field,
                                                    const Range<Temperature>& allowed = anyTemperature());
/// A percentage, with or without its sign.
[[nodiscard]] Checked<Fraction> parsePercent(const QString& text, const QString& field,
                                             const Range<Fraction>& allowed = anyPercent());
/// Units s, min, h; without one: minutes. Or mm:ss, or h:mm:ss.
[[nodiscard]] Checked<Duration> parseDuration(const QString& text, const QString& field,
                                              const Range<Duration>& allowed = anyDuration());

/// A figure and its unit, apart, so that a screen can set them in two sizes.
struct Printed {
    QString figure;
    QString unit;
    bool operator==(const Printed&) const = default;
    /// Figure and unit with a no-break space between them, and within a mixed fraction.
    [[nodiscard]] QString joined() const;
};

/// From an hour on: hours of their own, or minutes counted on.
enum class DurationStyle { HoursApart, MinutesOn };

// Writers. The locale gives the decimal sign; digits are not grouped. Halves are rounded away from zero.

/// Whole millimetres, below 10 mm to 0.1 mm; or to 1/16 in as a fraction ("2 5/16"). Nothing is "0", and
/// what is not nothing but less than half a sixteenth is given to 0.01 in.
[[nodiscard]] Printed printLength(Length length, UnitSystem system, const QLocale& locale);
/// To 0.1 mm; or to 1/32 in as a fraction: panels, lifts, drills.
[[nodiscard]] Printed printFineLength(Length length, UnitSystem system, const QLocale& locale);
/// To 0.1 mm, or to 0.01 in: what a thickness gauge shows.
[[nodiscard]] Printed printThickness(Length length, UnitSystem system, const QLocale& locale);
/// To 0.1 g, from 10 kg to 0.01 kg; or to 0.01 oz, from 20 lb to 0.01 lb.
[[nodiscard]] Printed printMass(Mass mass, UnitSystem system, const QLocale& locale);
/// Hardener as a small scale weighs it: to 0.05 g, below 1 g to 0.01 g; or to 0.001 oz (0.03 g).
[[nodiscard]] Printed printHardener(Mass mass, UnitSystem system, const QLocale& locale);
/// To half a degree, with a decimal only where there is one; or to 1 °F.
[[nodiscard]] Printed printTemperature(Temperature temperature, UnitSystem system, const QLocale& locale);
/// To 0.1 °C or 0.1 °F: for a reading beside a limit that it may miss by little.
[[nodiscard]] Printed printFineTemperature(Temperature temperature, UnitSystem system, const QLocale& locale);
/// A difference, to 0.1 °C or 0.1 °F and never rounded up: a margin just short of its least must not read
/// as if it were enough.
[[nodiscard]] Printed printTemperatureStep(TemperatureStep step, UnitSystem system, const QLocale& locale);
/// To 0.1 ml, or to 0.01 US fl oz.
[[nodiscard]] Printed printVolume(Volume volume, UnitSystem system, const QLocale& locale);
/// A percentage, to 0.1 with a decimal only where there is one.
[[nodiscard]] Printed printPercent(Fraction fraction, const QLocale& locale);
/// mm:ss, from an hour on h:mm:ss or minutes counted on. To the nearest second; needs no unit.
[[nodiscard]] QString printDuration(Duration duration, DurationStyle style = DurationStyle::HoursApart);

/// A plain number to so many decimals, with the locale's decimal sign and no grouping.
[[nodiscard]] QString printNumber(double value, int decimals, const QLocale& locale);

// The unit of a figure that is not there yet.
[[nodiscard]] QString lengthUnit(UnitSystem system);
[[nodiscard]] QString massUnit(UnitSystem system);
[[nodiscard]] QString temperatureUnit(UnitSystem system);
[[nodiscard]] QString volumeUnit(UnitSystem system);

} // namespace strandbench
