// SPDX-License-Identifier: GPL-3.0-or-later
// One figure of the supervisor's: its question, the chart, what that says in plain words, and the table behind it.
#pragma once

#include "screens/figures/drift_chart.h"
#include "screens/figures/figure_told.h"
#include "screens/frame/paged_rows.h"
#include "screens/figures/repairs_screen.h"

namespace strandbench {

class FigureChart;

class FigureScreen final : public RepairsScreen {
    Q_OBJECT
public:
    FigureScreen(const Surroundings& around, const FigureAsked& asked, QWidget* parent = nullptr);

protected:
    [[nodiscard]] Worker::Work workOn(const Repairs& repairs) override;

private:
    void show(const FigureFound& found);
    void makeChart();
    void showTable(bool table);
    void turn(); ///< to the other chart of a lot
    [[nodiscard]] QString titleOf(const FigureAsked& asked) const;

    FigureAsked m_asked;
    FigureFound m_found;
    FigureTold m_told;
    DriftChart::Shows m_shows = DriftChart::Shows::Values;
    bool m_table = false;
    Card* m_card = nullptr;
    FigureChart* m_chart = nullptr;
    FitLabel* m_reading = nullptr;
    PagedRows* m_rows = nullptr;
    TapButton* m_turn = nullptr; ///< of Gel alone
};

} // namespace strandbench
