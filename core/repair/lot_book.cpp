// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/lot_book.h"

#include "learning/product.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The namespace of lots among name-based UUIDs (RFC 4122, 4.3): a random one, ours.
const QUuid& lotNamespace()
{
    static const QUuid space(u"6f2f5e0c-0d4a-4f6e-9a63-3a5f1a8e7c21"_s);
    return space;
}

std::optional<LogRate> rateOf(const Instant& in, Duration predicted, const std::optional<Instant>& told)
{
    return told ? LogRate::between(predicted, elapsed(in, *told)) : std::nullopt;
}

template <class Told> LotOfProduct named(const Told& told) { return {told.sheetId, told.hardenerLot}; }

} // namespace

QUuid lotSubject(const LotOfProduct& lot)
{
    return QUuid::createUuidV5(lotNamespace(), lot.sheetId + QChar(0x1f) + lot.hardenerLot);
}

std::optional<LotOfProduct> lotOf(const Payload& payload)
{
    if (const auto* mixed = std::get_if<PatMixed>(&payload))
        return named(*mixed);
    if (const auto* gelled = std::get_if<PatGelled>(&payload))
        return named(*gelled);
    if (const auto* forgotten = std::get_if<LotForgotten>(&payload))
        return named(*forgotten);
    return std::nullopt;
}

const std::vector<QString>& forgetReasons()
{
    static const std::vector<QString> reasons{u"lots_mixed_up"_s, u"told_wrong"_s, u"hardener_off"_s, u"kept_wrong"_s};
    return reasons;
}

BatchTold BatchOfLot::told() const
{
    return {rateOf(hardenerIn, predicted.boardGel, boardGelled), rateOf(hardenerIn, predicted.gel, panelGelled),
            rateOf(hardenerIn, predicted.sand, sands)};
}

void LotBook::add(const Event& event)
{
    const Payload& payload = event.payload;
    if (const auto* taken = std::get_if<TakenIn>(&payload))
        m_jobs[event.repair] = taken->job;
    else if (const auto* mixed = std::get_if<HardenerIn>(&payload))
        hardenerIn(*mixed, event);
    else if (const auto* again = std::get_if<PredictedAgain>(&payload)) {
        if (BatchOfLot* batch = batchOf(event.repair, again->batch))
            batch->predicted = again->howSure.sheet;
    } else if (const auto* gelled = std::get_if<Gelled>(&payload)) {
        if (BatchOfLot* batch = batchOf(event.repair, gelled->batch))
            (gelled->place == GelPlace::Board ? batch->boardGelled : batch->panelGelled) = event.at;
    } else if (const auto* sands = std::get_if<Sands>(&payload)) {
        if (BatchOfLot* batch = batchOf(event.repair, sands->batch))
            batch->sands = event.at;
    } else if (const auto* pat = std::get_if<PatMixed>(&payload))
        m_lots[named(*pat)].pat = RunningPat{*pat, event.at};
    else if (const auto* set = std::get_if<PatGelled>(&payload)) {
        Lot& lot = m_lots[named(*set)];
        if (const auto running = std::exchange(lot.pat, std::nullopt)) {
            BatchOfLot batch;
            batch.hardenerIn = running->hardenerIn;
            batch.predicted.boardGel = running->mixed.bySheet;
            batch.boardGelled = event.at;
            batch.sheetHash = running->mixed.sheetHash;
            lot.batches.push_back(batch);
        }
    } else if (const auto* forgotten = std::get_if<LotForgotten>(&payload)) {
        Lot& lot = m_lots[named(*forgotten)];
        for (BatchOfLot& each : lot.batches)
            each.forgotten = true;
        lot.forgotten = Forgotten{forgotten->reason, event.person, event.at};
    }
}

void LotBook::hardenerIn(const HardenerIn& mixed, const Event& event)
{
    if (mixed.hardenerLot.isEmpty())
        return;
    const LotOfProduct lot{mixed.sheetId, mixed.hardenerLot};
    BatchOfLot batch;
    batch.repair = event.repair;
    batch.batch = mixed.batch;
    batch.hardenerIn = event.at;
    batch.predicted = mixed.howSure ? mixed.howSure->sheet : mixed.times;
    batch.sheetHash = mixed.sheetHash;
    m_lots[lot].batches.push_back(batch);
    m_lotOfBatch[{event.repair, mixed.batch}] = lot;
}

BatchOfLot* LotBook::batchOf(const QUuid& repair, BatchRef batch)
{
    const auto lot = m_lotOfBatch.find({repair, batch});
    if (lot == m_lotOfBatch.end())
        return nullptr;
    std::vector<BatchOfLot>& batches = m_lots[lot->second].batches;
    const auto found = std::ranges::find_if(
        batches, [&](const BatchOfLot& each) { return each.repair == repair && each.batch == batch; });
    return found == batches.end() ? nullptr : &*found;
}

std::vector<LotOfProduct> LotBook::lots() const
{
    std::vector<std::pair<qint64, LotOfProduct>> byTime;
    for (const auto& [name, lot] : m_lots) {
        qint64 newest = lot.pat ? lot.pat->hardenerIn.utcMs : 0;
        for (const BatchOfLot& each : lot.batches)
            newest = std::max(newest, each.hardenerIn.utcMs);
        byTime.emplace_back(-newest, name);
    }
    std::ranges::sort(byTime);
    std::vector<LotOfProduct> all;
    for (const auto& [time, lot] : byTime)
        all.push_back(lot);
    return all;
}

std::vector<BatchOfLot> LotBook::batchesOf(const LotOfProduct& lot) const
{
    const auto found = m_lots.find(lot);
    if (found == m_lots.end())
        return {};
    std::vector<BatchOfLot> batches = found->second.batches;
    std::ranges::stable_sort(batches, {}, [](const BatchOfLot& each) { return each.hardenerIn.utcMs; });
    for (BatchOfLot& each : batches)
        if (const auto job = m_jobs.find(each.repair); job != m_jobs.end())
            each.job = job->second;
    return batches;
}

std::vector<BatchTold> LotBook::toldOf(const LotOfProduct& lot, const ProductSheet& sheet) const
{
    std::vector<BatchTold> told;
    for (const BatchOfLot& each : batchesOf(lot))
        if (each.counts(sheet))
            told.push_back(each.told());
    return told;
}

LotBook::Prior LotBook::priorOfLot(const ProductSheet& sheet, const QString& hardenerLot) const
{
    const Belief bySheet = priorOf(sheet);
    std::vector<LotMean> others;
    for (const auto& [name, lot] : m_lots) {
        if (name.sheetId != sheet.id || name.hardenerLot == hardenerLot)
            continue;
        const std::vector<BatchTold> told = toldOf(name, sheet);
        if (const auto mean = meanOf(learnLot(bySheet, told), told))
            others.push_back(*mean);
    }
    if (others.empty())
        return {bySheet, 0};
    return {priorOfNewLot(bySheet, others), static_cast<int>(others.size())};
}

LotLearnt LotBook::learnt(const ProductSheet& sheet, const QString& hardenerLot) const
{
    return learnLot(priorOfLot(sheet, hardenerLot).rate, toldOf({sheet.id, hardenerLot}, sheet));
}

LotBelief LotBook::beliefOf(const ProductSheet& sheet, const QString& hardenerLot) const
{
    const Prior prior = priorOfLot(sheet, hardenerLot);
    if (hardenerLot.isEmpty())
        return {prior.rate, 0, prior.otherLots};
    const LotLearnt learnt = learnLot(prior.rate, toldOf({sheet.id, hardenerLot}, sheet));
    return {learnt.rate, learnt.counted, prior.otherLots};
}

std::optional<RunningPat> LotBook::patOf(const LotOfProduct& lot) const
{
    const auto found = m_lots.find(lot);
    return found == m_lots.end() ? std::nullopt : found->second.pat;
}

std::optional<Forgotten> LotBook::forgottenOf(const LotOfProduct& lot) const
{
    const auto found = m_lots.find(lot);
    return found == m_lots.end() ? std::nullopt : found->second.forgotten;
}

QString lotsFromDay(const Instant& now, const LearningRules& rules)
{
    Instant then = now;
    then.utcMs -= static_cast<qint64>(inSeconds(rules.remembered) * 1e3);
    return localDay(then);
}

std::optional<Fault> followsOfLot(const std::vector<Event>& before, const Event& event)
{
    const auto lot = lotOf(event.payload);
    const auto fault = [&](const QString& value, const QString& field, const QString& held) {
        return Fault{kindOf(event.payload), value, FaultKind::Conflicts, {field, held}};
    };
    if (!lot)
        return fault({}, u"kind"_s, u"of a repair"_s);
    for (const auto& [field, text] :
         {std::pair{u"sheet_id"_s, lot->sheetId}, std::pair{u"hardener_lot"_s, lot->hardenerLot}})
        if (text.trimmed().isEmpty())
            return Fault{field, text, FaultKind::Empty, {}};
    if (event.repair != lotSubject(*lot))
        return fault(lot->hardenerLot, u"subject"_s, event.repair.toString(QUuid::WithoutBraces));
    LotBook book;
    for (const Event& each : before)
        book.add(each);
    if (std::holds_alternative<PatGelled>(event.payload) && !book.patOf(*lot))
        return fault(lot->hardenerLot, u"pat_mixed"_s, u"no pat waits"_s);
    if (const auto* forgotten = std::get_if<LotForgotten>(&event.payload))
        if (!std::ranges::count(forgetReasons(), forgotten->reason))
            return Fault{u"reason"_s, forgotten->reason, FaultKind::NotOneOf,
                         QStringList(forgetReasons().begin(), forgetReasons().end())};
    return std::nullopt;
}

} // namespace strandbench
