// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/model_answer.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A perfect pupil sands when so much of the easy time has gone: neither on the second nor late.
constexpr double intoEasySanding = 0.25;

/// Harmless where they are not called for: never offered as false.
bool isHarmless(const QString& step)
{
    return step == u"own_tools"_s || step == u"find_cracks"_s || step == u"flash_off_metal"_s;
}

/// Whether a warning of the trade could tempt on this panel.
bool tempts(const QString& harmful, const Assessment& assessment)
{
    if (harmful == u"water_on_open_fibre"_s || harmful == u"solvent_on_ground_fibre"_s)
        return isFibreComposite(*assessment.substrate);
    if (harmful == u"steel_disc_on_aluminium"_s)
        return assessment.substrate == Substrate::Aluminium;
    if (harmful == u"fill_over_paint"_s)
        return assessment.surface != SurfaceState::AbradedEpoxy;
    return true;
}

std::vector<QString> falseStepsOf(const RepairPlan& plan, const Assessment& assessment, const StepBook& book)
{
    const auto belongs = [&](const QString& code) {
        return std::ranges::any_of(plan.prep, [&](const Step& each) { return actOf(each.code) == actOf(code); });
    };
    std::vector<QString> all;
    for (const StepRule& each : book.prepare)
        if (!belongs(each.code) && !isHarmless(each.code))
            all.push_back(each.code);
    for (const QString& each : harmfulSteps())
        if (tempts(each, assessment))
            all.push_back(each);
    std::ranges::sort(all);
    return all;
}

AttemptedLift liftAsPlanned(const RepairPlan& plan, std::size_t index, const Assumptions& assumptions)
{
    AttemptedLift lift{plan.lifts[index].face, plan.lifts[index].thickness, {}, {}};
    for (const Batch& each : plan.batches) {
        if (each.lift != static_cast<int>(index))
            continue;
        lift.batches.push_back(
            {each.mix.puddle, each.mix.bead, Duration(each.times.gel * assumptions.edgesAtGel.value())});
        lift.sanded = each.times.sand + each.times.easySanding * intoEasySanding;
    }
    return lift;
}

Duration primerWaitOf(const RepairPlan& plan)
{
    for (const Step& each : plan.finishing)
        if (each.code == u"cure_before_primer"_s)
            return each.waiting;
    return seconds(0);
}

AttemptedFinish finishAsPlanned(const RepairPlan& plan)
{
    AttemptedFinish finish;
    finish.coats = plan.finish.coats;
    finish.coat = plan.finish.thickness / static_cast<double>(plan.finish.coats);
    for (const auto& [test, code] : Codes<InspectionTest>::table)
        finish.tests.push_back(test);
    finish.beforePrimer = primerWaitOf(plan);
    return finish;
}

/// A table in which one filler suits everywhere and the others nowhere.
DecisionTable allowingOnly(FillerClass filler)
{
    DecisionTable::Cells cells;
    for (const QString& column : DecisionTable::columns())
        cells[{filler, column}] = {Suitability::Yes, u"in_the_hand"_s};
    return DecisionTable(std::move(cells), {}, {});
}

/// The shop's sheets of one filler and of the finishing ones; their own cells stand back.
Catalogue holdingOnly(FillerClass filler, const Catalogue& catalogue)
{
    std::vector<ProductSheet> sheets;
    for (const ProductSheet& each : catalogue.sheets()) {
        if (isFibreReinforced(each.fillerClass) && each.fillerClass != filler)
            continue;
        sheets.push_back(each);
        sheets.back().cells.clear();
    }
    return Catalogue(std::move(sheets));
}

} // namespace

ModelAnswer modelAnswer(const Assessment& assessment, const PlanningSet& shop)
{
    ModelAnswer answer{assessment, planRepair(assessment, shop), {}};
    if (answer.fill())
        answer.falseSteps = falseStepsOf(answer.plan, assessment, shop.steps);
    return answer;
}

ModelAnswer modelAnswerWith(FillerClass filler, const Assessment& assessment, const PlanningSet& shop)
{
    const DecisionTable table = allowingOnly(filler);
    const Catalogue catalogue = holdingOnly(filler, shop.catalogue);
    return modelAnswer(assessment, {table, catalogue, shop.steps, shop.assumptions, shop.engine});
}

Attempt perfectAttempt(const ModelAnswer& answer, const PlanningSet& shop)
{
    const RepairPlan& plan = answer.plan;
    Attempt attempt;
    attempt.found = answer.assessment;
    attempt.fill = plan.fill;
    if (!plan.fill) {
        for (const Stop& each : plan.stops)
            attempt.stops.push_back(each.reason.code);
        attempt.instead = plan.stops.front().instead;
        return attempt;
    }
    attempt.filler = plan.filler;
    for (const Step& each : plan.prep)
        attempt.steps.push_back(each.code);
    for (std::size_t i = 0; i < plan.lifts.size(); ++i)
        attempt.lifts.push_back(liftAsPlanned(plan, i, shop.assumptions));
    attempt.turned = plan.lifts.back().face == Face::Back;
    attempt.finish = finishAsPlanned(plan);
    return attempt;
}

} // namespace strandbench
