// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/day_csv.h"

#include "exchange/csv.h"
#include "exchange/plan_json.h"
#include "report/record_json.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString number(double value) { return QString::number(tidy(value), 'g', 15); }

/// What is told of each batch, every value once.
template <class F> QString ofBatches(const JobRecord& record, F value)
{
    QStringList all;
    for (const BatchRecord& each : record.batches)
        if (const QString text = value(each); !text.isEmpty() && !all.contains(text))
            all << text;
    return all.join(u"; "_s);
}

Mass mixed(const JobRecord& record, bool finishing)
{
    Mass all = grams(0);
    for (const BatchRecord& each : record.batches)
        if (each.batch.finishing == finishing)
            all += each.mixed.filler;
    return all;
}

Mass hardener(const JobRecord& record)
{
    Mass all = grams(0);
    for (const BatchRecord& each : record.batches)
        all += each.mixed.hardener;
    return all;
}

/// The panel's temperature and margin of the newest reading, as two fields.
QStringList lastReading(const JobRecord& record)
{
    if (record.readings.empty())
        return {QString(), QString()};
    const ReadingRecord& last = record.readings.back();
    return {number(inCelsius(last.reading.panel)), number(inKelvinStep(last.margin))};
}

/// When and by whom, as two fields.
QStringList momentOf(const std::optional<Told>& told)
{
    return told ? QStringList{isoOf(told->at), told->person} : QStringList{QString(), QString()};
}

/// What the log says of its signing; see signingNames().
QStringList signingOf(const JobRecord& record)
{
    const Repair& repair = record.repair;
    const auto id = [](const QUuid& of) { return of.isNull() ? QString() : of.toString(QUuid::WithoutBraces); };
    return momentOf(record.signedOff) + momentOf(record.returned) +
           QStringList{repair.returned ? repair.returned->what.reason : QString(),
                       repair.returned ? repair.returned->what.text : QString(), id(repair.rework),
                       id(repair.reworkOf)};
}

QStringList signingNames()
{
    return {u"signed_off"_s,    u"signed_off_by"_s, u"returned"_s, u"returned_by"_s,
            u"return_reason"_s, u"return_text"_s,   u"rework"_s,   u"rework_of"_s};
}

QStringList fieldsOf(const QString& day, const DayEntry& entry)
{
    const JobRecord& record = entry.record;
    const Assessment& found = record.repair.assessment;
    const PlanRecord* plan = record.plan();
    QStringList deviations;
    for (const Deviation& each : entry.deviations)
        deviations << codeOf(each.kind);
    QStringList missing;
    for (const PhotoMoment each : record.photosMissing)
        missing << codeOf(each);
    return QStringList{day,
                       record.repair.job,
                       record.repair.panel,
                       record.repair.id.toString(QUuid::WithoutBraces),
                       record.state,
                       record.people.join(u"; "_s),
                       isoOf(record.repair.takenInAt),
                       record.handedOver ? isoOf(record.handedOver->at) : QString(),
                       number(inSeconds(record.lasted)),
                       found.substrate ? codeOf(*found.substrate) : QString(),
                       found.damage ? codeOf(found.damage->kind) : QString(),
                       plan && plan->accepted.plan.filler ? codeOf(*plan->accepted.plan.filler) : QString(),
                       plan ? number(inGrams(plan->accepted.plan.fillerTotal)) : QString(),
                       number(inGrams(mixed(record, false))),
                       number(inGrams(mixed(record, true))),
                       number(inGrams(hardener(record))),
                       QString::number(record.batches.size()),
                       ofBatches(record, [](const BatchRecord& each) { return each.mixed.sheetId; }),
                       ofBatches(record, [](const BatchRecord& each) { return each.mixed.lot; }),
                       ofBatches(record, [](const BatchRecord& each) { return each.mixed.hardenerLot; })} +
           lastReading(record) +
           QStringList{missing.join(u"; "_s), QString::number(entry.deviations.size()), deviations.join(u"; "_s)} +
           signingOf(record);
}

} // namespace

QByteArray dayToCsv(const QString& day, const std::vector<DayEntry>& entries)
{
    const QStringList names{u"day"_s,
                            u"job"_s,
                            u"panel"_s,
                            u"repair"_s,
                            u"state"_s,
                            u"people"_s,
                            u"taken_in"_s,
                            u"handed_over"_s,
                            u"lasted_s"_s,
                            u"substrate"_s,
                            u"damage"_s,
                            u"filler_class"_s,
                            u"planned_filler_g"_s,
                            u"mixed_filler_g"_s,
                            u"mixed_finishing_g"_s,
                            u"mixed_hardener_g"_s,
                            u"batches"_s,
                            u"sheets"_s,
                            u"filler_lots"_s,
                            u"hardener_lots"_s,
                            u"last_panel_c"_s,
                            u"last_margin_k"_s,
                            u"photos_missing"_s,
                            u"deviations"_s,
                            u"deviation_codes"_s};
    QString text = csvRow(names + signingNames());
    for (const DayEntry& each : entries)
        text += csvRow(fieldsOf(day, each));
    return text.toUtf8();
}

} // namespace strandbench
