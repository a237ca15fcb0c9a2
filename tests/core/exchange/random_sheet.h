// SPDX-License-Identifier: GPL-3.0-or-later
// Valid product sheets by chance: invented figures within what a sheet may hold, as test inputs alone.
#pragma once

#include "exchange/sheet_draft.h"

#include <random>

namespace strandbench::test {

[[nodiscard]] SheetDraft randomSheet(std::mt19937& dice);

} // namespace strandbench::test
