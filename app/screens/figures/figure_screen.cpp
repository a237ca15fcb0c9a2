// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figure_screen.h"

#include "screens/figures/figure_charts.h"
#include "screens/figures/figure_table.h"
#include "screens/job/in_hand.h"
#include "screens/frame/side_key.h"
#include "words/stock_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double readingWide = 13.5; // mm: three lines at their least
constexpr double readingUpright = 24;

} // namespace

FigureScreen::FigureScreen(const Surroundings& around, const FigureAsked& asked, QWidget* parent)
    : RepairsScreen(around, u"screen_figure_"_s + codeOf(asked.kind), asked.period, parent), m_asked(asked)
{
    buildAround(titleOf(asked));
    m_card = card(u"figure_card"_s);
    auto* inside = new QVBoxLayout(m_card);
    inside->setContentsMargins(px(1), px(0.5), px(1), px(0.5));
    m_reading = label(u"figure_reading"_s, TextRole::Body);
    m_rows = new PagedRows(around, figureRowHeight(around), this);
    body()->addWidget(m_card, 1);
    body()->addWidget(m_reading);
    body()->addWidget(m_rows, 1);
    if (asked.kind == FigureKind::Gel) {
        m_turn = makeSideKey(theme(), {u"figure_turn"_s, {}, {}, Pictogram::None, [this] { turn(); }}, this);
        addKey(m_turn);
    }
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { showTable(!m_table); });
    read();
}

QString FigureScreen::titleOf(const FigureAsked& asked) const
{
    if (asked.kind != FigureKind::Gel)
        return figureQuestion(asked.kind);
    //: %1 is a lot of hardener
    return tr("Is lot %1 drifting?").arg(inhand::shownLot(asked.lot.hardenerLot));
}

Worker::Work FigureScreen::workOn(const Repairs& repairs)
{
    return [this, asked = m_asked, repairs] { return [this, found = findFigure(asked, *repairs)] { show(found); }; };
}

void FigureScreen::show(const FigureFound& found)
{
    const Catalogue& catalogue = around().bench.planning().catalogue;
    m_found = found;
    m_told = tellFigure(m_asked, found, words(), catalogue);
    m_reading->setText(m_told.reading);
    std::vector<PagedRows::MakeRow> rows;
    for (const FigureRow& each : m_told.rows)
        rows.push_back(figureRow(around(), each, rows.size()));
    m_rows->setRows(std::move(rows));
    if (m_asked.kind == FigureKind::Gel)
        setContext(stockProductName(m_asked.lot.sheetId, catalogue) + u" · "_s + daysText());
    makeChart();
    showTable(m_table);
}

void FigureScreen::makeChart()
{
    delete std::exchange(m_chart, nullptr);
    if (m_told.rows.empty())
        return;
    m_chart = makeFigureChart(theme(), m_asked, m_found, m_shows, words(), around().bench.planning().catalogue, m_card);
    m_card->layout()->addWidget(m_chart);
    m_chart->show();
}

void FigureScreen::showTable(bool table)
{
    const bool any = !m_told.rows.empty();
    m_table = table && any;
    m_card->setVisible(any && !m_table);
    m_reading->setVisible(!m_table);
    const int height = px(around().upright ? readingUpright : readingWide);
    m_reading->setMinimumHeight(any ? height : 0); // of one height: the chart has the rest, however long it is
    m_reading->setMaximumHeight(any ? height : QWIDGETSIZE_MAX);
    m_rows->setVisible(m_table);
    answers()->setWayOn(!any ? QString() : m_table ? tr("Show the chart") : tr("Show the table"));
    if (!m_turn)
        return;
    m_turn->setVisible(any && !m_table);
    const bool values = m_shows == DriftChart::Shows::Values;
    m_turn->setTitle(values ? tr("Moving range") : tr("Single gels"));
    m_turn->setSecondLine(values ? tr("the step from gel to gel") : tr("with the moving mean"));
}

void FigureScreen::turn()
{
    m_shows = m_shows == DriftChart::Shows::Values ? DriftChart::Shows::Ranges : DriftChart::Shows::Values;
    makeChart();
    showTable(false);
}

} // namespace strandbench
