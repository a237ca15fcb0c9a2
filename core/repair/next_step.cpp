// SPDX-License-Identifier: GPL-3.0-or-later
// The next step of a repair, from the plan and what has been done of it.
#include "repair/repair.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The next step within batches[from..to), which are laid as one layer; empty when it is sanded.
std::optional<NextStep> stepOfLayer(const Repair& repair, bool finishing, int from, int to)
{
    for (int i = from; i < to; ++i) {
        const BatchRef ref{finishing, i};
        const BatchRun* run = repair.run(ref);
        if (!run)
            return NextStep{Station::Mix, {}, 0, ref};
        if (isWet(*run))
            return NextStep{Station::Spread, {}, 0, ref};
    }
    const BatchRef last{finishing, to - 1};
    const BatchRun* run = repair.run(last);
    if (run->sanded)
        return std::nullopt;
    return NextStep{run->sands ? Station::Sand : Station::Wait, {}, 0, last};
}

int endOfLayer(const std::vector<Batch>& batches, int from)
{
    int end = from;
    while (end < int(batches.size()) && batches[std::size_t(end)].lift == batches[std::size_t(from)].lift)
        ++end;
    return end;
}

Face faceOf(const RepairPlan& plan, int batch)
{
    return plan.lifts[std::size_t(plan.batches[std::size_t(batch)].lift)].face;
}

std::optional<NextStep> stepOfFilling(const Repair& repair)
{
    const std::vector<Batch>& batches = repair.plan->batches;
    for (int from = 0; from < int(batches.size()); from = endOfLayer(batches, from)) {
        if (from > 0 && !repair.turnedAt && faceOf(*repair.plan, from) != faceOf(*repair.plan, from - 1))
            return NextStep{Station::Turn, {}, 0, {}};
        if (auto step = stepOfLayer(repair, false, from, endOfLayer(batches, from)))
            return step;
    }
    return std::nullopt;
}

std::optional<NextStep> stepOfCoats(const Repair& repair)
{
    const std::vector<Batch>& batches = repair.plan->finish.batches;
    for (int from = 0; from < int(batches.size()); from = endOfLayer(batches, from))
        if (auto step = stepOfLayer(repair, true, from, endOfLayer(batches, from)))
            return step;
    return std::nullopt;
}

NextStep stepBeforePlan(const Repair& repair)
{
    if (const auto question = nextQuestion(repair))
        return {Station::Assess, question, 0, {}};
    return {Station::Decide, {}, 0, {}};
}

} // namespace

QString described(const NextStep& step)
{
    QString text = codeOf(step.station);
    if (step.question)
        text += u' ' + codeOf(*step.question);
    else if (step.batch)
        text += u' ' + QString::number(step.batch->index) + (step.batch->finishing ? u" finishing"_s : QString());
    else
        text += u' ' + QString::number(step.index);
    return text;
}

const std::vector<QString>& handOverTests()
{
    static const std::vector<QString> tests{u"guide_coat_gone"_s, u"straightedge"_s, u"no_pinholes"_s,
                                            u"nail_and_paper"_s,  u"tap_sound"_s,    u"no_edge"_s};
    return tests;
}

NextStep nextStep(const Repair& repair)
{
    if (repair.handedOverAt)
        return {repair.waitsForRework() ? Station::Returned : Station::Done, {}, 0, {}};
    if (repair.parked)
        return {Station::Parked, {}, 0, {}};
    if (!repair.plan)
        return stepBeforePlan(repair);
    if (repair.replanDue()) {
        const auto wet = std::ranges::find_if(repair.runs, isWet);
        return wet == repair.runs.end() ? stepBeforePlan(repair) : NextStep{Station::Spread, {}, 0, wet->batch};
    }
    if (repair.prepDone < int(repair.plan->prep.size()))
        return {Station::Prepare, {}, repair.prepDone, {}};
    if (auto step = stepOfFilling(repair))
        return *step;
    if (auto step = stepOfCoats(repair))
        return *step;
    if (repair.finishingDone < int(repair.plan->finishing.size()))
        return {Station::Finish, {}, repair.finishingDone, {}};
    return {Station::HandOver, {}, repair.handOverDone, {}};
}

} // namespace strandbench
