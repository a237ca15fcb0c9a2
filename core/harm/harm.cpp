// SPDX-License-Identifier: GPL-3.0-or-later
#include "harm/harm.h"

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The sheet's own hazards of a material; null where it states none.
const SheetHazards* ownOf(const QString& material, const ProductSheet* sheet)
{
    if (sheet && material == u"filler"_s && sheet->hazards)
        return &*sheet->hazards;
    if (sheet && material == u"hardener_paste"_s && sheet->hardenerHazards)
        return &*sheet->hardenerHazards;
    return nullptr;
}

HarmShown shownOf(const HarmMaterial& material, const SheetHazards* own)
{
    HarmShown shown;
    shown.material = material.code;
    shown.gloves = material.gloves;
    shown.respirator = material.respirator;
    shown.firstAid = material.firstAid;
    shown.waste = material.waste;
    if (own) {
        shown.bySheet = true;
        shown.signal = own->signal;
        shown.pictograms = own->pictograms;
        shown.hazards = own->hazards;
        shown.precautions = own->precautions;
        shown.ownGloves = own->gloves;
        shown.ownRespirator = own->respirator;
        shown.ownFirstAid = own->firstAid;
        shown.ownWaste = own->waste;
        return shown;
    }
    shown.signal = signalOf(material.classes);
    shown.pictograms = pictogramsOf(material.classes);
    for (const HazardClass each : material.classes)
        shown.hazards.push_back(QString::fromLatin1(labelElement(each).statement));
    shown.precautions = material.precautions;
    return shown;
}

} // namespace

const HarmMaterial* HarmTable::material(const QString& code) const
{
    const auto found = std::ranges::find(materials, code, &HarmMaterial::code);
    return found == materials.end() ? nullptr : &*found;
}

const HarmPlace* HarmTable::place(const QString& code) const
{
    const auto found = std::ranges::find(places, code, &HarmPlace::code);
    return found == places.end() ? nullptr : &*found;
}

bool canMeet(const HarmMaterial& one, const HarmMaterial& other)
{
    return !one.onlyOn || !other.onlyOn || *one.onlyOn == *other.onlyOn;
}

std::vector<Measure> measuresFor(HarmKind kind)
{
    switch (kind) {
    case HarmKind::Dust:
        return {Measure::ExtractionOn};
    case HarmKind::Solvent:
        return {Measure::NoIgnition, Measure::FreshAir};
    case HarmKind::Paste:
        return {Measure::FreshAir};
    case HarmKind::Peroxide:
    case HarmKind::Accelerator:
        return {Measure::NeverTogether};
    case HarmKind::Other:
        break;
    }
    return {};
}

std::vector<HarmShown> metAt(const HarmTable& table, const QString& place, std::optional<PanelKind> panel,
                             const ProductSheet* sheet)
{
    std::vector<HarmShown> met;
    const HarmPlace* here = table.place(place);
    if (!here)
        return met;
    for (const QString& code : here->materials) {
        const HarmMaterial& material = *table.material(code);
        if (!material.onlyOn || !panel || *material.onlyOn == *panel)
            met.push_back(shownOf(material, ownOf(code, sheet)));
    }
    return met;
}

std::vector<GhsPictogram> pictogramsOf(const std::vector<HarmShown>& shown)
{
    std::set<GhsPictogram> all;
    for (const HarmShown& each : shown)
        all.insert(each.pictograms.begin(), each.pictograms.end());
    return {all.begin(), all.end()};
}

} // namespace strandbench
