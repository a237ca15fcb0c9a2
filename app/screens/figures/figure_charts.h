// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of each figure.
#pragma once

#include "screens/figures/bar_chart.h"
#include "screens/figures/drift_chart.h"
#include "screens/figures/figure_told.h"

namespace strandbench {

/// Bars of what was found; of every kind but Gel.
[[nodiscard]] BarFigure barFigure(FigureKind kind, const FigureFound& found, const Words& words,
                                  const Catalogue& catalogue);
[[nodiscard]] DriftChart::Names driftNames(const Words& words);

/// The chart, named and described by what it says. found: with data enough, as tellFigure() says.
[[nodiscard]] FigureChart* makeFigureChart(const Theme& theme, const FigureAsked& asked, const FigureFound& found,
                                           DriftChart::Shows shows, const Words& words, const Catalogue& catalogue,
                                           QWidget* parent);

} // namespace strandbench
