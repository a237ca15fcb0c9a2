// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plan_difference.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// What one plan still asks for.
struct Rest {
    int lifts = 0;
    int batches = 0;
    Mass filler;
    Mass hardener;
};

Rest restOf(const RepairPlan& plan, const PlanProgress& done)
{
    Rest rest;
    const auto frozen = std::min(static_cast<std::size_t>(done.frozenBatches), plan.batches.size());
    const int frozenLifts = frozen == 0 ? 0 : plan.batches[frozen - 1].lift + 1;
    rest.lifts = static_cast<int>(plan.lifts.size()) - frozenLifts;
    rest.batches = static_cast<int>(plan.batches.size() - frozen);
    for (std::size_t i = frozen; i < plan.batches.size(); ++i) {
        rest.filler += plan.batches[i].mix.filler;
        rest.hardener += plan.batches[i].mix.hardener;
    }
    return rest;
}

int facesOf(const RepairPlan& plan)
{
    return std::ranges::any_of(plan.lifts, [](const Lift& each) { return each.face == Face::Back; }) ? 2 : 1;
}

class Comparison {
public:
    explicit Comparison(std::vector<PlanChange>& changes) : m_changes(changes) {}
    void add(const QString& code, const Argument& before, const Argument& now)
    {
        if (before != now)
            m_changes.push_back({code, before, now});
    }

private:
    std::vector<PlanChange>& m_changes;
};

std::vector<QString> codesFrom(const std::vector<Step>& steps, int first)
{
    std::vector<QString> codes;
    for (auto i = static_cast<std::size_t>(first); i < steps.size(); ++i)
        codes.push_back(steps[i].code);
    return codes;
}

bool has(const std::vector<QString>& codes, const QString& code)
{
    return std::ranges::find(codes, code) != codes.end();
}

} // namespace

PlanDifference planDifference(const RepairPlan& before, const RepairPlan& now, const PlanProgress& done)
{
    PlanDifference difference;
    Comparison figures(difference.figures);
    const Rest was = restOf(before, done);
    const Rest is = restOf(now, done);
    figures.add(u"filler"_s, codeOf(*before.filler), codeOf(*now.filler));
    figures.add(u"faces"_s, Count{facesOf(before)}, Count{facesOf(now)});
    figures.add(u"lifts_to_lay"_s, Count{was.lifts}, Count{is.lifts});
    figures.add(u"batches_to_mix"_s, Count{was.batches}, Count{is.batches});
    figures.add(u"filler_to_mix"_s, was.filler, is.filler);
    figures.add(u"hardener_to_mix"_s, was.hardener, is.hardener);
    figures.add(u"finish_thickness"_s, before.finish.thickness, now.finish.thickness);

    const int kept = stepsStillDone(before.prep, now.prep, done.steps);
    const std::vector<QString> open = codesFrom(before.prep, done.steps);
    for (const QString& code : codesFrom(now.prep, kept))
        if (!has(open, code))
            difference.opened.push_back(code);
    const std::vector<QString> ahead = codesFrom(now.prep, 0);
    for (const QString& code : open)
        if (!has(ahead, code))
            difference.dropped.push_back(code);
    figures.add(u"steps_open"_s, Count{static_cast<int>(before.prep.size()) - done.steps},
                Count{static_cast<int>(now.prep.size()) - kept});
    difference.kept = done.frozenBatches;
    return difference;
}

} // namespace strandbench
