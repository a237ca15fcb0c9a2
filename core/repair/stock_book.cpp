// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/stock_book.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The namespace of lots on the shelf among name-based UUIDs (RFC 4122, 4.3): a random one, ours.
const QUuid& stockNamespace()
{
    static const QUuid space(u"0c9d1a56-5f0e-4b6b-8a51-d2f2b4c5e7a9"_s);
    return space;
}

constexpr int mostPackages = 1000;
constexpr int firstYear = 2000;
constexpr int lastYear = 2199;

/// Hands an act of stock to the ledger; false of anything else.
bool handOver(const Payload& payload, StockLedger& ledger, const StockLedger::Told& told)
{
    return std::visit(
        [&](const auto& act) {
            if constexpr (requires { ledger.take(act, told); }) {
                ledger.take(act, told);
                return true;
            } else {
                return false;
            }
        },
        payload);
}

std::optional<Fault> outOfRange(const QString& field, double value, double lowest, double highest, const QString& unit)
{
    if (value >= lowest && value <= highest)
        return std::nullopt;
    return Fault{field,
                 QString::number(value),
                 FaultKind::OutOfRange,
                 {QString::number(lowest), QString::number(highest), unit}};
}

constexpr double leastGrams = 0.001;
constexpr double mostGrams = 100'000;

std::optional<Fault> faultOfMass(const QString& field, Mass mass)
{
    return outOfRange(field, inGrams(mass), leastGrams, mostGrams, u"g"_s);
}

std::optional<Fault> faultOfTemperature(const QString& field, Temperature value)
{
    return outOfRange(field, inCelsius(value), -40, 70, u"°C"_s);
}

/// What the figures of an act may be, whatever came before.
std::optional<Fault> faultOfFigures(const Payload& payload)
{
    if (const auto* act = std::get_if<StockReceived>(&payload)) {
        if (act->bestBefore)
            if (auto fault = outOfRange(u"best_before.year"_s, act->bestBefore->year(), firstYear, lastYear, {}))
                return fault;
        if (auto fault = outOfRange(u"packages"_s, act->packages, 1, mostPackages, {}))
            return fault;
        return faultOfMass(u"each_ug"_s, act->each);
    }
    if (const auto* act = std::get_if<StockCounted>(&payload))
        return outOfRange(u"there_ug"_s, inGrams(act->there), 0, mostGrams * mostPackages, u"g"_s);
    if (const auto* act = std::get_if<StockAdjusted>(&payload))
        return faultOfMass(u"by_ug"_s, act->by);
    if (const auto* act = std::get_if<StockEnded>(&payload))
        return outOfRange(u"thrown_away_ug"_s, inGrams(act->thrownAway), 0, mostGrams * mostPackages, u"g"_s);
    if (const auto* act = std::get_if<StockMoved>(&payload))
        return faultOfTemperature(u"from_mk"_s, act->from);
    if (const auto* act = std::get_if<StockProbed>(&payload))
        return faultOfTemperature(u"middle_mk"_s, act->middle);
    return std::nullopt;
}

} // namespace

QUuid stockSubject(const StockLot& lot)
{
    return QUuid::createUuidV5(stockNamespace(), lot.product + QChar(0x1f) + lot.lot);
}

const StockLot* stockLotOf(const Payload& payload)
{
    return std::visit(
        [](const auto& act) -> const StockLot* {
            if constexpr (requires { act.of.product; })
                return &act.of;
            else
                return nullptr;
        },
        payload);
}

void StockBook::mixed(const StockLot& filler, Mass fillerMass, const StockLot& hardener, Mass hardenerMass,
                      StockMove move, const StockLedger::Told& told)
{
    if (!filler.lot.isEmpty())
        m_ledger.used(filler, fillerMass, move, told);
    if (!hardener.lot.isEmpty())
        m_ledger.used(hardener, hardenerMass, move, told);
}

void StockBook::add(const Event& event)
{
    const Payload& payload = event.payload;
    const auto gelled = [this](auto& waiting, const auto& key) {
        const auto found = waiting.find(key);
        if (found == waiting.end())
            return;
        m_tried.insert({found->second.first, found->second.second});
        waiting.erase(found);
    };
    if (handOver(payload, m_ledger, {event.at, event.person}))
        return;
    if (const auto* taken = std::get_if<TakenIn>(&payload)) {
        m_jobs[event.repair] = taken->job;
    } else if (const auto* act = std::get_if<HardenerIn>(&payload)) {
        const Lots lots{{act->sheetId, act->lot}, {hardenerProduct, act->hardenerLot}};
        const auto job = m_jobs.find(event.repair);
        mixed(lots.first, act->filler, lots.second, act->hardener, StockMove::Mixed,
              {event.at, event.person, job == m_jobs.end() ? QString() : job->second});
        m_batches[{event.repair, act->batch}] = lots;
    } else if (const auto* pat = std::get_if<PatMixed>(&payload)) {
        const Lots lots{{pat->sheetId, pat->lot}, {hardenerProduct, pat->hardenerLot}};
        mixed(lots.first, pat->filler, lots.second, pat->hardener, StockMove::TestPat, {event.at, event.person});
        m_pats[event.repair] = lots;
    } else if (const auto* set = std::get_if<Gelled>(&payload)) {
        gelled(m_batches, std::pair(event.repair, set->batch));
    } else if (std::holds_alternative<PatGelled>(payload)) {
        gelled(m_pats, event.repair);
    }
}

std::optional<Fault> followsOfStock(const std::vector<Event>& before, const Event& event)
{
    const StockLot* lot = stockLotOf(event.payload);
    if (!lot)
        return Fault{u"kind"_s, kindOf(event.payload), FaultKind::Conflicts, {u"subject"_s, u"a lot on the shelf"_s}};
    for (const auto& [field, text] : {std::pair{u"product"_s, lot->product}, std::pair{u"lot"_s, lot->lot}})
        if (text.trimmed().isEmpty())
            return Fault{field, text, FaultKind::Empty, {}};
    if (event.repair != stockSubject(*lot))
        return Fault{
            u"lot"_s, lot->lot, FaultKind::Conflicts, {u"subject"_s, event.repair.toString(QUuid::WithoutBraces)}};
    if (auto fault = faultOfFigures(event.payload))
        return fault;
    if (std::holds_alternative<StockReceived>(event.payload) || std::holds_alternative<StockCounted>(event.payload))
        return std::nullopt;
    StockLedger ledger;
    for (const Event& each : before)
        handOver(each.payload, ledger, {each.at, each.person});
    if (!ledger.of(*lot))
        return Fault{u"lot"_s, lot->lot, FaultKind::NotFound, {}};
    return std::nullopt;
}

QString stockFromDay(const std::vector<Event>& actsOfStock)
{
    StockLedger ledger;
    std::map<StockLot, QString> from;
    for (const Event& each : actsOfStock) {
        if (!handOver(each.payload, ledger, {each.at, each.person}))
            continue;
        const StockLot& lot = *stockLotOf(each.payload);
        from.try_emplace(lot, localDay(each.at));
    }
    QString earliest;
    for (const auto& [lot, day] : from)
        if (!ledger.of(lot)->ended && (earliest.isEmpty() || day < earliest))
            earliest = day;
    return earliest;
}

} // namespace strandbench
