// SPDX-License-Identifier: GPL-3.0-or-later
// Pages of pairs, a word over what is told of it, on two cards: side by side, or below each other on an upright glass.
#pragma once

#include "screens/frame/paged_rows.h"

namespace strandbench {

struct PairOnPage {
    QString name; ///< object name
    QString lead;
    QString told;
    std::function<QWidget*(QWidget* card)> sign; ///< beside them; may be empty
};

/// cards: their object names, "_0" and "_1" follow. perCard: above 0. The last page may hold one card alone.
[[nodiscard]] PagedRows* pairPages(const Surroundings& around, const QString& cards, std::size_t perCard,
                                   const std::vector<PairOnPage>& pairs, QWidget* parent);

} // namespace strandbench
