// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/job_timeline.h"

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class Maker {
public:
    explicit Maker(const JobRecord& record) : m_record(record) {}

    JobTimeline made(const std::vector<Deviation>& deviations)
    {
        planned();
        beforeMixing();
        for (const BatchRecord& each : m_record.batches)
            batch(each);
        afterMixing();
        for (const ParkRecord& each : m_record.parkings)
            span(SpanKind::Parked, offset(each.told), each.left ? offset(*each.left) : end());
        std::ranges::stable_sort(m_line.actual, {}, &JobSpan::from);
        marks(deviations);
        m_line.length = std::max(m_line.length, end());
        m_line.firstMix = m_record.batches.empty() ? seconds(0) : offset(m_record.batches.front().hardenerIn);
        m_line.lastSanded = m_sanded.value_or(m_line.length);
        return std::move(m_line);
    }

private:
    [[nodiscard]] Duration offset(const Instant& at) const { return elapsed(m_record.repair.takenInAt, at); }
    [[nodiscard]] Duration offset(const Told& told) const { return offset(told.at); }
    [[nodiscard]] Duration end() const { return offset(m_record.repair.lastAt); }

    void span(SpanKind kind, Duration from, Duration to)
    {
        if (to > from)
            m_line.actual.push_back({kind, from, to});
    }

    void planned()
    {
        if (m_record.plans.empty())
            return;
        const Duration begins = offset(m_record.plans.front().told);
        for (const TimelineEntry& each : m_record.plans.front().accepted.plan.timeline) {
            const auto kind = spanKindOf(each.code);
            if (!kind)
                continue;
            const JobSpan next{*kind, begins + each.start, begins + each.start + each.length};
            auto& all = m_line.planned;
            if (!all.empty() && all.back().kind == *kind && all.back().to == next.from)
                all.back().to = next.to; // working and waiting of one part
            else
                all.push_back(next);
            m_line.length = std::max(m_line.length, next.to);
        }
    }

    void beforeMixing()
    {
        if (m_record.plans.empty())
            return span(SpanKind::Assess, seconds(0), end());
        const Duration plan = offset(m_record.plans.front().told);
        span(SpanKind::Assess, seconds(0), plan);
        span(SpanKind::Prepare, plan, m_record.batches.empty() ? end() : offset(m_record.batches.front().hardenerIn));
    }

    void batch(const BatchRecord& each)
    {
        if (!each.edgesClear)
            return;
        span(SpanKind::Lay, offset(each.hardenerIn), offset(*each.edgesClear));
        if (each.sands)
            span(SpanKind::Wait, offset(*each.edgesClear), offset(*each.sands));
        if (each.sands && each.sanded)
            span(SpanKind::Sand, offset(*each.sands), offset(*each.sanded));
        if (each.sanded && (!m_record.turned || each.sanded->seq < m_record.turned->seq))
            m_beforeTurn = offset(*each.sanded);
        if (each.sanded)
            m_sanded = std::max(m_sanded.value_or(seconds(0)), offset(*each.sanded));
    }

    void afterMixing()
    {
        if (m_record.turned && m_beforeTurn)
            span(SpanKind::Turn, *m_beforeTurn, offset(*m_record.turned));
        if (m_sanded && m_record.handedOver)
            span(SpanKind::Finish, *m_sanded, offset(*m_record.handedOver));
    }

    void marks(const std::vector<Deviation>& deviations)
    {
        for (const ReadingRecord& each : m_record.readings)
            m_line.readings.push_back({each, offset(each.told)});
        for (const Kept<PhotoTaken>& each : m_record.repair.photos)
            m_line.photos.push_back({each.what.moment, offset(each.at)});
        for (const Deviation& each : deviations)
            m_line.deviations.push_back({each.kind, offset(each.told)});
    }

    const JobRecord& m_record;
    JobTimeline m_line;
    std::optional<Duration> m_beforeTurn;
    std::optional<Duration> m_sanded;
};

} // namespace

std::optional<SpanKind> spanKindOf(const QString& code)
{
    static const std::map<QString, SpanKind> kinds{
        {u"prepare"_s, SpanKind::Prepare},
        {u"prepare_waiting"_s, SpanKind::Prepare},
        {u"mix"_s, SpanKind::Lay},
        {u"spread"_s, SpanKind::Lay},
        {u"wait"_s, SpanKind::Wait},
        {u"sand"_s, SpanKind::Sand},
        {u"turn"_s, SpanKind::Turn},
        {u"finish"_s, SpanKind::Finish},
        {u"finish_waiting"_s, SpanKind::Finish},
    };
    const auto found = kinds.find(code);
    return found == kinds.end() ? std::nullopt : std::optional(found->second); // not what waits for the primer
}

JobTimeline timelineOf(const JobRecord& record, const std::vector<Deviation>& deviations)
{
    return Maker(record).made(deviations);
}

} // namespace strandbench
