// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/mixing.h"

#include "substrate/choose_filler.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Lift& liftOf(const RepairPlan& plan, BatchRef ref)
{
    return plan.lifts.at(static_cast<std::size_t>(batchOf(plan, ref).lift));
}

const std::optional<CureCase>& layerOf(const RepairPlan& plan, BatchRef ref)
{
    return ref.finishing ? plan.finish.cureCase : liftOf(plan, ref).cureCase;
}

/// The sheet that a batch was planned with; null when it is not loaded.
const ProductSheet* plannedSheet(const RepairPlan& plan, BatchRef ref, const PlanningSet& planning)
{
    const SheetVersion planned = sheetOf(plan, ref);
    return planning.catalogue.version(planned.id, planned.hash);
}

/// What the table and the sheet's own cells have against a product on this panel.
std::optional<Reason> refusalOf(const ProductSheet& sheet, const Assessment& assessment, const PlanningSet& planning)
{
    Decision decision;
    chooseFiller(decision, assessment, planning.table, Catalogue({sheet}), planning.assumptions.decision);
    for (const RejectedFiller& each : decision.rejected)
        if (each.filler == sheet.fillerClass)
            return each.reason;
    return std::nullopt;
}

/// True when the plan's bead is of another nozzle than the sheet has now; storing a plan rounds by far less.
bool ofAnotherNozzle(const Mix& mix, const ProductSheet& sheet)
{
    constexpr double rounding = 1e-3;
    return mix.bead.value() > 0 && std::abs(mix.hardener / mix.bead / sheet.beadMass - 1.0) > rounding;
}

/// What speaks against another product. What would speak against the planned one alike was weighed by the planner: a
/// filler that only bridges is kept out by the table as the one on top.
std::optional<Reason> productHold(const Repair& repair, const BatchInHand& batch, const PlanningSet& planning)
{
    const RepairPlan& plan = *repair.plan;
    if (isFibreReinforced(batch.sheet->fillerClass)) {
        const ProductSheet* planned = plannedSheet(plan, batch.ref, planning);
        const auto refusal = refusalOf(*batch.sheet, repair.assessment, planning);
        if (refusal && (!planned || refusal != refusalOf(*planned, repair.assessment, planning)))
            return refusal;
    }
    const Length laid = batch.ref.finishing ? plan.finish.thickness * (1.0 / std::max(1, plan.finish.coats))
                                            : liftOf(plan, batch.ref).thickness;
    if (laid > batch.sheet->greatestLift * (1.0 + 1e-9))
        return Reason{u"lift_over_product"_s, {laid, batch.sheet->greatestLift}};
    return std::nullopt;
}

} // namespace

const Batch& batchOf(const RepairPlan& plan, BatchRef ref)
{
    const std::vector<Batch>& batches = ref.finishing ? plan.finish.batches : plan.batches;
    return batches.at(static_cast<std::size_t>(ref.index));
}

const QString& sheetIdOf(const RepairPlan& plan, BatchRef ref)
{
    if (ref.finishing)
        return plan.finishSheetId;
    const Lift& lift = liftOf(plan, ref);
    return lift.sheetId.isEmpty() ? plan.sheetId : lift.sheetId;
}

SheetVersion sheetOf(const RepairPlan& plan, BatchRef ref)
{
    if (ref.finishing)
        return {plan.finishSheetId, plan.finishSheetHash};
    const Lift& lift = liftOf(plan, ref);
    return lift.sheetId.isEmpty() ? SheetVersion{plan.sheetId, plan.sheetHash}
                                  : SheetVersion{lift.sheetId, lift.sheetHash};
}

FillerClass fillerOf(const RepairPlan& plan, BatchRef ref)
{
    return ref.finishing ? plan.finish.filler : liftOf(plan, ref).filler;
}

BatchInHand batchInHand(const RepairPlan& plan, BatchRef ref, const QString& product, const PlanningSet& planning)
{
    const QString& plannedId = sheetIdOf(plan, ref);
    const ProductSheet* planned = plannedSheet(plan, ref, planning);
    const auto& inUse = planning.catalogue.sheets(); // one that was laid aside is in nobody's hand
    const auto found = std::ranges::find(inUse, product, &ProductSheet::id);
    const ProductSheet* other = found == inUse.end() ? nullptr : &*found;
    BatchInHand batch{ref, batchOf(plan, ref), planned, true};
    if (!planned || !other || other->id == plannedId || other->fillerClass != planned->fillerClass) {
        if (planned && ofAnotherNozzle(batch.batch.mix, *planned))
            batch.batch.mix = laidAgain(batch.batch.mix, *planned);
        return batch;
    }
    batch.sheet = other;
    batch.planned = false;
    batch.batch.mix = mixForFiller(batch.batch.mix.filler / planned->density * other->density, *other);
    return batch;
}

std::optional<BatchForecast> forecastOf(const Repair& repair, const BatchInHand& batch, Fraction hardener,
                                        const PlanningSet& planning, const LotBelief& lot)
{
    const std::optional<CureCase>& layer = layerOf(*repair.plan, batch.ref);
    if (!layer || !batch.sheet || !repair.lastReading)
        return std::nullopt;
    const auto forecast =
        forecastBatch({batch.batch, *layer, *batch.sheet}, *repair.lastReading, hardener, planning.engine, lot);
    return forecast ? std::optional(*forecast) : std::nullopt;
}

std::optional<Temperature> peakLimitOf(const RepairPlan& plan, const BatchInHand& batch)
{
    if (!plan.peakLimit || !batch.sheet)
        return plan.peakLimit;
    return std::min(*plan.peakLimit, batch.sheet->peakLimit);
}

std::optional<Reason> holdOf(const Repair& repair, const BatchInHand& batch,
                             const std::optional<BatchForecast>& forecast, const PlanningSet& planning)
{
    if (!batch.planned) {
        if (auto refusal = productHold(repair, batch, planning))
            return refusal;
        if (!forecast)
            return Reason{u"product_cure_unknown"_s, {}};
    }
    const auto limit = peakLimitOf(*repair.plan, batch);
    if (forecast && limit && forecast->peak >= *limit)
        return Reason{u"too_hot_for_lift"_s, {forecast->peak, *limit}};
    return std::nullopt;
}

bool replanHelps(const Repair& repair, BatchRef ref)
{
    return !ref.finishing && repair.lastReading && repair.lastReading != repair.assessment.reading &&
           mayCorrect(repair) && ref.index >= frozenBatches(repair);
}

HardenerIn hardenerIn(const BatchInHand& batch, const SheetVersion& planned, Mass hardener,
                      const std::optional<BatchForecast>& forecast)
{
    const SheetVersion sheet = batch.sheet ? versionOf(*batch.sheet) : planned;
    HardenerIn act{batch.ref, batch.batch.mix.filler, hardener, sheet.id, {}, batch.batch.times, std::nullopt};
    act.sheetHash = sheet.hash;
    if (forecast) {
        act.times = forecast->times;
        act.cureCase = forecast->cureCase;
        act.howSure = forecast->howSure;
    }
    return act;
}

} // namespace strandbench
