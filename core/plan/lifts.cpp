// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::planning {
namespace {

/// More lifts on one face than anybody would lay.
constexpr int mostLifts = 60;

int fewestFor(Length height, Length greatest, Length proud)
{
    const double room = inMillimetres(greatest > proud ? Length(greatest - proud) : greatest);
    // A hair of tolerance: 12 mm in lifts of 6 is two lifts, whatever the last bit says.
    return std::max(1, static_cast<int>(std::ceil(inMillimetres(height) / room - 1e-9)));
}

LayerQuestion questionOf(const Job& job, Length laid, std::vector<StackLayer> stack)
{
    return {job.sheet, *job.assessment.reading, job.sheet.hardenerNominal, laid, std::move(stack)};
}

/// Lays one face in `count` lifts upon those below; false in the end when one of them comes too near its limit.
CureAnswer<bool> layFace(const Job& job, Face face, int count, LaidLifts& laidLifts)
{
    const Length each = job.cavity.height() / static_cast<double>(count);
    for (int index = 0; index < count; ++index) {
        const Length laid = index + 1 == count ? Length(each + job.set.assumptions.proud) : each;
        const CureAnswer<LayerCure> cure =
            job.set.engine.layer(questionOf(job, laid, stackUnder(job, laidLifts.lifts)));
        if (!cure)
            return tl::unexpected(cure.error());
        if (cure->peak >= peakLimit(job))
            return false;
        laidLifts.lifts.push_back({face, each, job.sheet.fillerClass, cure->peak, cure->cureCase});
        laidLifts.cures.push_back(*cure);
    }
    return true;
}

/// One face in the fewest lifts that stay cool enough.
CureAnswer<bool> planFace(const Job& job, Face face, LaidLifts& lifts)
{
    int count = fewestFor(job.cavity.height(), job.sheet.greatestLift, job.set.assumptions.proud);
    for (; count <= mostLifts; ++count) {
        LaidLifts tried = lifts;
        const CureAnswer<bool> cool = layFace(job, face, count, tried);
        if (!cool)
            return cool;
        if (*cool) {
            lifts = std::move(tried);
            return true;
        }
    }
    return tl::unexpected(Reason{u"overheats_in_any_lift"_s, {peakLimit(job)}});
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

CureAnswer<LaidLifts> planLifts(const Job& job)
{
    LaidLifts lifts;
    for (int face = 0; face < job.cavity.faces(); ++face) {
        const CureAnswer<bool> laid = planFace(job, face == 0 ? Face::Front : Face::Back, lifts);
        if (!laid)
            return tl::unexpected(laid.error());
    }
    return lifts;
}

std::optional<Reason> oneGoTooHot(const Job& job, const std::vector<Lift>& lifts)
{
    const auto onFront =
        std::count_if(lifts.begin(), lifts.end(), [](const Lift& each) { return each.face == Face::Front; });
    if (onFront < 2)
        return std::nullopt;
    const Length whole = job.cavity.height() + job.set.assumptions.proud;
    const CureAnswer<LayerCure> cure = job.set.engine.layer(questionOf(job, whole, stackUnder(job, {})));
    if (!cure || cure->peak < peakLimit(job))
        return std::nullopt;
    return Reason{u"one_go_too_hot"_s, {whole, cure->peak, peakLimit(job), Count{static_cast<int>(onFront)}}};
}

std::optional<Reason> greatestToday(const Job& job)
{
    const Length sheets = job.sheet.greatestLift;
    const auto greatest = job.set.engine.greatestLift(questionOf(job, sheets, stackUnder(job, {})), peakLimit(job));
    if (!greatest || !*greatest || **greatest >= sheets)
        return std::nullopt;
    return Reason{u"greatest_lift_today"_s, {**greatest, peakLimit(job)}};
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

} // namespace strandbench::planning
