// SPDX-License-Identifier: GPL-3.0-or-later
// The bench's assumptions as a file: what was changed from the default, and what held before for batches that run.
//
//     { "format": 1,
//       "changed": { "kneading_s": 60 },
//       "earlier": [ { "until_utc_ms": 1789300000000, "changed": {} } ] }
#pragma once

#include "clock/assumption_book.h"
#include "quantity/fault.h"

#include <QByteArray>

namespace strandbench {

struct ReadAssumptions {
    AssumptionBook book; ///< the default stands for every value that is named in faults
    Faults faults;
};

/// Reads strictly, all faults at once: a key that is not known, a value of another kind or beyond its range, two values
/// that contradict each other. What is good is taken; an earlier set with a fault is left out, being of no more use.
[[nodiscard]] ReadAssumptions readAssumptions(const QByteArray& json);

[[nodiscard]] QByteArray writeAssumptions(const AssumptionBook& book);

} // namespace strandbench
