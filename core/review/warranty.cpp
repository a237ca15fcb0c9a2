// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/warranty.h"

#include <algorithm>

namespace strandbench {
namespace {

class Looker {
public:
    explicit Looker(const JobRecord& record) : m_record(record) {}

    std::vector<Lacking> all()
    {
        identity();
        for (const PhotoMoment each : m_record.photosMissing)
            add(RecordGap::PhotoLacking, {codeOf(each)});
        readings();
        for (const BatchRecord& each : m_record.batches)
            batch(each);
        tests();
        people();
        return std::move(m_lacking);
    }

private:
    void add(RecordGap gap, std::vector<Argument> arguments = {}, std::optional<BatchRef> batch = {})
    {
        m_lacking.push_back({gap, std::move(arguments), batch});
    }

    void identity()
    {
        const auto& substrate = m_record.repair.assessment.substrate;
        const bool told = std::ranges::any_of(m_record.answers, [](const AnswerRecord& each) {
            return each.question == Question::Substrate && each.stands && !each.foundBy.empty();
        });
        if (!substrate || *substrate == Substrate::Unknown)
            add(RecordGap::SubstrateNotIdentified);
        else if (!told)
            add(RecordGap::SubstrateProofLacking);
    }

    [[nodiscard]] bool byInstrument() const
    {
        return std::ranges::any_of(m_record.events, [](const Event& each) {
            const auto* taken = std::get_if<ReadingTaken>(&each.payload);
            const auto* answered = std::get_if<Answered>(&each.payload);
            return (taken && taken->by == EnteredBy::Instrument) || (answered && answered->by == EnteredBy::Instrument);
        });
    }

    void readings()
    {
        if (m_record.batches.empty())
            return;
        const qint64 first = m_record.batches.front().hardenerIn.seq;
        const bool before =
            std::ranges::any_of(m_record.readings, [first](const auto& each) { return each.told.seq < first; });
        if (!before)
            add(RecordGap::ReadingLacking);
        else if (!byInstrument())
            add(RecordGap::ReadingKeyedIn);
    }

    void batch(const BatchRecord& each)
    {
        if (each.mixed.lot.isEmpty())
            add(RecordGap::FillerLotLacking, {}, each.batch);
        if (each.mixed.hardenerLot.isEmpty())
            add(RecordGap::HardenerLotLacking, {}, each.batch);
        if (!each.mixed.by)
            add(RecordGap::HardenerNotWeighed, {}, each.batch);
        if (!each.edgesClear)
            add(RecordGap::EdgesNotTold, {}, each.batch);
        if (!each.sands && !each.sanded) // a layer's earlier batches are tested with its last
            add(RecordGap::SandsNotTold, {}, each.batch);
    }

    void tests()
    {
        const auto done = std::ranges::count(m_record.steps, Stage::HandOver, &StepRecord::stage);
        const auto all = static_cast<std::ptrdiff_t>(handOverTests().size());
        if (done < all)
            add(RecordGap::TestsLacking, {Count{static_cast<int>(all - done)}});
    }

    void people()
    {
        const auto nameless =
            std::ranges::count_if(m_record.events, [](const Event& each) { return each.person.isEmpty(); });
        if (nameless > 0)
            add(RecordGap::PersonLacking, {Count{static_cast<int>(nameless)}});
        for (const OverrideRecord& each : m_record.overrides)
            if (each.told.person.isEmpty())
                for (const QString& stop : each.overridden.stops)
                    add(RecordGap::OverrideNameless, {stop});
    }

    const JobRecord& m_record;
    std::vector<Lacking> m_lacking;
};

} // namespace

std::vector<Lacking> lackingOf(const JobRecord& record) { return Looker(record).all(); }

} // namespace strandbench
