// SPDX-License-Identifier: GPL-3.0-or-later
// The pieces of a fault's line; only app/words includes this, everybody else asks Words.
#pragma once

#include "quantity/fault.h"

namespace strandbench::words {

/// One line naming field, value and what is allowed; `shownField` is the name to show for it.
[[nodiscard]] QString faultLine(const Fault& fault, const QString& shownField);

/// A person's name for a field ("damage.length_mm": "length"); the field itself where it has none.
[[nodiscard]] QString fieldName(const QString& field);

} // namespace strandbench::words
