// SPDX-License-Identifier: GPL-3.0-or-later
#include "pupils.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

QString kindOf(const Argument& argument)
{
    struct Names {
        QString operator()(Length) const { return u"length"_s; }
        QString operator()(Mass) const { return u"mass"_s; }
        QString operator()(Volume) const { return u"volume"_s; }
        QString operator()(Duration) const { return u"duration"_s; }
        QString operator()(Temperature) const { return u"temperature"_s; }
        QString operator()(TemperatureStep) const { return u"step"_s; }
        QString operator()(Fraction) const { return u"share"_s; }
        QString operator()(Count) const { return u"count"_s; }
        QString operator()(const QString&) const { return u"code"_s; }
    };
    return std::visit(Names{}, argument);
}

void expectKnown(const Reason& what, const std::vector<CodeWithArguments>& all)
{
    const auto known = std::ranges::find(all, what.code, &CodeWithArguments::code);
    ASSERT_NE(known, all.end()) << what.code.toStdString();
    QStringList kinds;
    for (const Argument& each : what.arguments)
        kinds << kindOf(each);
    if (known->arguments.size() == 1 && known->arguments.front().endsWith(u'*')) {
        for (const QString& each : kinds)
            EXPECT_EQ(each + u'*', known->arguments.front()) << what.code.toStdString();
        return;
    }
    EXPECT_EQ(kinds, known->arguments) << what.code.toStdString();
}

} // namespace

Lesson lessonOf(const PracticePanel& panel) { return {panel, modelAnswer(panel.truth, shop())}; }

const std::vector<Lesson>& deliveredLessons()
{
    static const std::vector<Lesson> lessons = [] {
        std::vector<Lesson> all;
        for (const PracticePanel& each : deliveredPanels())
            all.push_back(lessonOf(each));
        return all;
    }();
    return lessons;
}

Marking markOf(const Lesson& lesson, const Attempt& attempt)
{
    return mark(lesson.panel, lesson.truth, attempt, shop());
}

void settle(Attempt& attempt, const ModelAnswer& answer, double doseShare, double amountShare)
{
    for (const std::vector<PlacedLift> placed = placeLifts(attempt, answer, shop()); const PlacedLift& each : placed) {
        AttemptedLift& lift = attempt.lifts[each.index];
        const ProductSheet& sheet = sheetOf(each, answer, shop());
        const auto batches = static_cast<double>(lift.batches.size());
        const Mix mix = mixForFiller(takes(each, lift, answer, shop()) * (amountShare / batches), sheet);
        const CureAnswer<LayerCure> cure = cureOf(each, Fraction::ofOne(mix.hardenerShare.value() * doseShare), shop());
        for (MixedBatch& batch : lift.batches) {
            batch = {mix.puddle, Length(mix.bead * doseShare), {}};
            if (cure)
                batch.edgesCleared = cure->gel * 0.8;
        }
        lift.sanded = cure ? std::optional(Duration(cure->sand * 1.05)) : std::nullopt;
    }
}

void expectWellFormed(const Marking& marking)
{
    for (const Mark& each : marking.marks) {
        EXPECT_EQ(each.consequence.has_value(), each.judged == Judged::Wrong) << textOf(each);
        if (each.judged != Judged::NotReached)
            expectKnown(each.rule, knownRules());
        if (!each.consequence)
            continue;
        expectKnown(each.consequence->what, knownConsequences());
        if (each.consequence->sheetsWord)
            expectKnown(*each.consequence->sheetsWord, knownConsequences());
    }
}

std::string textOf(const Mark& mark)
{
    std::ostringstream text;
    text << codeOf(mark.decision).toStdString() << " " << mark.lift.value_or(-1) << " "
         << codeOf(mark.judged).toStdString();
    if (mark.consequence)
        text << " " << mark.consequence->what.code.toStdString();
    return text.str();
}

} // namespace strandbench::test
