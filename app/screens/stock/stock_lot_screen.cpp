// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/stock_lot_screen.h"

#include "repair/stock_needs.h"
#include "screens/job/in_hand.h"
#include "screens/record/record_row.h"
#include "screens/stock/stock_told.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "words/event_words.h"
#include "words/stock_words.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t notesShown = 3;

QString titleOf(const StockLot& lot, const Surroundings& around)
{
    return stockLotName({lot.product, inhand::shownLot(lot.lot)}, around.bench.planning().catalogue);
}

QDate dayOf(const Instant& at) { return QDate::fromString(localDay(at), Qt::ISODate); }

/// "+ 1.00 kg", "− 43.0 g"
QString signedMass(qint64 micrograms, const Words& words)
{
    const QString amount = stockMass(fromMicrogramsOfStock(std::abs(micrograms)), words);
    return (micrograms < 0 ? u"− "_s : u"+ "_s) + amount;
}

} // namespace

StockLotScreen::StockLotScreen(const Surroundings& around, const StockLot& lot, QWidget* parent)
    : Screen(around, u"screen_stock_lot"_s, parent), m_lot(lot)
{
    const StockState& state = *around.bench.stock().ledger().of(lot);
    buildFrame(titleOf(lot, around), state.ended ? tr("Ended: %1").arg(stockEndText(*state.ended))
                                                 : Words::title(tr("%1 left").arg(stockMass(state.left(), words()))));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Book in more of it"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { Q_EMIT wanted(StockWish::MorePackages); });
    content()->addWidget(facts(state), 2);
    content()->addWidget(keys(state), 3);
}

QWidget* StockLotScreen::facts(const StockState& state)
{
    auto* box = card(u"stock_facts"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    const auto notes = stocktold::ofLot(state, around());
    for (std::size_t i = 0; i < std::min(notes.size(), notesShown); ++i)
        lines->addText(label(u"stock_note_%1"_s.arg(i), TextRole::Body, stockNoteText(notes[i].reason, words()),
                             Role::Stop, true));
    QString packages = tr("%n unopened", nullptr, state.unopened);
    if (state.opened)
        //: %1 is a day
        packages = tr("open since %1").arg(stockDay(dayOf(*state.opened), words())) + u" · "_s + packages;
    lines->addText(label(u"stock_packages"_s, TextRole::Body, Words::title(packages)));
    if (state.each > grams(0))
        lines->addText(label(u"stock_each"_s, TextRole::Small, tr("A package: %1").arg(stockMass(state.each, words())),
                             Role::MutedInk));
    if (const ProductSheet* sheet = sheetOfStock(state.of, around().bench.planning().catalogue)) {
        const QString last = stockDay(lastDayOf(state, *sheet), words());
        lines->addText(label(u"stock_last_day"_s, TextRole::Small,
                             state.bestBefore ? tr("Good until %1, as printed").arg(last)
                                              : tr("Good until %1, by the sheet’s months").arg(last),
                             Role::MutedInk));
        if (const auto open = lastOpenDayOf(state, *sheet))
            lines->addText(label(u"stock_last_open_day"_s, TextRole::Small,
                                 tr("The open one until %1").arg(stockDay(*open, words())), Role::MutedInk));
    }
    return box;
}

QWidget* StockLotScreen::keys(const StockState& state)
{
    auto* holder = new QWidget(this);
    auto* grid = new QGridLayout(holder);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const int columns = around().upright ? 2 : 4;
    int count = 0;
    const auto key = [&](const QString& name, StockWish wish, const QString& title, const QString& second, bool open) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, holder);
        made->setTitle(title);
        made->setSecondLine(second);
        made->setTitleSize({5, 3.6});
        made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        made->setEnabled(open);
        connect(made, &TapButton::clicked, this, [this, wish] { Q_EMIT wanted(wish); });
        grid->addWidget(made, count / columns, count % columns);
        grid->setColumnStretch(count % columns, 1);
        grid->setRowStretch(count / columns, 1);
        ++count;
    };
    const bool live = !state.ended;
    const bool hardener = state.of.product == hardenerProduct;
    key(u"stock_open"_s, StockWish::Open, tr("Open the next"), {}, live && state.unopened > 0);
    key(u"stock_count"_s, StockWish::Count, tr("Count it"), tr("stock-take"), true);
    key(u"stock_change"_s, StockWish::Change, tr("More or less"), tr("put right"), true);
    key(u"stock_end"_s, StockWish::End, hardener ? tr("End this tube") : tr("End this tub"), tr("skin, hard, empty"),
        live);
    key(u"stock_moved"_s, StockWish::Moved, tr("From the cold"), tr("or the heat"), live);
    key(u"stock_probe"_s, StockWish::Probe, tr("Probe it"), tr("its middle"), live);
    key(u"stock_moves"_s, StockWish::Movements, tr("What changed"), {}, true);
    key(u"stock_pat"_s, StockWish::Pat, tr("Test pat"),
        around().bench.stock().tried(state.of) ? tr("tried") : tr("not yet"), live);
    return holder;
}

StockMovesScreen::StockMovesScreen(const Surroundings& around, const StockLot& lot, QWidget* parent)
    : Screen(around, u"screen_stock_moves"_s, parent)
{
    buildFrame(titleOf(lot, around), tr("What changed, the newest first"));
    answers()->stop()->hide();
    answers()->setWayOn(tr("Every repair of this lot"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &StockMovesScreen::traceWanted);
    std::vector<RecordRow> rows;
    qint64 left = 0;
    for (const StockMovement& each : around.bench.stock().ledger().of(lot)->movements) {
        left += each.micrograms;
        rows.push_back({u"stock_move_%1"_s.arg(rows.size()),
                        localDay(each.at).mid(5) + u' ' + words().clockTime(each.at), personText(each.person),
                        //: %1 is what happened, %2 and %3 are masses: "Batch of job 4421: − 43.0 g, 620 g left"
                        tr("%1: %2, %3 left")
                            .arg(stockMoveText(each), signedMass(each.micrograms, words()),
                                 stockMass(fromMicrogramsOfStock(left), words())),
                        left < 0});
    }
    std::reverse(rows.begin(), rows.end());
    auto* shown = new PagedRows(around, recordRowHeight(around), this);
    std::vector<PagedRows::MakeRow> made;
    for (const RecordRow& each : rows)
        made.push_back([this, each](QWidget* into) { return makeRecordRow(this->around(), each, into); });
    shown->setRows(std::move(made));
    content()->addWidget(shown, 1);
}

} // namespace strandbench
