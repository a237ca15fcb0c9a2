// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/shop_air.h"

#include "air/emission.h"

namespace strandbench {
namespace {

BesideIt lying(const VapourRange& box, Fraction limit)
{
    if (box.least > limit)
        return BesideIt::Above;
    return box.most > limit ? BesideIt::MayBeAbove : BesideIt::Below;
}

} // namespace

ShopAir::ShopAir(const ShopRoom& room, const WorkInRoom& work) : m_room(room.air, room.changes)
{
    for (const FillerSpread& each : work.fillers) {
        if (!(each.styrene > Fraction()))
            continue;
        const auto release = [&](Spreading spreading) {
            return Release{each.filler * styreneGivenOff(spreading, each.styrene).value(), each.from, each.lasting};
        };
        of(Vapour::Styrene).least.push_back(release(Spreading::Resin));
        of(Vapour::Styrene).most.push_back(release(Spreading::GelCoat));
    }
    for (const SolventWiped& each : work.wipes) {
        const Release release{room.wipe, each.from, room.wipeGone};
        of(each.vapour).least.push_back(release);
        of(each.vapour).most.push_back(release);
    }
}

bool ShopAir::gaveOff(Vapour vapour) const { return !of(vapour).most.empty(); }

template <class Level> VapourRange ShopAir::range(Vapour vapour, const Level& level) const
{
    return {shareOf(vapour, level(of(vapour).least)), shareOf(vapour, level(of(vapour).most))};
}

VapourRange ShopAir::at(Vapour vapour, Duration when) const
{
    return range(vapour, [&](const auto& releases) { return m_room.at(releases, when); });
}

VapourRange ShopAir::peak(Vapour vapour) const
{
    return range(vapour, [&](const auto& releases) { return m_room.peak(releases); });
}

VapourRange ShopAir::highestMean(Vapour vapour, Duration over) const
{
    return range(vapour, [&](const auto& releases) { return m_room.highestMean(releases, over); });
}

VapourRange ShopAir::ofKind(Vapour vapour, LimitKind kind) const
{
    switch (kind) {
    case LimitKind::TimeWeighted:
        return highestMean(vapour, minutes(8 * 60));
    case LimitKind::ShortTerm:
        return highestMean(vapour, minutes(15));
    case LimitKind::Peak:
        return highestMean(vapour, minutes(5));
    case LimitKind::Ceiling:
    case LimitKind::LifeOrHealth:
        break;
    }
    return peak(vapour);
}

std::vector<LimitBeside> ShopAir::besideLimits(Vapour vapour) const
{
    std::vector<LimitBeside> all;
    for (const ExposureLimit& each : exposureLimits()) {
        if (each.vapour != vapour)
            continue;
        const VapourRange box = ofKind(vapour, each.kind);
        all.push_back({each, box, lying(box, each.level)});
    }
    return all;
}

VapourRange ShopAir::ofMixtureLimit(const QString& limitName) const
{
    std::vector<BesideLimit> least;
    std::vector<BesideLimit> most;
    for (const ExposureLimit& each : exposureLimits()) {
        if (each.name != limitName || each.kind != LimitKind::TimeWeighted || !gaveOff(each.vapour))
            continue;
        const VapourRange box = ofKind(each.vapour, each.kind);
        least.push_back({box.least, each.level});
        most.push_back({box.most, each.level});
    }
    return {strandbench::ofMixtureLimit(least), strandbench::ofMixtureLimit(most)};
}

} // namespace strandbench
