// SPDX-License-Identifier: GPL-3.0-or-later
// Everything an apprentice decides on one panel, as values. What is empty was not reached, or not answered.
#pragma once

#include "geometry/cavity.h"
#include "material/sheet.h"
#include "practice/panel.h"

namespace strandbench {

/// The tests of a finished surface (common practice, no source).
enum class InspectionTest { GuideCoatGone, Straightedge, NoPinholes, NailAndPaper, EvenSound, NoEdge };
template <> struct Codes<InspectionTest> {
    static constexpr std::array<std::pair<InspectionTest, const char*>, 6> table{{
        {InspectionTest::GuideCoatGone, "guide_coat_gone"},
        {InspectionTest::Straightedge, "straightedge"},
        {InspectionTest::NoPinholes, "no_pinholes"},
        {InspectionTest::NailAndPaper, "nail_and_paper"},
        {InspectionTest::EvenSound, "even_sound"},
        {InspectionTest::NoEdge, "no_edge"},
    }};
};

/// One batch as it was laid on the board: what it weighs follows from the sheet.
struct MixedBatch {
    Length puddle;                        ///< across
    Length bead;                          ///< in all
    std::optional<Duration> edgesCleared; ///< from this batch's 'hardener in'
    bool operator==(const MixedBatch&) const = default;
};

struct AttemptedLift {
    Face face = Face::Front;
    Length thickness; ///< without what is built proud over the opening
    std::vector<MixedBatch> batches;
    std::optional<Duration> sanded; ///< from 'hardener in' of its last batch
    bool operator==(const AttemptedLift&) const = default;
};

struct AttemptedFinish {
    int coats = 0;
    Length coat; ///< each, finished
    std::vector<InspectionTest> tests;
    Duration beforePrimer; ///< waited after the last sanding
    bool operator==(const AttemptedFinish&) const = default;
};

struct Attempt {
    Assessment found;           ///< the pupil's answers; its reading is the panel's, whatever stands here
    std::optional<bool> fill;   ///< false: stopped
    std::vector<QString> stops; ///< codes of the stops that the pupil gave, on a stop
    QString instead;            ///< code of what to do instead of filling
    std::optional<FillerClass> filler;
    std::vector<QString> steps; ///< codes of preparing, in the order they were put
    std::vector<AttemptedLift> lifts;
    bool turned = false;
    std::optional<AttemptedFinish> finish;
    bool operator==(const Attempt&) const = default;
};

} // namespace strandbench
