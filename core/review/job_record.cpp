// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a record: each event is folded, and what it says is kept beside what the repair was when it came.
#include "review/job_record.h"

#include "repair/photos.h"

#include <algorithm>

namespace strandbench {
namespace {

class Reader {
public:
    explicit Reader(const Catalogue& catalogue) : m_catalogue(catalogue) {}

    /// Folds the event and keeps what it tells; the fault is the folding's.
    std::optional<Fault> read(const Event& event)
    {
        m_before = m_record.repair;
        if (auto fault = apply(m_record.repair, event))
            return fault;
        m_told = {event.at, event.person, event.seq};
        m_record.events.push_back(event);
        std::visit(*this, event.payload);
        if (const QString day = localDay(event.at); !std::ranges::count(m_record.days, day))
            m_record.days.push_back(day);
        if (!event.person.isEmpty() && !m_record.people.contains(event.person))
            m_record.people << event.person;
        return std::nullopt;
    }

    JobRecord finished()
    {
        m_record.state = codeOf(nextStep(m_record.repair).station);
        m_record.lasted = elapsed(m_record.repair.takenInAt, m_record.repair.lastAt);
        for (AnswerRecord& each : m_record.answers) {
            const auto now = m_record.repair.answeredBy.find(each.question);
            each.stands = now != m_record.repair.answeredBy.end() && now->second == each.told.seq;
        }
        m_record.photosMissing = missingPhotos(m_record.repair);
        for (const BatchRecord& each : m_record.batches)
            layerOf(each);
        return std::move(m_record);
    }

    void operator()(const TakenIn&) {}

    void operator()(const Answered& answered)
    {
        AnswerRecord record{answered.question, answered.value, {}, !m_record.plans.empty(), true,
                            answered.foundBy,  m_told};
        if (answered.corrects)
            for (const AnswerRecord& each : m_record.answers)
                if (each.told.seq == *answered.corrects)
                    record.before = each.value;
        m_record.answers.push_back(record);
        if (const auto* reading = std::get_if<Reading>(&answered.value))
            keepReading(*reading, true);
    }

    void operator()(const PlanAccepted& accepted)
    {
        m_record.plans.push_back({int(m_record.plans.size()) + 1, accepted, m_told});
    }

    void operator()(const StepDone& done)
    {
        StepRecord record{done.stage, {}, m_told};
        const auto index = std::size_t(done.index);
        if (done.stage == Stage::Prepare)
            record.step = m_before.plan->prep[index];
        else if (done.stage == Stage::Finish)
            record.step = m_before.plan->finishing[index];
        record.step.code = done.code;
        m_record.steps.push_back(record);
    }

    void operator()(const ReadingTaken& taken) { keepReading(taken.reading, false); }

    void operator()(const HardenerIn& mixed)
    {
        const RepairPlan& plan = *m_before.plan;
        const auto index = std::size_t(mixed.batch.index);
        const Batch& planned = (mixed.batch.finishing ? plan.finish.batches : plan.batches)[index];
        BatchRecord record;
        record.batch = mixed.batch;
        record.lift = planned.lift;
        if (!mixed.batch.finishing)
            record.face = plan.lifts[std::size_t(planned.lift)].face;
        record.planned = planned.mix;
        record.plannedTimes = planned.times;
        record.mixed = mixed;
        record.predicted = mixed.times;
        if (mixed.filler.value() > 0)
            record.hardenerShare = Fraction::ofOne(mixed.hardener.value() / mixed.filler.value());
        if (const ProductSheet* sheet = m_catalogue.version(mixed.sheetId, mixed.sheetHash))
            record.demoSheet = sheet->demo;
        record.hardenerIn = m_told;
        m_record.batches.push_back(record);
    }

    void operator()(const PredictedAgain& again) { batch(again.batch).predicted = again.times; }
    void operator()(const EdgesClear& clear) { batch(clear.batch).edgesClear = m_told; }
    void operator()(const Gelled& gelled)
    {
        BatchRecord& record = batch(gelled.batch);
        (gelled.place == GelPlace::Board ? record.boardGelled : record.panelGelled) = m_told;
    }
    void operator()(const Sands& sands) { batch(sands.batch).sands = m_told; }

    void operator()(const Sanded&)
    {
        // A lift is sanded as one: the folded repair says which batches that were.
        for (BatchRecord& each : m_record.batches)
            if (const BatchRun* run = m_record.repair.run(each.batch); run && run->sanded && !each.sanded)
                each.sanded = m_told;
    }

    void operator()(const Turned&) { m_record.turned = m_told; }
    void operator()(const Parked& parked) { m_record.parkings.push_back({parked, m_told, {}, false}); }
    void operator()(const AssessAgain&)
    {
        if (!m_before.parked)
            return;
        m_record.parkings.back().left = m_told;
        m_record.parkings.back().assessedAgain = true;
    }
    void operator()(const TakenUpAgain&) { m_record.parkings.back().left = m_told; }
    void operator()(const HandedOver&) { m_record.handedOver = m_told; }
    void operator()(const PhotoTaken&) {} // the folded repair keeps them
    void operator()(const Noted&) {}
    void operator()(const AlarmAnswered&) {}
    void operator()(const Overridden& over) { m_record.overrides.push_back({over, m_told}); }
    void operator()(const Returned&) { m_record.returned = m_told; }
    void operator()(const ReworkBegun&) {} // the folded repair keeps it
    void operator()(const SignedOff&) { m_record.signedOff = m_told; }
    void operator()(const Corrected&) {}                    // the folded repair keeps them
    template <class Other> void operator()(const Other&) {} // of a lot or the bench: folding lets none pass

private:
    BatchRecord& batch(BatchRef ref)
    {
        return *std::ranges::find(m_record.batches, ref, &BatchRecord::batch); // folding let it pass: it is there
    }

    void keepReading(const Reading& reading, bool answered)
    {
        const AirVerdict verdict = judgeAir(reading);
        m_record.readings.push_back({reading, verdict.dewPoint, verdict.margin, answered, m_told});
    }

    void layerOf(const BatchRecord& batch)
    {
        auto& layers = m_record.layers;
        auto found = std::ranges::find_if(layers, [&](const LayerRecord& each) {
            return each.finishing == batch.batch.finishing && each.index == batch.lift;
        });
        if (found == layers.end()) {
            LayerRecord made;
            made.finishing = batch.batch.finishing;
            made.index = batch.lift;
            made.face = batch.face;
            planned(made);
            made.laidFrom = batch.hardenerIn.at;
            found = layers.insert(layers.end(), made);
        }
        ++found->batches;
        found->mixed += batch.mixed.filler;
        found->laidUntil = batch.edgesClear ? std::optional(batch.edgesClear->at) : std::nullopt;
        found->sanded = batch.sanded ? std::optional(batch.sanded->at) : std::nullopt;
    }

    /// What the newest plan says of a layer. It keeps every lift that has begun.
    void planned(LayerRecord& layer) const
    {
        const RepairPlan& plan = *m_record.repair.plan;
        if (layer.finishing) {
            layer.filler = plan.finish.filler;
            layer.thickness = plan.finish.thickness / double(std::max(1, plan.finish.coats));
            return;
        }
        const Lift& lift = plan.lifts[std::size_t(layer.index)];
        layer.filler = lift.filler;
        layer.thickness = lift.thickness;
    }

    const Catalogue& m_catalogue;
    JobRecord m_record;
    Repair m_before; ///< as it was when the event came
    Told m_told;
};

} // namespace

Checked<JobRecord> recordOf(const std::vector<Event>& events, const Catalogue& catalogue)
{
    if (events.empty())
        return tl::unexpected(Faults{{QStringLiteral("events"), {}, FaultKind::Missing, {QStringLiteral("taken_in")}}});
    Reader reader(catalogue);
    for (const Event& event : events)
        if (auto fault = reader.read(event))
            return tl::unexpected(Faults{*fault});
    return reader.finished();
}

} // namespace strandbench
