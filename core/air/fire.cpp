// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/fire.h"

#include <algorithm>

namespace strandbench {
namespace {

bool has(const HarmMaterial& material, HazardClass hazard)
{
    return std::find(material.classes.begin(), material.classes.end(), hazard) != material.classes.end();
}

std::optional<FirePoint> firePoint(const HarmMaterial& material)
{
    if (has(material, HazardClass::FlammableAerosol1))
        return FirePoint{material.code, FlashBy::Always, {}};
    const bool second = has(material, HazardClass::FlammableLiquid2);
    if (!second && !has(material, HazardClass::FlammableLiquid3))
        return std::nullopt;
    if (material.kind == HarmKind::Paste)
        return FirePoint{material.code, FlashBy::Published, flashPoint(Vapour::Styrene)};
    if (material.code == codeOf(Vapour::Acetone))
        return FirePoint{material.code, FlashBy::Published, flashPoint(Vapour::Acetone)};
    return FirePoint{material.code, FlashBy::Class, celsius(second ? 23 : 60)};
}

} // namespace

std::vector<FirePoint> firePoints(const HarmTable& table)
{
    std::vector<FirePoint> all;
    for (const HarmMaterial& each : table.materials)
        if (auto point = firePoint(each))
            all.push_back(*std::move(point));
    return all;
}

std::optional<TemperatureStep> belowFlash(const FirePoint& point, Temperature air)
{
    if (point.by != FlashBy::Published || air >= *point.flash)
        return std::nullopt;
    return *point.flash - air;
}

} // namespace strandbench
