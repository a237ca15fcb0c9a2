// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/number_option.h"

#include "exchange/strict_json.h"

#include <QLocale>
#include <QRegularExpression>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::headless {

std::optional<double> numberOption(const Arguments& arguments, const QString& name, const NumberRange& range,
                                   Faults& faults)
{
    if (!arguments.options.contains(name))
        return std::nullopt;
    const QString field = u"--"_s + name;
    const QString text = arguments.options.value(name);
    // toDouble() would also take spaces, "inf" and "nan".
    static const QRegularExpression shape(u"\\A[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?\\z"_s);
    if (!shape.match(text).hasMatch()) {
        faults.push_back({field, text, FaultKind::NotReadable, {u"12.5"_s}});
        return std::nullopt;
    }
    const double value = QLocale::c().toDouble(text);
    const bool tooLow = range.lowestExcluded ? value <= range.lowest : value < range.lowest;
    if (!std::isfinite(value) || tooLow || value > range.highest) {
        const QString lowest = (range.lowestExcluded ? u"> "_s : QString()) + plainNumber(range.lowest);
        faults.push_back({field, text, FaultKind::OutOfRange, {lowest, plainNumber(range.highest), range.unit}});
        return std::nullopt;
    }
    return value;
}

std::optional<double> requiredNumber(const Arguments& arguments, const QString& name, const NumberRange& range,
                                     Faults& faults)
{
    if (!arguments.options.contains(name))
        faults.push_back({u"--"_s + name, {}, FaultKind::Missing, {u"number"_s, range.unit}});
    return numberOption(arguments, name, range, faults);
}

} // namespace strandbench::headless
