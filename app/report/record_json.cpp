// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/record_json.h"

#include "exchange/plan_json.h"
#include "words/deviation_words.h"
#include "words/event_words.h"
#include "words/notes.h"
#include "words/role_words.h"

#include <QDateTime>
#include <QJsonArray>

#include <cstdlib>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QJsonValue textOrNull(const QString& text) { return text.isEmpty() ? QJsonValue() : QJsonValue(text); }

double inTidySeconds(Duration duration) { return tidy(inSeconds(duration)); }

/// Who, when and which event, put into an object.
QJsonObject with(const Told& told, QJsonObject json)
{
    json[u"at"_s] = isoOf(told.at);
    json[u"person"_s] = textOrNull(told.person);
    json[u"seq"_s] = told.seq;
    return json;
}

QJsonValue toldOrNull(const std::optional<Told>& told) { return told ? QJsonValue(with(*told, {})) : QJsonValue(); }

template <class T, class F> QJsonArray listOf(const std::vector<T>& all, F toJson)
{
    QJsonArray list;
    for (const T& each : all)
        list << toJson(each);
    return list;
}

QJsonObject readingToJson(const Reading& reading)
{
    return {{u"air_c"_s, tidy(inCelsius(reading.air))},
            {u"panel_c"_s, tidy(inCelsius(reading.panel))},
            {u"humidity_percent"_s, tidy(reading.humidity.percent())}};
}

struct AnswerJson {
    template <class E> QJsonValue operator()(E value) const { return codeOf(value); }
    QJsonValue operator()(bool value) const { return value; }
    QJsonValue operator()(const Reading& value) const { return readingToJson(value); }
    QJsonValue operator()(const DamageSize& size) const
    {
        return QJsonObject{{u"length_mm"_s, tidy(inMillimetres(size.length))},
                           {u"width_mm"_s, tidy(inMillimetres(size.width))},
                           {u"depth_mm"_s, tidy(inMillimetres(size.depth))},
                           {u"panel_thickness_mm"_s, tidy(inMillimetres(size.panelThickness))},
                           {u"bevel_ratio"_s, tidy(size.bevelRatio)}};
    }
};

struct ArgumentJson {
    QJsonObject operator()(Length value) const { return {{u"length_mm"_s, tidy(inMillimetres(value))}}; }
    QJsonObject operator()(Mass value) const { return {{u"mass_g"_s, tidy(inGrams(value))}}; }
    QJsonObject operator()(Volume value) const { return {{u"volume_ml"_s, tidy(inMillilitres(value))}}; }
    QJsonObject operator()(Duration value) const { return {{u"duration_s"_s, inTidySeconds(value)}}; }
    QJsonObject operator()(Temperature value) const { return {{u"temperature_c"_s, tidy(inCelsius(value))}}; }
    QJsonObject operator()(TemperatureStep value) const { return {{u"step_k"_s, tidy(inKelvinStep(value))}}; }
    QJsonObject operator()(Fraction value) const { return {{u"percent"_s, tidy(value.percent())}}; }
    QJsonObject operator()(Count value) const { return {{u"count"_s, value.value}}; }
    QJsonObject operator()(const QString& value) const { return {{u"code"_s, value}}; }
};

QJsonObject batchRef(BatchRef batch) { return {{u"finishing"_s, batch.finishing}, {u"index"_s, batch.index}}; }

QJsonObject answerToJson(const AnswerRecord& answer)
{
    QJsonArray foundBy;
    for (const FoundBy each : answer.foundBy)
        foundBy << codeOf(each);
    return with(answer.told, {{u"question"_s, codeOf(answer.question)},
                              {u"value"_s, std::visit(AnswerJson(), answer.value)},
                              {u"before"_s, answer.before ? std::visit(AnswerJson(), *answer.before) : QJsonValue()},
                              {u"after_plan"_s, answer.afterPlan},
                              {u"stands"_s, answer.stands},
                              {u"found_by"_s, foundBy}});
}

QJsonObject readingRecordToJson(const ReadingRecord& record)
{
    QJsonObject json = readingToJson(record.reading);
    json[u"dew_point_c"_s] = tidy(inCelsius(record.dewPoint));
    json[u"margin_k"_s] = tidy(inKelvinStep(record.margin));
    json[u"answered"_s] = record.answered;
    return with(record.told, json);
}

QJsonObject timesToJson(const BatchTimes& times)
{
    return {{u"board_gel_s"_s, inTidySeconds(times.boardGel)},
            {u"gel_s"_s, inTidySeconds(times.gel)},
            {u"sand_s"_s, inTidySeconds(times.sand)}};
}

/// A moment of a batch with the seconds since its hardener went in.
QJsonValue sinceOrNull(const BatchRecord& batch, const std::optional<Told>& told)
{
    return told ? QJsonValue(with(*told, {{u"after_s"_s, inTidySeconds(batch.since(*told))}})) : QJsonValue();
}

QJsonObject batchToJson(const BatchRecord& batch)
{
    const HardenerIn& mixed = batch.mixed;
    return {{u"batch"_s, batchRef(batch.batch)},
            {u"layer"_s, batch.lift},
            {u"face"_s, batch.face ? QJsonValue(codeOf(*batch.face)) : QJsonValue()},
            {u"planned"_s, QJsonObject{{u"puddle_mm"_s, tidy(inMillimetres(batch.planned.puddle))},
                                       {u"puddle_height_mm"_s, tidy(inMillimetres(batch.planned.puddleHeight))},
                                       {u"bead_mm"_s, tidy(inMillimetres(batch.planned.bead))},
                                       {u"filler_g"_s, tidy(inGrams(batch.planned.filler))},
                                       {u"hardener_g"_s, tidy(inGrams(batch.planned.hardener))},
                                       {u"hardener_percent"_s, tidy(batch.planned.hardenerShare.percent())},
                                       {u"times"_s, timesToJson(batch.plannedTimes)}}},
            {u"filler_g"_s, tidy(inGrams(mixed.filler))},
            {u"hardener_g"_s, tidy(inGrams(mixed.hardener))},
            {u"hardener_percent"_s, tidy(batch.hardenerShare.percent())},
            {u"sheet"_s, mixed.sheetId},
            {u"demo_sheet"_s, batch.demoSheet ? QJsonValue(*batch.demoSheet) : QJsonValue()},
            {u"filler_lot"_s, textOrNull(mixed.lot)},
            {u"hardener_lot"_s, textOrNull(mixed.hardenerLot)},
            {u"predicted"_s, timesToJson(mixed.times)},
            {u"hardener_in"_s, with(batch.hardenerIn, {})},
            {u"edges_clear"_s, sinceOrNull(batch, batch.edgesClear)},
            {u"board_gelled"_s, sinceOrNull(batch, batch.boardGelled)},
            {u"panel_gelled"_s, sinceOrNull(batch, batch.panelGelled)},
            {u"sands"_s, sinceOrNull(batch, batch.sands)},
            {u"sanded"_s, sinceOrNull(batch, batch.sanded)}};
}

QJsonValue isoOrNull(const std::optional<Instant>& at) { return at ? QJsonValue(isoOf(*at)) : QJsonValue(); }

QJsonObject layerToJson(const LayerRecord& layer)
{
    return {{u"finishing"_s, layer.finishing},
            {u"index"_s, layer.index},
            {u"face"_s, layer.face ? QJsonValue(codeOf(*layer.face)) : QJsonValue()},
            {u"planned_thickness_mm"_s, tidy(inMillimetres(layer.thickness))},
            {u"filler_class"_s, codeOf(layer.filler)},
            {u"batches"_s, layer.batches},
            {u"filler_g"_s, tidy(inGrams(layer.mixed))},
            {u"laid_from"_s, isoOf(layer.laidFrom)},
            {u"laid_until"_s, isoOrNull(layer.laidUntil)},
            {u"sanded"_s, isoOrNull(layer.sanded)}};
}

QJsonObject stepToJson(const StepRecord& step, const Words& words)
{
    const QString text =
        step.stage == Stage::HandOver ? words.handOverTest(step.step.code).sentence : words.step(step.step).sentence;
    return with(step.told, {{u"stage"_s, codeOf(step.stage)}, {u"code"_s, step.step.code}, {u"text"_s, text}});
}

QJsonObject parkingToJson(const ParkRecord& park)
{
    QJsonArray because;
    for (const QString& each : park.parked.because)
        because << each;
    return with(park.told, {{u"to"_s, textOrNull(park.parked.to)},
                            {u"because"_s, because},
                            {u"reason"_s, textOrNull(park.parked.reason)},
                            {u"left"_s, toldOrNull(park.left)},
                            {u"assessed_again"_s, park.assessedAgain}});
}

QJsonObject deviationToJson(const Deviation& deviation, const Words& words)
{
    return with(deviation.told, {{u"code"_s, codeOf(deviation.kind)},
                                 {u"text"_s, deviationText(deviation, words)},
                                 {u"batch"_s, deviation.batch ? QJsonValue(batchRef(*deviation.batch)) : QJsonValue()},
                                 {u"arguments"_s, listOf(deviation.arguments, [](const Argument& each) {
                                      return std::visit(ArgumentJson(), each);
                                  })}});
}

QJsonArray keptPhotos(const Repair& repair)
{
    return listOf(repair.photos, [](const Kept<PhotoTaken>& each) {
        return QJsonObject{{u"moment"_s, codeOf(each.what.moment)},
                           {u"sha256"_s, QString::fromLatin1(each.what.hash.toHex())},
                           {u"media_type"_s, each.what.mediaType},
                           {u"at"_s, isoOf(each.at)},
                           {u"person"_s, textOrNull(each.person)}};
    });
}

QJsonArray keptNotes(const Repair& repair)
{
    return listOf(repair.notes, [](const Kept<Noted>& each) {
        return QJsonObject{{u"code"_s, textOrNull(each.what.code)},
                           {u"text"_s, noteText(each.what)},
                           {u"at"_s, isoOf(each.at)},
                           {u"person"_s, textOrNull(each.person)}};
    });
}

QJsonArray plansToJson(const JobRecord& record, const Words& words)
{
    const PlanTexts texts{[&words](const Reason& reason) { return words.reason(reason); },
                          [&words](const Step& step) { return words.step(step).sentence; }};
    return listOf(record.plans, [&](const PlanRecord& each) {
        return with(each.told, {{u"version"_s, each.version}, {u"plan"_s, planToJson(each.accepted.plan, texts)}});
    });
}

QJsonValue returnedOrNull(const JobRecord& record)
{
    if (!record.returned || !record.repair.returned)
        return {};
    const Returned& returned = record.repair.returned->what;
    return with(
        *record.returned,
        {{u"code"_s, returned.reason}, {u"remark"_s, textOrNull(returned.text)}, {u"text"_s, returnText(returned)}});
}

QJsonValue repairOrNull(const QUuid& repair)
{
    return repair.isNull() ? QJsonValue() : QJsonValue(repair.toString(QUuid::WithoutBraces));
}

void addSigning(QJsonObject& json, const JobRecord& record)
{
    json[u"signed_off"_s] = toldOrNull(record.signedOff);
    json[u"returned"_s] = returnedOrNull(record);
    json[u"rework"_s] = repairOrNull(record.repair.rework);
    json[u"rework_of"_s] = repairOrNull(record.repair.reworkOf);
}

void addMoments(QJsonObject& json, const JobRecord& record)
{
    json[u"taken_in"_s] = with({record.repair.takenInAt, record.repair.takenInBy, record.events.front().seq}, {});
    json[u"turned"_s] = toldOrNull(record.turned);
    json[u"handed_over"_s] = toldOrNull(record.handedOver);
    json[u"lasted_s"_s] = inTidySeconds(record.lasted);
}

} // namespace

QString isoOf(const Instant& at)
{
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(at.utcMs + at.utcOffsetSeconds * 1000LL, Qt::UTC);
    const int minutes = std::abs(at.utcOffsetSeconds) / 60;
    return local.toString(u"yyyy-MM-ddTHH:mm:ss.zzz"_s) + QChar(at.utcOffsetSeconds < 0 ? u'-' : u'+') +
           u"%1:%2"_s.arg(minutes / 60, 2, 10, QChar(u'0')).arg(minutes % 60, 2, 10, QChar(u'0'));
}

QJsonObject recordToJson(const JobRecord& record, const std::vector<Deviation>& deviations, const Words& words)
{
    QJsonObject json{
        {u"repair"_s, record.repair.id.toString(QUuid::WithoutBraces)},
        {u"job"_s, record.repair.job},
        {u"panel"_s, record.repair.panel},
        {u"state"_s, record.state},
        {u"days"_s, listOf(record.days, [](const QString& each) { return each; })},
        {u"people"_s, QJsonArray::fromStringList(record.people)},
        {u"deviations"_s, listOf(deviations, [&](const Deviation& each) { return deviationToJson(each, words); })},
        {u"answers"_s, listOf(record.answers, answerToJson)},
        {u"plans"_s, plansToJson(record, words)},
        {u"readings"_s, listOf(record.readings, readingRecordToJson)},
        {u"batches"_s, listOf(record.batches, batchToJson)},
        {u"layers"_s, listOf(record.layers, layerToJson)},
        {u"steps"_s, listOf(record.steps, [&](const StepRecord& each) { return stepToJson(each, words); })},
        {u"parked"_s, listOf(record.parkings, parkingToJson)},
        {u"photos"_s, keptPhotos(record.repair)},
        {u"photos_missing"_s, listOf(record.photosMissing, [](PhotoMoment each) { return codeOf(each); })},
        {u"notes"_s, keptNotes(record.repair)}};
    addMoments(json, record);
    addSigning(json, record);
    return json;
}

} // namespace strandbench
