// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figure_told.h"

#include "words/figure_words.h"
#include "words/stock_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double mostOfThem = 0.8; ///< of all deviations: Pareto's usual share

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(FigureTold)
};

QString wholePercent(Fraction share, const Words& words)
{
    return words.percent(Fraction::ofHundred(std::round(share.percent())));
}

QString listed(const QStringList& parts) { return parts.join(u" · "_s); }

FigureTold tellMaterial(const FigureFound& found, const Words& words, const Catalogue& catalogue)
{
    if (found.material.empty())
        return {Says::tr("Nothing was mixed in these days."), {}};
    FigureTold told;
    MaterialUsed all{{}, 0, grams(0), grams(0), grams(0), grams(0)};
    for (const MaterialUsed& each : found.material) {
        all.mixed += each.mixed;
        all.over += each.over;
        all.under += each.under;
        told.rows.push_back(
            {stockProductName(each.sheetId, catalogue),
             listed({words.batches(each.batches), Says::tr("planned %1").arg(stockMass(each.planned, words)),
                     Says::tr("mixed %1").arg(stockMass(each.mixed, words)),
                     Says::tr("beyond the plan %1, %2")
                         .arg(stockMass(each.over, words), wholePercent(wasteOf(each), words))})});
    }
    if (all.over > grams(0))
        //: %1 and %2 are masses, %3 a share, %4 a product
        told.reading =
            Says::tr("Of %1 mixed, %2 went beyond the plan: %3. Most of that was %4.")
                .arg(stockMass(all.mixed, words), stockMass(all.over, words), wholePercent(wasteOf(all), words),
                     stockProductName(found.material.front().sheetId, catalogue));
    else
        told.reading = Says::tr("Of %1 mixed, nothing went beyond the plan.").arg(stockMass(all.mixed, words));
    if (all.under > grams(0))
        told.reading += u' ' + Says::tr("Other batches fell short of it by %1.").arg(stockMass(all.under, words));
    return told;
}

/// Whether the substrates differ by more than what was counted could come to by chance.
QString betweenSubstrates(const std::vector<FirstTimeRight>& rows, const Words& words)
{
    const auto share = [](const FirstTimeRight& each) { return double(each.right) / each.judged; };
    const auto [worst, best] = std::ranges::minmax_element(rows, {}, share);
    if (worst->interval.high >= best->interval.low)
        return Says::tr("Between the substrates no difference is larger than chance.");
    const auto name = [&words](const FirstTimeRight& each) {
        return each.substrate ? words.substrate(*each.substrate) : Says::tr("not identified");
    };
    //: %1 and %2 are substrates
    return Says::tr("Less often with %1 than with %2, by more than chance.").arg(name(*worst), name(*best));
}

FigureTold tellRight(const FigureFound& found, const Words& words)
{
    if (found.right.empty())
        return {Says::tr("No repair of these days was signed off or returned yet."), {}};
    FigureTold told;
    for (const FirstTimeRight& each : found.right)
        told.rows.push_back(
            {each.substrate ? Words::title(words.substrate(*each.substrate)) : Says::tr("Not identified"),
             listed({Says::tr("%1 of %2 right the first time").arg(each.right).arg(each.judged),
                     wholePercent(Fraction::ofOne(double(each.right) / each.judged), words),
                     //: %1 and %2 are shares: the ends of an interval
                     Says::tr("may be %1 to %2")
                         .arg(wholePercent(each.interval.low, words), wholePercent(each.interval.high, words))})});
    const FirstTimeRight& all = found.rightOfAll;
    told.reading =
        //: %1 is a number, %2 to %4 are shares
        Says::tr("%1 of %n repair(s) right the first time: %2. The true share may lie anywhere from %3 to %4.", nullptr,
                 all.judged)
            .arg(all.right)
            .arg(wholePercent(Fraction::ofOne(double(all.right) / all.judged), words),
                 wholePercent(all.interval.low, words), wholePercent(all.interval.high, words));
    if (found.right.size() > 1)
        told.reading += u' ' + betweenSubstrates(found.right, words);
    return told;
}

FigureTold tellTimes(const FigureFound& found, const Words& words)
{
    if (found.times.empty())
        return {Says::tr("No repair of these days was handed over with its times told."), {}};
    FigureTold told;
    for (const PartTimes& each : found.times)
        told.rows.push_back(
            {jobPartName(each.part), listed({Says::tr("planned %1").arg(words.longDuration(each.planned)),
                                             Says::tr("took %1").arg(words.longDuration(each.actual)),
                                             Says::tr("one in ten %1 or more").arg(words.longDuration(each.slow)),
                                             Says::tr("%n repair(s)", nullptr, each.repairs)})});
    const auto worst = std::ranges::max_element(
        found.times, {}, [](const PartTimes& each) { return (each.actual - each.planned).value(); });
    told.reading =
        worst->actual > worst->planned
            //: %1 is a part of the job, %2 and %3 are times
            ? Says::tr("Most is lost at ‘%1’: half of %n repair(s) took %2 or more, the plan said %3.", nullptr,
                       worst->repairs)
                  .arg(jobPartName(worst->part), words.longDuration(worst->actual), words.longDuration(worst->planned))
            : Says::tr("No part takes longer than the plan says, by the middle one of its repairs.");
    return told;
}

FigureTold tellDeviations(const FigureFound& found, const Words& words)
{
    if (found.deviations.empty())
        return {Says::tr("The records of these days hold no deviation."), {}};
    FigureTold told;
    int all = 0;
    for (const DeviationShare& each : found.deviations)
        all += each.count;
    const auto share = [&](int count) { return wholePercent(Fraction::ofOne(double(count) / all), words); };
    for (const DeviationShare& each : found.deviations)
        told.rows.push_back(
            {deviationName(each.kind), listed({Says::tr("%n time(s)", nullptr, each.count), share(each.count),
                                               //: %1 is a share: of this row and those above
                                               Says::tr("up to here %1").arg(wholePercent(each.upTo, words))})});
    const DeviationShare& first = found.deviations.front();
    //: %1 is a kind of deviation, %2 a number, %3 a share
    told.reading = Says::tr("Most often: %1, %2 of %n deviation(s), %3.", nullptr, all)
                       .arg(deviationName(first.kind))
                       .arg(first.count)
                       .arg(share(first.count));
    const auto enough = std::ranges::find_if(
        found.deviations, [](const DeviationShare& each) { return each.upTo.value() >= mostOfThem; });
    const auto kinds = static_cast<int>(enough - found.deviations.begin()) + 1;
    if (kinds > 1 && kinds < static_cast<int>(found.deviations.size()))
        told.reading +=
            u' ' + Says::tr("The first %n kind(s) make up %1.", nullptr, kinds).arg(wholePercent(enough->upTo, words));
    return told;
}

} // namespace

Fraction wasteOf(const MaterialUsed& used)
{
    return Fraction::ofOne(used.mixed > grams(0) ? (used.over / used.mixed).value() : 0.0);
}

QString figureQuestion(FigureKind kind)
{
    switch (kind) {
    case FigureKind::Gel:
        return Says::tr("Is a lot of hardener drifting?");
    case FigureKind::Material:
        return Says::tr("How much is mixed beyond the plan?");
    case FigureKind::Right:
        return Says::tr("How often is it right the first time?");
    case FigureKind::Times:
        return Says::tr("Where does the time go?");
    case FigureKind::Deviations:
        break;
    }
    return Says::tr("What strays most often?");
}

FigureTold tellFigure(const FigureAsked& asked, const FigureFound& found, const Words& words,
                      const Catalogue& catalogue)
{
    const auto told = [&]() -> FigureTold {
        switch (asked.kind) {
        case FigureKind::Gel:
            return tellGels(found, words);
        case FigureKind::Material:
            return tellMaterial(found, words, catalogue);
        case FigureKind::Right:
            return tellRight(found, words);
        case FigureKind::Times:
            return tellTimes(found, words);
        case FigureKind::Deviations:
            break;
        }
        return tellDeviations(found, words);
    };
    FigureTold all = told();
    if (found.unreadable > 0)
        all.reading += u' ' + Says::tr("%n repair(s) cannot be read and are not counted.", nullptr, found.unreadable);
    return all;
}

} // namespace strandbench
