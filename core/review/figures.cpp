// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/figures.h"

#include <algorithm>
#include <map>

namespace strandbench {
namespace {

constexpr double slowTenth = 0.9;
const Fraction confidence = Fraction::ofHundred(95);

/// Calls with every gel that was seen of a lot that was told.
template <class F> void eachGel(const std::vector<RepairDigest>& repairs, F take)
{
    for (const RepairDigest& repair : repairs)
        for (const DigestBatch& each : repair.batches)
            if (each.observedGel && !each.hardenerLot.isEmpty() && each.predictedGel.value() > 0)
                take(repair, each);
}

Duration median(std::vector<Duration> times)
{
    std::ranges::sort(times, {}, [](Duration each) { return each.value(); });
    const std::size_t half = times.size() / 2;
    return times.size() % 2 == 1 ? times[half] : (times[half - 1] + times[half]) / 2.0;
}

Duration slowOf(std::vector<Duration> times)
{
    std::ranges::sort(times, {}, [](Duration each) { return each.value(); });
    const auto rank = static_cast<std::size_t>(slowTenth * static_cast<double>(times.size()));
    return times[std::min(rank, times.size() - 1)];
}

} // namespace

std::vector<GelLotSeen> gelLots(const std::vector<RepairDigest>& repairs)
{
    std::map<GelLot, GelLotSeen> seen;
    eachGel(repairs, [&seen](const RepairDigest&, const DigestBatch& batch) {
        GelLotSeen& lot = seen[{batch.sheetId, batch.hardenerLot}];
        lot.lot = {batch.sheetId, batch.hardenerLot};
        ++lot.gels;
        lot.lastUtcMs = std::max(lot.lastUtcMs, batch.utcMs);
    });
    std::vector<GelLotSeen> lots;
    for (const auto& [lot, each] : seen)
        lots.push_back(each);
    std::ranges::stable_sort(lots, std::greater<>{}, &GelLotSeen::lastUtcMs);
    return lots;
}

Checked<GelDrift> gelDrift(const std::vector<RepairDigest>& repairs, const GelLot& lot)
{
    GelDrift drift;
    eachGel(repairs, [&](const RepairDigest& repair, const DigestBatch& batch) {
        if (GelLot{batch.sheetId, batch.hardenerLot} == lot)
            drift.points.push_back(
                {batch.utcMs, repair.repair, batch.batch, batch.observedGel->value() / batch.predictedGel.value()});
    });
    std::ranges::stable_sort(drift.points, {}, &GelPoint::utcMs);
    std::vector<double> ratios;
    for (const GelPoint& each : drift.points)
        ratios.push_back(each.ratio);
    auto chart = individualsChart(ratios);
    if (!chart)
        return tl::unexpected(chart.error());
    drift.chart = *std::move(chart);
    drift.runs = runSignals(ratios, drift.chart.limits.centre, drift.chart.sigma);
    drift.ewma = ewmaChart(ratios, 1, drift.chart.sigma);
    return drift;
}

std::vector<MaterialUsed> materialUsed(const std::vector<RepairDigest>& repairs)
{
    std::map<QString, MaterialUsed> products;
    for (const RepairDigest& repair : repairs)
        for (const DigestBatch& each : repair.batches) {
            auto& used =
                products
                    .try_emplace(each.sheetId, MaterialUsed{each.sheetId, 0, grams(0), grams(0), grams(0), grams(0)})
                    .first->second;
            ++used.batches;
            used.planned += each.planned;
            used.mixed += each.mixed;
            (each.mixed > each.planned ? used.over : used.under) +=
                each.mixed > each.planned ? each.mixed - each.planned : each.planned - each.mixed;
        }
    std::vector<MaterialUsed> all;
    for (const auto& [id, used] : products)
        all.push_back(used);
    std::ranges::stable_sort(all, std::greater<>{}, [](const MaterialUsed& each) { return each.over.value(); });
    return all;
}

std::vector<FirstTimeRight> firstTimeRight(const std::vector<RepairDigest>& repairs)
{
    std::map<std::optional<Substrate>, FirstTimeRight> rows;
    for (const RepairDigest& each : repairs) {
        const bool judged = each.standing == Standing::SignedOff || each.standing == Standing::Returned;
        if (!judged || !each.reworkOf.isNull())
            continue;
        FirstTimeRight& row = rows[each.substrate];
        row.substrate = each.substrate;
        ++row.judged;
        row.right += each.standing == Standing::SignedOff ? 1 : 0;
    }
    std::vector<FirstTimeRight> all;
    for (auto& [substrate, row] : rows) {
        row.interval = proportionInterval(row.right, row.judged, confidence);
        all.push_back(row);
    }
    return all;
}

std::vector<PartTimes> partTimes(const std::vector<RepairDigest>& repairs)
{
    std::map<JobPart, std::pair<std::vector<Duration>, std::vector<Duration>>> times;
    for (const RepairDigest& repair : repairs)
        for (const PartTime& each : repair.parts) {
            times[each.part].first.push_back(each.planned);
            times[each.part].second.push_back(each.actual);
        }
    std::vector<PartTimes> all;
    for (const auto& [part, both] : times)
        all.push_back(
            {part, static_cast<int>(both.first.size()), median(both.first), median(both.second), slowOf(both.second)});
    return all;
}

std::vector<DeviationShare> deviationShares(const std::vector<RepairDigest>& repairs)
{
    std::map<DeviationKind, int> counts;
    int all = 0;
    for (const RepairDigest& repair : repairs)
        for (const DeviationKind each : repair.deviations) {
            ++counts[each];
            ++all;
        }
    std::vector<DeviationShare> shares;
    for (const auto& [kind, count] : counts)
        shares.push_back({kind, count, {}});
    std::ranges::stable_sort(shares, std::greater<>{}, &DeviationShare::count);
    int upTo = 0;
    for (DeviationShare& each : shares) {
        upTo += each.count;
        each.upTo = Fraction::ofOne(double(upTo) / all);
    }
    return shares;
}

} // namespace strandbench
