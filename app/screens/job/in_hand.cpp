// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/in_hand.h"

#include "screens/frame/screen.h"
#include "words/sheet_words.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::inhand {
namespace {

/// How many lots of a product are offered again: more are never open at one bench.
constexpr int mostLots = 12;
/// A lot is broken after so many characters where its line is too short.
constexpr int breakEvery = 8;

} // namespace

QString lotInUse(const Settings& settings, const QString& key)
{
    const auto kept = settings.lots.find(key);
    return kept == settings.lots.end() || kept->second.isEmpty() ? QString() : kept->second.front();
}

BatchInHand batchInUse(const Repair& repair, BatchRef ref, const Surroundings& around)
{
    const auto chosen = around.settings.products.find(codeOf(fillerOf(*repair.plan, ref)));
    return batchInHand(*repair.plan, ref, chosen == around.settings.products.end() ? QString() : chosen->second,
                       around.bench.planning());
}

LotBelief lotBelief(const BatchInHand& batch, const Surroundings& around)
{
    return batch.sheet ? around.bench.beliefOf(*batch.sheet) : LotBelief{};
}

QStringList lotsAtHand(const QString& key, const Surroundings& around)
{
    const auto kept = around.settings.lots.find(key);
    QStringList lots = kept == around.settings.lots.end() ? QStringList() : kept->second;
    const StockLedger& shelf = around.bench.stock().ledger();
    QStringList more;
    for (const StockState* each : shelf.all())
        if (each->of.product == key && !each->ended && !lots.contains(each->of.lot))
            more << each->of.lot;
    const StockState* next = shelf.nextOf(key);
    if (next && more.removeOne(next->of.lot))
        more.prepend(next->of.lot);
    return lots + more;
}

void useLot(Settings& settings, const QString& key, const QString& lot)
{
    QStringList& lots = settings.lots[key];
    lots.removeAll(lot);
    lots.prepend(lot);
    while (lots.size() > mostLots)
        lots.removeLast();
}

void removeLot(Settings& settings, const QString& key, const QString& lot) { settings.lots[key].removeAll(lot); }

QString knownAs(const QString& lot, const BatchInHand& batch, const Surroundings& around)
{
    const auto holds = [&](const QString& key) { return lotsAtHand(key, around).contains(lot); };
    if (batch.sheet && holds(batch.sheet->id))
        return batch.sheet->id;
    if (holds(hardenerKey))
        return hardenerKey;
    for (const ProductSheet& each : around.bench.planning().catalogue.sheets())
        if (batch.sheet && each.fillerClass == batch.sheet->fillerClass && holds(each.id))
            return each.id;
    return {};
}

QString productName(const BatchInHand& batch, const Repair& repair, const Surroundings& around)
{
    const FillerClass filler = fillerOf(*repair.plan, batch.ref);
    const auto& sheets = around.bench.planning().catalogue.sheets();
    const auto same = std::count_if(sheets.begin(), sheets.end(),
                                    [filler](const ProductSheet& each) { return each.fillerClass == filler; });
    return batch.sheet && (same > 1 || !batch.planned) ? SheetWords::sheetName(*batch.sheet)
                                                       : around.words.title(around.words.filler(filler));
}

QString shownLot(const QString& lot)
{
    QString shown;
    for (int i = 0; i < lot.size(); ++i) {
        if (i > 0 && i % breakEvery == 0)
            shown += QChar(0x200b); // a line may end here
        shown += lot.at(i);
    }
    return shown;
}

} // namespace strandbench::inhand
