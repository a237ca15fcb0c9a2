// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cure/cure_case.h"

#include <functional>
#include <optional>

namespace strandbench {

/// The greatest lift whose peak stays under `limit`, and every thinner one's with it: a coarse scan from thin to
/// thick, then bisection where the peak first passes the limit (it need not rise with thickness throughout).
/// Never above `most`. Empty when even the thinnest looked at, a tenth of `most`, is too hot, or a case has
/// no result. `caseOf` makes the case of a lift of so much.
[[nodiscard]] std::optional<Length> greatestLift(const std::function<CureCase(Length)>& caseOf, Temperature limit,
                                                 Length most);

} // namespace strandbench
