// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figure_found.h"

#include <algorithm>

namespace strandbench {
namespace {

void findGels(FigureFound& found, const GelLot& lot, const std::vector<RepairDigest>& repairs)
{
    const std::vector<GelLotSeen> lots = gelLots(repairs);
    const auto of = std::ranges::find(lots, lot, &GelLotSeen::lot);
    found.gels = of == lots.end() ? 0 : of->gels;
    auto drift = gelDrift(repairs, lot);
    if (!drift)
        return; // too few: the screen says so
    found.drift = *std::move(drift);
    for (const GelPoint& each : found.drift->points)
        found.jobs.try_emplace(each.repair);
    for (const RepairDigest& each : repairs)
        if (const auto job = found.jobs.find(each.repair); job != found.jobs.end())
            job->second = each.job;
}

void findRight(FigureFound& found, const std::vector<RepairDigest>& repairs)
{
    found.right = firstTimeRight(repairs);
    for (const FirstTimeRight& each : found.right) {
        found.rightOfAll.judged += each.judged;
        found.rightOfAll.right += each.right;
    }
    if (found.rightOfAll.judged > 0)
        found.rightOfAll.interval =
            proportionInterval(found.rightOfAll.right, found.rightOfAll.judged, Fraction::ofHundred(95));
}

} // namespace

int daysOf(FigurePeriod period)
{
    switch (period) {
    case FigurePeriod::Month:
        return 30;
    case FigurePeriod::Quarter:
        return 90;
    case FigurePeriod::Year:
        break;
    }
    return 365;
}

FigureFound findFigure(const FigureAsked& asked, const std::vector<RepairDigest>& repairs)
{
    FigureFound found;
    found.unreadable = static_cast<int>(std::ranges::count(repairs, false, &RepairDigest::readable));
    found.repairs = static_cast<int>(repairs.size()) - found.unreadable;
    switch (asked.kind) {
    case FigureKind::Gel:
        findGels(found, asked.lot, repairs);
        break;
    case FigureKind::Material:
        found.material = materialUsed(repairs);
        break;
    case FigureKind::Right:
        findRight(found, repairs);
        break;
    case FigureKind::Times:
        found.times = partTimes(repairs);
        break;
    case FigureKind::Deviations:
        found.deviations = deviationShares(repairs);
        break;
    }
    return found;
}

} // namespace strandbench
