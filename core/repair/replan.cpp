// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/replan.h"

#include "plan/planner.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

int mixed(const Repair& repair, bool finishing)
{
    return static_cast<int>(
        std::ranges::count_if(repair.runs, [&](const BatchRun& run) { return run.batch.finishing == finishing; }));
}

/// The first place of the first `count` where the lists differ; empty when they are alike so far.
template <class T>
std::optional<std::size_t> firstLost(const std::vector<T>& before, const std::vector<T>& now, std::size_t count)
{
    for (std::size_t i = 0; i < count; ++i)
        if (i >= now.size() || before[i] != now[i])
            return i;
    return std::nullopt;
}

} // namespace

bool isWet(const BatchRun& run)
{
    return !run.edgesClear && !run.sands; // what sands already has no wet edge left to clear
}

bool mayCorrect(const Repair& repair) { return !repair.handedOverAt && !repair.parked && mixed(repair, true) == 0; }

int frozenBatches(const Repair& repair)
{
    const int begun = mixed(repair, false);
    if (begun == 0)
        return 0;
    const std::vector<Batch>& batches = repair.plan->batches;
    const int lift = batches[static_cast<std::size_t>(begun - 1)].lift;
    return static_cast<int>(std::ranges::count_if(batches, [&](const Batch& each) { return each.lift <= lift; }));
}

PlanProgress planProgressOf(const Repair& repair)
{
    PlanProgress done;
    done.steps = repair.prepDone;
    if (!repair.plan)
        return done;
    done.frozenBatches = frozenBatches(repair);
    done.mixedFinishing = mixed(repair, true);
    for (const BatchRun& run : repair.runs)
        if (run.sanded)
            ++(run.batch.finishing ? done.sandedFinishing : done.sandedBatches);
    return done;
}

namespace replan {

QString lostBy(const Repair& repair, const RepairPlan& plan)
{
    if (!repair.plan || repair.runs.empty())
        return {};
    const RepairPlan& before = *repair.plan;
    const auto frozen = static_cast<std::size_t>(frozenBatches(repair));
    if (const auto lost = firstLost(before.batches, plan.batches, frozen))
        return u"batch %1"_s.arg(*lost);
    const std::size_t lifts = frozen == 0 ? 0 : static_cast<std::size_t>(before.batches[frozen - 1].lift) + 1;
    if (const auto lost = firstLost(before.lifts, plan.lifts, lifts))
        return u"lift %1"_s.arg(*lost);
    if (before.prep != plan.prep)
        return u"prepare"_s;
    const auto coats = static_cast<std::size_t>(mixed(repair, true));
    if (const auto lost = firstLost(before.finish.batches, plan.finish.batches, coats))
        return u"finishing batch %1"_s.arg(*lost);
    return {};
}

void countSteps(Repair& repair, const RepairPlan& plan)
{
    if (!repair.plan)
        return;
    repair.prepDone = stepsStillDone(repair.plan->prep, plan.prep, repair.prepDone);
    const bool allMixed = repair.runs.size() == plan.batches.size() + plan.finish.batches.size();
    repair.finishingDone = allMixed ? stepsStillDone(repair.plan->finishing, plan.finishing, repair.finishingDone) : 0;
    repair.handOverDone = 0;
}

} // namespace replan
} // namespace strandbench
