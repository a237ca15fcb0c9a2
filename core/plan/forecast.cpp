// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/forecast.h"

#include "learning/learning_rules.h"
#include "learning/at_rate.h"

#include <algorithm>

namespace strandbench {
namespace {

/// A batch at one rate.
struct Solved {
    BatchTimes times;
    LayerCure layer;
};

CureAnswer<Solved> solvedAt(LogRate rate, const BatchCases& bySheet, const ProductSheet& sheet,
                            const CureEngine& engine, CureUntil until = CureUntil::Peak)
{
    const CureAnswer<LayerCure> layer = engine.solve(atRate(bySheet.layer, rate), until);
    if (!layer)
        return tl::unexpected(layer.error());
    const CureAnswer<Duration> board = engine.solveBoard(atRate(bySheet.puddle, rate));
    if (!board)
        return tl::unexpected(board.error());
    return Solved{batchTimes(*layer, *board, sheet), *layer};
}

} // namespace

CureAnswer<BatchForecast> solveForecast(const CasesInRange& bySheet, const ProductSheet& sheet,
                                        const CureEngine& engine, const LotBelief& batch)
{
    const LogRate mean = batch.rate.mean;
    const LogRateRange ends = middleOf(batch.rate, LearningRules().shown);
    const CureAnswer<Solved> expected = solvedAt(mean, bySheet.expected, sheet, engine, CureUntil::Horizon);
    const CureAnswer<Solved> early = solvedAt(ends.high, bySheet.early, sheet, engine);
    const CureAnswer<Solved> late = solvedAt(ends.low, bySheet.late, sheet, engine);
    const CureAnswer<Solved> plain =
        mean == LogRate() ? expected : solvedAt(LogRate(), bySheet.expected, sheet, engine);
    for (const auto* each : {&expected, &early, &late, &plain})
        if (!*each)
            return tl::unexpected(each->error());
    const Temperature hottest = std::max({expected->layer.peak, early->layer.peak, late->layer.peak});
    return BatchForecast{
        expected->times,
        expected->layer.peak,
        expected->layer.cureCase,
        {plain->times, early->times, late->times, hottest, batch.rate, batch.batches, batch.otherLots},
    };
}

CureAnswer<BatchForecast> forecastBatch(const PlannedBatch& planned, const Reading& reading, Fraction hardener,
                                        const CureEngine& engine, const LotBelief& lot)
{
    const CureEngine bySheet = engine.with(CureRates{});
    std::vector<StackLayer> stack = planned.layer.stack;
    for (StackLayer& each : stack)
        each.temperature = reading.panel;
    const auto layer = bySheet.layerCase({planned.sheet, reading, hardener, planned.layer.thickness, stack});
    if (!layer)
        return tl::unexpected(layer.error());
    const auto puddle = bySheet.boardCase(planned.sheet, reading.air, hardener, planned.batch.mix.puddleHeight);
    if (!puddle)
        return tl::unexpected(puddle.error());
    const BatchCases cases{*layer, *puddle};
    LotBelief batch = lot;
    batch.rate = ofTheNext(lot.rate, LearningRules().batch);
    return solveForecast({cases, cases, cases}, planned.sheet, bySheet, batch);
}

} // namespace strandbench
