// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/digest.h"

#include "review/job_timeline.h"

#include <QCryptographicHash>

#include <algorithm>
#include <bit>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr quint64 madeLike = 1; ///< raised when a digest is made in another way

template <class E> void addCodes(QCryptographicHash& hash)
{
    for (const auto& [value, code] : Codes<E>::table)
        hash.addData(code);
}

/// Assessing, turning, and what waits for the primer, belong to none.
std::optional<JobPart> partOf(const QString& code)
{
    static const std::map<SpanKind, JobPart> parts{{SpanKind::Prepare, JobPart::Prepare},
                                                   {SpanKind::Lay, JobPart::Lay},
                                                   {SpanKind::Wait, JobPart::Wait},
                                                   {SpanKind::Sand, JobPart::Sand},
                                                   {SpanKind::Finish, JobPart::Finish}};
    const auto span = spanKindOf(code);
    if (!span)
        return std::nullopt;
    const auto found = parts.find(*span);
    if (found == parts.end())
        return std::nullopt;
    return found->second;
}

std::map<JobPart, Duration> plannedTimes(const RepairPlan& plan)
{
    std::map<JobPart, Duration> times;
    for (const TimelineEntry& each : plan.timeline)
        if (const auto part = partOf(each.code))
            times.try_emplace(*part, seconds(0)).first->second += each.length;
    return times;
}

class Times {
public:
    void add(JobPart part, const Told& from, const Told& to)
    {
        m_all.try_emplace(part, seconds(0)).first->second += elapsed(from.at, to.at);
    }
    [[nodiscard]] const std::map<JobPart, Duration>& all() const { return m_all; }

private:
    std::map<JobPart, Duration> m_all;
};

/// A layer is sanded as one: by its last batch.
bool lastOfLayer(const JobRecord& record, const BatchRecord& batch)
{
    return std::ranges::none_of(record.batches, [&](const BatchRecord& each) {
        return each.batch.finishing == batch.batch.finishing && each.lift == batch.lift &&
               each.batch.index > batch.batch.index;
    });
}

std::map<JobPart, Duration> actualTimes(const JobRecord& record)
{
    Times times;
    if (record.batches.empty() || record.plans.empty())
        return {};
    times.add(JobPart::Prepare, record.plans.front().told, record.batches.front().hardenerIn);
    std::optional<Told> lastSanded;
    for (const BatchRecord& each : record.batches) {
        if (each.edgesClear)
            times.add(JobPart::Lay, each.hardenerIn, *each.edgesClear);
        if (!lastOfLayer(record, each))
            continue;
        if (each.edgesClear && each.sands)
            times.add(JobPart::Wait, *each.edgesClear, *each.sands);
        if (each.sands && each.sanded)
            times.add(JobPart::Sand, *each.sands, *each.sanded);
        if (each.sanded)
            lastSanded = each.sanded;
    }
    if (lastSanded && record.handedOver)
        times.add(JobPart::Finish, *lastSanded, *record.handedOver);
    return times.all();
}

std::vector<PartTime> partsOf(const JobRecord& record)
{
    std::vector<PartTime> parts;
    if (!record.handedOver || record.plans.empty())
        return parts;
    const auto planned = plannedTimes(record.plans.front().accepted.plan);
    for (const auto& [part, actual] : actualTimes(record))
        if (const auto found = planned.find(part); found != planned.end())
            parts.push_back({part, found->second, actual});
    return parts;
}

DigestBatch batchOf(const BatchRecord& record)
{
    DigestBatch batch;
    batch.batch = record.batch;
    batch.sheetId = record.mixed.sheetId;
    batch.lot = record.mixed.lot;
    batch.hardenerLot = record.mixed.hardenerLot;
    batch.planned = record.planned.filler;
    batch.mixed = record.mixed.filler;
    batch.hardener = record.mixed.hardener;
    batch.predictedGel = record.mixed.howSure ? record.mixed.howSure->sheet.gel : record.mixed.times.gel;
    if (record.panelGelled)
        batch.observedGel = record.since(*record.panelGelled);
    batch.utcMs = record.hardenerIn.at.utcMs;
    return batch;
}

Standing standingOf(const JobRecord& record)
{
    if (record.signedOff)
        return Standing::SignedOff;
    if (record.returned)
        return Standing::Returned;
    return record.handedOver ? Standing::ToLookThrough : Standing::AtWork;
}

} // namespace

RepairDigest digestOf(const JobRecord& record, const std::vector<Deviation>& deviations)
{
    RepairDigest digest;
    digest.repair = record.repair.id;
    digest.bench = record.events.front().origin;
    digest.job = record.repair.job;
    digest.panel = record.repair.panel;
    digest.substrate = record.repair.assessment.substrate;
    digest.station = nextStep(record.repair).station;
    digest.standing = standingOf(record);
    digest.people = record.people;
    digest.takenInUtcMs = record.repair.takenInAt.utcMs;
    if (record.handedOver)
        digest.handedOverDay = localDay(record.handedOver->at);
    digest.reworkOf = record.repair.reworkOf;
    for (const Deviation& each : deviations)
        digest.deviations.push_back(each.kind);
    for (const BatchRecord& each : record.batches)
        digest.batches.push_back(batchOf(each));
    digest.parts = partsOf(record);
    return digest;
}

RepairDigest digestOf(const std::vector<Event>& events, const Catalogue& catalogue, const DeviationLimits& limits)
{
    if (const auto record = recordOf(events, catalogue))
        return digestOf(*record, deviationsOf(*record, catalogue, limits));
    RepairDigest digest;
    digest.repair = events.front().repair;
    digest.bench = events.front().origin;
    digest.takenInUtcMs = events.front().at.utcMs;
    digest.readable = false;
    return digest;
}

QString digestMark(const Catalogue& catalogue, const DeviationLimits& limits)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    const auto number = [&hash](double value) {
        const auto bits = std::bit_cast<quint64>(value);
        hash.addData(QByteArray::fromRawData(reinterpret_cast<const char*>(&bits), sizeof bits));
    };
    number(double(madeLike));
    for (const double each :
         {limits.filling.panelLow.value(), limits.filling.panelHigh.value(), limits.filling.airLow.value(),
          limits.filling.airHigh.value(), limits.filling.dewMargin.value(), limits.readingAge.value(),
          limits.bareMetal.value(), limits.sandsEarly.value(), limits.hardenerLow.value(), limits.hardenerHigh.value(),
          limits.liftOver.value(), limits.skimmed.value(), limits.clockJump.value()})
        number(each);
    addCodes<DeviationKind>(hash);
    addCodes<Station>(hash);
    addCodes<Standing>(hash);
    addCodes<JobPart>(hash);
    addCodes<Substrate>(hash);
    for (const auto* sheets : {&catalogue.sheets(), &catalogue.others()})
        for (const ProductSheet& each : *sheets) {
            hash.addData(each.id.toUtf8());
            hash.addData(each.hash);
        }
    return QString::fromLatin1(hash.result().toHex());
}

} // namespace strandbench
