// SPDX-License-Identifier: GPL-3.0-or-later
// Where a mark tips over, and what keeps from passing.
#include "pupils.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Judged judgedOf(const Marking& marking, DecisionPoint decision)
{
    return std::ranges::find(marking.marks, decision, &Mark::decision)->judged;
}

Lesson filled() { return lessonOf(delivered(u"zinc_gone"_s)); }

TEST(PracticeMarking, AMeasureMayBeOffByItsTolerance)
{
    const Lesson lesson = lessonOf(delivered(u"crack_tips"_s)); // 130 mm long, 3 mm deep
    const auto measured = [&](double length, double depth) {
        Attempt attempt = perfectAttempt(lesson.truth, shop());
        attempt.found.damage->length = millimetres(length);
        attempt.found.damage->depth = millimetres(depth);
        return judgedOf(markOf(lesson, attempt), DecisionPoint::SizeFound);
    };
    EXPECT_EQ(measured(130 * 1.149, 3), Judged::Right);
    EXPECT_EQ(measured(130 * 0.851, 3), Judged::Right);
    EXPECT_EQ(measured(130 * 1.151, 3), Judged::Wrong);
    EXPECT_EQ(measured(130 * 0.849, 3), Judged::Wrong);
    EXPECT_EQ(measured(130, 3.59), Judged::Right);
    EXPECT_EQ(measured(130, 3.61), Judged::Wrong);
}

TEST(PracticeMarking, TheDoseIsHeldAgainstTheSheetsBand)
{
    const Lesson lesson = filled();
    const auto dosed = [&](double percent) {
        Attempt attempt = perfectAttempt(lesson.truth, shop());
        settle(attempt, lesson.truth, percent / 2.0);
        return markOf(lesson, attempt);
    };
    for (const double within : {1.51, 2.0, 2.49})
        EXPECT_EQ(judgedOf(dosed(within), DecisionPoint::HardenerDose), Judged::Right) << within;
    for (const double caution : {1.21, 1.49, 2.51, 2.99}) {
        EXPECT_EQ(judgedOf(dosed(caution), DecisionPoint::HardenerDose), Judged::Wrong) << caution;
        EXPECT_TRUE(dosed(caution).outcome.passed()) << caution; // one mistake, and the sheet has a caution for it
    }
    for (const double refused : {1.19, 3.01})
        EXPECT_FALSE(dosed(refused).outcome.passed()) << refused; // alone, whatever else is right
}

TEST(PracticeMarking, AnAmountMayBeOffByItsTolerance)
{
    const Lesson lesson = lessonOf(delivered(u"long_dent"_s)); // far more than a 2-in puddle
    const auto mixed = [&](double share) {
        Attempt attempt = perfectAttempt(lesson.truth, shop());
        const double half = share > 1 ? 2 : 1; // in smaller batches, so that none gels on the board
        for (AttemptedLift& each : attempt.lifts)
            if (half > 1)
                each.batches.insert(each.batches.end(), each.batches.begin(), each.batches.end());
        settle(attempt, lesson.truth, 1.0, share);
        return judgedOf(markOf(lesson, attempt), DecisionPoint::MixedAmount);
    };
    EXPECT_EQ(mixed(0.901), Judged::Right);
    EXPECT_EQ(mixed(0.899), Judged::Wrong);
    EXPECT_EQ(mixed(1.349), Judged::Right);
    EXPECT_EQ(mixed(1.351), Judged::Wrong);
}

/// Whoever stops a painted carbon panel for its paint alone would strip it and fill.
TEST(PracticeMarking, AStopThatNobodyMayOverrideMustBeNamed)
{
    const Lesson lesson = lessonOf(delivered(u"painted_carbon"_s));
    const auto named = [&](std::vector<QString> stops) {
        Attempt attempt = perfectAttempt(lesson.truth, shop());
        attempt.stops = std::move(stops);
        return judgedOf(markOf(lesson, attempt), DecisionPoint::WhyStop);
    };
    EXPECT_EQ(named({u"surface_paint"_s}), Judged::Wrong);
    EXPECT_EQ(named({u"substrate_carbon"_s}), Judged::Right);
    EXPECT_EQ(named({u"surface_paint"_s, u"substrate_carbon"_s}), Judged::Right);
    EXPECT_EQ(named({u"substrate_carbon"_s, u"zone_sensor"_s}), Judged::Wrong);
}

TEST(PracticeMarking, TwoMistakesInOneSkillAreTooMany)
{
    const Lesson lesson = filled();
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    attempt.finish->beforePrimer = seconds(0);
    EXPECT_TRUE(markOf(lesson, attempt).outcome.passed());
    attempt.finish->tests.clear();
    const Outcome outcome = markOf(lesson, attempt).outcome;
    EXPECT_EQ(outcome.weak, std::vector{Skill::Finish});
    EXPECT_FALSE(outcome.passed());
}

/// SMC taken for laminate, filled with what the table keeps off SMC: every later mark is right from there, and yet.
TEST(PracticeMarking, AFillerThatThePanelRefusesIsNoPass)
{
    const Lesson lesson = lessonOf(delivered(u"smc_corner"_s));
    Assessment taken = lesson.panel.truth;
    taken.substrate = Substrate::Laminate;
    const ModelAnswer light = modelAnswerWith(FillerClass::ShortStrandLight, taken, shop());
    const Marking marking = markOf(lesson, perfectAttempt(light, shop()));
    EXPECT_EQ(std::ranges::count(marking.marks, Judged::Wrong, &Mark::judged), 1);
    EXPECT_EQ(judgedOf(marking, DecisionPoint::SubstrateFound), Judged::Wrong);
    EXPECT_EQ(judgedOf(marking, DecisionPoint::WhichFiller), Judged::Right);
    EXPECT_TRUE(marking.outcome.unfitFiller);
    EXPECT_FALSE(marking.outcome.passed());
}

TEST(PracticeMarking, StepsWhoseOrderDoesNotMatterMayChangePlaces)
{
    const Lesson lesson = lessonOf(delivered(u"steel_disc"_s));
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    const auto tools = std::ranges::find(attempt.steps, u"own_tools"_s);
    ASSERT_NE(tools, attempt.steps.end());
    std::iter_swap(tools, tools + 1); // washed before the own tools were laid out
    EXPECT_EQ(judgedOf(markOf(lesson, attempt), DecisionPoint::StepsInOrder), Judged::Right);
}

/// What anybody keyed in as measures can be beyond all sense: then nothing was measured.
TEST(PracticeMarking, FiguresBeyondAllSenseAreNoMeasures)
{
    const Lesson lesson = filled();
    for (const double length : {-5.0, 0.0, 1e9, std::numeric_limits<double>::quiet_NaN()}) {
        Attempt attempt = perfectAttempt(lesson.truth, shop());
        attempt.found.damage->length = millimetres(length);
        const Marking marking = markOf(lesson, attempt);
        EXPECT_EQ(judgedOf(marking, DecisionPoint::SizeFound), Judged::Wrong);
        EXPECT_EQ(ownAssessment(lesson.panel, attempt).damage->length, millimetres(0));
    }
}

} // namespace
} // namespace strandbench::test
