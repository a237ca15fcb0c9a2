// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/lots_told.h"

#include <algorithm>

namespace strandbench {
namespace {

std::optional<LogRate> rateOf(const BatchRun& run, Duration predicted, const std::optional<Instant>& told)
{
    return told ? LogRate::between(predicted, elapsed(run.hardenerIn, *told)) : std::nullopt;
}

BatchOfLot ofLot(const Repair& repair, const BatchRun& run)
{
    const BatchTimes& times = run.mixed.times;
    return {repair.id,
            run.batch,
            run.hardenerIn,
            times,
            {rateOf(run, times.boardGel, run.boardGelled), rateOf(run, times.gel, run.panelGelled),
             rateOf(run, times.sand, run.sands)}};
}

} // namespace

std::map<LotOfProduct, std::vector<BatchOfLot>> lotsToldBy(const std::vector<Repair>& repairs)
{
    std::map<LotOfProduct, std::vector<BatchOfLot>> lots;
    for (const Repair& repair : repairs)
        for (const BatchRun& run : repair.runs)
            if (!run.mixed.hardenerLot.isEmpty())
                lots[{run.mixed.sheetId, run.mixed.hardenerLot}].push_back(ofLot(repair, run));
    for (auto& [lot, batches] : lots)
        std::ranges::stable_sort(batches, {}, [](const BatchOfLot& each) { return each.hardenerIn.utcMs; });
    return lots;
}

std::vector<BatchTold> toldOf(const std::vector<BatchOfLot>& batches)
{
    std::vector<BatchTold> told;
    for (const BatchOfLot& each : batches)
        told.push_back(each.told);
    return told;
}

} // namespace strandbench
