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

/// The stop names the gel time that leaves nothing to spread in: of this filler, on the board or on the panel.
RepairPlan gelsTooFast(const ProductSheet& sheet, Length layer, const Reading& reading, const PlanningSet& set)
{
    const BatchTimes least =
        set.times.times({sheet, reading.air, reading.panel, sheet.hardenerNominal, layer, millimetres(1)});
    RepairPlan plan;
    plan.stops.push_back(stopOf({u"gels_too_fast"_s, {std::min(least.boardGel, least.gel), set.assumptions.kneading}}));
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

/// Mixes every lift; false when one cannot be spread before it gels.
bool addBatches(RepairPlan& plan, const Job& job)
{
    const Assumptions& assumptions = job.set.assumptions;
    Volume finished = millilitres(0);
    for (std::size_t index = 0; index < plan.lifts.size(); ++index) {
        const Volume volume = planning::liftVolume(job, plan.lifts, index);
        const planning::MixingTask task{job.sheet, volume, planning::laidThickness(job, plan.lifts, index),
                                        static_cast<int>(index)};
        const planning::Mixing mixing = planning::planBatches(task, *job.assessment.reading, job.set);
        if (mixing.batches.empty())
            return false;
        plan.batches.insert(plan.batches.end(), mixing.batches.begin(), mixing.batches.end());
        plan.allowances.boardLoss += mixing.boardLoss;
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
    return true;
}

/// What deserves a word before mixing: backing, lifts, batches too small for a bead.
void addAdvice(RepairPlan& plan, const Job& job)
{
    if (job.backing)
        plan.reasons.push_back({u"backing_first"_s, {across(*job.assessment.damage), job.set.assumptions.backingLap}});
    if (job.assessment.damage->bevelRatio <= 0.0 && job.assessment.damage->kind == DamageKind::Hole)
        plan.reasons.push_back({u"edges_square"_s, {}});
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

RepairPlan planRepair(const Assessment& assessment, const PlanningSet& set)
{
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
    plan.engine = set.times.name();
    plan.lifts = planning::planLifts(job);
    if (!addBatches(plan, job))
        return gelsTooFast(job.sheet, plan.lifts.front().thickness, *assessment.reading, set);
    plan.prep = planning::planSteps(job, set.steps.prepare);
    plan.finish = planning::planFinish(job);
    if (plan.finish.batches.empty())
        return gelsTooFast(job.finish, plan.finish.thickness, *assessment.reading, set);
    plan.finishing = planning::planSteps(job, set.steps.finish);
    addAdvice(plan, job);
    planning::planTimeline(plan, job);
    return plan;
}

} // namespace strandbench
