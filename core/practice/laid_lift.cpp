// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/laid_lift.h"

#include <algorithm>
#include <numbers>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// What `strandbench cure` takes of hardener, and layers that anybody would lay.
constexpr double leastShare = 0.001;
constexpr double mostShare = 0.1;
const Length thinnest = millimetres(0.2);
const Length thickest = millimetres(60);

bool isModelled(Fraction hardener, Length layer)
{
    return hardener.value() >= leastShare && hardener.value() <= mostShare && layer >= thinnest && layer <= thickest;
}

Cavity cavityOf(const Assessment& assessment)
{
    return Cavity(*assessment.damage, assessment.rearAccess.value_or(false));
}

/// The plan's lift on this face within which the floor lies; its last where the floor lies above all. Null when the
/// plan has none there.
const Lift* plannedAt(const RepairPlan& plan, Face face, Length floor)
{
    const Lift* found = nullptr;
    Length below = millimetres(0);
    for (const Lift& each : plan.lifts) {
        if (each.face != face)
            continue;
        if (found && floor < below - millimetres(0.01))
            break;
        found = &each;
        below += each.thickness;
    }
    return found;
}

} // namespace

std::vector<PlacedLift> placeLifts(const Attempt& attempt, const ModelAnswer& answer, const PlanningSet& shop)
{
    const Length height = cavityOf(answer.assessment).height();
    std::vector<PlacedLift> all;
    for (const Face face : {Face::Front, Face::Back}) {
        Length floor = millimetres(0);
        const std::size_t before = all.size();
        for (std::size_t i = 0; i < attempt.lifts.size(); ++i) {
            const AttemptedLift& each = attempt.lifts[i];
            const Lift* planned = each.face == face ? plannedAt(answer.plan, face, floor) : nullptr;
            if (!planned)
                continue;
            all.push_back({i, floor, false, each.thickness, planned});
            floor += each.thickness;
        }
        if (all.size() > before && floor >= height - levelWithin()) {
            all.back().top = true;
            all.back().laid += shop.assumptions.proud;
        }
    }
    return all;
}

RepairPlan planAsLaid(const Attempt& attempt, const ModelAnswer& answer, const PlanningSet& shop)
{
    RepairPlan laid = answer.plan;
    laid.lifts.clear();
    for (const std::vector<PlacedLift> placed = placeLifts(attempt, answer, shop); const PlacedLift& each : placed) {
        laid.lifts.push_back(*each.planned);
        laid.lifts.back().thickness = attempt.lifts[each.index].thickness;
    }
    laid.finish.thickness = attempt.finish ? Length(attempt.finish->coat * double(attempt.finish->coats)) : Length();
    return laid;
}

const ProductSheet& sheetOf(const PlacedLift& lift, const ModelAnswer& answer, const PlanningSet& shop)
{
    const QString& own = lift.planned->sheetId;
    return *shop.catalogue.byId(own.isEmpty() ? answer.plan.sheetId : own);
}

Mass takes(const PlacedLift& lift, const AttemptedLift& attempted, const ModelAnswer& answer, const PlanningSet& shop)
{
    const Assumptions& assumptions = shop.assumptions;
    const Cavity cavity = cavityOf(answer.assessment);
    const Length top = lift.top ? cavity.height() : Length(lift.floor + attempted.thickness);
    Volume volume = cavity.volumeUpTo(top) - cavity.volumeUpTo(lift.floor);
    if (lift.top)
        volume += cavity.opening() * assumptions.proud;
    const ProductSheet& sheet = sheetOf(lift, answer, shop);
    const Mass onPanel = volume / (1.0 - sheet.shrinkage.value()) * sheet.density;
    const auto batches = static_cast<double>(std::max<std::size_t>(1, attempted.batches.size()));
    return onPanel * (1.0 + assumptions.boardLossShare.value()) + assumptions.boardLossEach * batches;
}

Mix mixOf(const MixedBatch& batch, const ProductSheet& sheet)
{
    Mix mix;
    if (batch.puddle.value() <= 0.0)
        return mix;
    mix = mixForPuddle(batch.puddle, sheet);
    mix.bead = batch.bead;
    mix.hardener = batch.bead * sheet.beadMass;
    mix.hardenerShare = Fraction::ofOne(mix.hardener / mix.filler);
    return mix;
}

CureAnswer<LayerCure> cureOf(const PlacedLift& lift, Fraction hardener, const PlanningSet& shop)
{
    if (!isModelled(hardener, lift.laid) || !lift.planned->cureCase)
        return tl::unexpected(Reason{u"beyond_the_model"_s, {hardener, lift.laid}});
    CureCase cureCase = *lift.planned->cureCase;
    cureCase.thickness = lift.laid;
    cureCase.hardener = hardener;
    return shop.engine.solve(cureCase, CureUntil::Peak);
}

CureAnswer<Duration> boardGelOf(const Mix& mix, Fraction hardener, const ModelAnswer& answer, const ProductSheet& sheet,
                                const PlanningSet& shop)
{
    if (!isModelled(hardener, mix.puddleHeight))
        return tl::unexpected(Reason{u"beyond_the_model"_s, {hardener, mix.puddleHeight}});
    return shop.engine.boardGel(sheet, answer.assessment.reading->air, hardener, mix.puddleHeight);
}

Fraction faceConversionAt(const CureCase& cureCase, Duration at)
{
    double low = 0.0;
    double high = 1.0;
    CureCase asked = cureCase;
    asked.horizon = at;
    CureFineness fine;
    fine.until = CureUntil::Marks;
    // To a thousandth: the mark 'sand' is put at each conversion in turn, and it is there by then or it is not.
    while (at.value() > 0.0 && high - low > 1e-3) {
        const double middle = (low + high) / 2.0;
        asked.kinetics.sand = Fraction::ofOne(middle);
        asked.kinetics.gel = Fraction::ofOne(std::min(middle, cureCase.kinetics.gel.value()));
        const CureOutcome outcome = solveCure(asked, fine);
        (outcome && outcome->sand ? low : high) = middle;
    }
    return Fraction::ofOne(low);
}

} // namespace strandbench
