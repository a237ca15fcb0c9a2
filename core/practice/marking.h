// SPDX-License-Identifier: GPL-3.0-or-later
// An attempt marked, decision by decision. Each is judged from the situation as the pupil had made it until then, so
// that one mistake is marked once: a wrong substrate costs SubstrateFound, and fill or stop is then judged by the
// decision table on the pupil's own answers, times by the batch as it was mixed.
#pragma once

#include "practice/consequence.h"
#include "practice/decision_point.h"
#include "practice/model_answer.h"

namespace strandbench {

enum class Judged { Right, Wrong, NotReached };
template <> struct Codes<Judged> {
    static constexpr std::array<std::pair<Judged, const char*>, 3> table{{
        {Judged::Right, "right"},
        {Judged::Wrong, "wrong"},
        {Judged::NotReached, "not_reached"},
    }};
};

/// One decision, judged. Given and expected by decision: answers, verdict, stops, filler, steps, turning and tests are
/// codes; SizeFound length, width (but of a crack) and depth; LiftThickness as laid and its peak, against the sheet's
/// greatest and the peak limit; BuildUp a height; MixedAmount mass and batches, against least and most; HardenerDose a
/// share, against the band; EdgesCleared and SandedAt a moment, against both ends; FinishCoats how many and how thick;
/// PrimerAfter a time.
struct Mark {
    DecisionPoint decision = DecisionPoint::SubstrateFound;
    std::optional<int> lift; ///< of the attempt; for BuildUp the face: 0 front, 1 back
    Judged judged = Judged::NotReached;
    std::vector<Argument> given;    ///< what the pupil decided; empty where nothing was
    std::vector<Argument> expected; ///< what would have been right from where the pupil stood: a value, or both ends
    Reason rule;                    ///< why, with its tolerance; the codes stand in knownRules()
    std::optional<Consequence> consequence; ///< of a wrong one
    bool grave = false;                     ///< alone keeps from passing: harm that no later care makes good
    bool operator==(const Mark&) const = default;
};

/// How the whole stands. No share of right marks is given: none could hide a filled stop.
struct Outcome {
    bool filledAStop = false; ///< the panel is in truth a stop, and the pupil filled it
    bool wrongVerdict = false;
    bool unfitFiller = false; ///< the panel in truth refuses the filler that went in
    bool graveMistake = false;
    std::vector<Skill> weak; ///< skills with more wrong marks than one
    /// None of all that.
    [[nodiscard]] bool passed() const
    {
        return !filledAStop && !wrongVerdict && !unfitFiller && !graveMistake && weak.empty();
    }
    bool operator==(const Outcome&) const = default;
};

struct Marking {
    std::vector<Mark> marks; ///< in the order of the work
    Outcome outcome;
    /// What is right on the pupil's own answers with the filler in their hand: what the work was judged by, and what a
    /// replay of it needs. Does not fill where the answers stop.
    ModelAnswer hand;
};

/// Marks an attempt of a panel whose model answer is `truth`. Takes any attempt: figures that no bench could lay are
/// wrong, never an error.
[[nodiscard]] Marking mark(const PracticePanel& panel, const ModelAnswer& truth, const Attempt& attempt,
                           const PlanningSet& shop);

/// The pupil's own answers as an assessment to decide on: with the panel's reading, and a damage outside what a bench
/// may hold as one that was not measured.
[[nodiscard]] Assessment ownAssessment(const PracticePanel& panel, const Attempt& attempt);

/// Every code of a rule, for those who make sentences of them: each decision's own, and those that say more.
[[nodiscard]] const std::vector<CodeWithArguments>& knownRules();

/// Tolerances (assumptions): of a length 15 %, of a width or depth 20 %; 3 mm or 0.5 mm where that is more. Of filler
/// 10 % too little and 35 % too much, or a 2-in puddle a batch where that is more: a puddle's width is judged by eye.
struct MarkingTolerances {
    double length = 0.15;
    double across = 0.20;
    Length lengthAtLeast = millimetres(3);
    Length depthAtLeast = millimetres(0.5);
    double tooLittle = 0.10;
    double tooMuch = 0.35;
};

} // namespace strandbench
