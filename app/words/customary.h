// SPDX-License-Identifier: GPL-3.0-or-later
// Figures whose unit stands in a table: turned into the US customary one, and written without what says nothing.
#pragma once

#include "quantity/units.h"

#include <QLocale>
#include <QString>

#include <span>

namespace strandbench::words {

/// From a unit to the US customary one: shown = number * factor + offset.
struct Customary {
    const char* from;
    const char* unit;
    double factor;
    double offset;
};

/// Null for metric, and for the units that both systems share.
[[nodiscard]] const Customary* customaryOf(std::span<const Customary> table, const QString& unit, UnitSystem system);

/// To so many decimals at most, with a decimal point; no zeros at the end, no "-0".
[[nodiscard]] QString plainFigure(double number, int decimals);
/// Such a figure as a locale writes it, with a true minus.
[[nodiscard]] QString localFigure(QString plain, const QLocale& locale);

} // namespace strandbench::words
