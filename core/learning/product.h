// SPDX-License-Identifier: GPL-3.0-or-later
// What is believed of a lot before its first batch: from the sheet's range, and from the other lots of the product.
#pragma once

#include "learning/lot.h"
#include "material/sheet.h"

namespace strandbench {

/// From the range of the working time, read as two spreads either way of the log rate; the sheet's own time is its
/// middle. A sheet without a range is as wide as rules.sheetAtLeast.
[[nodiscard]] Belief priorOf(const ProductSheet& sheet, const LearningRules& rules = {});

/// What the gels of one lot come to.
struct LotMean {
    LogRate mean;
    int batches = 0; ///< at least 1
};

/// The counted gels of a lot. Empty when none was, and of a lot that turned out to be different: it says nothing of
/// the next.
[[nodiscard]] std::optional<LotMean> meanOf(const LotLearnt& learnt, const std::vector<BatchTold>& batches);

/// A lot that nothing is known of but its product's other lots: the product's mean, as they and the sheet make it, and
/// lots scattered about it. Without another lot it is the sheet's own prior.
[[nodiscard]] Belief priorOfNewLot(const Belief& sheet, const std::vector<LotMean>& others,
                                   const LearningRules& rules = {});

} // namespace strandbench
