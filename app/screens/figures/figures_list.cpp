// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figures_list.h"

#include "screens/figures/figure_told.h"
#include "screens/job/in_hand.h"
#include "theme/sizes.h"
#include "words/stock_words.h"

#include <QDateTime>
#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr TextSize rowTitle{4.6, 3.4};

QString howShown(FigureKind kind)
{
    switch (kind) {
    case FigureKind::Gel:
        return FigureListScreen::tr("gels of a lot against its sheet");
    case FigureKind::Material:
        return FigureListScreen::tr("planned and mixed, by product");
    case FigureKind::Right:
        return FigureListScreen::tr("signed off, not returned, by substrate");
    case FigureKind::Times:
        return FigureListScreen::tr("planned and actual, by part of the job");
    case FigureKind::Deviations:
        break;
    }
    return FigureListScreen::tr("deviations, the most frequent first");
}

} // namespace

FigureListScreen::FigureListScreen(const Surroundings& around, QWidget* parent)
    : Screen(around, u"screen_figures"_s, parent)
{
    buildFrame(tr("Figures of this bench’s log"), tr("What do you want to know?"));
    answers()->stop()->hide();
    answers()->setWayOn({});
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    const int columns = around.upright ? 1 : 3;
    int place = 0;
    for (const auto& [kind, code] : Codes<FigureKind>::table) {
        auto* key = new TapButton(theme(), u"figure_"_s + QString::fromLatin1(code), TapButton::Kind::Plain, this);
        key->setTitle(figureQuestion(kind));
        key->setSecondLine(howShown(kind));
        connect(key, &TapButton::clicked, this, [this, kind = kind] { Q_EMIT figureTapped(kind); });
        grid->addWidget(key, place / columns, place % columns);
        grid->setRowStretch(place / columns, 1);
        grid->setColumnStretch(place % columns, 1);
        ++place;
    }
    content()->addLayout(grid, 1);
}

FigureLotScreen::FigureLotScreen(const Surroundings& around, FigurePeriod period, QWidget* parent)
    : RepairsScreen(around, u"screen_figure_lot"_s, period, parent)
{
    buildAround(tr("Which lot? The newest gel first"));
    m_rows = new PagedRows(around, sizes::target, this);
    m_none = label(u"figure_no_lot"_s, TextRole::Body);
    m_none->hide();
    body()->addWidget(m_rows, 1);
    body()->addWidget(m_none, 1);
    read();
}

Worker::Work FigureLotScreen::workOn(const Repairs& repairs)
{
    return [this, repairs] { return [this, lots = gelLots(*repairs)] { show(lots); }; };
}

void FigureLotScreen::show(const std::vector<GelLotSeen>& lots)
{
    std::vector<PagedRows::MakeRow> rows;
    for (const GelLotSeen& each : lots)
        rows.push_back(rowOf(each, rows.size()));
    m_none->setText(tr("In these days no gel was told of a batch whose hardener lot is known."));
    m_none->setVisible(rows.empty());
    m_rows->setVisible(!rows.empty());
    m_rows->setRows(std::move(rows));
}

PagedRows::MakeRow FigureLotScreen::rowOf(const GelLotSeen& seen, std::size_t index)
{
    return [this, seen, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"figure_lot_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(inhand::shownLot(seen.lot.hardenerLot) + u" · "_s +
                      stockProductName(seen.lot.sheetId, around().bench.planning().catalogue));
        row->setSecondLine(tr("%n gel(s), the last on %1", nullptr, seen.gels)
                               .arg(stockDay(QDateTime::fromMSecsSinceEpoch(seen.lastUtcMs).date(), words())));
        row->setTitleSize(rowTitle);
        connect(row, &TapButton::clicked, this, [this, lot = seen.lot] { Q_EMIT lotTapped(lot); });
        return row;
    };
}

} // namespace strandbench
