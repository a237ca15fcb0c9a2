// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "material/sheet.h"

namespace strandbench {

/// The factor by which a rate at this temperature and hardener exceeds the sheet's reference: A(T) phi(c).
[[nodiscard]] double rateFactor(const ProductSheet& sheet, Temperature temperature, Fraction hardener);

} // namespace strandbench
