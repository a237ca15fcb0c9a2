// SPDX-License-Identifier: GPL-3.0-or-later
// A cure case of filler that reacts faster or slower than its sheet says.
#pragma once

#include "cure/cure_case.h"
#include "learning/log_rate.h"

namespace strandbench {

/// The same case with its reaction so much faster; heat, stack and air stay.
[[nodiscard]] CureCase atRate(const CureCase& sheet, LogRate rate);

} // namespace strandbench
