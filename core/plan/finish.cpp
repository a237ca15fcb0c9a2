// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>
#include <cmath>

namespace strandbench::planning {
namespace {

/// Finishing filler no thicker than 1/4 in finished in all (common practice, no source).
const Length tradeLimitInAll = inches(0.25);

/// The skim's volume: the opening to the full thickness, and all round it a wedge that runs out to nothing.
Volume skimVolume(const Job& job, Length thickness)
{
    const Length beyond = job.set.assumptions.skimBeyond * 2.0;
    const Length length = job.cavity.openingLength();
    const Length width = job.cavity.openingWidth();
    const Area opening = job.cavity.opening();
    const double widened = ((length + beyond) * (width + beyond)) / (length * width);
    const Area ring = opening * widened - opening;
    return opening * thickness + ring * thickness * 0.5;
}

} // namespace

CureAnswer<Finish> planFinish(const Job& job, const std::vector<Lift>& lifts)
{
    const Assumptions& assumptions = job.set.assumptions;
    Finish finish;
    finish.filler = job.finish.fillerClass;
    finish.limitACoat = job.finish.greatestLift;
    finish.limitInAll = std::min(tradeLimitInAll, job.finish.finishInAll.value_or(tradeLimitInAll));
    // A shallow repair is left low by half its depth at the most: something must hold the finish.
    finish.thickness = std::min({assumptions.leftLow, Length(job.cavity.height() * 0.5), finish.limitInAll});
    finish.coats = std::max(1, static_cast<int>(std::ceil(finish.thickness / finish.limitACoat - 1e-9)));
    const Length coat = finish.thickness / static_cast<double>(finish.coats);
    const CureAnswer<LayerCure> cure = job.set.engine.layer(
        {job.finish, *job.assessment.reading, job.finish.hardenerNominal, coat, stackUnder(job, lifts)});
    if (!cure)
        return tl::unexpected(cure.error());
    finish.cureCase = cure->cureCase;
    for (int each = 0; each < finish.coats; ++each) {
        const CureAnswer<Mixing> mixing = planBatches({job.finish, skimVolume(job, coat), *cure, each}, job);
        if (!mixing)
            return tl::unexpected(mixing.error());
        finish.batches.insert(finish.batches.end(), mixing->batches.begin(), mixing->batches.end());
    }
    return finish;
}

} // namespace strandbench::planning
