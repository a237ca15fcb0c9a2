// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>
#include <cmath>

namespace strandbench::planning {
namespace {

int liftsFor(Length height, Length greatest, Length proud)
{
    const double room = inMillimetres(greatest > proud ? Length(greatest - proud) : greatest);
    // A hair of tolerance: 12 mm in lifts of 6 is two lifts, whatever the last bit says.
    return std::max(1, static_cast<int>(std::ceil(inMillimetres(height) / room - 1e-9)));
}

bool lastOfFace(const std::vector<Lift>& lifts, std::size_t index)
{
    return index + 1 == lifts.size() || lifts[index + 1].face != lifts[index].face;
}

} // namespace

bool needsBacking(const Assessment& assessment, const Assumptions& assumptions)
{
    if (assessment.damage->kind != DamageKind::Hole)
        return false;
    const Length wide = across(*assessment.damage);
    return wide > assumptions.holeBothFaces || (!*assessment.rearAccess && wide > assumptions.holeNoRearAccess);
}

std::vector<Lift> planLifts(const Job& job)
{
    const Length height = job.cavity.height();
    const int count = liftsFor(height, job.sheet.greatestLift, job.set.assumptions.proud);
    std::vector<Lift> lifts;
    for (int face = 0; face < job.cavity.faces(); ++face)
        for (int each = 0; each < count; ++each)
            lifts.push_back({face == 0 ? Face::Front : Face::Back, height / static_cast<double>(count),
                             job.sheet.fillerClass, std::nullopt});
    return lifts;
}

Volume liftVolume(const Job& job, const std::vector<Lift>& lifts, std::size_t index)
{
    Length floor = millimetres(0);
    for (std::size_t below = index; below > 0 && lifts[below - 1].face == lifts[index].face; --below)
        floor += lifts[below - 1].thickness;
    const bool last = lastOfFace(lifts, index);
    const Length top = last ? job.cavity.height() : Length(floor + lifts[index].thickness);
    Volume volume = job.cavity.volumeUpTo(top) - job.cavity.volumeUpTo(floor);
    if (last)
        volume += job.cavity.opening() * job.set.assumptions.proud;
    return volume;
}

Length laidThickness(const Job& job, const std::vector<Lift>& lifts, std::size_t index)
{
    return lastOfFace(lifts, index) ? Length(lifts[index].thickness + job.set.assumptions.proud)
                                    : lifts[index].thickness;
}

} // namespace strandbench::planning
