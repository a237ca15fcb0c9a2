// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cure/cure_case.h"
#include "quantity/fault.h"

namespace strandbench {

/// The k1 and k2 for which the model gives exactly a sheet's working time and sanding time on their test pieces
/// (test_piece.h): damped Newton on the logarithms, bracketing where that does not settle. About 10 ms.
/// Faults: "sanding_min.nominal" out of range, with the sanding times in minutes that would fit the working time;
/// or in conflict with "cure.max_conversion_at_reference" when a ceiling so low is never sanded.
[[nodiscard]] Checked<CureKinetics> calibrate(const ProductSheet& sheet);

} // namespace strandbench
