// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/deviations.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Absorbs what a division leaves of an exact limit: 1.0 g in 40 g is 2.5 %.
constexpr double hair = 1e-9;

/// The steps after which metal lies bare.
bool baresMetal(const QString& step) { return step == u"abrade_80_metal"_s; }

class Finder {
public:
    Finder(const JobRecord& record, const Catalogue& catalogue, const DeviationLimits& limits)
        : m_record(record), m_catalogue(catalogue), m_limits(limits)
    {}

    std::vector<Deviation> all()
    {
        for (const BatchRecord& each : m_record.batches) {
            readingBefore(each);
            hardener(each);
            gelAndSanding(each);
            product(each);
        }
        bareMetal();
        for (const LayerRecord& each : m_record.layers)
            liftTooThick(each);
        steps();
        changes();
        gaps();
        clocks();
        std::ranges::stable_sort(m_found, {}, [](const Deviation& each) { return each.told.seq; });
        return std::move(m_found);
    }

private:
    void add(DeviationKind kind, const Told& told, std::vector<Argument> arguments = {},
             std::optional<BatchRef> batch = {})
    {
        m_found.push_back({kind, std::move(arguments), batch, told});
    }

    void readingBefore(const BatchRecord& batch)
    {
        const ReadingRecord* last = nullptr;
        for (const ReadingRecord& each : m_record.readings)
            if (each.told.seq < batch.hardenerIn.seq)
                last = &each;
        if (!last)
            return add(DeviationKind::NoReading, batch.hardenerIn, {}, batch.batch);
        if (const Duration age = elapsed(last->told.at, batch.hardenerIn.at); age > m_limits.readingAge)
            add(DeviationKind::ReadingOld, batch.hardenerIn, {age, m_limits.readingAge}, batch.batch);
        const ProductSheet* sheet = m_catalogue.version(batch.mixed.sheetId, batch.mixed.sheetHash);
        const AirVerdict verdict =
            judgeAir(last->reading, sheet ? narrowed(m_limits.filling, *sheet) : m_limits.filling);
        for (const Reason& stop : verdict.stops) // their codes are the deviations' codes
            add(fromCode<DeviationKind>(stop.code).value(), batch.hardenerIn, stop.arguments, batch.batch);
    }

    void hardener(const BatchRecord& batch)
    {
        if (batch.hardenerShare.value() < m_limits.hardenerLow.value() - hair)
            add(DeviationKind::HardenerLow, batch.hardenerIn, {batch.hardenerShare, m_limits.hardenerLow}, batch.batch);
        if (batch.hardenerShare.value() > m_limits.hardenerHigh.value() + hair)
            add(DeviationKind::HardenerHigh, batch.hardenerIn, {batch.hardenerShare, m_limits.hardenerHigh},
                batch.batch);
    }

    void gelAndSanding(const BatchRecord& batch)
    {
        const BatchTimes& predicted = batch.predicted;
        if (batch.edgesClear) {
            const Duration edges = batch.since(*batch.edgesClear);
            if (batch.panelGelled && batch.panelGelled->seq < batch.edgesClear->seq)
                add(DeviationKind::EdgesAfterGel, *batch.edgesClear, {edges, batch.since(*batch.panelGelled)},
                    batch.batch);
            else if (edges > predicted.gel)
                add(DeviationKind::EdgesAfterPredictedGel, *batch.edgesClear, {edges, predicted.gel}, batch.batch);
        }
        const double least = 1 - m_limits.sandsEarly.value();
        if (batch.sands && batch.since(*batch.sands) < predicted.sand * least * (1 - hair))
            add(DeviationKind::SandsEarly, *batch.sands, {batch.since(*batch.sands), predicted.sand}, batch.batch);
    }

    void product(const BatchRecord& batch)
    {
        if (batch.mixed.lot.isEmpty())
            add(DeviationKind::LotNotTold, batch.hardenerIn, {}, batch.batch);
        if (batch.mixed.hardenerLot.isEmpty())
            add(DeviationKind::HardenerLotNotTold, batch.hardenerIn, {}, batch.batch);
        if (batch.demoSheet.value_or(false))
            add(DeviationKind::DemoSheet, batch.hardenerIn, {batch.mixed.sheetId}, batch.batch);
    }

    /// The first fibre filler must follow the baring of the metal within the hour.
    void bareMetal()
    {
        const auto first =
            std::ranges::find_if(m_record.batches, [](const auto& each) { return !each.batch.finishing; });
        if (first == m_record.batches.end())
            return;
        const StepRecord* bared = nullptr;
        for (const StepRecord& each : m_record.steps)
            if (baresMetal(each.step.code) && each.told.seq < first->hardenerIn.seq)
                bared = &each;
        if (!bared)
            return;
        if (const Duration open = elapsed(bared->told.at, first->hardenerIn.at); open > m_limits.bareMetal)
            add(DeviationKind::BareMetalLate, first->hardenerIn, {open, m_limits.bareMetal}, first->batch);
    }

    /// What a layer came to follows from what was mixed for it.
    void liftTooThick(const LayerRecord& layer)
    {
        if (layer.finishing)
            return;
        Mass planned = grams(0);
        const BatchRecord* last = nullptr;
        for (const BatchRecord& each : m_record.batches)
            if (!each.batch.finishing && each.lift == layer.index) {
                planned += each.planned.filler;
                last = &each;
            }
        if (!last || planned.value() <= 0)
            return;
        const ProductSheet* sheet = m_catalogue.version(last->mixed.sheetId, last->mixed.sheetHash);
        const Length laid = layer.thickness * double(layer.mixed / planned);
        if (sheet && laid > sheet->greatestLift * (1 + m_limits.liftOver.value()))
            add(DeviationKind::LiftTooThick, last->hardenerIn, {laid, sheet->greatestLift}, last->batch);
    }

    /// The acts of a repair told before and after a step, as far as there are such.
    [[nodiscard]] std::pair<const Event*, const Event*> around(const StepRecord& step) const
    {
        const auto at = std::ranges::find(m_record.events, step.told.seq, &Event::seq);
        const Event* before = at == m_record.events.begin() ? nullptr : &*std::prev(at);
        return {before, std::next(at) == m_record.events.end() ? nullptr : &*std::next(at)};
    }

    /// Steps are told in their order, so that none can be left out; but one may be told that was not done.
    void steps()
    {
        int skimmed = 0;
        Duration taken = seconds(0);
        Duration planned = seconds(0);
        Told last;
        for (const StepRecord& each : m_record.steps) {
            const auto [before, after] = around(each);
            const Duration needs = each.step.waiting;
            if (before && after && each.step.code != u"cure_before_primer"_s &&
                elapsed(before->at, after->at) < needs * (1 - hair))
                add(DeviationKind::WaitCutShort, {after->at, after->person, after->seq},
                    {each.step.code, elapsed(before->at, after->at), needs});
            const Duration took = before ? elapsed(before->at, each.told.at) : each.step.handsOn;
            if (took >= each.step.handsOn * m_limits.skimmed.value())
                continue;
            ++skimmed;
            taken += took;
            planned += each.step.handsOn;
            last = each.told;
        }
        if (skimmed > 0)
            add(DeviationKind::StepsSkimmed, last, {Count{skimmed}, taken, planned});
    }

    void changes()
    {
        for (const AnswerRecord& each : m_record.answers)
            if (each.before && each.afterPlan)
                add(DeviationKind::AnswerCorrected, each.told, {codeOf(each.question)});
        for (const PlanRecord& each : m_record.plans)
            if (each.version > 1)
                add(DeviationKind::PlannedAgain, each.told, {Count{each.version}});
        for (const OverrideRecord& each : m_record.overrides)
            for (const QString& stop : each.overridden.stops)
                add(DeviationKind::Overridden, each.told, {stop, each.overridden.reason});
        for (const ParkRecord& each : m_record.parkings)
            add(DeviationKind::Parked, each.told,
                {each.parked.to, each.parked.because.empty() ? each.parked.reason : each.parked.because.front()});
    }

    void gaps()
    {
        if (m_record.handedOver)
            for (const PhotoMoment each : m_record.photosMissing)
                add(DeviationKind::PhotoMissing, *m_record.handedOver, {codeOf(each)});
        const auto nameless = [](const Event& each) { return each.person.isEmpty(); };
        const auto first = std::ranges::find_if(m_record.events, nameless);
        if (first != m_record.events.end())
            add(DeviationKind::PersonNotTold, {first->at, first->person, first->seq},
                {Count{int(std::ranges::count_if(m_record.events, nameless))}});
    }

    /// True when a mix had its hardener and was not sanded yet between two acts.
    [[nodiscard]] bool mixRan(const Event& from) const
    {
        return std::ranges::any_of(m_record.batches, [&](const BatchRecord& each) {
            return each.hardenerIn.seq <= from.seq && (!each.sanded || each.sanded->seq > from.seq);
        });
    }

    void clocks()
    {
        for (std::size_t i = 1; i < m_record.events.size(); ++i) {
            const Event& from = m_record.events[i - 1];
            const Event& to = m_record.events[i];
            if (!mixRan(from))
                continue;
            const Told told{to.at, to.person, to.seq};
            const double byWall = double(to.at.utcMs - from.at.utcMs) / 1000;
            if (from.at.bootId != to.at.bootId)
                add(DeviationKind::StartedAgain, told, {seconds(std::max(0.0, byWall))});
            // Within one boot both clocks ran; across boots only a wall clock that went back can be seen.
            const double byBoot = from.at.bootId == to.at.bootId ? double(to.at.boottimeMs - from.at.boottimeMs) / 1000
                                                                 : std::max(0.0, byWall);
            const double jump = byWall - byBoot;
            if (std::abs(jump) > inSeconds(m_limits.clockJump))
                add(jump > 0 ? DeviationKind::ClockSetForward : DeviationKind::ClockSetBack, told,
                    {seconds(std::abs(jump))});
        }
    }

    const JobRecord& m_record;
    const Catalogue& m_catalogue;
    const DeviationLimits& m_limits;
    std::vector<Deviation> m_found;
};

} // namespace

DeviationLimits limitsFrom(const Assumptions& assumptions)
{
    DeviationLimits limits;
    limits.filling = assumptions.decision.filling;
    return limits;
}

std::vector<Deviation> deviationsOf(const JobRecord& record, const Catalogue& catalogue, const DeviationLimits& limits)
{
    return Finder(record, catalogue, limits).all();
}

} // namespace strandbench
