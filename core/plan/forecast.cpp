// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/forecast.h"

namespace strandbench {

CureAnswer<BatchForecast> forecastBatch(const PlannedBatch& planned, const Reading& reading, Fraction hardener,
                                        const CureEngine& engine)
{
    CureCase layer = planned.layer;
    layer.hardener = hardener;
    layer.temperature = engine.fillerStart(reading.air);
    layer.air = {{seconds(0), reading.air}};
    for (StackLayer& each : layer.stack)
        each.temperature = reading.panel;
    const CureAnswer<LayerCure> cure = engine.solve(layer);
    if (!cure)
        return tl::unexpected(cure.error());
    const CureAnswer<Duration> board =
        engine.boardGel(planned.sheet, reading.air, hardener, planned.batch.mix.puddleHeight);
    if (!board)
        return tl::unexpected(board.error());
    return BatchForecast{batchTimes(*cure, *board, planned.sheet), cure->peak, cure->cureCase};
}

} // namespace strandbench
