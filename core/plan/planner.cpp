// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planner.h"

#include "plan/planning.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using planning::Job;

/// A lot nearer to its sheet than this is as its sheet says: ours, the printed per cent.
constexpr double worthAWord = 0.01;

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

/// Adds what a lift that is laid already took.
void addFrozen(RepairPlan& plan, const Job& job)
{
    plan.lifts = job.frozen.lifts;
    plan.batches = job.frozen.batches;
    for (const Batch& each : plan.batches) {
        const ProductSheet& sheet = *job.frozen.sheets[static_cast<std::size_t>(each.lift)];
        const Mass laid = planning::onThePanel(each, job.set.assumptions);
        plan.allowances.boardLoss += each.mix.filler - laid;
        plan.allowances.shrinkage += laid / sheet.density * sheet.shrinkage.value();
    }
}

/// Lays and mixes every lift that is still to be laid. The reason when one overheats or gels before it is spread.
std::optional<Reason> addLifts(RepairPlan& plan, const Job& job)
{
    const CureAnswer<std::vector<planning::LaidLift>> laid = planning::planLifts(job);
    if (!laid)
        return laid.error();
    for (const planning::LaidLift& each : *laid) {
        const ProductSheet& sheet = planning::sheetOf(job, each.lift);
        const Volume volume = planning::liftVolume(job, each);
        const CureAnswer<planning::Mixing> mixing =
            planning::planBatches({sheet, volume, each.cure, static_cast<int>(plan.lifts.size())}, job);
        if (!mixing)
            return mixing.error();
        plan.lifts.push_back(each.lift);
        plan.batches.insert(plan.batches.end(), mixing->batches.begin(), mixing->batches.end());
        plan.allowances.boardLoss += mixing->boardLoss;
        plan.allowances.shrinkage += planning::shrinkageOf(volume, sheet);
    }
    return std::nullopt;
}

void addTotals(RepairPlan& plan, const Job& job)
{
    const double faces = job.cavity.faces();
    plan.cavity = job.cavity.volume() * faces;
    plan.allowances.proud = job.cavity.opening() * job.set.assumptions.proud * faces;
    for (const Batch& each : plan.batches) {
        plan.fillerTotal += each.mix.filler;
        plan.hardenerTotal += each.mix.hardener;
    }
}

/// That the lot in the hand is known to cure faster or slower than its sheet, and the plan goes by that.
std::optional<Reason> lotTold(const Job& job)
{
    const CureRates& rates = job.set.engine.rates();
    const auto rate = rates.find(versionOf(job.sheet));
    if (rate == rates.end())
        return std::nullopt;
    const double faster = rate->second.multiplier() - 1;
    if (std::abs(faster) < worthAWord)
        return std::nullopt;
    return Reason{faster > 0 ? u"lot_faster"_s : u"lot_slower"_s, {Fraction::ofOne(std::abs(faster))}};
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
    if (const std::optional<Reason> lot = lotTold(job))
        plan.reasons.push_back(*lot);
    if (job.sheet.demo)
        plan.reasons.push_back({u"demo_sheet"_s, {}});
}

/// A filler that only bridges goes in first, over a bonded backing that is reached from the front alone.
const ProductSheet* bridgeOf(const Decision& decision, const Assessment& assessment, bool backing)
{
    return backing && !*assessment.rearAccess ? decision.bridge : nullptr;
}

/// It is used, so it is no longer among those that do not come into question.
void tellBridge(RepairPlan& plan, const Job& job)
{
    if (!job.bridge)
        return;
    std::erase_if(plan.rejected, [&](const RejectedFiller& each) { return each.filler == job.bridge->fillerClass; });
    plan.reasons.push_back({u"bridged_first"_s, {codeOf(job.bridge->fillerClass), codeOf(job.sheet.fillerClass)}});
}

/// What a plan says of how it came about.
RepairPlan headOf(const Decision& decision, const Job& job)
{
    RepairPlan plan;
    plan.fill = true;
    plan.reasons = decision.reasons;
    plan.filler = decision.filler;
    plan.rejected = decision.rejected;
    plan.sheetId = job.sheet.id;
    plan.sheetHash = job.sheet.hash;
    plan.finishSheetId = job.finish.id;
    plan.finishSheetHash = job.finish.hash;
    plan.tableHash = job.set.table.hash();
    plan.engine = CureEngine::name();
    plan.peakLimit = planning::peakLimit(job);
    return plan;
}

/// The sheet that a lift was laid with; the present one where that one is no longer kept, being of the same filler.
const ProductSheet* sheetThen(const RepairPlan& before, const Lift& lift, const Catalogue& catalogue)
{
    const bool own = !lift.sheetId.isEmpty();
    if (const ProductSheet* then =
            catalogue.version(own ? lift.sheetId : before.sheetId, own ? lift.sheetHash : before.sheetHash))
        return then;
    return catalogue.byClass(lift.filler);
}

/// Empty when no sheet of a frozen lift's filler is left to reckon with.
std::optional<planning::Frozen> frozenOf(const RepairPlan& before, int batches, const Catalogue& catalogue)
{
    planning::Frozen frozen;
    frozen.batches.assign(before.batches.begin(), before.batches.begin() + batches);
    const int lifts = frozen.batches.empty() ? 0 : frozen.batches.back().lift + 1;
    frozen.lifts.assign(before.lifts.begin(), before.lifts.begin() + lifts);
    for (const Lift& each : frozen.lifts) {
        const ProductSheet* sheet = sheetThen(before, each, catalogue);
        if (!sheet)
            return std::nullopt;
        frozen.sheets.push_back(sheet);
    }
    return frozen;
}

/// Before is null for a first plan.
RepairPlan planFrom(const Decision& decision, const Job& job, const RepairPlan* before, const PlanProgress& done)
{
    RepairPlan plan = headOf(decision, job);
    const bool begun = before && done.frozenBatches > 0;
    const bool skimmed = before && done.mixedFinishing > 0;
    addFrozen(plan, job);
    if (!skimmed) // fibre filler does not go over finishing filler
        if (const std::optional<Reason> reason = addLifts(plan, job))
            return stoppedBy(*reason);
    addTotals(plan, job);
    plan.prep = begun ? before->prep : planning::planSteps(job, job.set.steps.prepare);
    if (skimmed) {
        plan.finish = before->finish;
    } else {
        CureAnswer<Finish> finish = planning::planFinish(job, plan.lifts);
        if (!finish)
            return stoppedBy(finish.error());
        plan.finish = *std::move(finish);
    }
    plan.finishing = planning::planSteps(job, job.set.steps.finish);
    tellBridge(plan, job);
    addAdvice(plan, job);
    planning::planTimeline(plan, job, done);
    return plan;
}

RepairPlan planWith(const Assessment& assessment, const PlanningSet& given, const RepairPlan* before, PlanProgress done)
{
    // One set of assumptions: the engine goes by the plan's.
    const CureEngine engine = given.engine.with(given.assumptions);
    // What is planned anew goes on with the sheets of the plan before it, in the versions that it was made with.
    std::optional<Catalogue> goingOn;
    if (before)
        goingOn = given.catalogue.goingOnWith(versionsIn(*before));
    const PlanningSet set{given.table, goingOn ? *goingOn : given.catalogue, given.steps, given.assumptions, engine};
    const Decision decision = decide(assessment, set.table, set.catalogue, set.assumptions.decision);
    if (!decision.fill)
        return stopped(decision);
    const bool backing = planning::needsBacking(assessment, set.assumptions);
    Job job{assessment,
            set,
            *decision.sheet,
            finishSheet(set.catalogue),
            Cavity(*assessment.damage, assessment.rearAccess.value_or(false)),
            backing,
            bridgeOf(decision, assessment, backing)};
    if (before && done.frozenBatches > 0) {
        const auto frozen = frozenOf(*before, done.frozenBatches, set.catalogue);
        if (!frozen)
            return stoppedBy({u"no_filler_fits"_s, {codeOf(*assessment.substrate), codeOf(assessment.damage->kind)}});
        job.frozen = *frozen;
    } else if (before) {
        done.steps = stepsStillDone(before->prep, planning::planSteps(job, set.steps.prepare), done.steps);
    }
    return planFrom(decision, job, before, done);
}

} // namespace

std::vector<SheetVersion> versionsIn(const RepairPlan& plan)
{
    std::vector<SheetVersion> all{{plan.sheetId, plan.sheetHash}, {plan.finishSheetId, plan.finishSheetHash}};
    for (const Lift& each : plan.lifts)
        if (!each.sheetId.isEmpty())
            all.push_back({each.sheetId, each.sheetHash});
    return all;
}

RepairPlan planRepair(const Assessment& assessment, const PlanningSet& set)
{
    return planWith(assessment, set, nullptr, {});
}

RepairPlan replanRepair(const Assessment& assessment, const PlanningSet& set, const RepairPlan& before,
                        const PlanProgress& done)
{
    return planWith(assessment, set, &before, done);
}

int stepsStillDone(const std::vector<Step>& before, const std::vector<Step>& now, int done)
{
    const auto same = [](const Step& a, const Step& b) { return a.code == b.code && a.arguments == b.arguments; };
    const auto end = before.begin() + std::min(done, static_cast<int>(before.size()));
    return static_cast<int>(std::mismatch(before.begin(), end, now.begin(), now.end(), same).first - before.begin());
}

} // namespace strandbench
