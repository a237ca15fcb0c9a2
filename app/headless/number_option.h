// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers from the command line: a decimal point, digits, nothing else.
#pragma once

#include "headless/command.h"

namespace strandbench::headless {

/// A range, both ends allowed unless lowestExcluded.
struct NumberRange {
    double lowest = 0;
    double highest = 0;
    QString unit;
    bool lowestExcluded = false;
};

/// Reads an option as a number within a range. Empty when it was not given; a fault when it does not fit.
[[nodiscard]] std::optional<double> numberOption(const Arguments& arguments, const QString& name,
                                                 const NumberRange& range, Faults& faults);
/// The same for an option that must be there.
[[nodiscard]] std::optional<double> requiredNumber(const Arguments& arguments, const QString& name,
                                                   const NumberRange& range, Faults& faults);

} // namespace strandbench::headless
