// SPDX-License-Identifier: GPL-3.0-or-later
// Folding events into a repair, and the next step. Pure: no storage, no engine, no decision table.
#pragma once

#include "quantity/fault.h"
#include "repair/event.h"

namespace strandbench {

/// One batch that has had its hardener.
struct BatchRun {
    BatchRef batch;
    HardenerIn mixed;
    Instant hardenerIn;
    std::optional<Instant> edgesClear;
    std::optional<Instant> boardGelled;
    std::optional<Instant> panelGelled;
    std::optional<Instant> sands;
    std::optional<Instant> sanded;
    std::optional<PredictedAgain> readAgain = {}; ///< the newest, when a reading was taken while it ran
    std::optional<Instant> readAgainAt = {};
    std::optional<BatchTimes> timesBefore = {}; ///< what that reading changed
    std::vector<AlarmKind> answered = {};       ///< alarms that a person answered
    bool operator==(const BatchRun&) const = default;

    /// As predicted last.
    [[nodiscard]] const BatchTimes& times() const { return readAgain ? readAgain->times : mixed.times; }
    /// Null where nobody said.
    [[nodiscard]] const HowSure* howSure() const
    {
        return readAgain ? &readAgain->howSure : mixed.howSure ? &*mixed.howSure : nullptr;
    }
    /// Null where the times came from no cure.
    [[nodiscard]] const CureCase* cureCase() const
    {
        return readAgain ? &readAgain->cureCase : mixed.cureCase ? &*mixed.cureCase : nullptr;
    }
    /// True until it has been sanded: its clock is on the ribbon.
    [[nodiscard]] bool running() const { return !sanded.has_value(); }
};

/// Something kept of a repair that moves no step: a picture, a remark.
template <class T> struct Kept {
    T what;
    Instant at;
    QString person;
    bool operator==(const Kept&) const = default;
};

struct PlanProgress; // plan/planner.h

struct Repair {
    QUuid id;
    QString job;
    QString panel;
    QString takenInBy;
    Instant takenInAt;
    Assessment assessment;
    std::map<Question, qint64> answeredBy; ///< seq of the event that answered
    std::optional<RepairPlan> plan;
    std::optional<Instant> planAcceptedAt;
    std::optional<Assessment> plannedFor; ///< the answers that the plan was accepted for
    int planVersion = 0;                  ///< how many plans were accepted since all was asked
    int prepDone = 0;                     ///< steps of plan->prep confirmed, in order
    std::vector<BatchRun> runs;           ///< in the order the hardener went in
    std::optional<Instant> turnedAt;
    int finishingDone = 0;
    int handOverDone = 0;
    std::optional<Reading> lastReading; ///< the newest, as answered or as taken since
    std::optional<Parked> parked;
    std::vector<Kept<PhotoTaken>> photos;
    std::vector<Kept<Noted>> notes;
    std::vector<Kept<Overridden>> overrides;
    std::optional<Instant> handedOverAt;
    std::optional<Kept<SignedOff>> signedOff;
    std::optional<Kept<Returned>> returned; ///< instead of being signed off
    QUuid rework;                           ///< that was taken in for it since; null: none yet
    QUuid reworkOf;                         ///< the repair that this one does again; null: none
    std::vector<Kept<Corrected>> corrections;
    Instant lastAt; ///< of the newest event
    qint64 lastSeq = 0;
    bool operator==(const Repair&) const = default;

    /// The run of a batch; null when its hardener is not in yet.
    [[nodiscard]] const BatchRun* run(BatchRef batch) const;
    /// To be worked at, or returned and waiting for its rework: on the rail.
    [[nodiscard]] bool open() const { return !handedOverAt || waitsForRework(); }
    [[nodiscard]] bool waitsForRework() const { return returned && rework.isNull(); }
    /// True when an answer is no longer what the plan was accepted for: it must be planned again before the next
    /// step. Changed back, the plan stands as it was.
    [[nodiscard]] bool replanDue() const { return plan && assessment != *plannedFor; }
};

/// True while a batch is on the panel and its edges are not clear: nothing may come before that.
[[nodiscard]] bool isWet(const BatchRun& run);
/// True when an answer may be corrected: not parked, not handed over, no finishing filler mixed yet.
[[nodiscard]] bool mayCorrect(const Repair& repair);
/// How many batches of fibre filler are frozen: mixed, or of a lift that has begun. A plan made again keeps them.
[[nodiscard]] int frozenBatches(const Repair& repair);
/// How far the repair has carried out its plan.
[[nodiscard]] PlanProgress planProgressOf(const Repair& repair);

/// Folds one more event into the repair. The fault names the event when it cannot follow what came before
/// (a batch that the plan does not have, a step out of order); the repair is then as it was.
///
/// Events come by rising seq; the first takes in, and after the handing over come only what putClosing() lets pass
/// (closing.h): the signing off or the returning, once, the rework's beginning, and corrections. A step, a batch's
/// hardener, a sanding, the turning and the handing over must be the one that nextStep() gives. Edges, gels
/// and 'it sands' belong to a batch that has its hardener, once each, and go on while the repair is parked.
/// - A question is answered once; a correction names the seq that answered it before. Which answers a correction
///   drops: see putAnswer() in answer.h. After the plan is accepted only corrections, and what they ask for anew,
///   until finishing filler is mixed (mayCorrect()); the repair is then planned again.
/// - A plan is accepted for the very assessment on record, and only once all is answered. One that takes the place
///   of another keeps the frozen batches and their lifts as they were, and the preparing once a batch is mixed;
///   before, a step that is not as it was is open again, and all after it.
/// - Parked for no refusal, a repair is taken up again where it was. Assessing again leads out of either; it
///   clears all answers, and the plan, unless a batch has been mixed: that one is then planned again.
/// - Stops are overridden when the decision is due, for a reason; the assessment keeps which, until all is asked again.
/// - Each alarm of a batch is answered once.
/// - Pictures and remarks are taken at any time before the handing over.
[[nodiscard]] std::optional<Fault> apply(Repair& repair, const Event& event);
/// Folds all events of one repair, oldest first.
[[nodiscard]] Checked<Repair> foldRepair(const std::vector<Event>& events);

/// The tests of the hand-over, in order: codes that app/words renders.
[[nodiscard]] const std::vector<QString>& handOverTests();

enum class Station {
    Assess,   ///< question says which
    Decide,   ///< everything asked is answered: fill or stop
    Prepare,  ///< step index of plan->prep
    Mix,      ///< batch
    Spread,   ///< batch: from hardener in to edges clear
    Wait,     ///< batch: hands off until it sands
    Sand,     ///< batch: it sands, until sanded and dusted
    Turn,     ///< strip the dam, turn the panel
    Finish,   ///< step index of plan->finishing
    HandOver, ///< test index; all tests done: the handing over itself
    Done,
    Parked,
    Returned, ///< by the supervisor: its rework is to be taken in
};
template <> struct Codes<Station> {
    static constexpr std::array<std::pair<Station, const char*>, 13> table{{
        {Station::Assess, "assess"},
        {Station::Decide, "decide"},
        {Station::Prepare, "prepare"},
        {Station::Mix, "mix"},
        {Station::Spread, "spread"},
        {Station::Wait, "wait"},
        {Station::Sand, "sand"},
        {Station::Turn, "turn"},
        {Station::Finish, "finish"},
        {Station::HandOver, "hand_over"},
        {Station::Done, "done"},
        {Station::Parked, "parked"},
        {Station::Returned, "returned"},
    }};
};

struct NextStep {
    Station station = Station::Assess;
    std::optional<Question> question;
    int index = 0;
    std::optional<BatchRef> batch;
    bool operator==(const NextStep&) const = default;
};

/// The next step of a repair: where a restart, a tap on its card and a tap on its clock lead.
/// A face laid in several batches is mixed and spread one after another; a lift is sanded before the next
/// face or lift begins. When an answer was corrected after the plan was accepted, what it asks for anew and the
/// plan come next; only a wet batch goes before.
[[nodiscard]] NextStep nextStep(const Repair& repair);
/// For faults: "mix 0".
[[nodiscard]] QString described(const NextStep& step);

/// True when the answers so far make a question apply: the weld of a weld seam, the reach behind a hole, the
/// core of a laminate, the size of a damage that has a kind.
[[nodiscard]] bool asksFor(const Assessment& assessment, Question question);

/// The first question not answered yet that the answers so far ask for; empty when all are, or when an
/// answer already refuses: a substrate that is never filled, a spot or stitch weld, a rust hole, a crack or a
/// hole in metal. Takes the repair, since only the record knows whether the core was answered.
[[nodiscard]] std::optional<Question> nextQuestion(const Repair& repair);

} // namespace strandbench
