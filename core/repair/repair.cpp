// SPDX-License-Identifier: GPL-3.0-or-later
// Folding: one handler a kind of event. Each checks first and changes only then.
#include "repair/repair.h"

#include "repair/answer.h"
#include "repair/closing.h"
#include "repair/plan_fault.h"
#include "repair/replan.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Outcome = std::optional<Fault>;

constexpr int sha256Size = 32; // bytes

QString described(BatchRef batch)
{
    return (batch.finishing ? u"finishing "_s : QString()) + QString::number(batch.index);
}

class Folder {
public:
    Folder(Repair& repair, const Event& event) : m_repair(repair), m_event(event) {}

    Outcome operator()(const TakenIn& taken)
    {
        if (m_repair.lastSeq != 0)
            return conflict(taken.panel, u"taken_in_seq"_s, QString::number(m_repair.lastSeq));
        for (const auto& [field, text] : {std::pair{u"job"_s, taken.job}, std::pair{u"panel"_s, taken.panel}})
            if (text.trimmed().isEmpty())
                return Fault{field, text, FaultKind::Empty, {}};
        m_repair.id = m_event.repair;
        m_repair.job = m_repair.assessment.job = taken.job;
        m_repair.panel = m_repair.assessment.panel = taken.panel;
        m_repair.reworkOf = taken.reworkOf;
        m_repair.takenInBy = m_event.person;
        m_repair.takenInAt = m_event.at;
        return {};
    }

    Outcome operator()(const Answered& answered)
    {
        const bool planned = m_repair.plan && !m_repair.replanDue();
        if (m_repair.parked || (planned && !mayCorrect(m_repair)))
            return outOfOrder(codeOf(answered.question));
        return putAnswer(m_repair, answered, m_event.seq);
    }

    Outcome operator()(const PlanAccepted& accepted)
    {
        if (due().station != Station::Decide)
            return outOfOrder(QString());
        if (auto fault = planFault(m_repair, accepted))
            return fault;
        replan::countSteps(m_repair, accepted.plan);
        m_repair.plan = accepted.plan;
        m_repair.plannedFor = accepted.assessment;
        m_repair.planAcceptedAt = m_event.at;
        ++m_repair.planVersion;
        return {};
    }

    Outcome operator()(const StepDone& done)
    {
        const NextStep next = due();
        const QString said = codeOf(done.stage) + u' ' + QString::number(done.index) + u' ' + done.code;
        int* counter = counterOf(done.stage, next.station);
        if (!counter || next.index != done.index || !codeAt(next) || *codeAt(next) != done.code)
            return outOfOrder(said);
        ++*counter;
        return {};
    }

    Outcome operator()(const ReadingTaken& taken)
    {
        if (m_repair.parked)
            return outOfOrder(QString());
        m_repair.lastReading = taken.reading;
        return {};
    }

    Outcome operator()(const HardenerIn& mixed)
    {
        if (due() != NextStep{Station::Mix, {}, 0, mixed.batch})
            return outOfOrder(described(mixed.batch));
        BatchRun run;
        run.batch = mixed.batch;
        run.mixed = mixed;
        run.hardenerIn = m_event.at;
        m_repair.runs.push_back(run);
        return {};
    }

    Outcome operator()(const PredictedAgain& again)
    {
        BatchRun* run = runOf(again.batch);
        if (!run || run->sands)
            return outOfOrder(described(again.batch));
        run->timesBefore = run->times();
        run->readAgain = again;
        run->readAgainAt = m_event.at;
        return {};
    }

    Outcome operator()(const EdgesClear& clear)
    {
        BatchRun* run = runOf(clear.batch);
        if (!run || run->edgesClear || run->sands)
            return outOfOrder(described(clear.batch));
        run->edgesClear = m_event.at;
        return {};
    }

    Outcome operator()(const Gelled& gelled)
    {
        BatchRun* run = runOf(gelled.batch);
        if (!run || run->sands)
            return outOfOrder(described(gelled.batch));
        std::optional<Instant>& at = gelled.place == GelPlace::Board ? run->boardGelled : run->panelGelled;
        if (at)
            return conflict(described(gelled.batch), u"gelled"_s, codeOf(gelled.place));
        at = m_event.at;
        return {};
    }

    Outcome operator()(const Sands& sands)
    {
        BatchRun* run = runOf(sands.batch);
        if (!run || run->sands)
            return outOfOrder(described(sands.batch));
        run->sands = m_event.at;
        return {};
    }

    Outcome operator()(const Sanded& sanded)
    {
        if (due() != NextStep{Station::Sand, {}, 0, sanded.batch})
            return outOfOrder(described(sanded.batch));
        const int lift = batchOf(sanded.batch).lift;
        for (BatchRun& run : m_repair.runs) // a lift is sanded as one: its earlier batches with it
            if (run.batch.finishing == sanded.batch.finishing && batchOf(run.batch).lift == lift)
                run.sanded = m_event.at;
        return {};
    }

    Outcome operator()(const Turned&)
    {
        if (due().station != Station::Turn)
            return outOfOrder(QString());
        m_repair.turnedAt = m_event.at;
        return {};
    }

    Outcome operator()(const Parked& parked)
    {
        if (m_repair.parked)
            return outOfOrder(parked.to);
        m_repair.parked = parked;
        return {};
    }

    Outcome operator()(const AssessAgain&)
    {
        if (!m_repair.parked && m_repair.plan && !m_repair.replanDue())
            return outOfOrder(QString());
        m_repair.parked.reset();
        askAllAgain();
        if (m_repair.runs.empty())
            dropPlan();
        return {};
    }

    Outcome operator()(const TakenUpAgain&)
    {
        if (!m_repair.parked)
            return outOfOrder(QString());
        if (!m_repair.parked->because.empty())
            return conflict(QString(), u"parked.because"_s, m_repair.parked->because.front());
        m_repair.parked.reset();
        return {};
    }

    Outcome operator()(const HandedOver&)
    {
        if (due() != NextStep{Station::HandOver, {}, int(handOverTests().size()), {}})
            return outOfOrder(QString());
        m_repair.handedOverAt = m_event.at;
        return {};
    }

    Outcome operator()(const PhotoTaken& photo)
    {
        if (photo.hash.size() != sha256Size)
            return conflict(QString::fromLatin1(photo.hash.toHex()), u"sha256"_s, QString::number(sha256Size));
        m_repair.photos.push_back({photo, m_event.at, m_event.person});
        return {};
    }

    Outcome operator()(const Noted& note)
    {
        if (note.code.isEmpty() == note.text.trimmed().isEmpty()) // one of the two
            return Fault{u"noted.text"_s, note.text, FaultKind::Empty, {}};
        m_repair.notes.push_back({note, m_event.at, m_event.person});
        return {};
    }

    Outcome operator()(const AlarmAnswered& answered)
    {
        BatchRun* run = runOf(answered.batch);
        if (!run || run->sanded)
            return outOfOrder(described(answered.batch));
        if (std::ranges::count(run->answered, answered.alarm))
            return conflict(described(answered.batch), u"alarm"_s, codeOf(answered.alarm));
        run->answered.push_back(answered.alarm);
        return {};
    }

    Outcome operator()(const Overridden& over)
    {
        if (due().station != Station::Decide)
            return outOfOrder(QString());
        if (over.stops.empty())
            return Fault{u"overridden.stops"_s, QString(), FaultKind::Empty, {}};
        if (over.reason.trimmed().isEmpty())
            return Fault{u"overridden.reason"_s, over.reason, FaultKind::Empty, {}};
        for (const QString& each : over.stops)
            if (!std::ranges::count(m_repair.assessment.overridden, each))
                m_repair.assessment.overridden.push_back(each);
        m_repair.overrides.push_back({over, m_event.at, m_event.person});
        return {};
    }

    Outcome operator()(const SignedOff&) { return putClosing(m_repair, m_event); }
    Outcome operator()(const Returned&) { return putClosing(m_repair, m_event); }
    Outcome operator()(const ReworkBegun&) { return putClosing(m_repair, m_event); }
    Outcome operator()(const Corrected&) { return putClosing(m_repair, m_event); }

    template <class Other> Outcome operator()(const Other&) // of a lot or of the bench
    {
        return conflict(QString(), u"repair"_s, m_repair.id.toString(QUuid::WithoutBraces));
    }

    [[nodiscard]] Fault conflict(const QString& value, const QString& field, const QString& held) const
    {
        return {kindOf(m_event.payload), value, FaultKind::Conflicts, {field, held}};
    }

private:
    [[nodiscard]] NextStep due() const { return nextStep(m_repair); }
    [[nodiscard]] Fault outOfOrder(const QString& value) const
    {
        return conflict(value, u"next_step"_s, described(due()));
    }

    BatchRun* runOf(BatchRef batch)
    {
        const auto found = std::ranges::find(m_repair.runs, batch, &BatchRun::batch);
        return found == m_repair.runs.end() ? nullptr : &*found;
    }

    [[nodiscard]] const Batch& batchOf(BatchRef ref) const
    {
        const auto& batches = ref.finishing ? m_repair.plan->finish.batches : m_repair.plan->batches;
        return batches[std::size_t(ref.index)];
    }

    /// The count that a step of this stage moves on; null when another station is due.
    int* counterOf(Stage stage, Station station)
    {
        if (stage == Stage::Prepare && station == Station::Prepare)
            return &m_repair.prepDone;
        if (stage == Stage::Finish && station == Station::Finish)
            return &m_repair.finishingDone;
        if (stage == Stage::HandOver && station == Station::HandOver)
            return &m_repair.handOverDone;
        return nullptr;
    }

    /// The code of the step that is due; none when every test of the hand-over is done.
    [[nodiscard]] std::optional<QString> codeAt(const NextStep& next) const
    {
        const auto index = std::size_t(next.index);
        if (next.station == Station::Prepare)
            return m_repair.plan->prep[index].code;
        if (next.station == Station::Finish)
            return m_repair.plan->finishing[index].code;
        if (index < handOverTests().size())
            return handOverTests()[index];
        return std::nullopt;
    }

    void askAllAgain()
    {
        Assessment fresh;
        fresh.job = m_repair.job;
        fresh.panel = m_repair.panel;
        m_repair.assessment = fresh;
        m_repair.answeredBy.clear();
    }

    void dropPlan()
    {
        m_repair.lastReading.reset();
        m_repair.plan.reset();
        m_repair.plannedFor.reset();
        m_repair.planAcceptedAt.reset();
        m_repair.planVersion = 0;
        m_repair.prepDone = 0;
    }

    Repair& m_repair;
    const Event& m_event;
};

/// What no event may do, whatever its kind.
Outcome commonFault(const Repair& repair, const Event& event, const Folder& folder)
{
    if (event.seq <= repair.lastSeq)
        return Fault{u"seq"_s,
                     QString::number(event.seq),
                     FaultKind::Conflicts,
                     {u"last_seq"_s, QString::number(repair.lastSeq)}};
    if (repair.lastSeq == 0)
        return std::holds_alternative<TakenIn>(event.payload)
                   ? Outcome{}
                   : folder.conflict(QString(), u"first_event"_s, u"taken_in"_s);
    if (event.repair != repair.id)
        return Fault{u"repair"_s,
                     event.repair.toString(QUuid::WithoutBraces),
                     FaultKind::Conflicts,
                     {u"repair"_s, repair.id.toString(QUuid::WithoutBraces)}};
    if (repair.handedOverAt && !isClosing(event.payload))
        return folder.conflict(QString(), u"next_step"_s, codeOf(Station::Done));
    return {};
}

} // namespace

const BatchRun* Repair::run(BatchRef batch) const
{
    const auto found = std::ranges::find(runs, batch, &BatchRun::batch);
    return found == runs.end() ? nullptr : &*found;
}

std::optional<Fault> apply(Repair& repair, const Event& event)
{
    Folder folder(repair, event);
    if (auto fault = commonFault(repair, event, folder))
        return fault;
    if (auto fault = std::visit(folder, event.payload))
        return fault;
    repair.lastAt = event.at;
    repair.lastSeq = event.seq;
    return std::nullopt;
}

Checked<Repair> foldRepair(const std::vector<Event>& events)
{
    if (events.empty())
        return tl::unexpected(Faults{{u"events"_s, QString(), FaultKind::Missing, {u"taken_in"_s}}});
    Repair repair;
    for (const Event& event : events)
        if (auto fault = apply(repair, event))
            return tl::unexpected(Faults{*fault});
    return repair;
}

} // namespace strandbench
