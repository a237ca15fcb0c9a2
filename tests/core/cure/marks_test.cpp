// SPDX-License-Identifier: GPL-3.0-or-later
// What a result says, and when it keeps silent.
#include "cases.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

TEST(CureMarks, AreEmptyBeyondTheHorizon)
{
    CureCase cureCase = skirtPanel();
    const CureResult whole = solved(cureCase);
    ASSERT_TRUE(whole.gel && whole.sand);
    cureCase.horizon = *whole.gel * 0.99;
    EXPECT_FALSE(solved(cureCase).gel);
    EXPECT_FALSE(solved(cureCase).sand);
    cureCase.horizon = *whole.gel * 1.01;
    EXPECT_TRUE(solved(cureCase).gel);
    EXPECT_FALSE(solved(cureCase).sand);
    cureCase.horizon = *whole.sand * 0.99;
    EXPECT_FALSE(solved(cureCase).sand);
    cureCase.horizon = *whole.sand * 1.01;
    EXPECT_TRUE(solved(cureCase).sand);
}

// So cold a film turns to glass before it can be sanded; it stays so for a week.
TEST(CureMarks, AreEmptyAboveTheCeiling)
{
    CureCase cureCase = heldFilm(5);
    cureCase.kinetics.law.maxConversionAtReference = 0.62; // 0.56 at 5 degC
    cureCase.horizon = seconds(7 * 24 * 3600);
    const CureResult result = solved(cureCase);
    EXPECT_TRUE(result.gel);
    EXPECT_FALSE(result.sand);
    EXPECT_LE(result.finalMean.value(), 0.56 + 1e-6);
}

TEST(CureMarks, AreZeroWhenBegunAbove)
{
    CureCase cureCase = skirtPanel();
    cureCase.initialConversion = Fraction::ofOne(0.2);
    CureResult result = solved(cureCase);
    EXPECT_EQ(secondsOf(result.gel), 0.0);
    EXPECT_GT(secondsOf(result.sand), 0.0);
    cureCase.initialConversion = Fraction::ofOne(0.7);
    result = solved(cureCase);
    EXPECT_EQ(secondsOf(result.gel), 0.0);
    EXPECT_EQ(secondsOf(result.sand), 0.0);
}

// Nothing starts a reaction that feeds on itself alone.
TEST(CureMarks, NothingComesOfNothing)
{
    CureCase cureCase = skirtPanel();
    cureCase.kinetics.k1 = perSecond(0);
    const CureResult result = solved(cureCase);
    EXPECT_FALSE(result.gel);
    EXPECT_EQ(result.finalMean.value(), 0.0);
    EXPECT_NEAR(inCelsius(result.peak), 25.0, 1e-9);
}

void expectSoundCurve(const CureCase& cureCase)
{
    const CureResult result = solved(cureCase);
    ASSERT_GE(result.curve.size(), 2U);
    EXPECT_EQ(inSeconds(result.curve.front().at), 0.0);
    EXPECT_DOUBLE_EQ(inSeconds(result.curve.back().at), inSeconds(cureCase.horizon));
    EXPECT_EQ(result.curve.back().mean, result.finalMean);
    double before = -1.0;
    Fraction cured = cureCase.initialConversion;
    double hottest = 0.0;
    for (const CurvePoint& point : result.curve) {
        EXPECT_GT(inSeconds(point.at), before);
        EXPECT_LE(inKelvin(point.hottest), inKelvin(result.peak));
        EXPECT_LE(inKelvin(point.face), inKelvin(point.hottest) + 1e-9);
        // A step's tolerance.
        EXPECT_GE(point.mean.value(), cured.value() - 2e-4);
        before = inSeconds(point.at);
        cured = point.mean;
        hottest = std::max(hottest, inKelvin(point.hottest));
    }
    EXPECT_LE(inSeconds(result.peakAt), inSeconds(cureCase.horizon));
    EXPECT_NEAR(hottest, inKelvin(result.peak), 0.5) << "the curve misses the peak";
}

TEST(CureMarks, CurveIsSound)
{
    expectSoundCurve(skirtPanel());
    CureCase thick = skirtPanel();
    thick.thickness = millimetres(25);
    expectSoundCurve(thick);
    CureCase lamp = skirtPanel();
    lamp.air = {{seconds(0), celsius(15)},
                {seconds(300), celsius(15)},
                {seconds(301), celsius(80)},
                {seconds(900), celsius(80)},
                {seconds(901), celsius(15)}};
    expectSoundCurve(lamp);
    CureCase cold = heldFilm(5);
    cold.horizon = seconds(1);
    expectSoundCurve(cold);
    CureCase week = skirtPanel();
    week.horizon = seconds(7 * 24 * 3600);
    expectSoundCurve(week);
    std::mt19937_64 random(11);
    for (int i = 0; i < 50; ++i)
        expectSoundCurve(benchCase(random));
}

TEST(CureMarks, SameCaseSameResult)
{
    std::mt19937_64 random(12);
    for (int i = 0; i < 20; ++i) {
        const CureCase cureCase = benchCase(random);
        EXPECT_EQ(solved(cureCase), solved(cureCase));
    }
}

TEST(CureMarks, ListOfOneAirIsThatAir)
{
    CureCase cureCase = skirtPanel();
    const CureResult constant = solved(cureCase);
    cureCase.air = {{seconds(10), celsius(25)}, {seconds(500), celsius(25)}, {seconds(1e6), celsius(25)}};
    const CureResult listed = solved(cureCase);
    EXPECT_NEAR(secondsOf(listed.gel), secondsOf(constant.gel), 1e-3 * secondsOf(constant.gel));
    EXPECT_NEAR(secondsOf(listed.sand), secondsOf(constant.sand), 1e-3 * secondsOf(constant.sand));
    EXPECT_NEAR(inKelvin(listed.peak), inKelvin(constant.peak), 0.05);
}

// A film follows its air: what it shows between and after the points is the list itself.
TEST(CureMarks, FilmFollowsTheBendsOfItsAir)
{
    CureCase film = heldFilm(15);
    film.air = {{seconds(100), celsius(15)},
                {seconds(101), celsius(60)},
                {seconds(400), celsius(60)},
                {seconds(700), celsius(30)}};
    film.kinetics.k1 = perSecond(1e-9);
    film.kinetics.k2 = perSecond(0);
    film.horizon = seconds(1000);
    const auto air = [](double second) {
        if (second <= 100)
            return 15.0;
        if (second <= 101)
            return 15.0 + 45.0 * (second - 100);
        return second <= 400 ? 60.0 : std::max(30.0, 60.0 - 0.1 * (second - 400));
    };
    int onTheStep = 0;
    for (const CurvePoint& point : solved(film).curve) {
        const double second = inSeconds(point.at);
        // 0.1 mm evens out within tens of milliseconds, and the step rises by 45 K/s.
        EXPECT_NEAR(inCelsius(point.face), air(second), second > 100 && second < 101.5 ? 2.0 : 0.05) << second;
        onTheStep += second > 100 && second <= 101;
    }
    EXPECT_GE(onTheStep, 1) << "no point on the step";
}

// A lamp that comes on as a step is the warm air from then on: the time saved is its own.
TEST(CureMarks, LampBringsTheGelForward)
{
    CureCase film = heldFilm(15);
    film.horizon = seconds(12 * 3600);
    const double cold = secondsOf(solved(film).gel);
    CureCase hot = heldFilm(60);
    hot.horizon = film.horizon;
    const double warm = secondsOf(solved(hot).gel);
    const double half = cold / 2.0;
    film.air = {{seconds(0), celsius(15)}, {seconds(half), celsius(15)}, {seconds(half + 0.01), celsius(60)}};
    const double gel = secondsOf(solved(film).gel);
    EXPECT_GT(gel, half);
    EXPECT_LT(gel, half + warm);
    film.air = {{seconds(0), celsius(15)}, {seconds(cold * 1.1), celsius(15)}, {seconds(cold * 1.1 + 1), celsius(60)}};
    EXPECT_NEAR(secondsOf(solved(film).gel), cold, 1e-3 * cold) << "a lamp after the gel changed it";
}

// Steel draws the heat out, board keeps it in; what lies next to the filler counts most.
TEST(CureMarks, StackRunsFromBackToFront)
{
    CureCase cureCase = skirtPanel();
    const StackLayer sheet = layerOf(steel(), 3, 25);
    const StackLayer panel = layerOf(board(), 12, 25);
    const auto peakOn = [&](std::vector<StackLayer> stack) {
        cureCase.stack = std::move(stack);
        return inCelsius(solved(cureCase).peak);
    };
    const double onSteel = peakOn({panel, sheet});
    const double onBoard = peakOn({sheet, panel});
    EXPECT_GT(onBoard, onSteel + 10.0);
    EXPECT_NEAR(onSteel, peakOn({sheet}), 0.25 * (onBoard - onSteel));
    // The faces: a back that is blown upon cools more than a still one, behind thin steel.
    cureCase.back = wattsPerSquareMetreKelvin(0);
    const double still = peakOn({layerOf(steel(), 0.8, 25)});
    cureCase.back = wattsPerSquareMetreKelvin(200);
    EXPECT_LT(peakOn({layerOf(steel(), 0.8, 25)}), still - 5.0);
}

TEST(CureMarks, StoppingEarlyFindsTheSame)
{
    std::mt19937_64 random(13);
    for (int i = 0; i < 50; ++i) {
        SCOPED_TRACE(i);
        const CureCase cureCase = benchCase(random);
        const CureResult whole = solved(cureCase);
        const CureResult marks = solved(cureCase, {.cells = {}, .until = CureUntil::Marks});
        const CureResult peak = solved(cureCase, {.cells = {}, .until = CureUntil::Peak});
        EXPECT_EQ(marks.gel, whole.gel);
        EXPECT_EQ(marks.sand, whole.sand);
        EXPECT_EQ(peak.gel, whole.gel);
        EXPECT_EQ(peak.sand, whole.sand);
        EXPECT_EQ(peak.peak, whole.peak);
        EXPECT_EQ(peak.peakAt, whole.peakAt);
        EXPECT_LE(marks.steps, peak.steps);
        EXPECT_LE(peak.steps, whole.steps);
    }
}

} // namespace
} // namespace strandbench::test
