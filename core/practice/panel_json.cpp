// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/panel_json.h"

#include "exchange/built_in.h"
#include "exchange/plan_json.h"
#include "exchange/strict_json.h"
#include "practice/inference.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestId = 40;

/// Every number to a millionth of its unit, as the writer has it: what is read, written and read again is the same, to
/// the last limit that it lies at.
QJsonValue tidied(const QJsonValue& value)
{
    if (value.isDouble() && std::abs(value.toDouble()) < 1e6)
        return std::round(value.toDouble() * 1e6) / 1e6;
    if (value.isArray()) {
        QJsonArray list;
        for (const QJsonArray all = value.toArray(); const auto& each : all)
            list.append(tidied(each));
        return list;
    }
    if (!value.isObject())
        return value;
    QJsonObject object = value.toObject();
    for (auto each = object.begin(); each != object.end(); ++each)
        each.value() = tidied(each.value());
    return object;
}

/// A list of codes of one enumeration, none of them twice.
template <class E> std::vector<E> readCodes(StrictObject& json, const QString& key)
{
    std::vector<E> all;
    const QStringList words = json.texts(key, longestId);
    for (qsizetype i = 0; i < words.size(); ++i) {
        const std::optional<E> code = fromCode<E>(words.at(i));
        const QString place = u"%1[%2]"_s.arg(key).arg(i);
        if (!code)
            json.fault(place, words.at(i), FaultKind::NotOneOf, allCodes<E>());
        else if (std::ranges::find(all, *code) != all.end())
            json.fault(place, words.at(i), FaultKind::Conflicts, {json.pathOf(key), words.at(i)});
        else
            all.push_back(*code);
    }
    return all;
}

std::optional<Length> optionalMicrons(StrictObject& json, const QString& key)
{
    const auto microns = json.optionalNumber(key, 0, 500, u"µm"_s);
    return microns ? std::optional(millimetres(*microns / 1000.0)) : std::nullopt;
}

std::vector<NearPart> readNear(StrictObject& shown, Faults& faults)
{
    std::vector<NearPart> all;
    for (const auto& [path, json] : shown.objects(u"near"_s)) {
        StrictObject object(json, path, faults);
        const auto part = object.oneOf<Neighbour>(u"part"_s);
        all.push_back({part, millimetres(object.number(u"distance_mm"_s, 0, 3000, u"mm"_s))});
        object.finish();
    }
    return all;
}

void readMaterialTests(StrictObject& shown, Evidence& evidence)
{
    evidence.magnetHere = shown.oneOf<MagnetPull>(u"magnet_here"_s);
    evidence.magnetBare = shown.optionalOneOf<MagnetPull>(u"magnet_bare"_s);
    evidence.zincHere = optionalMicrons(shown, u"zinc_here_um"_s);
    evidence.zincBeside = optionalMicrons(shown, u"zinc_beside_um"_s);
    evidence.conducts = shown.optionalBoolean(u"conducts"_s);
    evidence.tap = shown.optionalOneOf<TapSound>(u"tap"_s);
    evidence.sanded = shown.optionalOneOf<SandedTo>(u"sanded"_s);
    evidence.bends = shown.optionalBoolean(u"bends"_s);
    evidence.fizzes = shown.optionalBoolean(u"fizzes"_s);
}

Evidence readShown(StrictObject& shown, Faults& faults)
{
    Evidence evidence;
    evidence.front = readCodes<FrontMark>(shown, u"front"_s);
    evidence.film = shown.oneOf<FilmLook>(u"film"_s);
    evidence.reach = shown.oneOf<BackReach>(u"reach"_s);
    evidence.back = readCodes<BackMark>(shown, u"back"_s);
    if (evidence.reach == BackReach::Closed && !evidence.back.empty())
        shown.fault(u"back"_s, shown.shown(u"back"_s), FaultKind::Conflicts,
                    {shown.pathOf(u"reach"_s), codeOf(evidence.reach)});
    evidence.marking = shown.optionalOneOf<BackMarking>(u"marking"_s);
    evidence.edge = shown.optionalOneOf<EdgeLook>(u"edge"_s);
    evidence.inside = shown.oneOf<InsideLook>(u"inside"_s);
    readMaterialTests(shown, evidence);
    evidence.rub = shown.optionalOneOf<ClothRub>(u"rub"_s);
    evidence.nailMarks = shown.optionalBoolean(u"nail_marks"_s);
    evidence.visibleLength = millimetres(shown.number(u"visible_length_mm"_s, 1, 3000, u"mm"_s));
    if (const auto tips = shown.optionalNumber(u"tips_at_mm"_s, 1, 3000, u"mm"_s))
        evidence.tipsAt = millimetres(*tips);
    evidence.adhesive = shown.optionalOneOf<AdhesiveFeel>(u"adhesive"_s);
    evidence.foil = shown.oneOf<FoilTest>(u"foil"_s);
    evidence.near = readNear(shown, faults);
    if (const auto since = shown.optionalNumber(u"since_cut_min"_s, 0, 10080, u"min"_s))
        evidence.sinceCut = minutes(*since);
    return evidence;
}

/// The truth is an assessment as the program reads it, but for job and panel, which are the panel's own.
Assessment readTruth(QJsonObject json, const QString& id, Faults& faults)
{
    for (const QString& key : {u"job"_s, u"panel"_s})
        if (json.contains(key))
            faults.push_back({u"truth."_s + key, json.value(key).toString(), FaultKind::UnknownKey, {u"id"_s}});
    json.insert(u"job"_s, u"practice"_s);
    json.insert(u"panel"_s, id.isEmpty() ? u"panel"_s : id);
    Checked<Assessment> truth = readAssessment(QJsonDocument(json).toJson(QJsonDocument::Compact));
    if (truth)
        return *std::move(truth);
    for (Fault& each : truth.error()) {
        each.field.prepend(u"truth."_s);
        faults.push_back(std::move(each));
    }
    return {};
}

void checkWhole(const PracticePanel& panel, Faults& faults)
{
    for (const QStringList open = unanswered(panel); const QString& question : open)
        faults.push_back({u"shown"_s, question, FaultKind::Conflicts, {u"truth"_s, question}});
    for (std::size_t i = 0; i < panel.traps.size(); ++i)
        if (!isLaid(panel.traps[i], panel))
            faults.push_back({u"traps[%1]"_s.arg(i), codeOf(panel.traps[i]), FaultKind::Conflicts, {u"shown"_s, {}}});
}

} // namespace

Checked<PracticePanel> readPracticePanel(const QByteArray& json)
{
    const auto object = parseObject(json);
    if (!object)
        return tl::unexpected(object.error());
    Faults faults;
    PracticePanel panel;
    StrictObject root(tidied(*object).toObject(), {}, faults);
    panel.id = root.text(u"id"_s, longestId);
    const std::size_t before = faults.size();
    const QJsonObject truth = root.object(u"truth"_s);
    if (faults.size() == before)
        panel.truth = readTruth(truth, panel.id, faults);
    root.nested(u"shown"_s, [&](StrictObject& shown) { panel.shown = readShown(shown, faults); });
    panel.traps = readCodes<TrapKind>(root, u"traps"_s);
    root.finish();
    if (faults.empty())
        checkWhole(panel, faults);
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return panel;
}

Checked<std::vector<PracticePanel>> readPracticePanels(const QString& folder)
{
    const QDir dir(folder);
    const QStringList names = dir.entryList({u"*.json"_s}, QDir::Files, QDir::Name);
    if (names.isEmpty())
        return tl::unexpected(Faults{{u"folder"_s, folder, FaultKind::NotFound, {u"*.json"_s}}});
    Faults faults;
    std::vector<PracticePanel> panels;
    for (const QString& name : names) {
        QFile file(dir.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) {
            faults.push_back({name, file.errorString(), FaultKind::NotFound, {}});
            continue;
        }
        Checked<PracticePanel> panel = readPracticePanel(file.readAll());
        if (!panel) {
            for (Fault& each : panel.error()) {
                each.field.prepend(name + u": "_s);
                faults.push_back(std::move(each));
            }
            continue;
        }
        if (std::ranges::find(panels, panel->id, &PracticePanel::id) != panels.end())
            faults.push_back({name + u": id"_s, panel->id, FaultKind::Conflicts, {u"id"_s, panel->id}});
        panels.push_back(*std::move(panel));
    }
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return panels;
}

const std::vector<PracticePanel>& builtInPanels()
{
    static const std::vector<PracticePanel> panels = [] {
        auto read = readPracticePanels(u":/strandbench/practice"_s);
        if (!read)
            throwBuiltInDefect(u"practice"_s, read.error());
        return *std::move(read);
    }();
    return panels;
}

} // namespace strandbench
