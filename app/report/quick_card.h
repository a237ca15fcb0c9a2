// SPDX-License-Identifier: GPL-3.0-or-later
// The quick card: one page with the job in steps and the limits that the program goes by, for the wall at the bench.
#pragma once

#include "material/sheet.h"
#include "plan/assumptions.h"
#include "report/print_pdf.h"
#include "words/words.h"

namespace strandbench {

/// What the card says, its own.
struct QuickCardFacts {
    std::vector<ProductSheet> sheets; ///< in use
    Assumptions assumptions;
    Words words;
    QString day; ///< "YYYY-MM-DD", when it was made
};

/// So many products stand on the card; of more it says how many are left out.
inline constexpr std::size_t productsOnCard = 8;

/// The card as the bytes of a PDF; empty when it was stopped.
[[nodiscard]] QByteArray quickCardPdf(Paper paper, const QuickCardFacts& facts, const std::stop_token& stop = {});
[[nodiscard]] PrintEnd printQuickCard(QPagedPaintDevice& device, const QuickCardFacts& facts,
                                      const std::stop_token& stop = {});

} // namespace strandbench
