// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/panel_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// To a millionth of the unit, so that a number read again is written as it was.
double tidy(double value) { return std::round(value * 1e6) / 1e6; }

template <class E> QJsonArray codes(const std::vector<E>& all)
{
    QJsonArray list;
    for (const E each : all)
        list.append(codeOf(each));
    return list;
}

template <class E> void putCode(QJsonObject& json, const QString& key, const std::optional<E>& value)
{
    if (value)
        json.insert(key, codeOf(*value));
}

void putFlag(QJsonObject& json, const std::optional<bool>& value, const QString& key)
{
    if (value)
        json.insert(key, *value);
}

QJsonObject damageJson(const Damage& damage)
{
    QJsonObject json{{u"kind"_s, codeOf(damage.kind)},
                     {u"length_mm"_s, tidy(inMillimetres(damage.length))},
                     {u"width_mm"_s, tidy(inMillimetres(damage.width))},
                     {u"depth_mm"_s, tidy(inMillimetres(damage.depth))},
                     {u"panel_thickness_mm"_s, tidy(inMillimetres(damage.panelThickness))}};
    if (damage.kind == DamageKind::Hole || damage.kind == DamageKind::Crack)
        json.insert(u"bevel_ratio"_s, tidy(damage.bevelRatio));
    putCode(json, u"weld"_s, damage.weld);
    putFlag(json, damage.adhesiveCured, u"adhesive_cured"_s);
    return json;
}

QJsonObject truthJson(const Assessment& truth)
{
    QJsonObject json{{u"core"_s, codeOf(truth.core)}};
    putCode(json, u"substrate"_s, truth.substrate);
    putCode(json, u"surface"_s, truth.surface);
    putCode(json, u"zone"_s, truth.zone);
    putCode(json, u"moisture"_s, truth.moisture);
    putFlag(json, truth.rearAccess, u"rear_access"_s);
    if (truth.damage)
        json.insert(u"damage"_s, damageJson(*truth.damage));
    if (truth.reading) {
        json.insert(u"air_c"_s, tidy(inCelsius(truth.reading->air)));
        json.insert(u"panel_c"_s, tidy(inCelsius(truth.reading->panel)));
        json.insert(u"humidity_percent"_s, tidy(truth.reading->humidity.percent()));
    }
    return json;
}

void putLengths(QJsonObject& json, const Evidence& shown)
{
    if (shown.zincHere)
        json.insert(u"zinc_here_um"_s, tidy(inMillimetres(*shown.zincHere) * 1000.0));
    if (shown.zincBeside)
        json.insert(u"zinc_beside_um"_s, tidy(inMillimetres(*shown.zincBeside) * 1000.0));
    json.insert(u"visible_length_mm"_s, tidy(inMillimetres(shown.visibleLength)));
    if (shown.tipsAt)
        json.insert(u"tips_at_mm"_s, tidy(inMillimetres(*shown.tipsAt)));
    if (shown.sinceCut)
        json.insert(u"since_cut_min"_s, tidy(inMinutes(*shown.sinceCut)));
    QJsonArray near;
    for (const NearPart& each : shown.near)
        near.append(
            QJsonObject{{u"part"_s, codeOf(each.part)}, {u"distance_mm"_s, tidy(inMillimetres(each.distance))}});
    json.insert(u"near"_s, near);
}

QJsonObject shownJson(const Evidence& shown)
{
    QJsonObject json{{u"front"_s, codes(shown.front)},    {u"film"_s, codeOf(shown.film)},
                     {u"reach"_s, codeOf(shown.reach)},   {u"back"_s, codes(shown.back)},
                     {u"inside"_s, codeOf(shown.inside)}, {u"magnet_here"_s, codeOf(shown.magnetHere)},
                     {u"foil"_s, codeOf(shown.foil)}};
    putCode(json, u"marking"_s, shown.marking);
    putCode(json, u"edge"_s, shown.edge);
    putCode(json, u"magnet_bare"_s, shown.magnetBare);
    putFlag(json, shown.conducts, u"conducts"_s);
    putCode(json, u"tap"_s, shown.tap);
    putCode(json, u"sanded"_s, shown.sanded);
    putFlag(json, shown.bends, u"bends"_s);
    putFlag(json, shown.fizzes, u"fizzes"_s);
    putCode(json, u"rub"_s, shown.rub);
    putFlag(json, shown.nailMarks, u"nail_marks"_s);
    putCode(json, u"adhesive"_s, shown.adhesive);
    putLengths(json, shown);
    return json;
}

} // namespace

QByteArray writePracticePanel(const PracticePanel& panel)
{
    const QJsonObject json{{u"id"_s, panel.id},
                           {u"truth"_s, truthJson(panel.truth)},
                           {u"shown"_s, shownJson(panel.shown)},
                           {u"traps"_s, codes(panel.traps)}};
    return QJsonDocument(json).toJson(QJsonDocument::Indented);
}

} // namespace strandbench
