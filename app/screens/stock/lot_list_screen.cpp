// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/lot_list_screen.h"

#include "screens/job/in_hand.h"
#include "screens/frame/phrases.h"
#include "theme/sizes.h"
#include "words/lot_words.h"
#include "words/sheet_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {

QString lotTitle(const LotOfProduct& lot, const Surroundings& around)
{
    const ProductSheet* sheet = around.bench.planning().catalogue.byId(lot.sheetId);
    return QCoreApplication::translate("LotListScreen", "%1 · hardener lot %2")
        .arg(sheet ? SheetWords::sheetName(*sheet) : lot.sheetId, inhand::shownLot(lot.hardenerLot));
}

LotListScreen::LotListScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_lot_list"_s, parent)
{
    const std::vector<LotOfProduct> lots = around.bench.lots().lots();
    buildFrame(tr("Hardener lots of this bench"), tr("Tap a lot to see what it taught"));
    if (lots.empty()) {
        content()->addWidget(label(u"lot_list_none"_s, TextRole::Body,
                                   tr("No batch yet whose hardener lot was told. It is told at the mix.")));
    } else {
        auto* rows = new PagedRows(around, sizes::target, this);
        std::vector<PagedRows::MakeRow> all;
        for (const LotOfProduct& each : lots)
            all.push_back(rowOf(each, all.size()));
        rows->setRows(std::move(all));
        content()->addWidget(rows, 1);
    }
    answers()->setWayOn({});
    answers()->stop()->hide();
}

PagedRows::MakeRow LotListScreen::rowOf(const LotOfProduct& lot, std::size_t index)
{
    const ProductSheet* sheet = around().bench.planning().catalogue.byId(lot.sheetId);
    QString second = tr("its sheet is not loaded");
    if (sheet) {
        const LotBelief belief = around().bench.lots().beliefOf(*sheet, lot.hardenerLot);
        second = rateText(belief.rate.mean, words()) + u", "_s + phrases::source(belief.batches, belief.otherLots);
    }
    return [this, lot, second, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"lot_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(lotTitle(lot, around()));
        row->setSecondLine(Words::title(second));
        row->setTitleSize({4.6, 3.4});
        connect(row, &TapButton::clicked, this, [this, lot] { Q_EMIT lotTapped(lot); });
        return row;
    };
}

} // namespace strandbench
