// SPDX-License-Identifier: GPL-3.0-or-later
// What the figures of several screens have in common: a quantity read and printed within its range, the unit that
// stands beside it, and the step of the large keys.
#pragma once

#include "screens/job/figures_screen.h"

namespace strandbench {

/// Range, printing and reading of a quantity. The figure's name must stand: faults name it.
template <class Q>
void wire(FigureSpec& figure, const Range<Q>& allowed, const Words& words, const std::function<Printed(Q)>& print,
          Checked<Q> (*parse)(const QString&, UnitSystem, const QString&, const Range<Q>&))
{
    figure.lowest = allowed.lowest.value();
    figure.highest = allowed.highest.value();
    figure.print = [print](double value) { return print(Q::from_value(value)); };
    figure.read = [name = figure.name, words, parse, allowed](const QString& text) {
        return parse(text, words.units(), name, allowed).map([](Q q) { return q.value(); });
    };
}

/// The same, printed as quantity/units.h prints it.
template <class Q>
void wire(FigureSpec& figure, const Range<Q>& allowed, const Words& words,
          Printed (*print)(Q, UnitSystem, const QLocale&),
          Checked<Q> (*parse)(const QString&, UnitSystem, const QString&, const Range<Q>&))
{
    wire<Q>(figure, allowed, words,
            std::function<Printed(Q)>([words, print](Q q) { return print(q, words.units(), words.locale()); }), parse);
}

/// Millimetres or sixteenths of an inch.
inline void inLengths(FigureSpec& figure, const Words& words)
{
    const bool us = words.units() == UnitSystem::UsCustomary;
    figure.step = inMetres(us ? inches(1.0 / 16.0) : millimetres(1));
    figure.unit = [units = words.units()] { return lengthUnit(units); };
}

/// Half degrees Celsius or degrees Fahrenheit.
inline void inTemperatures(FigureSpec& figure, const Words& words)
{
    const bool us = words.units() == UnitSystem::UsCustomary;
    figure.step = us ? 1.0 / 1.8 : 0.5;
    figure.unit = [us] { return us ? QStringLiteral("°F") : QStringLiteral("°C"); };
}

/// Grams or ounces. fine: of hardener, a hundredth of a gram or a thousandth of an ounce.
inline void inMasses(FigureSpec& figure, const Words& words, bool fine)
{
    const bool us = words.units() == UnitSystem::UsCustomary;
    figure.step = us ? ounces(fine ? 0.001 : 0.1).value() : grams(fine ? 0.01 : 1).value();
    figure.unit = [units = words.units()] { return massUnit(units); };
}

} // namespace strandbench
