// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/read_again.h"

#include "learning/at_rate.h"
#include "plan/forecast.h"

#include <cmath>

namespace strandbench {
namespace {

/// The air changes within so long: a step, near enough.
const Duration airChange = seconds(1);

LogRate opposite(LogRate rate) { return LogRate::ofLogarithm(-rate.value()); }

/// What was read last of this batch, and when.
struct LastRead {
    Temperature panel;
    Temperature air;
    Duration at;
};

LastRead lastRead(const BatchRun& run)
{
    const CureCase& layer = *run.cureCase();
    if (run.readAgain)
        return {run.readAgain->reading.panel, run.readAgain->reading.air, elapsed(run.hardenerIn, *run.readAgainAt)};
    return {layer.stack.empty() ? layer.temperature : layer.stack.back().temperature, layer.air.front().temperature,
            seconds(0)};
}

/// J/(m2 K)
double capacity(const CureCase& layer)
{
    const auto of = [](Length thickness, const ThermalMaterial& material) {
        return thickness.value() * material.density.value() * material.specificHeat.value();
    };
    if (layer.stack.empty())
        return of(layer.thickness, layer.filler);
    double sum = 0;
    for (const StackLayer& each : layer.stack)
        sum += of(each.thickness, each.material);
    return sum;
}

void changeAir(CureCase& of, Duration at, Temperature air)
{
    const Temperature before = of.air.back().temperature;
    if (before == air)
        return;
    if (at > of.air.back().at)
        of.air.push_back({at, before});
    of.air.push_back({std::max(at, of.air.back().at) + airChange, air});
}

BatchCases readAt(const BatchCases& before, Duration at, Temperature air, TemperatureStep warmer)
{
    BatchCases after = before;
    changeAir(after.layer, at, air);
    changeAir(after.puddle, at, air);
    if (warmer.value() != 0.0)
        after.layer.found.push_back({at, warmer});
    return after;
}

/// Layer and puddle of a batch as the sheet has them, up to its newest reading.
std::optional<BatchCases> casesOf(const BatchRun& run, const ProductSheet& sheet, const CureEngine& bySheet)
{
    BatchCases cases;
    cases.layer = atRate(*run.cureCase(), opposite(run.howSure()->rate.mean));
    const auto puddle = bySheet.boardCase(sheet, cases.layer.air.front().temperature, cases.layer.hardener,
                                          mixForFiller(run.mixed.filler, sheet).puddleHeight);
    if (!puddle)
        return std::nullopt;
    cases.puddle = *puddle;
    cases.puddle.air = cases.layer.air;
    return cases;
}

} // namespace

Temperature panelByNow(const BatchRun& run, Duration sinceHardener)
{
    const CureCase& layer = *run.cureCase();
    const LastRead last = lastRead(run);
    const double loss = layer.front.value() + layer.back.value();
    const double gone = std::max(0.0, inSeconds(sinceHardener - last.at));
    return last.air + (last.panel - last.air) * std::exp(-gone * loss / capacity(layer));
}

std::optional<PredictedAgain> predictAgain(const BatchRun& run, const Reading& reading, const Instant& now,
                                           const PlanningSet& planning)
{
    const ProductSheet* sheet = planning.catalogue.version(run.mixed.sheetId, run.mixed.sheetHash);
    if (run.sands || !run.cureCase() || !run.howSure() || !sheet)
        return std::nullopt;
    const CureEngine bySheet = planning.engine.with(CureRates{});
    const auto before = casesOf(run, *sheet, bySheet);
    if (!before)
        return std::nullopt;
    const Duration at = elapsed(run.hardenerIn, now);
    const TemperatureStep warmer = reading.panel - panelByNow(run, at);
    const auto stays = [&](bool does) {
        return readAt(*before, at, does ? Temperature(reading.air + warmer) : reading.air, warmer);
    };
    const bool warmed = warmer.value() > 0;
    const HowSure& was = *run.howSure();
    const auto found = solveForecast({stays(false), stays(warmed), stays(!warmed)}, *sheet, bySheet,
                                     {was.rate, was.batches, was.otherLots});
    if (!found)
        return std::nullopt;
    return PredictedAgain{run.batch, reading, found->times, found->howSure, found->cureCase};
}

std::vector<Payload> readWhileCuring(const Repair& repair, const Reading& reading, const Instant& now,
                                     const PlanningSet& planning)
{
    std::vector<Payload> acts{ReadingTaken{reading}};
    for (const BatchRun& run : repair.runs)
        if (run.running())
            if (const auto again = predictAgain(run, reading, now, planning))
                acts.emplace_back(*again);
    return acts;
}

} // namespace strandbench
