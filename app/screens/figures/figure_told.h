// SPDX-License-Identifier: GPL-3.0-or-later
// What a figure says: one or two plain sentences, and the rows of the table behind its chart.
#pragma once

#include "material/catalogue.h"
#include "screens/figures/figure_found.h"
#include "words/words.h"

namespace strandbench {

struct FigureRow {
    QString lead;
    QString rest;
    bool marked = false; ///< stands out in the chart
};

struct FigureTold {
    QString reading;             ///< with too few data: what is missing
    std::vector<FigureRow> rows; ///< empty: too few data for a chart
};

/// The question that a figure answers; it is its title.
[[nodiscard]] QString figureQuestion(FigureKind kind);
[[nodiscard]] FigureTold tellFigure(const FigureAsked& asked, const FigureFound& found, const Words& words,
                                    const Catalogue& catalogue);
/// Of a lot's gels; part of the above.
[[nodiscard]] FigureTold tellGels(const FigureFound& found, const Words& words);
/// "12 % of 340 g" and the like go by this: how much of what was mixed the plan had not asked for.
[[nodiscard]] Fraction wasteOf(const MaterialUsed& used);

} // namespace strandbench
