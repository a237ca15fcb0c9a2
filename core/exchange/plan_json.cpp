// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/plan_json.h"

#include "exchange/cure_json.h"

#include <QJsonArray>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QJsonObject coded(const QString& code, const QString& text) { return {{u"code"_s, code}, {u"text"_s, text}}; }

QJsonArray reasonsOf(const RepairPlan& plan, const TextOf& textOf)
{
    QJsonArray list;
    for (const Stop& stop : plan.stops)
        list << coded(stop.reason.code, textOf(stop.reason));
    for (const Reason& reason : plan.reasons)
        list << coded(reason.code, textOf(reason));
    return list;
}

QJsonArray rejectedOf(const RepairPlan& plan, const TextOf& textOf)
{
    QJsonArray list;
    for (const RejectedFiller& each : plan.rejected) {
        QJsonObject entry = coded(each.reason.code, textOf(each.reason));
        entry[u"filler_class"_s] = codeOf(each.filler);
        list << entry;
    }
    return list;
}

QJsonArray layersOf(const RepairPlan& plan)
{
    QJsonArray list;
    for (const Lift& lift : plan.lifts)
        list << QJsonObject{
            {u"face"_s, codeOf(lift.face)},
            {u"thickness_mm"_s, tidy(inMillimetres(lift.thickness))},
            {u"filler_class"_s, codeOf(lift.filler)},
            {u"peak_c"_s, lift.peak ? QJsonValue(tidy(inCelsius(*lift.peak))) : QJsonValue()},
            {u"cure_case"_s, lift.cureCase ? QJsonValue(cureCaseToJson(*lift.cureCase)) : QJsonValue()},
        };
    return list;
}

QJsonArray batchesOf(const RepairPlan& plan)
{
    QJsonArray list;
    for (const Batch& batch : plan.batches)
        list << QJsonObject{
            {u"layer"_s, batch.lift},
            {u"puddle_mm"_s, tidy(inMillimetres(batch.mix.puddle))},
            {u"puddle_height_mm"_s, tidy(inMillimetres(batch.mix.puddleHeight))},
            {u"bead_mm"_s, tidy(inMillimetres(batch.mix.bead))},
            {u"filler_g"_s, tidy(inGrams(batch.mix.filler))},
            {u"hardener_g"_s, tidy(inGrams(batch.mix.hardener))},
            {u"board_gel_s"_s, tidy(inSeconds(batch.times.boardGel))},
            {u"gel_s"_s, tidy(inSeconds(batch.times.gel))},
            {u"sand_s"_s, tidy(inSeconds(batch.times.sand))},
        };
    return list;
}

QJsonArray prepOf(const RepairPlan& plan, const PlanTexts& texts)
{
    QJsonArray list;
    for (const Step& step : plan.prep)
        list << coded(step.code, texts.step(step));
    return list;
}

QJsonObject filledPlan(const RepairPlan& plan, const PlanTexts& texts)
{
    return {
        {u"filler_class"_s, plan.filler ? QJsonValue(codeOf(*plan.filler)) : QJsonValue()},
        {u"rejected"_s, rejectedOf(plan, texts.reason)},
        {u"cavity_ml"_s, tidy(inMillilitres(plan.cavity))},
        {u"filler_total_g"_s, tidy(inGrams(plan.fillerTotal))},
        {u"hardener_total_g"_s, tidy(inGrams(plan.hardenerTotal))},
        {u"allowances"_s, QJsonObject{{u"proud_ml"_s, tidy(inMillilitres(plan.allowances.proud))},
                                      {u"shrinkage_ml"_s, tidy(inMillilitres(plan.allowances.shrinkage))},
                                      {u"board_loss_g"_s, tidy(inGrams(plan.allowances.boardLoss))}}},
        {u"layers"_s, layersOf(plan)},
        {u"batches"_s, batchesOf(plan)},
        {u"prep"_s, prepOf(plan, texts)},
        {u"finish"_s,
         QJsonObject{{u"thickness_mm"_s, tidy(inMillimetres(plan.finish.thickness))}, {u"coats"_s, plan.finish.coats}}},
        {u"ready_for_primer_s"_s, tidy(inSeconds(plan.readyForPrimer))},
    };
}

/// Every key of a filled plan, with nothing in it.
QJsonObject stoppedPlan()
{
    const QJsonValue none;
    return {
        {u"filler_class"_s, none},
        {u"rejected"_s, QJsonArray()},
        {u"cavity_ml"_s, none},
        {u"filler_total_g"_s, none},
        {u"hardener_total_g"_s, none},
        {u"allowances"_s, QJsonObject{{u"proud_ml"_s, none}, {u"shrinkage_ml"_s, none}, {u"board_loss_g"_s, none}}},
        {u"layers"_s, QJsonArray()},
        {u"batches"_s, QJsonArray()},
        {u"prep"_s, QJsonArray()},
        {u"finish"_s, QJsonObject{{u"thickness_mm"_s, 0}, {u"coats"_s, 0}}},
        {u"ready_for_primer_s"_s, none},
    };
}

} // namespace

QJsonObject planToJson(const RepairPlan& plan, const PlanTexts& texts)
{
    QJsonObject json = plan.fill ? filledPlan(plan, texts) : stoppedPlan();
    json[u"verdict"_s] = plan.fill ? u"fill"_s : u"stop"_s;
    json[u"reasons"_s] = reasonsOf(plan, texts.reason);
    return json;
}

double tidy(double value) { return std::isfinite(value) ? QString::number(value, 'g', 15).toDouble() : value; }

} // namespace strandbench
