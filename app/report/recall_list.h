// SPDX-License-Identifier: GPL-3.0-or-later
// Where a lot went: every batch that took of it, for a recall.
#pragma once

#include "repairlog/find_index.h"
#include "report/print_pdf.h"
#include "words/words.h"

namespace strandbench {

/// One batch a row, RFC 4180, UTF-8; ISO 8601 days and times in UTC, grams with a decimal point. A heading, no words
/// that depend on a language.
[[nodiscard]] QByteArray recallCsv(const std::vector<LotUse>& uses);

/// The same on paper, in the language and units of the words; empty when it was stopped. product: its name. Needs a
/// QGuiApplication; any thread, see print_pdf.h.
[[nodiscard]] QByteArray recallPdf(const StockLot& lot, const QString& product, const std::vector<LotUse>& uses,
                                   Paper paper, const Words& words, const std::stop_token& stop = {});

} // namespace strandbench
