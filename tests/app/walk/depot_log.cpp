// SPDX-License-Identifier: GPL-3.0-or-later
#include "depot_log.h"

#include <algorithm>
#include <set>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

DepotLog make()
{
    static const QTemporaryDir folder;
    DepotLog made;
    made.path = folder.filePath(u"depot.sqlite"_s);
    if (!years::writeYears({made.path, 300, 5}))
        throw std::runtime_error("the depot's log was not written");
    const auto log = RepairLog::open(made.path, LogMode::ReadOnly);
    made.events = (*log)->eventsAfter((*log)->origins()->front(), 0, 1'000'000).value();
    made.evening = made.events.back().at;
    made.evening.utcMs += 60'000;
    made.evening.boottimeMs += 60'000;
    return made;
}

/// A plan's mass of a batch.
Mass plannedOf(const RepairPlan& plan, BatchRef batch)
{
    const auto& batches = batch.finishing ? plan.finish.batches : plan.batches;
    return batches.at(std::size_t(batch.index)).mix.filler;
}

using OfBatch = std::pair<QUuid, BatchRef>;

double secondsBetween(const Instant& from, const Instant& to) { return double(to.utcMs - from.utcMs) / 1000; }

} // namespace

const DepotLog& depotLog()
{
    static const DepotLog made = make();
    return made;
}

std::map<QString, CountedMaterial> countMaterial(const std::vector<Event>& events)
{
    std::map<QString, CountedMaterial> all;
    std::map<QUuid, RepairPlan> plans;
    for (const Event& each : events) {
        if (const auto* accepted = std::get_if<PlanAccepted>(&each.payload))
            plans[each.repair] = accepted->plan;
        const auto* mixed = std::get_if<HardenerIn>(&each.payload);
        if (!mixed)
            continue;
        const double planned = inGrams(plannedOf(plans.at(each.repair), mixed->batch));
        CountedMaterial& of = all[mixed->sheetId];
        ++of.batches;
        of.planned += planned;
        of.mixed += inGrams(mixed->filler);
        of.over += std::max(0.0, inGrams(mixed->filler) - planned);
    }
    return all;
}

std::map<std::pair<QString, QString>, std::vector<double>> countGels(const std::vector<Event>& events)
{
    std::map<OfBatch, const Event*> mixed;
    std::map<std::pair<QString, QString>, std::vector<std::pair<qint64, double>>> found;
    for (const Event& each : events) {
        if (const auto* mix = std::get_if<HardenerIn>(&each.payload))
            mixed[{each.repair, mix->batch}] = &each;
        const auto* gelled = std::get_if<Gelled>(&each.payload);
        if (!gelled || gelled->place != GelPlace::Panel)
            continue;
        const Event& from = *mixed.at({each.repair, gelled->batch});
        const auto& mix = std::get<HardenerIn>(from.payload);
        if (mix.hardenerLot.isEmpty())
            continue;
        const Duration predicted = mix.howSure ? mix.howSure->sheet.gel : mix.times.gel;
        found[{mix.sheetId, mix.hardenerLot}].emplace_back(from.at.utcMs,
                                                           secondsBetween(from.at, each.at) / inSeconds(predicted));
    }
    std::map<std::pair<QString, QString>, std::vector<double>> ratios;
    for (auto& [lot, gels] : found) {
        std::ranges::stable_sort(gels, {}, [](const auto& gel) { return gel.first; });
        for (const auto& [at, ratio] : gels)
            ratios[lot].push_back(ratio);
    }
    return ratios;
}

std::map<Substrate, std::pair<int, int>> countRight(const std::vector<Event>& events)
{
    std::set<QUuid> reworks;
    std::map<QUuid, Substrate> substrates;
    std::map<Substrate, std::pair<int, int>> counted;
    for (const Event& each : events) {
        if (const auto* taken = std::get_if<TakenIn>(&each.payload); taken && !taken->reworkOf.isNull())
            reworks.insert(each.repair);
        if (const auto* answered = std::get_if<Answered>(&each.payload))
            if (answered->question == Question::Substrate)
                substrates[each.repair] = std::get<Substrate>(answered->value);
        const bool right = std::holds_alternative<SignedOff>(each.payload);
        if ((!right && !std::holds_alternative<Returned>(each.payload)) || reworks.contains(each.repair))
            continue;
        auto& [signedOff, judged] = counted[substrates.at(each.repair)];
        signedOff += right ? 1 : 0;
        ++judged;
    }
    return counted;
}

std::vector<double> countLaying(const std::vector<Event>& events)
{
    std::map<OfBatch, Instant> mixed;
    std::map<QUuid, double> laid;
    std::vector<double> all;
    for (const Event& each : events) {
        if (const auto* mix = std::get_if<HardenerIn>(&each.payload))
            mixed[{each.repair, mix->batch}] = each.at;
        if (const auto* clear = std::get_if<EdgesClear>(&each.payload))
            laid[each.repair] += secondsBetween(mixed.at({each.repair, clear->batch}), each.at);
        if (std::holds_alternative<HandedOver>(each.payload) && laid.contains(each.repair))
            all.push_back(laid.at(each.repair));
    }
    return all;
}

} // namespace strandbench::test
