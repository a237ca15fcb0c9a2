// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure of a record as a person reads it, told without the sheet.
#pragma once

#include "review/deviations.h"
#include "words/words.h"

namespace strandbench::test {

/// One entry for each time that a figure must be found.
[[nodiscard]] QStringList figuresOf(const JobRecord& record, const Words& words);

} // namespace strandbench::test
