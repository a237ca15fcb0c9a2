// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/repair_lots_screen.h"

#include "review/job_record.h"
#include "screens/job/in_hand.h"
#include "screens/record/with_record.h"
#include "theme/sizes.h"
#include "words/stock_words.h"

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr TextSize rowTitle{4.6, 3.4};

} // namespace

RepairLotsScreen::RepairLotsScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_repair_lots"_s, parent)
{
    buildFrame({}, tr("Lots that went into it"));
    m_rows = new PagedRows(around, sizes::target, this);
    content()->addWidget(m_rows, 1);
    answers()->setWayOn({});
    answers()->stop()->hide();
    withRecord(around, this, repair, [this](const JobRecord& record, const RepairFile&) { showRecord(record); });
}

void RepairLotsScreen::showRecord(const JobRecord& record)
{
    setContext(contextOf(record.repair, words()));
    std::map<StockLot, std::pair<Mass, int>> lots;
    const auto take = [&lots](const StockLot& lot, Mass amount) {
        if (lot.lot.isEmpty())
            return;
        auto& [mass, batches] = lots.try_emplace(lot, grams(0), 0).first->second;
        mass += amount;
        ++batches;
    };
    for (const BatchRecord& each : record.batches) {
        take({each.mixed.sheetId, each.mixed.lot}, each.mixed.filler);
        take({hardenerProduct, each.mixed.hardenerLot}, each.mixed.hardener);
    }
    if (lots.empty())
        setSentence(tr("No lot was told"));
    std::vector<PagedRows::MakeRow> rows;
    for (const auto& [lot, used] : lots)
        rows.push_back(rowOf(lot, used.first, used.second, rows.size()));
    m_rows->setRows(std::move(rows));
}

PagedRows::MakeRow RepairLotsScreen::rowOf(const StockLot& lot, Mass amount, int batches, std::size_t index)
{
    return [this, lot, amount, batches, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"repair_lot_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(stockLotName({lot.product, inhand::shownLot(lot.lot)}, around().bench.planning().catalogue));
        row->setSecondLine(stockMass(amount, words()) + u" · "_s + words().batches(batches) + u" · "_s +
                           tr("every repair of this lot"));
        row->setTitleSize(rowTitle);
        connect(row, &TapButton::clicked, this, [this, lot] { Q_EMIT lotTapped(lot); });
        return row;
    };
}

} // namespace strandbench
