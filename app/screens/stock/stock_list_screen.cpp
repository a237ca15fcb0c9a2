// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/stock_list_screen.h"

#include "screens/job/in_hand.h"
#include "screens/frame/side_key.h"
#include "screens/stock/stock_told.h"
#include "theme/sizes.h"
#include "words/stock_words.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr TextSize rowTitle{4.6, 3.4};
const Duration endedShown = minutes(30 * 24 * 60); ///< how long a lot that has ended still stands in the list

/// Of the lots those that are still of use to see: what has something to tell first, what has ended last.
std::vector<const StockState*> shownLots(const Surroundings& around)
{
    std::vector<const StockState*> shown;
    const Instant now = around.bench.clock().now();
    for (const StockState* each : around.bench.stock().ledger().all())
        if (!each->ended || elapsed(each->movements.back().at, now) < endedShown)
            shown.push_back(each);
    const auto rank = [&](const StockState* each) {
        return std::pair(each->ended.has_value(), stocktold::ofLot(*each, around).empty());
    };
    std::stable_sort(shown.begin(), shown.end(),
                     [&](const StockState* a, const StockState* b) { return rank(a) < rank(b); });
    return shown;
}

QString amountText(const StockState& state, const Words& words)
{
    QStringList parts{StockListScreen::tr("%1 left").arg(stockMass(state.left(), words))};
    if (state.opened)
        //: %1 is a day
        parts << StockListScreen::tr("open since %1")
                     .arg(stockDay(QDate::fromString(localDay(*state.opened), Qt::ISODate), words));
    if (state.unopened > 0)
        parts << StockListScreen::tr("%n unopened", nullptr, state.unopened);
    return parts.join(u" · "_s);
}

} // namespace

StockListScreen::StockListScreen(const Surroundings& around, QWidget* parent)
    : Screen(around, u"screen_stock"_s, parent)
{
    buildFrame(tr("Stock of filler and hardener"), tr("Tap a lot, or scan it"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Book in a package"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &StockListScreen::bookInWanted);
    const std::vector<const StockState*> lots = shownLots(around);
    if (lots.empty()) {
        content()->addWidget(label(u"stock_none"_s, TextRole::Body,
                                   tr("Nothing is on the shelf yet. Book in what stands there: from then on each batch "
                                      "is taken off, and what runs short, out of date or dry is told with the plan.")));
        return;
    }
    std::vector<PagedRows::MakeRow> rows;
    for (const StockState* each : lots)
        rows.push_back(rowOf(*each, rows.size()));
    auto* shown = new PagedRows(around, sizes::target, this);
    shown->setRows(std::move(rows));
    content()->addWidget(shown, 1);
    content()->addWidget(reorderKey());
}

TapButton* StockListScreen::reorderKey()
{
    const auto lines = stocktold::reorder(around());
    const auto due =
        static_cast<int>(std::count_if(lines.begin(), lines.end(), [](const ReorderLine& each) { return each.due(); }));
    return makeSideKey(theme(),
                       {u"reorder_list"_s, tr("Reorder list"),
                        due > 0 ? tr("%n product(s) to reorder", nullptr, due) : tr("nothing to reorder"),
                        due > 0 ? Pictogram::Caution : Pictogram::None, [this] { Q_EMIT reorderWanted(); }},
                       this);
}

PagedRows::MakeRow StockListScreen::rowOf(const StockState& state, std::size_t index)
{
    const auto notes = stocktold::ofLot(state, around());
    const QString second = state.ended     ? tr("ended: %1").arg(stockEndText(*state.ended))
                           : notes.empty() ? amountText(state, words())
                                           : stockNoteText(notes.front().reason, words());
    return [this, lot = state.of, second, index, warns = !notes.empty()](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"stock_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(stockLotName({lot.product, inhand::shownLot(lot.lot)}, around().bench.planning().catalogue));
        row->setSecondLine(second);
        row->setTitleSize(rowTitle);
        row->setSign(warns ? Pictogram::Caution : Pictogram::None);
        connect(row, &TapButton::clicked, this, [this, lot] { Q_EMIT lotTapped(lot); });
        return row;
    };
}

bool StockListScreen::scanned(const QString& text)
{
    const Checked<QString> lot = inhand::readLot(text);
    if (!lot) {
        showTrouble(words().fault(lot.error().front()), {});
        return true;
    }
    for (const StockState* each : around().bench.stock().ledger().all())
        if (each->of.lot == *lot) {
            Q_EMIT lotTapped(each->of);
            return true;
        }
    Q_EMIT unknownScanned(*lot);
    return true;
}

ReorderScreen::ReorderScreen(const Surroundings& around, QWidget* parent) : Screen(around, u"screen_reorder"_s, parent)
{
    buildFrame(tr("Stock of filler and hardener"), tr("Reorder list: tap a product to set its level"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Back to the stock"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
    std::vector<PagedRows::MakeRow> rows;
    for (const ReorderLine& each : stocktold::reorder(around))
        rows.push_back(rowOf(each, rows.size()));
    auto* shown = new PagedRows(around, sizes::target, this);
    shown->setRows(std::move(rows));
    content()->addWidget(shown, 1);
}

PagedRows::MakeRow ReorderScreen::rowOf(const ReorderLine& line, std::size_t index)
{
    return [this, line, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"reorder_row_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(stockProductName(line.product, around().bench.planning().catalogue));
        //: %1 and %2 are masses
        row->setSecondLine(line.below > grams(0)
                               ? (line.due() ? tr("reorder: %1 left, level %2") : tr("%1 left, level %2"))
                                     .arg(stockMass(line.usable, words()), stockMass(line.below, words()))
                               : tr("%1 left, never reordered").arg(stockMass(line.usable, words())));
        row->setTitleSize(rowTitle);
        row->setSign(line.due() ? Pictogram::Caution : Pictogram::None);
        connect(row, &TapButton::clicked, this, [this, product = line.product] { Q_EMIT productTapped(product); });
        return row;
    };
}

} // namespace strandbench
