// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planner.h"

#include "plan/planning.h"

#include <algorithm>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using planning::Job;

RepairPlan stopped(const Decision& decision)
{
    RepairPlan plan;
    plan.stops = decision.stops;
    plan.rejected = decision.rejected;
    return plan;
}

/// A plan that the cure stops: it overheats, gels before it can be spread, or has no answer.
RepairPlan stoppedBy(Reason reason)
{
    RepairPlan plan;
    plan.stops.push_back(stopOf(std::move(reason)));
    return plan;
}

const ProductSheet& finishSheet(const Catalogue& catalogue)
{
    if (const ProductSheet* smooth = catalogue.byClass(FillerClass::FinishSmooth))
        return *smooth;
    if (const ProductSheet* fine = catalogue.byClass(FillerClass::FinishFine))
        return *fine;
    throw std::logic_error("a catalogue without a finishing sheet");
}

/// Mixes every lift. The reason when one cannot be spread before it gels.
std::optional<Reason> addBatches(RepairPlan& plan, const std::vector<LayerCure>& cures, const Job& job)
{
    const Assumptions& assumptions = job.set.assumptions;
    Volume finished = millilitres(0);
    for (std::size_t index = 0; index < plan.lifts.size(); ++index) {
        const Volume volume = planning::liftVolume(job, plan.lifts, index);
        const CureAnswer<planning::Mixing> mixing =
            planning::planBatches({job.sheet, volume, cures[index], static_cast<int>(index)}, job);
        if (!mixing)
            return mixing.error();
        plan.batches.insert(plan.batches.end(), mixing->batches.begin(), mixing->batches.end());
        plan.allowances.boardLoss += mixing->boardLoss;
        finished += volume;
    }
    const double faces = job.cavity.faces();
    plan.cavity = job.cavity.volume() * faces;
    plan.allowances.proud = job.cavity.opening() * assumptions.proud * faces;
    plan.allowances.shrinkage = planning::shrinkageOf(finished, job.sheet);
    for (const Batch& each : plan.batches) {
        plan.fillerTotal += each.mix.filler;
        plan.hardenerTotal += each.mix.hardener;
    }
    return std::nullopt;
}

/// What deserves a word before mixing: backing, lifts, batches too small for a bead.
void addAdvice(RepairPlan& plan, const Job& job)
{
    if (job.backing)
        plan.reasons.push_back({u"backing_first"_s, {across(*job.assessment.damage), job.set.assumptions.backingLap}});
    if (job.assessment.damage->bevelRatio <= 0.0 && job.assessment.damage->kind == DamageKind::Hole)
        plan.reasons.push_back({u"edges_square"_s, {}});
    if (const std::optional<Reason> hot = planning::oneGoTooHot(job, plan.lifts)) {
        plan.reasons.push_back(*hot);
        if (const std::optional<Reason> today = planning::greatestToday(job))
            plan.reasons.push_back(*today);
    }
    const Mass smallest = smallestBeadMix(job.sheet);
    for (const Batch& each : plan.batches) {
        if (each.mix.filler < smallest) {
            plan.reasons.push_back({u"weigh_small"_s, {each.mix.filler, smallest}});
            break;
        }
    }
    if (job.sheet.demo)
        plan.reasons.push_back({u"demo_sheet"_s, {}});
}

} // namespace

RepairPlan planRepair(const Assessment& assessment, const PlanningSet& given)
{
    // One set of assumptions: the engine goes by the plan's.
    const CureEngine engine = given.engine.with(given.assumptions);
    const PlanningSet set{given.table, given.catalogue, given.steps, given.assumptions, engine};
    const Decision decision = decide(assessment, set.table, set.catalogue, set.assumptions.decision);
    if (!decision.fill)
        return stopped(decision);

    const Job job{assessment,
                  set,
                  *decision.sheet,
                  finishSheet(set.catalogue),
                  Cavity(*assessment.damage, assessment.rearAccess.value_or(false)),
                  planning::needsBacking(assessment, set.assumptions)};
    RepairPlan plan;
    plan.fill = true;
    plan.reasons = decision.reasons;
    plan.filler = decision.filler;
    plan.rejected = decision.rejected;
    plan.sheetId = job.sheet.id;
    plan.sheetHash = job.sheet.hash;
    plan.finishSheetId = job.finish.id;
    plan.finishSheetHash = job.finish.hash;
    plan.tableHash = set.table.hash();
    plan.engine = CureEngine::name();
    CureAnswer<planning::LaidLifts> laid = planning::planLifts(job);
    if (!laid)
        return stoppedBy(laid.error());
    plan.lifts = std::move(laid->lifts);
    plan.peakLimit = planning::peakLimit(job);
    if (const std::optional<Reason> reason = addBatches(plan, laid->cures, job))
        return stoppedBy(*reason);
    plan.prep = planning::planSteps(job, set.steps.prepare);
    CureAnswer<Finish> finish = planning::planFinish(job, plan.lifts);
    if (!finish)
        return stoppedBy(finish.error());
    plan.finish = *std::move(finish);
    plan.finishing = planning::planSteps(job, set.steps.finish);
    addAdvice(plan, job);
    planning::planTimeline(plan, job);
    return plan;
}

} // namespace strandbench
