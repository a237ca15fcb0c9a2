// SPDX-License-Identifier: GPL-3.0-or-later
// What many repairs say: the questions, and the figure that answers each.
#include "screens/figures/figure_screen.h"
#include "screens/figures/figures_list.h"
#include "shell/bench_window.h"

namespace strandbench {

void BenchWindow::followReading(const RepairsScreen& screen)
{
    connect(&screen, &RepairsScreen::periodChosen, this, [this](FigurePeriod wanted) { m_figures.period = wanted; });
    connect(&screen, &RepairsScreen::readingStopped, this, [this] { place(Place::Figures); });
}

Screen* BenchWindow::makeFigures()
{
    switch (m_place) {
    case Place::Figure: {
        auto* screen = new FigureScreen(*m_around, m_figures, this);
        followReading(*screen);
        return screen;
    }
    case Place::FigureLot: {
        auto* screen = new FigureLotScreen(*m_around, m_figures.period, this);
        followReading(*screen);
        connect(screen, &FigureLotScreen::lotTapped, this, [this](const GelLot& lot) {
            m_figures.lot = lot;
            place(Place::Figure);
        });
        return screen;
    }
    default:
        break;
    }
    auto* screen = new FigureListScreen(*m_around, this);
    connect(screen, &FigureListScreen::figureTapped, this, [this](FigureKind kind) {
        m_figures.kind = kind;
        place(kind == FigureKind::Gel ? Place::FigureLot : Place::Figure);
    });
    return screen;
}

} // namespace strandbench
