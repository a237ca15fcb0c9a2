// SPDX-License-Identifier: GPL-3.0-or-later
// One panel under an apprentice's hands: what is asked next, and what was decided so far. Nothing is told, nothing is
// written to the record of the shop.
#pragma once

#include "practice/attempt.h"
#include "practice/model_answer.h"
#include "repair/repair.h"

namespace strandbench {

/// What is asked next, in the order of the job.
enum class PracticeAsks {
    Question, ///< of the assessment: question()
    FillOrStop,
    WhyStop,
    Instead,
    Filler,
    Steps,
    Lift, ///< how thick the next one is laid
    Mix,  ///< a batch for it
    Spread,
    Sand,
    AfterSanding, ///< another lift, the other face, or the finish
    Coats,
    Tests,
    Primer,
    Done,
};

class PracticeRun {
public:
    /// at: when it is begun. The shop outlives the run.
    PracticeRun(PracticePanel panel, const PlanningSet& shop, const Instant& at);

    [[nodiscard]] const PracticePanel& panel() const { return m_panel; }
    [[nodiscard]] const Attempt& attempt() const { return m_attempt; }
    /// The pupil's answers, folded as at the bench: what the screens of the questions show.
    [[nodiscard]] const Repair& repair() const { return m_repair; }
    [[nodiscard]] PracticeAsks asks() const;
    /// The first question that is open and that the answers so far ask for. Air and panel are read for the pupil.
    [[nodiscard]] std::optional<Question> question() const;
    /// What decision table and planner make of the pupil's own answers, with the filler in the hand once it is chosen.
    /// Fill it was decided.
    [[nodiscard]] const ModelAnswer& own() const { return *m_own; }
    /// The lift that is laid now; only from its mixing to its sanding.
    [[nodiscard]] const AttemptedLift& lift() const { return m_attempt.lifts.back(); }
    [[nodiscard]] Face face() const { return m_face; }

    /// A fault leaves everything as it was.
    [[nodiscard]] std::optional<Fault> answer(const Answered& answered, const Instant& at);
    /// Filling what the pupil's own answers stop ends the panel.
    void decide(bool fill);
    void giveStops(const std::vector<QString>& codes);
    void giveInstead(const QString& code);
    void choose(FillerClass filler);
    void putSteps(const std::vector<QString>& codes);
    void beginLift(Length thickness);
    void mix(Length puddle, Length bead);
    /// since: the batch's 'hardener in'.
    void clearEdges(Duration since);
    void mixAnother(); ///< for the same lift
    void sand(Duration since);
    void nextLift();
    void turn();
    void beginFinish();
    void layFinish(int coats, Length coat);
    void test(const std::vector<InspectionTest>& tests);
    void waitForPrimer(Duration wait);

private:
    PracticePanel m_panel;
    const PlanningSet* m_shop;
    Repair m_repair;
    Attempt m_attempt;
    std::optional<ModelAnswer> m_own;
    PracticeAsks m_asks = PracticeAsks::Question;
    Face m_face = Face::Front;
};

} // namespace strandbench
