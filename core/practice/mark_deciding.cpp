// SPDX-License-Identifier: GPL-3.0-or-later
// Fill or stop, why, what instead, and with what: by the decision table on the pupil's own answers.
#include "practice/judging.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::practice {
namespace {

std::vector<QString> codesOf(const std::vector<Stop>& stops)
{
    std::vector<QString> codes;
    for (const Stop& each : stops)
        codes.push_back(each.reason.code);
    return codes;
}

QString verdict(bool fill) { return fill ? u"fill"_s : u"stop"_s; }

Mark verdictMark(const Situation& situation)
{
    const ModelAnswer& own = situation.own;
    const auto given = situation.attempt.fill;
    const Reason rule =
        own.fill() ? Reason{u"nothing_stops"_s, {}} : Reason{u"it_stops"_s, codesAsArguments(codesOf(own.plan.stops))};
    Mark mark = judged(DecisionPoint::FillOrStop, given == own.fill(), given ? Arguments{verdict(*given)} : Arguments{},
                       {verdict(own.fill())}, rule);
    if (mark.judged == Judged::Right)
        return mark;
    const bool filled = given.value_or(false);
    mark.grave = filled;
    mark.consequence = filled       ? ofFilledStop(own)
                       : own.fill() ? consequenceOf(u"waits_for_nothing"_s, {}, ConsequencePicture::Panel)
                                    : consequenceOf(u"stop_stays"_s, codesAsArguments(codesOf(own.plan.stops)),
                                                    ConsequencePicture::Panel);
    return mark;
}

bool isNobodys(const Stop& stop) { return stop.overridable == Override::Nobody && stop.reason.code != notAssessedCode; }

/// Right when every stop that was named holds, and where one is nobody's to override, one of those is among them.
bool whyIsRight(const std::vector<QString>& named, const std::vector<Stop>& stops)
{
    const auto isNamed = [&](const Stop& each) { return std::ranges::count(named, each.reason.code) > 0; };
    const bool all = std::ranges::all_of(named, [&](const QString& code) {
        return std::ranges::any_of(stops, [&](const Stop& each) { return each.reason.code == code; });
    });
    const bool binding = std::ranges::none_of(stops, isNobodys) ||
                         std::ranges::any_of(stops, [&](const Stop& each) { return isNobodys(each) && isNamed(each); });
    return !named.empty() && all && binding;
}

void markStop(const Situation& situation, std::vector<Mark>& marks)
{
    const std::vector<Stop>& stops = situation.own.plan.stops;
    const Attempt& attempt = situation.attempt;
    Mark why = judged(DecisionPoint::WhyStop, whyIsRight(attempt.stops, stops), codesAsArguments(attempt.stops),
                      codesAsArguments(codesOf(stops)), ruleOf(DecisionPoint::WhyStop));
    if (why.judged == Judged::Wrong)
        why.consequence = consequenceOf(u"stop_stays"_s, codesAsArguments(codesOf(stops)), ConsequencePicture::Panel);
    marks.push_back(why);

    std::vector<QString> ways;
    for (const Stop& each : stops)
        ways.push_back(each.instead);
    const bool right = std::ranges::count(ways, attempt.instead) > 0;
    Mark instead = judged(DecisionPoint::InsteadOfFilling, right,
                          attempt.instead.isEmpty() ? Arguments{} : Arguments{attempt.instead}, codesAsArguments(ways),
                          ruleOf(DecisionPoint::InsteadOfFilling));
    if (!right)
        instead.consequence = consequenceOf(u"leads_nowhere"_s, {stops.front().reason.code}, ConsequencePicture::Panel);
    marks.push_back(instead);
}

/// A filler that the table merely ranks behind another is right, with that as its rule.
Mark fillerMark(const Situation& situation)
{
    const RepairPlan& plan = situation.own.plan;
    const auto given = situation.attempt.filler;
    const QString best = codeOf(*plan.filler);
    if (!given || given == plan.filler) {
        Mark mark = judged(DecisionPoint::WhichFiller, given.has_value(), given ? Arguments{best} : Arguments{}, {best},
                           ruleOf(DecisionPoint::WhichFiller, {best}));
        if (!given)
            mark.consequence = consequenceOf(u"nothing_laid"_s, {}, ConsequencePicture::Section);
        return mark;
    }
    const auto refused = std::ranges::find(plan.rejected, *given, &RejectedFiller::filler);
    const QString why = refused != plan.rejected.end() ? refused->reason.code : u"finishing_filler"_s;
    const bool behind = why == u"another_is_better"_s;
    Mark mark = judged(DecisionPoint::WhichFiller, behind, {codeOf(*given)}, {best},
                       behind ? Reason{u"another_is_better"_s, {best}} : Reason{u"refused_here"_s, {why}});
    if (!behind)
        mark.consequence = consequenceOf(u"filler_unfit"_s, {codeOf(*given), why}, ConsequencePicture::Section);
    return mark;
}

} // namespace

void markDeciding(const Situation& situation, std::vector<Mark>& marks)
{
    marks.push_back(verdictMark(situation));
    const auto fill = situation.attempt.fill;
    if (!situation.own.fill()) {
        if (fill == false)
            return markStop(situation, marks);
        marks.push_back(notReached(DecisionPoint::WhyStop));
        marks.push_back(notReached(DecisionPoint::InsteadOfFilling));
        return;
    }
    marks.push_back(fill == true ? fillerMark(situation) : notReached(DecisionPoint::WhichFiller));
}

} // namespace strandbench::practice
