// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::planning {
namespace {

/// More lifts on one face than anybody would lay.
constexpr int mostLifts = 60;
/// Of a lift on what was laid before another answer: a film thinner than this cannot be laid.
const Length thinnestRest = millimetres(0.2);
/// Closer than this, a height by volume is the sum of its lifts: what was mixed is weighed, not measured.
const Length sameHeight = millimetres(0.05);

int fewestFor(Length height, Length greatest, Length proud)
{
    const double room = inMillimetres(greatest > proud ? Length(greatest - proud) : greatest);
    // A hair of tolerance: 12 mm in lifts of 6 is two lifts, whatever the last bit says.
    return std::max(1, static_cast<int>(std::ceil(inMillimetres(height) / room - 1e-9)));
}

LayerQuestion questionOf(const Job& job, const ProductSheet& sheet, Length laid, std::vector<StackLayer> stack)
{
    return {sheet, *job.assessment.reading, sheet.hardenerNominal, laid, std::move(stack)};
}

/// One face, or the lower or upper part of it, in one filler.
struct Span {
    Face face;
    Length floor;
    Length top;
    const ProductSheet& sheet;
    bool toTheTop; ///< its last lift is built proud
};

std::vector<Lift> liftsBelow(const Job& job, const std::vector<LaidLift>& laid)
{
    std::vector<Lift> all = job.frozen.lifts;
    for (const LaidLift& each : laid)
        all.push_back(each.lift);
    return all;
}

/// Lays a span in `count` lifts upon those below; false in the end when one of them comes too near its limit.
CureAnswer<bool> laySpan(const Job& job, const Span& span, int count, std::vector<LaidLift>& lifts)
{
    const Length each = (span.top - span.floor) / static_cast<double>(count);
    for (int index = 0; index < count; ++index) {
        const bool last = span.toTheTop && index + 1 == count;
        const Length laid = last ? Length(each + job.set.assumptions.proud) : each;
        const CureAnswer<LayerCure> cure =
            job.set.engine.layer(questionOf(job, span.sheet, laid, stackUnder(job, liftsBelow(job, lifts))));
        if (!cure)
            return tl::unexpected(cure.error());
        if (cure->peak >= peakLimit(job))
            return false;
        const Lift lift{span.face,      each,          span.sheet.fillerClass, cure->peak,
                        cure->cureCase, span.sheet.id, span.sheet.hash};
        lifts.push_back({lift, Length(span.floor + each * static_cast<double>(index)), *cure, last});
    }
    return true;
}

/// A span in the fewest lifts that stay cool enough.
CureAnswer<void> planSpan(const Job& job, const Span& span, std::vector<LaidLift>& lifts)
{
    const Length proud = span.toTheTop ? job.set.assumptions.proud : millimetres(0);
    for (int count = fewestFor(span.top - span.floor, span.sheet.greatestLift, proud); count <= mostLifts; ++count) {
        std::vector<LaidLift> tried = lifts;
        const CureAnswer<bool> cool = laySpan(job, span, count, tried);
        if (!cool)
            return tl::unexpected(cool.error());
        if (*cool) {
            lifts = std::move(tried);
            return {};
        }
    }
    return tl::unexpected(Reason{u"overheats_in_any_lift"_s, {peakLimit(job)}});
}

/// The height of a face's bridging lifts: none where none bridges.
Length bridgeHeight(const Job& job)
{
    return job.bridge ? Length(job.cavity.height() * job.set.assumptions.bridgeShare.value()) : millimetres(0);
}

CureAnswer<void> planFace(const Job& job, Face face, std::vector<LaidLift>& lifts)
{
    const Length top = job.cavity.height();
    Length floor = laidHeight(job, face);
    if (floor >= top)
        return {};
    floor = std::max(millimetres(0), std::min(floor, Length(top - thinnestRest)));
    const Length bridged = bridgeHeight(job);
    if (floor < bridged) {
        const CureAnswer<void> done = planSpan(job, {face, floor, bridged, *job.bridge, false}, lifts);
        if (!done)
            return done;
        floor = bridged;
    }
    return planSpan(job, {face, floor, top, job.sheet, true}, lifts);
}

/// Filler that stayed on the panel, as it is once cured: what was mixed less what the board took, less shrinkage.
Volume laidVolume(const Job& job, std::size_t lift)
{
    const ProductSheet& sheet = *job.frozen.sheets[lift];
    Mass laid = grams(0);
    for (const Batch& each : job.frozen.batches)
        if (each.lift == static_cast<int>(lift))
            laid += onThePanel(each, job.set.assumptions);
    return laid / sheet.density * (1.0 - sheet.shrinkage.value());
}

} // namespace

bool needsBacking(const Assessment& assessment, const Assumptions& assumptions)
{
    if (assessment.damage->kind != DamageKind::Hole)
        return false;
    const Length wide = across(*assessment.damage);
    return wide > assumptions.holeBothFaces || (!*assessment.rearAccess && wide > assumptions.holeNoRearAccess);
}

const ProductSheet& sheetOf(const Job& job, const Lift& lift)
{
    for (std::size_t i = 0; i < job.frozen.lifts.size(); ++i)
        if (job.frozen.lifts[i] == lift)
            return *job.frozen.sheets[i];
    return job.bridge && lift.sheetId == job.bridge->id ? *job.bridge : job.sheet;
}

Length laidHeight(const Job& job, Face face)
{
    Volume filled = millilitres(0);
    Length thick = millimetres(0);
    for (std::size_t i = 0; i < job.frozen.lifts.size(); ++i) {
        if (job.frozen.lifts[i].face != face)
            continue;
        filled += laidVolume(job, i);
        thick += job.frozen.lifts[i].thickness;
    }
    const Length height = job.cavity.heightOf(filled);
    const Length off = height > thick ? Length(height - thick) : Length(thick - height);
    return off < sameHeight ? std::min(thick, job.cavity.height()) : height;
}

CureAnswer<std::vector<LaidLift>> planLifts(const Job& job)
{
    std::vector<LaidLift> lifts;
    for (int face = 0; face < job.cavity.faces(); ++face) {
        const CureAnswer<void> laid = planFace(job, face == 0 ? Face::Front : Face::Back, lifts);
        if (!laid)
            return tl::unexpected(laid.error());
    }
    return lifts;
}

std::optional<Reason> oneGoTooHot(const Job& job, const std::vector<Lift>& lifts)
{
    const auto onFront = std::count_if(lifts.begin(), lifts.end(), [&](const Lift& each) {
        return each.face == Face::Front && each.filler == job.sheet.fillerClass;
    });
    if (onFront < 2 || !job.frozen.lifts.empty())
        return std::nullopt;
    const Length whole = job.cavity.height() + job.set.assumptions.proud;
    const CureAnswer<LayerCure> cure = job.set.engine.layer(questionOf(job, job.sheet, whole, stackUnder(job, {})));
    if (!cure || cure->peak < peakLimit(job))
        return std::nullopt;
    return Reason{u"one_go_too_hot"_s, {whole, cure->peak, peakLimit(job), Count{static_cast<int>(onFront)}}};
}

std::optional<Reason> greatestToday(const Job& job)
{
    const Length sheets = job.sheet.greatestLift;
    const auto greatest =
        job.set.engine.greatestLift(questionOf(job, job.sheet, sheets, stackUnder(job, {})), peakLimit(job));
    if (!greatest || !*greatest || **greatest >= sheets)
        return std::nullopt;
    return Reason{u"greatest_lift_today"_s, {**greatest, peakLimit(job)}};
}

Volume liftVolume(const Job& job, const LaidLift& laid)
{
    const Length top = laid.last ? job.cavity.height() : Length(laid.floor + laid.lift.thickness);
    Volume volume = job.cavity.volumeUpTo(top) - job.cavity.volumeUpTo(laid.floor);
    if (laid.last)
        volume += job.cavity.opening() * job.set.assumptions.proud;
    return volume;
}

} // namespace strandbench::planning
