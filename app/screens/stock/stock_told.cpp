// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/stock/stock_told.h"

#include "bench/settings.h"
#include "repair/stock_needs.h"
#include "screens/job/in_hand.h"
#include "screens/frame/paged_rows.h"
#include "screens/frame/side_key.h"
#include "screens/frame/sign_widget.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "words/stock_words.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double noteRow = 20; // mm
constexpr double signMm = 9;

StockNow nowOf(const Surroundings& around)
{
    const auto reading = around.bench.newestReading();
    return {around.bench.clock().now(), reading ? std::optional(reading->reading.air) : std::nullopt,
            around.bench.assumptions().faceBack};
}

QWidget* noteCard(const Surroundings& around, const StockNote& note, std::size_t index, QWidget* parent)
{
    const Theme& theme = around.theme;
    auto* made = new Card(theme, parent);
    const QString name = u"stock_note_%1"_s.arg(index);
    made->setObjectName(name);
    auto* lines = new FitColumn;
    made->setLayout(lines);
    lines->setContentsMargins(theme.px(3), theme.px(1), theme.px(3), theme.px(1));
    auto* sign = new SignWidget(theme, Pictogram::Caution, StockNotesScreen::tr("Caution"), made);
    sign->setFixedSize(theme.px(signMm), theme.px(signMm));
    auto* lot = new FitLabel(theme, name + u"_lot"_s, TextRole::Small, made);
    lot->setRole(Role::MutedInk);
    lot->setText(stockLotName(note.of, around.bench.planning().catalogue));
    auto* text = new FitLabel(theme, name + u"_text"_s, TextRole::Body, made);
    text->setBold(true);
    text->setText(stockNoteText(note.reason, around.words));
    lines->addRow({lot, text}, sign, theme.px(2));
    return made;
}

} // namespace

std::vector<StockNote> stocktold::ofLot(const StockState& state, const Surroundings& around)
{
    if (state.ended)
        return {};
    const Bench& bench = around.bench;
    return notesOf(
        &state, {state.of, grams(0), sheetOfStock(state.of, bench.planning().catalogue), bench.stock().tried(state.of)},
        nowOf(around));
}

std::vector<StockNote> stocktold::ofPlan(const Repair& repair, const RepairPlan& plan, const Surroundings& around)
{
    const Bench& bench = around.bench;
    std::vector<BatchInHand> toMix;
    for (const BatchRef& each : stillToMix(repair, plan)) {
        const auto chosen = around.settings.products.find(codeOf(fillerOf(plan, each)));
        toMix.push_back(batchInHand(plan, each, chosen == around.settings.products.end() ? QString() : chosen->second,
                                    bench.planning()));
    }
    std::map<QString, QString> inHand;
    for (const auto& [product, lots] : around.settings.lots)
        inHand[product] = inhand::lotInUse(around.settings, product);
    std::vector<StockNote> notes;
    for (const StockNeed& each : stockNeedsOf(plan, toMix, inHand, bench.planning().catalogue, bench.stock()))
        for (const StockNote& note : notesOf(bench.stock().ledger().of(each.of), each, nowOf(around)))
            notes.push_back(note);
    return notes;
}

std::vector<ReorderLine> stocktold::reorder(const Surroundings& around)
{
    return reorderLines(around.bench.stock().ledger(), around.settings.reorderBelow);
}

int stocktold::toMind(const Surroundings& around)
{
    const auto lots = around.bench.stock().ledger().all();
    const auto lines = reorder(around);
    return static_cast<int>(
        std::count_if(lots.begin(), lots.end(), [&](const StockState* each) { return !ofLot(*each, around).empty(); }) +
        std::count_if(lines.begin(), lines.end(), [](const ReorderLine& each) { return each.due(); }));
}

QString stocktold::summary(const Surroundings& around)
{
    if (around.bench.stock().ledger().all().empty())
        return {};
    const int count = toMind(around);
    return count > 0 ? StockNotesScreen::tr("! %n to mind", nullptr, count) : StockNotesScreen::tr("in order");
}

StockNotesScreen::StockNotesScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan,
                                   QWidget* parent)
    : Screen(around, u"screen_stock_notes"_s, parent)
{
    buildFrame(contextOf(repair, words()), tr("What the shelf says of this plan"));
    const std::vector<StockNote> notes = stocktold::ofPlan(repair, plan, around);
    if (notes.empty()) {
        content()->addWidget(label(u"stock_notes_none"_s, TextRole::Body,
                                   tr("Nothing is to be told of the lots in the hand. Of lots that were never booked "
                                      "in or counted nothing is known.")),
                             1);
    } else {
        auto* rows = new PagedRows(around, noteRow, this);
        std::vector<PagedRows::MakeRow> all;
        for (const StockNote& each : notes)
            all.push_back([this, each, index = all.size()](QWidget* into) {
                return noteCard(this->around(), each, index, into);
            });
        rows->setRows(std::move(all));
        content()->addWidget(rows, 1);
    }
    content()->addWidget(makeSideKey(
        theme(), {u"to_the_shelf"_s, tr("To the stock"), {}, Pictogram::None, [this] { Q_EMIT shelfWanted(); }}, this));
    answers()->setWayOn(tr("Back to the plan"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
}

} // namespace strandbench
