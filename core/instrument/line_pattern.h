// SPDX-License-Identifier: GPL-3.0-or-later
// What a line of a scale or of a thermo-hygrometer says, by the pattern that the shop sets for its instrument.
#pragma once

#include "quantity/fault.h"
#include "quantity/quantity.h"

#include <QByteArray>
#include <QRegularExpression>
#include <QStringList>

#include <optional>

namespace strandbench {

/// What one line says. Absent: the pattern does not ask for it.
struct LineReading {
    std::optional<Mass> weight;             ///< -50 to 50 kg; below 0 with the pot taken off
    std::optional<Temperature> temperature; ///< -40 to 85 degC
    std::optional<Fraction> humidity;       ///< 0 to 1
    std::optional<bool> steady;             ///< as the instrument says of itself
    bool operator==(const LineReading&) const = default;
};

/// A pattern is the line as the instrument sends it, with a name in braces for each part that changes:
///
///     {weight:g}             a number of grams; also kg, oz, lb
///     {weight} {unit}        a number, and one of these units as the line names it
///     {temperature:C}        degrees Celsius, or F
///     {humidity}             percent
///     {steady:ST|US}         the word that stands when it is steady, and the one that stands when it is not
///     {any}                  what is not looked at: up to the next blank, or to the sign that follows it
///
/// A blank stands for one or more; those at the ends of a line, and those that pad a number, count for nothing.
/// Everything else is itself, and the whole line must fit. For a line such as "ST  +  58.42 g":
/// "{steady:ST|US} {weight} {unit}". Numbers have a point or a comma, no separator of thousands, and their sign may
/// stand apart.
class LinePattern {
public:
    static constexpr int longest = 80; ///< characters

    /// Faults of the field "pattern": Empty, TooLong, NotReadable (a brace without its other), UnknownKey (a name),
    /// NotOneOf (a unit), Conflicts (a name twice), Missing (nothing to read; a weight without its unit).
    [[nodiscard]] static Checked<LinePattern> of(const QString& pattern);

    [[nodiscard]] const QString& text() const { return m_text; }
    /// True when it reads this: "weight", "temperature" or "humidity".
    [[nodiscard]] bool asksFor(const QString& name) const { return m_names.contains(name); }
    /// Faults of the field "line" (NotReadable: it does not fit; allowed: the pattern), or of "weight", "temperature"
    /// or "humidity" (OutOfRange).
    [[nodiscard]] Checked<LineReading> read(const QByteArray& line) const;

private:
    class Builder;
    LinePattern() = default;

    QString m_text;
    QStringList m_names;
    QRegularExpression m_expression;
    QString m_weightUnit; ///< empty: the line names it
    QString m_temperatureUnit;
    QString m_steadyWord;
};

} // namespace strandbench
