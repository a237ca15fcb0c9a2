// SPDX-License-Identifier: GPL-3.0-or-later
// Decisions carry reasons: a code and its arguments. Codes are what events store; app/words renders them.
#pragma once

#include "quantity/quantity.h"

#include <QString>

#include <variant>
#include <vector>

namespace strandbench {

/// A number that is only a count ("2 batches").
struct Count {
    int value = 0;
    bool operator==(const Count&) const = default;
};

/// One argument of a reason. A QString is another code (a substrate, a filler class), never prose.
using Argument = std::variant<Length, Mass, Volume, Duration, Temperature, TemperatureStep, Fraction, Count, QString>;

struct Reason {
    QString code;
    std::vector<Argument> arguments;
    bool operator==(const Reason&) const = default;
};

using Reasons = std::vector<Reason>;

} // namespace strandbench
