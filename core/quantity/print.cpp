// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/units.h"

#include <cmath>
#include <numeric>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Absorbs what a conversion leaves of a decimal half (0.15 mm is stored as a hair less), in steps.
constexpr double hair = 1e-9;

/// The nearest whole number of steps; halves go away from zero.
double stepsOf(double value, double step)
{
    return std::copysign(std::floor(std::abs(value) / step + 0.5 + hair), value);
}

QString toStep(double value, double step, int decimals, const QLocale& locale)
{
    return printNumber(stepsOf(value, step) * step, decimals, locale);
}

/// One decimal where there is one, none where the figure is whole. value is a whole number of tenths.
QString tenths(double value, const QLocale& locale)
{
    const double count = stepsOf(value, 0.1);
    return printNumber(count / 10.0, std::fmod(count, 10.0) == 0.0 ? 0 : 1, locale);
}

/// A length of so many parts of an inch as a mixed fraction in lowest terms.
QString asFraction(qint64 parts, qint64 partsInInch)
{
    const qint64 whole = parts / partsInInch;
    const qint64 rest = parts % partsInInch;
    if (rest == 0)
        return QString::number(whole);
    const qint64 common = std::gcd(rest, partsInInch);
    const QString fraction = QString::number(rest / common) + u'/' + QString::number(partsInInch / common);
    return whole == 0 ? fraction : QString::number(whole) + u' ' + fraction;
}

/// To so many decimals; what rounds to nothing is a bare "0".
QString decimalOrZero(double value, double step, int decimals, const QLocale& locale)
{
    return stepsOf(value, step) == 0.0 ? u"0"_s : toStep(value, step, decimals, locale);
}

/// To 1/partsInInch in; what would vanish is given in hundredths instead.
QString inInchParts(Length length, int partsInInch, const QLocale& locale)
{
    const double value = inInches(length);
    const double parts = stepsOf(value, 1.0 / partsInInch);
    if (parts == 0.0)
        return decimalOrZero(value, 0.01, 2, locale);
    const QString figure = asFraction(static_cast<qint64>(std::abs(parts)), partsInInch);
    return parts < 0.0 ? locale.negativeSign() + figure : figure;
}

Printed degrees(Temperature temperature, UnitSystem system, double step, const QLocale& locale)
{
    const double value = system == UnitSystem::Metric ? inCelsius(temperature) : inFahrenheit(temperature);
    return {tenths(stepsOf(value, step) * step, locale), temperatureUnit(system)};
}

} // namespace

QString printNumber(double value, int decimals, const QLocale& locale)
{
    QLocale plain = locale;
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    const QString text = plain.toString(value, 'f', decimals);
    // "-0" and "-0.0" are nothing.
    return value < 0.0 && stepsOf(value, std::pow(10.0, -decimals)) == 0.0 ? plain.toString(0.0, 'f', decimals) : text;
}

QString Printed::joined() const
{
    constexpr QChar noBreak(QChar::Nbsp);
    QString text = figure;
    text.replace(u' ', noBreak);
    return unit.isEmpty() ? text : text + noBreak + unit;
}

Printed printLength(Length length, UnitSystem system, const QLocale& locale)
{
    if (system == UnitSystem::UsCustomary)
        return {inInchParts(length, 16, locale), lengthUnit(system)};
    const double value = inMillimetres(length);
    // Judged on what is printed: 9.96 mm reads 10, not 10.0.
    const bool small = std::abs(stepsOf(value, 0.1)) < 100.0;
    return {small ? decimalOrZero(value, 0.1, 1, locale) : toStep(value, 1.0, 0, locale), lengthUnit(system)};
}

Printed printFineLength(Length length, UnitSystem system, const QLocale& locale)
{
    if (system == UnitSystem::UsCustomary)
        return {inInchParts(length, 32, locale), lengthUnit(system)};
    return {decimalOrZero(inMillimetres(length), 0.1, 1, locale), lengthUnit(system)};
}

Printed printThickness(Length length, UnitSystem system, const QLocale& locale)
{
    if (system == UnitSystem::UsCustomary)
        return {decimalOrZero(inInches(length), 0.01, 2, locale), lengthUnit(system)};
    return printFineLength(length, system, locale);
}

Printed printMass(Mass mass, UnitSystem system, const QLocale& locale)
{
    if (system == UnitSystem::UsCustomary) {
        if (mass < pounds(20))
            return {toStep(inOunces(mass), 0.01, 2, locale), massUnit(system)};
        return {toStep(inPounds(mass), 0.01, 2, locale), u"lb"_s};
    }
    if (stepsOf(inGrams(mass), 0.1) < 1e5)
        return {toStep(inGrams(mass), 0.1, 1, locale), massUnit(system)};
    return {toStep(inGrams(mass) / 1000.0, 0.01, 2, locale), u"kg"_s};
}

Printed printHardener(Mass mass, UnitSystem system, const QLocale& locale)
{
    if (system == UnitSystem::UsCustomary)
        return {toStep(inOunces(mass), 0.001, 3, locale), massUnit(system)};
    const double step = inGrams(mass) < 1.0 ? 0.01 : 0.05;
    return {toStep(inGrams(mass), step, 2, locale), massUnit(system)};
}

Printed printTemperature(Temperature temperature, UnitSystem system, const QLocale& locale)
{
    return degrees(temperature, system, system == UnitSystem::Metric ? 0.5 : 1.0, locale);
}

Printed printFineTemperature(Temperature temperature, UnitSystem system, const QLocale& locale)
{
    return degrees(temperature, system, 0.1, locale);
}

Printed printTemperatureStep(TemperatureStep step, UnitSystem system, const QLocale& locale)
{
    const double value = system == UnitSystem::Metric ? inKelvinStep(step) : inFahrenheitStep(step);
    return {tenths(std::floor(value * 10.0 + hair) / 10.0, locale), temperatureUnit(system)};
}

Printed printVolume(Volume volume, UnitSystem system, const QLocale& locale)
{
    if (system == UnitSystem::UsCustomary)
        return {toStep(inFluidOunces(volume), 0.01, 2, locale), volumeUnit(system)};
    return {toStep(inMillilitres(volume), 0.1, 1, locale), volumeUnit(system)};
}

Printed printPercent(Fraction fraction, const QLocale& locale) { return {tenths(fraction.percent(), locale), u"%"_s}; }

QString printDuration(Duration duration, DurationStyle style)
{
    const auto all = static_cast<qint64>(stepsOf(inSeconds(duration), 1.0));
    const qint64 whole = std::abs(all);
    const auto twoDigits = [](qint64 value) { return QString::number(value).rightJustified(2, u'0'); };
    QString text = twoDigits(whole % 60);
    if (style == DurationStyle::MinutesOn || whole < 3600)
        text = twoDigits(whole / 60) + u':' + text;
    else
        text = QString::number(whole / 3600) + u':' + twoDigits(whole / 60 % 60) + u':' + text;
    return all < 0 ? u'-' + text : text;
}

QString lengthUnit(UnitSystem system) { return system == UnitSystem::Metric ? u"mm"_s : u"in"_s; }
QString massUnit(UnitSystem system) { return system == UnitSystem::Metric ? u"g"_s : u"oz"_s; }
QString temperatureUnit(UnitSystem system) { return system == UnitSystem::Metric ? u"°C"_s : u"°F"_s; }
QString volumeUnit(UnitSystem system) { return system == UnitSystem::Metric ? u"ml"_s : u"fl oz"_s; }

} // namespace strandbench
