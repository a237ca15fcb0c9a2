// SPDX-License-Identifier: GPL-3.0-or-later
// A whole plan, from the answers to lifts, batches, steps and timeline, as the decision screen asks for it. Its referee
// is a part of that work done by a library that others use for it: each lift of that very plan, and its finishing coat,
// solved once by GSL as accurately as the engine does. Nobody who plans by that library can do with less, and a planner
// does more: it looks for the lifts, and has puddles, batches, steps and times to work out. The sheets' calibrations
// are made before, as they are at a bench after its first plan. Prints a table; judges nothing.
//
// bench_plan [--rows FILE]
#include "gsl_once.h"
#include "registered.h"
#include "rows.h"

#include "exchange/events.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "plan/planner.h"
#include "repair/repair.h"
#include "years/found.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cstdio>

using namespace Qt::StringLiterals;

namespace strandbench::planbench {
namespace {

constexpr double aim = 1;              ///< of solving the plan's own layers by GSL
constexpr std::array depths{2, 6, 18}; ///< mm of the gouge that grows
constexpr int panel = 20;              ///< mm thick, which it is in

const PlanningSet& planning()
{
    static const CureEngine engine;
    static const PlanningSet set{builtInTable(), demoCatalogue(), builtInSteps(), {}, engine};
    return set;
}

/// What the demo depot's technician answers, as the bench folds it.
Assessment assessmentOf(const std::map<Question, AnswerValue>& answers)
{
    Repair repair;
    const QUuid id = QUuid::createUuid();
    const auto tell = [&](const Payload& payload) {
        Event event;
        event.seq = repair.lastSeq + 1;
        event.repair = id;
        event.payload = stored(payload);
        if (const auto fault = apply(repair, event))
            qFatal("an answer does not fold: %s", qPrintable(fault->field));
    };
    tell(TakenIn{u"4421"_s, u"skirt panel"_s});
    for (auto question = nextQuestion(repair); question; question = nextQuestion(repair))
        tell(Answered{*question, answers.at(*question), {}});
    return repair.assessment;
}

RepairPlan planned(const Assessment& assessment)
{
    RepairPlan plan = planRepair(assessment, planning());
    if (!plan.fill)
        qFatal("a repair that is to be planned is stopped: %s", qPrintable(plan.stops.front().reason.code));
    return plan;
}

/// Repairs that are planned one after another, and their layers for GSL.
struct Task {
    std::vector<Assessment> repairs;
    std::vector<GslOnce> layers;
    void add(const Assessment& assessment)
    {
        repairs.push_back(assessment);
        layers.emplace_back(planned(assessment));
    }
    void plan() const
    {
        for (const Assessment& each : repairs)
            static_cast<void>(planned(each));
    }
    void solve() const
    {
        for (const GslOnce& each : layers)
            each.solveAll();
    }
};

Assessment gougeOf(int millimetresDeep)
{
    const auto& all = years::fillable();
    const auto gouge = std::ranges::find(all, u"gouge_frp"_s, &years::Found::name);
    Assessment assessment = assessmentOf(gouge->answers);
    assessment.damage->depth = millimetres(millimetresDeep);
    assessment.damage->panelThickness = millimetres(panel);
    return assessment;
}

void run(const bench::Rows& rows)
{
    std::map<std::string, Task> tasks;
    for (const years::Found& each : years::fillable())
        tasks["depot"].add(assessmentOf(each.answers));
    for (const int depth : depths)
        tasks["gouge " + std::to_string(depth)].add(gougeOf(depth));
    bench::Works works;
    for (const auto& [name, task] : tasks) {
        works["plan, " + name] = [&task = task] { task.plan(); };
        works["GSL, " + name] = [&task = task] { task.solve(); };
    }
    const auto medians = bench::medianMilliseconds(works);
    const auto tell = [&](const std::string& name, const QString& what, std::optional<qint64> size, const QString& of) {
        const double ours = medians.at("plan, " + name);
        const double theirs = medians.at("GSL, " + name);
        std::printf("%-10s plan %9.2f ms   its layers once by GSL %9.2f ms   ratio %.2f\n", name.c_str(), ours, theirs,
                    ours / theirs);
        rows.add({u"plan"_s, what, ours, u"ms"_s, u"its layers once by GSL"_s, theirs, aim, size, of});
    };
    tell("depot", u"the depot's %1 kinds of repair"_s.arg(years::fillable().size()), std::nullopt, {});
    for (const int depth : depths)
        tell("gouge " + std::to_string(depth), u"a gouge in a laminate"_s, depth, u"mm"_s);
}

} // namespace
} // namespace strandbench::planbench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    if (!given.isEmpty()) {
        std::fputs("Usage: bench_plan [--rows FILE]\n", stderr);
        return 2;
    }
    strandbench::planbench::run(rows);
    return 0;
}
