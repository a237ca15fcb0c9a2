// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planning.h"

#include "cure/rate_factor.h"

#include <algorithm>
#include <functional>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace planning {
namespace {

using Condition = std::function<bool(const Job&)>;
using Figure = std::function<Argument(const Job&)>;

bool isKind(const Job& job, DamageKind kind) { return job.assessment.damage->kind == kind; }

bool isComposite(const Job& job) { return isFibreComposite(*job.assessment.substrate); }

/// Where cutting or breakage has opened the fibres.
bool openFibre(const Job& job)
{
    return isComposite(job) &&
           (isKind(job, DamageKind::Hole) || isKind(job, DamageKind::Crack) || isKind(job, DamageKind::Gouge));
}

bool bevelled(const Job& job) { return isKind(job, DamageKind::Hole) || isKind(job, DamageKind::Crack); }

const std::vector<std::pair<QString, Condition>>& conditions()
{
    static const std::vector<std::pair<QString, Condition>> all{
        {u"composite"_s, isComposite},
        {u"metal"_s, [](const Job& job) { return isMetal(*job.assessment.substrate); }},
        {u"aluminium"_s, [](const Job& job) { return job.assessment.substrate == Substrate::Aluminium; }},
        {u"open_fibre"_s, openFibre},
        {u"bevelled"_s, bevelled},
        {u"both_faces"_s, [](const Job& job) { return job.cavity.faces() == 2; }},
        {u"hole"_s, [](const Job& job) { return isKind(job, DamageKind::Hole); }},
        {u"gouge"_s, [](const Job& job) { return isKind(job, DamageKind::Gouge); }},
        {u"weld_seam"_s, [](const Job& job) { return isKind(job, DamageKind::WeldSeam); }},
        {u"bond_seam"_s, [](const Job& job) { return isKind(job, DamageKind::BondSeam); }},
        {u"rear_access"_s, [](const Job& job) { return job.assessment.rearAccess.value_or(false); }},
        {u"backing"_s, [](const Job& job) { return job.backing; }},
        {u"on_epoxy"_s, [](const Job& job) { return job.assessment.surface == SurfaceState::AbradedEpoxy; }},
    };
    return all;
}

/// Paint off 50 mm beyond the repair; 75 mm on SMC and metal (common practice, no source).
Length stripBeyond(const Job& job)
{
    return job.assessment.substrate == Substrate::Laminate ? millimetres(50) : millimetres(75);
}

const std::vector<std::pair<QString, Figure>>& figures()
{
    static const std::vector<std::pair<QString, Figure>> all{
        {u"strip_beyond"_s, [](const Job& job) { return stripBeyond(job); }},
        // 3/32 to 1/8 in: FAA AC 43.13-1B, paragraph 4-59.
        {u"drill_small"_s, [](const Job&) { return inches(3.0 / 32.0); }},
        {u"drill_large"_s, [](const Job&) { return inches(1.0 / 8.0); }},
        {u"bevel_run"_s,
         [](const Job& job) { return Length(job.cavity.height() * job.assessment.damage->bevelRatio); }},
        {u"half_thickness"_s, [](const Job& job) { return Length(job.assessment.damage->panelThickness * 0.5); }},
        {u"backing_lap"_s, [](const Job& job) { return job.set.assumptions.backingLap; }},
        {u"before_primer"_s, [](const Job& job) { return beforePrimer(job); }},
    };
    return all;
}

template <class T> const T& named(const std::vector<std::pair<QString, T>>& all, const QString& name)
{
    return std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.first == name; })->second;
}

bool holds(const QString& condition, const Job& job)
{
    const bool negated = condition.startsWith(u'!');
    return named(conditions(), negated ? condition.mid(1) : condition)(job) != negated;
}

Step stepOf(const StepRule& rule, const Job& job)
{
    Step step{rule.code, rule.handsOn, rule.waiting, rule.cautions, {}};
    for (const QString& name : rule.arguments) {
        step.arguments.push_back(named(figures(), name)(job));
        if (name == u"before_primer"_s)
            step.waiting = beforePrimer(job);
    }
    return step;
}

template <class T> std::vector<QString> namesOf(const std::vector<std::pair<QString, T>>& all)
{
    std::vector<QString> names;
    for (const auto& each : all)
        names.push_back(each.first);
    return names;
}

} // namespace

Duration beforePrimer(const Job& job)
{
    const Temperature panel = job.assessment.reading->panel;
    const Fraction hardener = job.finish.hardenerNominal;
    const double slower = rateFactor(job.finish, celsius(20), hardener) / rateFactor(job.finish, panel, hardener);
    return job.set.assumptions.beforePrimer * std::max(1.0, slower);
}

std::vector<Step> planSteps(const Job& job, const std::vector<StepRule>& rules)
{
    std::vector<Step> steps;
    for (const StepRule& rule : rules)
        if (std::all_of(rule.when.begin(), rule.when.end(), [&](const QString& each) { return holds(each, job); }))
            steps.push_back(stepOf(rule, job));
    return steps;
}

} // namespace planning

const std::vector<QString>& knownStepConditions()
{
    static const std::vector<QString> names = planning::namesOf(planning::conditions());
    return names;
}

const std::vector<QString>& knownStepArguments()
{
    static const std::vector<QString> names = planning::namesOf(planning::figures());
    return names;
}

} // namespace strandbench
