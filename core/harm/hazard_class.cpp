// SPDX-License-Identifier: GPL-3.0-or-later
#include "harm/hazard_class.h"

#include <algorithm>
#include <set>

namespace strandbench {
namespace {

using enum GhsPictogram;
using enum SignalWord;

constexpr std::array<LabelElement, Codes<HazardClass>::table.size()> elements{{
    {HazardClass::FlammableLiquid2, "H225", Flame, Danger},
    {HazardClass::FlammableLiquid3, "H226", Flame, Warning},
    {HazardClass::FlammableSolid1, "H228", Flame, Danger},
    {HazardClass::FlammableAerosol1, "H222", Flame, Danger},
    {HazardClass::OrganicPeroxideB, "H241", Flame, Danger}, // and GHS01: added in pictogramsOf()
    {HazardClass::OrganicPeroxideD, "H242", Flame, Danger},
    {HazardClass::OrganicPeroxideE, "H242", Flame, Warning},
    {HazardClass::WaterReactive2, "H261", Flame, Danger},
    {HazardClass::AcuteOral3, "H301", Skull, Danger},
    {HazardClass::AcuteOral4, "H302", Exclamation, Warning},
    {HazardClass::AcuteInhaled4, "H332", Exclamation, Warning},
    {HazardClass::SkinCorrosion1, "H314", Corrosion, Danger},
    {HazardClass::SkinIrritation2, "H315", Exclamation, Warning},
    {HazardClass::EyeIrritation2, "H319", Exclamation, Warning},
    {HazardClass::SkinSensitiser1, "H317", Exclamation, Warning},
    {HazardClass::RespiratorySensitiser1, "H334", HealthHazard, Danger},
    {HazardClass::Carcinogen1, "H350", HealthHazard, Danger},
    {HazardClass::Reproduction1, "H360", HealthHazard, Danger},
    {HazardClass::Reproduction2Unborn, "H361d", HealthHazard, Warning},
    {HazardClass::Narcosis, "H336", Exclamation, Warning},
    {HazardClass::OrgansRepeated1, "H372", HealthHazard, Danger},
    {HazardClass::OrgansRepeated2, "H373", HealthHazard, Warning},
    {HazardClass::Aspiration1, "H304", HealthHazard, Danger},
    {HazardClass::AquaticChronic1, "H410", Environment, Warning},
    {HazardClass::AquaticChronic2, "H411", Environment, None},
    {HazardClass::DrySkin, "EUH066", std::nullopt, None}, // supplemental statement of CLP Annex II alone
}};

bool irritates(HazardClass each) { return each == HazardClass::SkinIrritation2 || each == HazardClass::EyeIrritation2; }

/// The exclamation mark of `each` beside the others: CLP Article 26(1)(b) to (d).
bool exclaims(HazardClass each, const std::vector<HazardClass>& classes)
{
    const auto holds = [&](auto fits) { return std::ranges::any_of(classes, fits); };
    const auto shows = [&](GhsPictogram pictogram) {
        return holds([&](HazardClass other) { return labelElement(other).pictogram == pictogram; });
    };
    if (shows(Skull))
        return false;
    if (irritates(each) && shows(Corrosion))
        return false;
    const bool toLungs = holds([](HazardClass other) { return other == HazardClass::RespiratorySensitiser1; });
    return !(toLungs && (irritates(each) || each == HazardClass::SkinSensitiser1));
}

} // namespace

const LabelElement& labelElement(HazardClass hazard)
{
    return *std::ranges::find(elements, hazard, &LabelElement::hazard);
}

std::vector<GhsPictogram> pictogramsOf(const std::vector<HazardClass>& classes)
{
    std::set<GhsPictogram> shown;
    for (const HazardClass each : classes) {
        const auto& pictogram = labelElement(each).pictogram;
        if (pictogram && (*pictogram != Exclamation || exclaims(each, classes)))
            shown.insert(*pictogram);
        if (each == HazardClass::OrganicPeroxideB)
            shown.insert(ExplodingBomb);
    }
    return {shown.begin(), shown.end()};
}

SignalWord signalOf(const std::vector<HazardClass>& classes)
{
    SignalWord worst = None;
    for (const HazardClass each : classes)
        worst = std::max(worst, labelElement(each).signal);
    return worst;
}

} // namespace strandbench
