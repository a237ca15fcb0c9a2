// SPDX-License-Identifier: GPL-3.0-or-later
// Faces built up and turned, and what comes after the last lift.
#include "practice/judging.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::practice {
namespace {

constexpr double hair = 1e-9;
/// A finish lower than planned by no more than this is level (an assumption).
const Length finishWithin = millimetres(0.2);

bool hasBack(const RepairPlan& plan) { return !plan.lifts.empty() && plan.lifts.back().face == Face::Back; }

Mark coatsMark(const AttemptedFinish& given, const Finish& planned)
{
    const Length inAll = given.coat * static_cast<double>(std::max(0, given.coats));
    std::optional<Consequence> wrong;
    if (inAll < planned.thickness - finishWithin || given.coats < 1)
        wrong = consequenceOf(u"finish_too_low"_s, {Length(planned.thickness - inAll)}, ConsequencePicture::Section);
    else if (given.coat > planned.limitACoat * (1.0 + hair))
        wrong = consequenceOf(u"coat_too_thick"_s, {given.coat, planned.limitACoat}, ConsequencePicture::Section);
    else if (inAll > planned.limitInAll * (1.0 + hair))
        wrong = consequenceOf(u"finish_too_thick"_s, {inAll, planned.limitInAll}, ConsequencePicture::Section);
    Mark mark = judged(DecisionPoint::FinishCoats, !wrong, {Count{given.coats}, given.coat},
                       {Count{planned.coats}, Length(planned.thickness / static_cast<double>(planned.coats))},
                       ruleOf(DecisionPoint::FinishCoats, {planned.limitACoat, planned.limitInAll, finishWithin}));
    mark.consequence = std::move(wrong);
    return mark;
}

Mark inspectionMark(const AttemptedFinish& given)
{
    std::vector<QString> missing;
    for (const auto& [test, code] : Codes<InspectionTest>::table)
        if (std::ranges::count(given.tests, test) == 0)
            missing.push_back(QString::fromLatin1(code));
    std::vector<QString> made;
    for (const InspectionTest each : given.tests)
        made.push_back(codeOf(each));
    const QStringList all = allCodes<InspectionTest>();
    Mark mark = judged(DecisionPoint::Inspected, missing.empty(), codesAsArguments(made),
                       codesAsArguments({all.begin(), all.end()}), ruleOf(DecisionPoint::Inspected));
    if (!missing.empty())
        mark.consequence = consequenceOf(u"not_looked_for"_s, codesAsArguments(missing), ConsequencePicture::Surface);
    return mark;
}

Mark primerMark(const AttemptedFinish& given, const Attempt& perfect)
{
    const Duration needed = perfect.finish->beforePrimer;
    Mark mark = judged(DecisionPoint::PrimerAfter, given.beforePrimer >= needed * (1.0 - hair), {given.beforePrimer},
                       {needed}, ruleOf(DecisionPoint::PrimerAfter, {needed}));
    if (mark.judged == Judged::Wrong)
        mark.consequence =
            consequenceOf(u"primed_too_soon"_s, {Duration(needed - given.beforePrimer)}, ConsequencePicture::Surface);
    return mark;
}

} // namespace

void markFace(const Situation& situation, const ModelAnswer& hand, Face face, std::vector<Mark>& marks)
{
    const std::vector<PlacedLift> placed = placeLifts(situation.attempt, hand, situation.shop);
    Length laid = millimetres(0);
    for (const PlacedLift& each : placed) {
        if (each.planned->face != face)
            continue;
        markLift(situation, hand, each, marks);
        laid += situation.attempt.lifts[each.index].thickness;
    }
    const Assessment& own = hand.assessment;
    const Length height = Cavity(*own.damage, own.rearAccess.value_or(false)).height();
    const Length slack = levelWithin() * (1.0 + hair);
    std::optional<Consequence> wrong;
    if (laid.value() <= 0.0)
        wrong = consequenceOf(u"nothing_laid"_s, {}, ConsequencePicture::Section);
    else if (laid < height - slack)
        wrong = consequenceOf(u"left_too_low"_s, {Length(height - laid)}, ConsequencePicture::Section);
    else if (laid > height + slack)
        wrong = consequenceOf(u"built_too_high"_s, {Length(laid - height)}, ConsequencePicture::Section);
    Mark mark =
        judged(DecisionPoint::BuildUp, !wrong, {laid}, {height}, ruleOf(DecisionPoint::BuildUp, {levelWithin()}));
    mark.lift = face == Face::Front ? 0 : 1;
    mark.consequence = std::move(wrong);
    marks.push_back(std::move(mark));
}

void markTurning(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks)
{
    const bool both = hasBack(hand.plan);
    const bool turned = situation.attempt.turned;
    const auto code = [](bool yes) { return yes ? u"yes"_s : u"no"_s; };
    Mark mark =
        judged(DecisionPoint::Turned, turned == both, {code(turned)}, {code(both)}, ruleOf(DecisionPoint::Turned));
    if (turned != both)
        mark.consequence =
            consequenceOf(both ? u"one_face_open"_s : u"turned_for_nothing"_s, {}, ConsequencePicture::Section);
    marks.push_back(std::move(mark));
    if (!both)
        return;
    if (turned) {
        markFace(situation, hand, Face::Back, marks);
        return;
    }
    Mark back = notReached(DecisionPoint::BuildUp);
    back.lift = 1;
    marks.push_back(std::move(back));
}

void markFinishing(const Situation& situation, const ModelAnswer& hand, std::vector<Mark>& marks)
{
    const std::optional<AttemptedFinish>& given = situation.attempt.finish;
    if (given) {
        marks.push_back(coatsMark(*given, hand.plan.finish));
        marks.push_back(inspectionMark(*given));
        marks.push_back(primerMark(*given, perfectAttempt(hand, situation.shop)));
        return;
    }
    Mark none = judged(DecisionPoint::FinishCoats, false, {}, {Count{hand.plan.finish.coats}},
                       ruleOf(DecisionPoint::FinishCoats));
    none.consequence = consequenceOf(u"not_finished"_s, {}, ConsequencePicture::Surface);
    marks.push_back(std::move(none));
    marks.push_back(notReached(DecisionPoint::Inspected));
    marks.push_back(notReached(DecisionPoint::PrimerAfter));
}

} // namespace strandbench::practice
