// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>

namespace strandbench::planning {
namespace {

/// An end to the search, beyond the largest panel in the smallest batches.
constexpr int mostBatches = 4000;

/// True when the batch can be kneaded and spread before its edges must be cleared, on the panel and before
/// the puddle sets on the board.
bool spreadsInTime(const Mix& mix, const BatchTimes& times, const Assumptions& assumptions)
{
    const Duration spread = assumptions.kneading + mix.filler / assumptions.spreading;
    const Duration first = std::min(times.boardGel, times.gel);
    return spread <= first * assumptions.edgesAtGel.value();
}

} // namespace

Volume shrinkageOf(Volume finished, const ProductSheet& sheet)
{
    return finished * (1.0 / (1.0 - sheet.shrinkage.value()) - 1.0);
}

Mixing planBatches(const MixingTask& task, const Reading& reading, const PlanningSet& set)
{
    const Assumptions& assumptions = set.assumptions;
    Mixing mixing;
    mixing.needed = (task.volume + shrinkageOf(task.volume, task.sheet)) * task.sheet.density;
    for (int count = 1; count <= mostBatches; ++count) {
        mixing.boardLoss =
            mixing.needed * assumptions.boardLossShare.value() + assumptions.boardLossEach * static_cast<double>(count);
        const Mass each = (mixing.needed + mixing.boardLoss) / static_cast<double>(count);
        // A batch of which half stays on the board is none; it is split no further.
        if (count > 1 && each < assumptions.boardLossEach * 2.0)
            break;
        const Mix mix = mixForFiller(each, task.sheet);
        const BatchTimes times =
            set.times.times({task.sheet, reading.air, reading.panel, mix.hardenerShare, task.laid, mix.puddleHeight});
        if (mix.puddle > assumptions.board || !spreadsInTime(mix, times, assumptions))
            continue;
        mixing.batches.assign(static_cast<std::size_t>(count), Batch{task.lift, mix, times});
        return mixing;
    }
    return mixing;
}

} // namespace strandbench::planning
