// SPDX-License-Identifier: GPL-3.0-or-later
// The whole plan of one repair: one value, computed once, accepted, stored and shown.
#pragma once

#include "cure/cure_case.h"
#include "geometry/cavity.h"
#include "mix/mix.h"
#include "substrate/decision.h"

#include <optional>
#include <vector>

namespace strandbench {

struct Allowances {
    Volume proud;     ///< built above the surface for sanding, all faces
    Volume shrinkage; ///< what cure takes back
    Mass boardLoss;   ///< left on boards and spreaders
    bool operator==(const Allowances&) const = default;
};

/// One layer laid in one go. The lifts of a face add up to its height.
struct Lift {
    Face face = Face::Front;
    Length thickness;
    FillerClass filler = FillerClass::MixedStrand;
    std::optional<Temperature> peak;  ///< hottest anywhere in it; empty in plans older than the cure engine
    std::optional<CureCase> cureCase; ///< that its times and peak come from
    QString sheetId = {};             ///< of its own filler; empty in plans older than bridging: the plan's
    QByteArray sheetHash = {};
    bool operator==(const Lift&) const = default;
};

/// The times of one batch, counted from 'hardener in'.
struct BatchTimes {
    Duration boardGel;    ///< the puddle on the board
    Duration gel;         ///< the layer on the panel
    Duration sand;        ///< the layer's earliest sanding
    Duration easySanding; ///< how long it then sands easily; advice
    bool operator==(const BatchTimes&) const = default;
};

struct Batch {
    int lift = 0; ///< index into lifts, or the coat for finishing batches
    Mix mix;
    BatchTimes times;
    bool operator==(const Batch&) const = default;
};

/// One confirmed step of preparing, finishing or handing over. Code and cautions are words' business.
struct Step {
    QString code;
    Duration handsOn; ///< the technician's time
    Duration waiting; ///< time it then needs by itself (drying, flash-off)
    std::vector<QString> cautions;
    std::vector<Argument> arguments; ///< for the text, in the order of the step's data
    bool operator==(const Step&) const = default;
};

struct Finish {
    Length thickness;
    int coats = 0;
    Length limitInAll; ///< the lower of the trade's and the sheet's
    Length limitACoat;
    FillerClass filler = FillerClass::FinishSmooth;
    std::vector<Batch> batches;       ///< one a coat
    std::optional<CureCase> cureCase; ///< of a coat, all being alike
    bool operator==(const Finish&) const = default;
};

/// When what happens, from accepting the plan: for 'ready for primer' and planned against actual.
struct TimelineEntry {
    QString code; ///< prepare, mix, spread, wait, sand, turn, finish, before_primer
    Duration start;
    Duration length;
    bool handsOn = false;
    bool operator==(const TimelineEntry&) const = default;
};

struct RepairPlan {
    bool fill = false;
    std::vector<Stop> stops; ///< when not fill
    Reasons reasons;         ///< when fill: why this filler; cautions and advice
    std::optional<FillerClass> filler;
    std::vector<RejectedFiller> rejected;
    QString sheetId; ///< and what it was then
    QByteArray sheetHash;
    QString finishSheetId;
    QByteArray finishSheetHash;
    QByteArray tableHash;
    QString engine; ///< what the times came from: "cure-1", once "sheet-scaled-1"
    Volume cavity;  ///< all faces
    Mass fillerTotal;
    Mass hardenerTotal;
    Allowances allowances;
    std::vector<Lift> lifts;
    std::optional<Temperature> peakLimit; ///< lowest of filler, panel and seam; empty in plans older than the engine
    std::vector<Batch> batches;           ///< of fibre filler, in the order they are mixed
    std::vector<Step> prep;
    Finish finish;
    std::vector<Step> finishing; ///< after the last finishing coat: guide coat, grits, inspection
    std::vector<TimelineEntry> timeline;
    Duration readyForPrimer; ///< from accepting the plan
    bool operator==(const RepairPlan&) const = default;
};

} // namespace strandbench
