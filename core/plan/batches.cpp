// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>

using namespace Qt::StringLiterals;

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

Mass onThePanel(const Batch& batch, const Assumptions& assumptions)
{
    return (batch.mix.filler - assumptions.boardLossEach) / (1.0 + assumptions.boardLossShare.value());
}

Volume shrinkageOf(Volume finished, const ProductSheet& sheet)
{
    return finished * (1.0 / (1.0 - sheet.shrinkage.value()) - 1.0);
}

CureAnswer<Mixing> planBatches(const MixingTask& task, const Job& job)
{
    const Assumptions& assumptions = job.set.assumptions;
    Mixing mixing;
    mixing.needed = (task.volume + shrinkageOf(task.volume, task.sheet)) * task.sheet.density;
    Duration first = task.layer.gel;
    const BatchTimes byLayer = batchTimes(task.layer, task.layer.gel, task.sheet);
    for (int count = 1; count <= mostBatches; ++count) {
        mixing.boardLoss =
            mixing.needed * assumptions.boardLossShare.value() + assumptions.boardLossEach * static_cast<double>(count);
        const Mass each = (mixing.needed + mixing.boardLoss) / static_cast<double>(count);
        // A batch of which half stays on the board is none; it is split no further.
        if (count > 1 && each < assumptions.boardLossEach * 2.0)
            break;
        const Mix mix = mixForFiller(each, task.sheet);
        // Whether it can be spread before the layer gels costs nothing to ask, the puddle a solution.
        if (mix.puddle > assumptions.board || !spreadsInTime(mix, byLayer, assumptions))
            continue;
        const CureAnswer<Duration> board =
            job.set.engine.boardGel(task.sheet, job.assessment.reading->air, mix.hardenerShare, mix.puddleHeight);
        if (!board)
            return tl::unexpected(board.error());
        first = std::min(first, *board);
        const BatchTimes times = batchTimes(task.layer, *board, task.sheet);
        if (!spreadsInTime(mix, times, assumptions))
            continue;
        mixing.batches.assign(static_cast<std::size_t>(count), Batch{task.lift, mix, times});
        return mixing;
    }
    return tl::unexpected(Reason{u"gels_too_fast"_s, {first, assumptions.kneading}});
}

} // namespace strandbench::planning
