// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::planning {
namespace {

/// Lays entries end to end.
class Line {
public:
    explicit Line(std::vector<TimelineEntry>& entries) : m_entries(entries) {}

    void add(const QString& code, Duration length, bool handsOn)
    {
        if (length.value() <= 0.0)
            return;
        m_entries.push_back({code, m_end, length, handsOn});
        m_end += length;
    }
    void addSteps(const QString& code, const std::vector<Step>& steps, int done = 0)
    {
        Duration handsOn = seconds(0);
        Duration waiting = seconds(0);
        for (std::size_t i = static_cast<std::size_t>(done); i < steps.size(); ++i) {
            handsOn += steps[i].handsOn;
            waiting += steps[i].waiting;
        }
        add(code, handsOn, true);
        add(code + u"_waiting"_s, waiting, false);
    }
    [[nodiscard]] Duration end() const { return m_end; }

private:
    std::vector<TimelineEntry>& m_entries;
    Duration m_end = seconds(0);
};

/// True for the last batch of its lift or coat: only then is there something to sand.
bool lastOfLayer(const std::vector<Batch>& batches, std::size_t index)
{
    return index + 1 == batches.size() || batches[index + 1].lift != batches[index].lift;
}

/// Mixing and spreading one batch; the hands are bound until its edges are clear at gel.
void addBatch(Line& line, const Batch& batch, const Assumptions& assumptions)
{
    line.add(u"mix"_s, assumptions.layPuddle + assumptions.kneading, true);
    line.add(u"spread"_s,
             std::max(batch.mix.filler / assumptions.spreading, Duration(batch.times.gel - assumptions.kneading)),
             true);
}

void addSanding(Line& line, const Batch& last, const Assumptions& assumptions)
{
    line.add(u"wait"_s, last.times.sand - last.times.gel, false);
    line.add(u"sand"_s, assumptions.sandLift, true);
}

void addFinishingSteps(Line& line, std::vector<Step> steps)
{
    // What only waits for the primer comes last and is named apart.
    Duration primer = seconds(0);
    if (!steps.empty() && steps.back().code == u"cure_before_primer"_s) {
        primer = steps.back().waiting;
        steps.pop_back();
    }
    line.addSteps(u"finish"_s, steps);
    line.add(u"before_primer"_s, primer, false);
}

} // namespace

void planTimeline(RepairPlan& plan, const Job& job, const PlanProgress& done)
{
    const Assumptions& assumptions = job.set.assumptions;
    Line line(plan.timeline);
    line.addSteps(u"prepare"_s, plan.prep, job.frozen.batches.empty() ? done.steps : int(plan.prep.size()));
    for (auto i = static_cast<std::size_t>(done.sandedBatches); i < plan.batches.size(); ++i) {
        const Batch& batch = plan.batches[i];
        addBatch(line, batch, assumptions);
        if (!lastOfLayer(plan.batches, i))
            continue;
        addSanding(line, batch, assumptions);
        const auto lift = static_cast<std::size_t>(batch.lift);
        if (lift + 1 < plan.lifts.size() && plan.lifts[lift + 1].face != plan.lifts[lift].face)
            line.add(u"turn"_s, assumptions.turnPanel, true);
    }
    for (auto i = static_cast<std::size_t>(done.sandedFinishing); i < plan.finish.batches.size(); ++i) {
        addBatch(line, plan.finish.batches[i], assumptions);
        if (lastOfLayer(plan.finish.batches, i))
            addSanding(line, plan.finish.batches[i], assumptions);
    }
    addFinishingSteps(line, plan.finishing);
    plan.readyForPrimer = line.end();
}

} // namespace strandbench::planning
