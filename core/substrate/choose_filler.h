// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "substrate/decision.h"

namespace strandbench {

/// The filler that the table and the sheets leave for a substrate and a damage that are both answered.
/// Fills in filler, sheet, reasons and rejected; filler stays empty when none remains.
void chooseFiller(Decision& decision, const Assessment& assessment, const DecisionTable& table,
                  const Catalogue& catalogue, const DecisionLimits& limits);

} // namespace strandbench
