// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/judging.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::practice {
namespace {

/// The acts of a list of steps, each where it comes first.
std::vector<QString> actsOf(const std::vector<QString>& steps)
{
    std::vector<QString> acts;
    for (const QString& each : steps)
        if (const QString act = actOf(each); std::ranges::find(acts, act) == acts.end())
            acts.push_back(act);
    return acts;
}

std::vector<QString> actsOf(const std::vector<Step>& steps)
{
    std::vector<QString> codes;
    for (const Step& each : steps)
        codes.push_back(each.code);
    return actsOf(codes);
}

bool has(const std::vector<QString>& all, const QString& wanted) { return std::ranges::count(all, wanted) > 0; }

/// What belongs and was not put; an act in whose place another was put is that one's mistake.
std::vector<QString> leftOut(const std::vector<QString>& put, const std::vector<QString>& belongs)
{
    std::vector<QString> missing;
    for (const QString& each : belongs)
        if (const QString rival = insteadOfStep(each);
            !has(put, each) && (rival.isEmpty() || !has(put, rival) || has(belongs, rival)))
            missing.push_back(each);
    return missing;
}

/// What was put and is among the steps that harm or lead nowhere here. A step that is in no list is of no harm.
std::vector<QString> falseOnes(const std::vector<QString>& put, const std::vector<QString>& falseSteps)
{
    std::vector<QString> wrong;
    for (const QString& each : put)
        if (has(falseSteps, each))
            wrong.push_back(each);
    return wrong;
}

/// The first two acts, in the right order, that were put the other way round and must not be.
std::optional<std::pair<QString, QString>> swapped(const std::vector<QString>& put, const std::vector<QString>& belongs)
{
    const auto placeOf = [&](const QString& act) { return std::ranges::find(put, act); };
    for (std::size_t i = 0; i < belongs.size(); ++i)
        for (std::size_t j = i + 1; j < belongs.size(); ++j)
            if (has(put, belongs[i]) && has(put, belongs[j]) && placeOf(belongs[i]) > placeOf(belongs[j]) &&
                orderMatters(belongs[i], belongs[j]))
                return std::pair(belongs[i], belongs[j]);
    return std::nullopt;
}

} // namespace

void markPreparing(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks)
{
    const std::vector<QString> put = actsOf(situation.attempt.steps);
    const std::vector<QString> belongs = actsOf(hand.plan.prep);
    const Arguments given = codesAsArguments(put);
    const Arguments expected = codesAsArguments(belongs);

    const std::vector<QString> missing = leftOut(put, belongs);
    Mark out = judged(DecisionPoint::StepsLeftOut, missing.empty(), given, expected,
                      ruleOf(DecisionPoint::StepsLeftOut, codesAsArguments(missing)));
    if (!missing.empty())
        out.consequence = consequenceOf(u"step_missing"_s, codesAsArguments(missing), ConsequencePicture::Steps);
    marks.push_back(out);

    const std::vector<QString> wrong = falseOnes(put, hand.falseSteps);
    Mark harm = judged(DecisionPoint::StepsThatHarm, wrong.empty(), given, expected,
                       ruleOf(DecisionPoint::StepsThatHarm, codesAsArguments(wrong)));
    if (!wrong.empty())
        harm.consequence = consequenceOf(u"step_harms"_s, codesAsArguments(wrong), ConsequencePicture::Steps);
    marks.push_back(harm);

    const auto turned = swapped(put, belongs);
    Mark order = judged(DecisionPoint::StepsInOrder, !turned, given, expected, ruleOf(DecisionPoint::StepsInOrder));
    if (turned) {
        order.rule.arguments = {turned->first, turned->second};
        order.consequence = consequenceOf(u"step_too_late"_s, order.rule.arguments, ConsequencePicture::Steps);
    }
    marks.push_back(order);
}

} // namespace strandbench::practice
