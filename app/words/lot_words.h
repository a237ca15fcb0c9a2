// SPDX-License-Identifier: GPL-3.0-or-later
// What a lot taught, in words.
#pragma once

#include "repair/lot_book.h"

#include <QString>

namespace strandbench {

class Words;

/// "cures 8 % faster than its sheet", "cures as its sheet says".
[[nodiscard]] QString rateText(LogRate rate, const Words& words);
/// "6 % slower to 23 % faster": the middle of a belief that holds this share of it.
[[nodiscard]] QString rateRangeText(const LogRateRange& range, const Words& words);
/// What became of a batch in the belief, and why: "counts", "held: too far off to be believed".
[[nodiscard]] QString lessonText(BatchLesson lesson);
/// "Batch 2, job 4421" or "Test pat".
[[nodiscard]] QString batchOfLotName(const BatchOfLot& batch, const Words& words);
/// What was told of it beside the sheet: "panel gelled after 05:42, by the sheet 06:20".
[[nodiscard]] QString batchOfLotTold(const BatchOfLot& batch, const Words& words);
/// A code of forgetReasons().
[[nodiscard]] QString forgetReasonText(const QString& code);

} // namespace strandbench
