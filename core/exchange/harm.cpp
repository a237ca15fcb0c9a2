// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/harm.h"

#include "exchange/built_in.h"
#include "exchange/sheet_hazards.h"

#include <QCryptographicHash>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestCode = 60;
constexpr int longestSource = 300;

/// The values of a list of codes; one that is none is a fault.
template <class E> std::vector<E> readAll(StrictObject& object, const QString& key)
{
    std::vector<E> values;
    const QStringList codes = object.texts(key, longestCode);
    for (qsizetype i = 0; i < codes.size(); ++i) {
        if (const auto value = fromCode<E>(codes.at(i)))
            values.push_back(*value);
        else
            object.fault(u"%1[%2]"_s.arg(key).arg(i), codes.at(i), FaultKind::NotOneOf, allCodes<E>());
    }
    return values;
}

std::vector<QString> readTexts(StrictObject& object, const QString& key)
{
    const QStringList texts = object.texts(key, longestCode);
    return {texts.cbegin(), texts.cend()};
}

HarmMaterial readMaterial(StrictObject& json)
{
    HarmMaterial material;
    material.code = json.text(u"code"_s, longestCode);
    material.kind = json.oneOf<HarmKind>(u"kind"_s);
    material.onlyOn = json.optionalOneOf<PanelKind>(u"only_on"_s);
    material.classes = readAll<HazardClass>(json, u"classes"_s);
    material.precautions = readTexts(json, u"p"_s);
    for (std::size_t i = 0; i < material.precautions.size(); ++i)
        if (!isPrecautionCode(material.precautions[i]))
            json.fault(u"p[%1]"_s.arg(i), material.precautions[i], FaultKind::NotReadable, {u"P305+P351+P338"_s});
    material.gloves = json.text(u"gloves"_s, longestCode);
    material.respirator = json.text(u"respirator"_s, longestCode);
    material.firstAid = json.text(u"first_aid"_s, longestCode);
    material.waste = json.text(u"waste"_s, longestCode);
    material.neverWith = readTexts(json, u"never_with"_s);
    material.confidence = json.oneOf<Confidence>(u"confidence"_s);
    material.source = json.text(u"source"_s, longestSource);
    json.finish();
    return material;
}

HarmPlace readPlace(StrictObject& json)
{
    HarmPlace place;
    place.code = json.text(u"place"_s, longestCode);
    place.materials = readTexts(json, u"materials"_s);
    place.first = readAll<Measure>(json, u"first"_s);
    json.finish();
    return place;
}

QStringList codesOf(const HarmTable& table)
{
    QStringList codes;
    for (const HarmMaterial& each : table.materials)
        codes << each.code;
    return codes;
}

void checkCodes(const HarmTable& table, Faults& faults)
{
    const auto once = [&](const auto& list, const QString& key, const QString& name) {
        for (std::size_t i = 1; i < list.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                if (list[j].code == list[i].code)
                    faults.push_back({u"%1[%2].%3"_s.arg(key).arg(i).arg(name),
                                      list[i].code,
                                      FaultKind::Conflicts,
                                      {u"%1[%2].%3"_s.arg(key).arg(j).arg(name), list[j].code}});
    };
    once(table.materials, u"materials"_s, u"code"_s);
    once(table.places, u"places"_s, u"place"_s);
}

/// 'Never with' names what is there, and is said of both.
void checkPairs(const HarmTable& table, Faults& faults)
{
    for (std::size_t i = 0; i < table.materials.size(); ++i) {
        const HarmMaterial& one = table.materials[i];
        const QString field = u"materials[%1].never_with"_s.arg(i);
        for (const QString& code : one.neverWith) {
            const HarmMaterial* other = table.material(code);
            if (!other)
                faults.push_back({field, code, FaultKind::NotOneOf, codesOf(table)});
            else if (std::ranges::find(other->neverWith, one.code) == other->neverWith.end())
                faults.push_back(
                    {field,
                     code,
                     FaultKind::Conflicts,
                     {other->code + u".never_with"_s, other->neverWith.empty() ? u"–"_s : other->neverWith.front()}});
        }
        for (const HarmMaterial& other : table.materials)
            if (one.kind == HarmKind::Peroxide && other.kind == HarmKind::Accelerator &&
                std::ranges::find(one.neverWith, other.code) == one.neverWith.end())
                faults.push_back({field, {}, FaultKind::Missing, {other.code}});
    }
}

void checkPlace(const HarmTable& table, const HarmPlace& place, const QString& path, Faults& faults)
{
    std::vector<const HarmMaterial*> met;
    for (const QString& code : place.materials) {
        const HarmMaterial* material = table.material(code);
        if (!material) {
            faults.push_back({path + u".materials"_s, code, FaultKind::NotOneOf, codesOf(table)});
            continue;
        }
        for (const HarmMaterial* other : met)
            if (canMeet(*material, *other) &&
                std::ranges::find(material->neverWith, other->code) != material->neverWith.end())
                faults.push_back(
                    {path + u".materials"_s, code, FaultKind::Conflicts, {other->code + u".never_with"_s, code}});
        for (const Measure each : measuresFor(material->kind))
            if (std::ranges::find(place.first, each) == place.first.end())
                faults.push_back({path + u".first"_s, {}, FaultKind::Missing, {codeOf(each)}});
        met.push_back(material);
    }
}

} // namespace

Checked<HarmTable> readHarmTable(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    HarmTable table;
    StrictObject root(*object, {}, faults);
    for (const auto& [path, item] : root.objects(u"materials"_s)) {
        StrictObject material(item, path, faults);
        table.materials.push_back(readMaterial(material));
    }
    for (const auto& [path, item] : root.objects(u"places"_s)) {
        StrictObject place(item, path, faults);
        table.places.push_back(readPlace(place));
    }
    root.finish();
    checkCodes(table, faults);
    checkPairs(table, faults);
    for (std::size_t i = 0; i < table.places.size(); ++i)
        checkPlace(table, table.places[i], u"places[%1]"_s.arg(i), faults);
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    table.source = json;
    table.hash = QCryptographicHash::hash(json, QCryptographicHash::Sha256);
    return table;
}

const HarmTable& builtInHarm()
{
    static const HarmTable table = builtIn(u"harm/harm.json"_s, readHarmTable);
    return table;
}

} // namespace strandbench
