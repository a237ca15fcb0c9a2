// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/judging.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace practice {

Mark judged(DecisionPoint decision, bool right, Arguments given, Arguments expected, Reason rule)
{
    Mark mark;
    mark.decision = decision;
    mark.judged = right ? Judged::Right : Judged::Wrong;
    mark.given = std::move(given);
    mark.expected = std::move(expected);
    mark.rule = std::move(rule);
    return mark;
}

Mark notReached(DecisionPoint decision)
{
    Mark mark;
    mark.decision = decision;
    mark.rule = ruleOf(decision);
    return mark;
}

Arguments codesAsArguments(const std::vector<QString>& codes) { return {codes.begin(), codes.end()}; }

Reason ruleOf(DecisionPoint decision, Arguments arguments) { return {codeOf(decision), std::move(arguments)}; }

} // namespace practice

namespace {

using practice::Situation;

/// A damage as strandbench plan takes one: what lies beyond cannot be laid out by the engine either.
bool isMeasurable(const Damage& damage)
{
    const auto within = [](Length value, double low, double high) {
        return inMillimetres(value) >= low && inMillimetres(value) <= high;
    };
    const bool crack = damage.kind == DamageKind::Crack;
    const bool through = damage.kind == DamageKind::Hole || damage.kind == DamageKind::RustHole;
    const bool ground = crack || damage.kind == DamageKind::Gouge;
    return within(damage.length, 1, 3000) && within(damage.width, crack ? 0 : 0.5, 1000) &&
           within(damage.depth, 0.1, 60) && within(damage.panelThickness, 0.3, 60) &&
           damage.bevelRatio >= (crack ? 0.5 : 0.0) && damage.bevelRatio <= 100.0 &&
           (!through || damage.depth == damage.panelThickness) && (!ground || damage.depth <= damage.panelThickness);
}

void addNotReached(std::vector<Mark>& marks)
{
    for (const DecisionPoint each : {DecisionPoint::StepsLeftOut, DecisionPoint::StepsThatHarm,
                                     DecisionPoint::StepsInOrder, DecisionPoint::BuildUp, DecisionPoint::Turned,
                                     DecisionPoint::FinishCoats, DecisionPoint::Inspected, DecisionPoint::PrimerAfter})
        marks.push_back(practice::notReached(each));
}

bool mayTake(FillerClass filler, const RepairPlan& plan)
{
    if (plan.filler == filler)
        return true;
    const auto found = std::ranges::find(plan.rejected, filler, &RejectedFiller::filler);
    return found != plan.rejected.end() && found->reason.code == u"another_is_better"_s;
}

/// What is right with the filler that the pupil took; by the best one where none was, or where it is no filler to
/// fill with.
ModelAnswer inTheHand(const Situation& situation)
{
    const auto filler = situation.attempt.filler;
    if (!situation.own.fill() || !filler || !isFibreReinforced(*filler) || filler == situation.own.plan.filler)
        return situation.own;
    return modelAnswerWith(*filler, situation.own.assessment, situation.shop);
}

/// Preparing, laying and finishing.
void markWork(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks)
{
    if (!hand.fill())
        return addNotReached(marks);
    practice::markPreparing(situation, hand, marks);
    practice::markFace(situation, hand, Face::Front, marks);
    practice::markTurning(situation, hand, marks);
    practice::markFinishing(situation, hand, marks);
}

Outcome outcomeOf(const Situation& situation, const std::vector<Mark>& marks)
{
    const RepairPlan& truth = situation.truth.plan;
    const Attempt& attempt = situation.attempt;
    const bool fills = attempt.fill.value_or(false);
    Outcome outcome;
    outcome.filledAStop = fills && !truth.fill;
    outcome.wrongVerdict = attempt.fill != truth.fill;
    outcome.unfitFiller = fills && truth.fill && attempt.filler && !mayTake(*attempt.filler, truth);
    for (const auto& entry : Codes<Skill>::table) {
        const auto wrong = std::ranges::count_if(marks, [&](const Mark& each) {
            return each.judged == Judged::Wrong && skillOf(each.decision) == entry.first;
        });
        if (wrong > 1)
            outcome.weak.push_back(entry.first);
    }
    outcome.graveMistake =
        std::ranges::any_of(marks, [](const Mark& each) { return each.judged == Judged::Wrong && each.grave; });
    return outcome;
}

} // namespace

Assessment ownAssessment(const PracticePanel& panel, const Attempt& attempt)
{
    Assessment own = attempt.found;
    own.job = panel.truth.job;
    own.panel = panel.truth.panel;
    own.reading = panel.truth.reading;
    own.overridden.clear();
    if (own.damage && !isMeasurable(*own.damage))
        own.damage->length = millimetres(0);
    return own;
}

Marking mark(const PracticePanel& panel, const ModelAnswer& truth, const Attempt& attempt, const PlanningSet& shop)
{
    const Assessment found = ownAssessment(panel, attempt);
    const ModelAnswer own = found == truth.assessment ? truth : modelAnswer(found, shop);
    const Situation situation{panel, truth, attempt, shop, own};
    Marking marking;
    marking.hand = inTheHand(situation);
    practice::markIdentifying(situation, marking.marks);
    practice::markDeciding(situation, marking.marks);
    if (own.fill()) {
        if (attempt.fill.value_or(false))
            markWork(situation, marking.hand, marking.marks);
        else
            addNotReached(marking.marks);
    }
    marking.outcome = outcomeOf(situation, marking.marks);
    return marking;
}

} // namespace strandbench
