// SPDX-License-Identifier: GPL-3.0-or-later
// Every assumption of ours with its code, its unit and what it may be changed to: one list, from which the file is
// read and written and the set-up shows its rows.
#pragma once

#include "plan/assumptions.h"
#include "quantity/fault.h"

#include <QString>

#include <functional>
#include <variant>
#include <vector>

namespace strandbench {

using AssumptionValue = std::variant<Length, Mass, Duration, Temperature, TemperatureStep, Fraction, MassRate, Density,
                                     SpecificHeat, Conductivity, HeatTransfer, Volume, Rate>;

struct AssumptionEntry {
    QString code;           ///< its unit at the end, as files name it: "kneading_s"
    QString unit;           ///< of its number: "s"
    bool published = false; ///< a figure from a table, whose source stands in assumptions.h; the others are ours
    AssumptionValue least;
    AssumptionValue most;
    std::function<AssumptionValue(const Assumptions&)> get;
    std::function<void(Assumptions&, const AssumptionValue&)> put;
    std::function<double(const AssumptionValue&)> rawNumber; ///< in the entry's unit
    std::function<AssumptionValue(double)> value;            ///< of a number in the entry's unit

    [[nodiscard]] AssumptionValue byDefault() const { return get(Assumptions{}); }
    /// The number in the entry's unit to six decimals: what is stored, so that what is read again is the same.
    [[nodiscard]] double number(const AssumptionValue& of) const;
    [[nodiscard]] double numberOf(const Assumptions& assumptions) const { return number(get(assumptions)); }
    [[nodiscard]] bool isDefault(const Assumptions& assumptions) const;
};

/// In the order of a repair: hands, board, build, holes and dents, air, heat; then the room.
[[nodiscard]] const std::vector<AssumptionEntry>& assumptionTable();
/// Null when there is none of this code.
[[nodiscard]] const AssumptionEntry* findAssumption(const QString& code);

/// The assumptions with one of them changed to a number in its unit. OutOfRange names the ends in that unit;
/// Conflicts names the other assumption that it would contradict, and that one's number.
[[nodiscard]] Checked<Assumptions> changed(const Assumptions& assumptions, const AssumptionEntry& entry, double number);

/// Every pair that contradicts each other, one Conflicts fault each; none in the default.
[[nodiscard]] Faults contradictions(const Assumptions& assumptions);

/// True when every assumption of the table has the same number in both.
[[nodiscard]] bool sameAssumptions(const Assumptions& a, const Assumptions& b);

} // namespace strandbench
