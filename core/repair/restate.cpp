// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/restate.h"

#include <cmath>

namespace strandbench {

Instant restated(const Instant& told, const Instant& at, Duration by)
{
    const qint64 ms = std::llround(inSeconds(by) * 1e3);
    const bool sameBoot = !told.bootId.isEmpty() && told.bootId == at.bootId;
    const bool before = sameBoot ? told.boottimeMs < at.boottimeMs : told.utcMs <= at.utcMs - ms;
    Instant then = told;
    if (before)
        then.utcMs += ms;
    return then;
}

void restate(Repair& repair, const Instant& at, Duration by)
{
    for (BatchRun& run : repair.runs) {
        run.hardenerIn = restated(run.hardenerIn, at, by);
        for (std::optional<Instant>* each :
             {&run.edgesClear, &run.boardGelled, &run.panelGelled, &run.sands, &run.sanded, &run.readAgainAt})
            if (*each)
                *each = restated(**each, at, by);
    }
}

} // namespace strandbench
