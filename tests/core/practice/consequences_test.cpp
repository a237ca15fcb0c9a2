// SPDX-License-Identifier: GPL-3.0-or-later
// What a mistake is said to have come to, held against cases that are laid out here by hand.
#include "pupils.h"

#include "cure/calibrate.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Lesson deliveredLesson(const QString& id) { return lessonOf(delivered(id)); }

/// The one mark that is wrong.
Mark lostMark(const Lesson& lesson, const Attempt& attempt)
{
    const Marking marking = markOf(lesson, attempt);
    EXPECT_EQ(std::ranges::count(marking.marks, Judged::Wrong, &Mark::judged), 1);
    return *std::ranges::find(marking.marks, Judged::Wrong, &Mark::judged);
}

template <class T> T argument(const Mark& mark, std::size_t index)
{
    return std::get<T>(mark.consequence->what.arguments.at(index));
}

/// A layer of a demo sheet, laid out with the published figures of the assumptions and nothing of practice.
CureCase layerByHand(const ProductSheet& sheet, Length laid, Fraction hardener, Reading reading,
                     std::vector<StackLayer> stack)
{
    CureCase layer;
    layer.kinetics = *calibrate(sheet);
    layer.filler = {sheet.density, sheet.specificHeat, sheet.conductivity};
    layer.heat = sheet.heat;
    layer.thickness = laid;
    layer.hardener = hardener;
    layer.temperature = reading.air;
    layer.stack = std::move(stack);
    layer.air = {{seconds(0), reading.air}};
    layer.front = wattsPerSquareMetreKelvin(10);
    layer.back = wattsPerSquareMetreKelvin(8);
    layer.horizon = minutes(240);
    return layer;
}

ThermalMaterial laminate()
{
    return {kilogramsPerCubicMetre(1890), joulesPerKilogramKelvin(1260), wattsPerMetreKelvin(0.2163)};
}

/// 12 of 20 mg: the time that is told is that of a mix with 1.2 %, and the soft film is the sheet's word.
TEST(PracticeConsequence, HardenerFortyPercentShortSandsAsLateAsItReallyWould)
{
    const Lesson lesson = deliveredLesson(u"smc_corner"_s);
    const ProductSheet& sheet = *shop().catalogue.byId(lesson.truth.plan.sheetId);
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    settle(attempt, lesson.truth, 0.6);
    const Mark mark = lostMark(lesson, attempt);
    ASSERT_EQ(mark.decision, DecisionPoint::HardenerDose);
    ASSERT_EQ(mark.consequence->what.code, u"sands_later"_s);

    // 2.5 mm deep in a panel of 3.5 mm: one lift, built 1 mm proud, on the 1 mm that is left.
    const Reading reading = *lesson.panel.truth.reading;
    const auto solved = [&](double percent) {
        return *solveCure(layerByHand(sheet, millimetres(3.5), Fraction::ofHundred(percent), reading,
                                      {{millimetres(1), laminate(), reading.panel}}))
                    ->sand;
    };
    EXPECT_NEAR(inSeconds(argument<Duration>(mark, 0)), inSeconds(solved(1.2)), 0.5);
    EXPECT_NEAR(inSeconds(argument<Duration>(mark, 1)), inSeconds(solved(2.0)), 0.5);
    // With p = 0.7 the reaction alone is 0.6^-0.7 = 1.43 times as slow; less of its own heat adds to that.
    EXPECT_GT(argument<Duration>(mark, 0) / argument<Duration>(mark, 1), 1.43);
    ASSERT_TRUE(mark.consequence->sheetsWord);
    EXPECT_EQ(mark.consequence->sheetsWord->code, u"soft_film"_s);
    EXPECT_EQ(std::get<Fraction>(mark.consequence->sheetsWord->arguments[1]), sheet.hardenerLow);
}

TEST(PracticeConsequence, ALiftOfFifteenMillimetresShowsItsPeak)
{
    const Lesson lesson = deliveredLesson(u"deep_gouge"_s);
    ASSERT_GT(lesson.truth.plan.lifts.size(), 1U);
    const ProductSheet& sheet = *shop().catalogue.byId(lesson.truth.plan.sheetId);
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    std::vector<MixedBatch> batches;
    for (const AttemptedLift& each : attempt.lifts)
        batches.insert(batches.end(), each.batches.begin(), each.batches.end());
    attempt.lifts = {{Face::Front, millimetres(15), batches, {}}};
    settle(attempt, lesson.truth);
    const Mark mark = lostMark(lesson, attempt);
    ASSERT_EQ(mark.decision, DecisionPoint::LiftThickness);
    ASSERT_EQ(mark.consequence->what.code, u"overheats_and_maps"_s);
    const Reading reading = *lesson.panel.truth.reading;
    const auto solved = solveCure(layerByHand(sheet, millimetres(16), Fraction::ofHundred(2), reading,
                                              {{millimetres(3), laminate(), reading.panel}}));
    EXPECT_NEAR(inCelsius(argument<Temperature>(mark, 1)), inCelsius(solved->peak), 0.5);
    EXPECT_NEAR(inCelsius(argument<Temperature>(mark, 2)), 90, 1e-9); // laminate and SMC are kept under this
    EXPECT_GT(argument<Temperature>(mark, 1), argument<Temperature>(mark, 2));
    EXPECT_TRUE(mark.grave);
}

TEST(PracticeConsequence, SandingBeforeItsTimeDragsOnAFaceThatHasNotCured)
{
    const Lesson lesson = deliveredLesson(u"zinc_gone"_s);
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    const Batch& batch = lesson.truth.plan.batches.back();
    attempt.lifts.back().sanded = batch.times.sand * 0.8;
    const Mark mark = lostMark(lesson, attempt);
    ASSERT_EQ(mark.consequence->what.code, u"drags"_s);
    EXPECT_LT(argument<Fraction>(mark, 0).value(), 0.6);
    EXPECT_GT(argument<Fraction>(mark, 0).value(), 0.1); // it had gelled
    EXPECT_NEAR(argument<Fraction>(mark, 1).value(), 0.6, 1e-12);
    EXPECT_NEAR(inSeconds(argument<Duration>(mark, 2)), inSeconds(batch.times.sand), 1e-6);
}

/// A film between two insulated faces is alike all through: its face is as far as its mean.
TEST(PracticeConsequence, AFacesConversionIsTheMeansInAFilmThatIsAlikeAllThrough)
{
    const ProductSheet& sheet = *shop().catalogue.byClass(FillerClass::MixedStrand);
    CureCase film = layerByHand(sheet, millimetres(0.5), Fraction::ofHundred(2),
                                {celsius(22), celsius(22), Fraction::ofHundred(50)}, {});
    film.front = wattsPerSquareMetreKelvin(0);
    film.back = wattsPerSquareMetreKelvin(0);
    film.horizon = minutes(20);
    const CureOutcome whole = solveCure(film);
    double before = 0;
    for (const CurvePoint& each : whole->curve) {
        const double face = faceConversionAt(film, each.at).value();
        EXPECT_NEAR(face, each.mean.value(), 0.003) << inSeconds(each.at);
        EXPECT_GE(face, before - 1e-3);
        before = face;
    }
    EXPECT_NEAR(faceConversionAt(film, *whole->sand).value(), 0.6, 0.002);
}

/// 45 g/min from 45 s on until it gels; the rest stays on the board.
TEST(PracticeConsequence, WhatIsMixedTooMuchGelsOnTheBoard)
{
    const Lesson lesson = deliveredLesson(u"long_dent"_s);
    const std::vector<Batch>& planned = lesson.truth.plan.batches;
    ASSERT_GT(planned.size(), 1U);
    const ProductSheet& sheet = *shop().catalogue.byId(lesson.truth.plan.sheetId);
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    attempt.lifts.front().batches.resize(1);
    settle(attempt, lesson.truth);
    const Mark mark = lostMark(lesson, attempt);
    ASSERT_EQ(mark.consequence->what.code, u"gels_on_board"_s);
    const Mix mix = mixForPuddle(attempt.lifts.front().batches.front().puddle, sheet);
    const Duration gel =
        *shop().engine.boardGel(sheet, lesson.panel.truth.reading->air, Fraction::ofHundred(2), mix.puddleHeight);
    EXPECT_NEAR(inSeconds(argument<Duration>(mark, 0)), inSeconds(gel), 1e-6);
    EXPECT_NEAR(inGrams(argument<Mass>(mark, 1)), inGrams(mix.filler) - 45.0 * (inMinutes(gel) - 0.75), 1e-6);
    EXPECT_GT(inGrams(argument<Mass>(mark, 1)), 0);
}

TEST(PracticeConsequence, APanelThatLooksDryLosesItsGripByItsDewMargin)
{
    const Lesson lesson = deliveredLesson(u"looks_dry"_s);
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    attempt.fill = true;
    const Mark mark = lostMark(lesson, attempt);
    ASSERT_EQ(mark.consequence->what.code, u"adhesion_lost"_s);
    EXPECT_NEAR(inKelvinStep(argument<TemperatureStep>(mark, 0)), 2.5, 0.05);
    EXPECT_NEAR(inKelvinStep(argument<TemperatureStep>(mark, 1)), 3, 1e-12);
    EXPECT_TRUE(markOf(lesson, attempt).outcome.filledAStop);
}

/// The planner's own sum, batch by batch, is what marking reckons a lift to take.
TEST(PracticeConsequence, ALiftTakesWhatThePlannerMixesForIt)
{
    for (const Lesson& lesson : deliveredLessons()) {
        if (!lesson.truth.fill())
            continue;
        const Attempt attempt = perfectAttempt(lesson.truth, shop());
        for (const std::vector<PlacedLift> placed = placeLifts(attempt, lesson.truth, shop());
             const PlacedLift& each : placed) {
            Mass mixed = grams(0);
            for (const Batch& batch : lesson.truth.plan.batches)
                if (batch.lift == static_cast<int>(each.index))
                    mixed += batch.mix.filler;
            EXPECT_NEAR(inGrams(takes(each, attempt.lifts[each.index], lesson.truth, shop())), inGrams(mixed), 1e-6)
                << lesson.panel.id.toStdString();
        }
    }
}

/// What a section shows of a face that was left too low is as much lower as the mark says.
TEST(PracticeConsequence, ASectionShowsWhatWasLaid)
{
    int low = 0;
    for (const Lesson& lesson : deliveredLessons()) {
        if (!lesson.truth.fill())
            continue;
        const auto fibreOf = [&](const Attempt& attempt) {
            Length all = millimetres(0);
            for (const RepairPlan laid = planAsLaid(attempt, lesson.truth, shop()); const Lift& each : laid.lifts)
                all += each.thickness;
            return all;
        };
        const Attempt right = perfectAttempt(lesson.truth, shop());
        EXPECT_NEAR(inMillimetres(planAsLaid(right, lesson.truth, shop()).finish.thickness),
                    inMillimetres(lesson.truth.plan.finish.thickness), 1e-6);
        for (const std::vector<Mistake> mistakes = singleMistakes(lesson); const Mistake& mistake : mistakes) {
            const Mark mark = lostMark(lesson, mistake.attempt);
            if (mark.consequence->what.code != u"left_too_low"_s)
                continue;
            EXPECT_NEAR(inMillimetres(fibreOf(right) - fibreOf(mistake.attempt)),
                        inMillimetres(argument<Length>(mark, 0)), 1e-6)
                << lesson.panel.id.toStdString();
            ++low;
        }
    }
    EXPECT_GT(low, 10);
}

/// Two mistakes are two marks, and the second is judged by what the first made of the panel.
TEST(PracticeConsequence, TheVerdictIsJudgedOnThePupilsOwnAnswers)
{
    const Lesson lesson = deliveredLesson(u"hard_bumper"_s);
    Assessment taken = lesson.panel.truth;
    taken.substrate = Substrate::Smc;
    taken.surface = SurfaceState::Bare; // 'I sanded it'
    const Marking marking = markOf(lesson, perfectAttempt(modelAnswer(taken, shop()), shop()));
    for (const Mark& each : marking.marks) {
        const bool mistaken =
            each.decision == DecisionPoint::SubstrateFound || each.decision == DecisionPoint::SurfaceFound;
        EXPECT_EQ(each.judged, mistaken ? Judged::Wrong : Judged::Right) << textOf(each);
    }
    EXPECT_EQ(marking.marks.front().rule, (Reason{u"a_test_tells"_s, {u"edge"_s}}));
    EXPECT_TRUE(marking.outcome.filledAStop);
    EXPECT_FALSE(marking.outcome.passed());
}

TEST(PracticeConsequence, AFillerBehindTheBestIsRight)
{
    const Lesson lesson = deliveredLesson(u"zinc_gone"_s);
    ASSERT_EQ(lesson.truth.plan.filler, FillerClass::ShortStrand);
    const ModelAnswer mixed = modelAnswerWith(FillerClass::MixedStrand, lesson.panel.truth, shop());
    const Marking marking = markOf(lesson, perfectAttempt(mixed, shop()));
    for (const Mark& each : marking.marks)
        EXPECT_EQ(each.judged, Judged::Right) << textOf(each);
    EXPECT_TRUE(marking.outcome.passed());
    EXPECT_EQ(marking.hand.plan.filler, FillerClass::MixedStrand);
}

} // namespace
} // namespace strandbench::test
