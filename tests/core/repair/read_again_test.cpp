// SPDX-License-Identifier: GPL-3.0-or-later
// Readings while a batch cures, over the real engine.
#include "repair/read_again.h"

#include "repair_script.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "learning/at_rate.h"
#include "learning/product.h"
#include "plan/forecast.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench {
namespace {

/// 3 mm of mixed strand on 0.8 mm of steel, mixed in air and on a panel of 20 degC.
class Curing : public testing::Test {
protected:
    Curing()
    {
        m_run.mixed.sheetId = m_sheet.id;
        m_run.mixed.filler = grams(40);
        m_run.mixed.hardener = grams(0.8);
        m_run.hardenerIn = test::moment(0);
        Batch batch;
        batch.mix = mixForFiller(grams(40), m_sheet);
        CureCase layer;
        layer.thickness = millimetres(3);
        layer.stack = {{millimetres(0.8), m_set.assumptions.steel, celsius(20)}};
        const auto forecast = forecastBatch({batch, layer, m_sheet}, read(20, 20), m_sheet.hardenerNominal, m_engine,
                                            {priorOf(m_sheet), 0, 0});
        m_run.mixed.times = forecast->times;
        m_run.mixed.cureCase = forecast->cureCase;
        m_run.mixed.howSure = forecast->howSure;
    }
    [[nodiscard]] static Reading read(double air, double panel)
    {
        return {celsius(air), celsius(panel), Fraction::ofHundred(50)};
    }
    [[nodiscard]] std::optional<PredictedAgain> again(double air, double panel, int second) const
    {
        return predictAgain(m_run, read(air, panel), test::moment(second), m_set);
    }
    /// The reading is told.
    void tell(double air, double panel, int second)
    {
        const auto told = again(air, panel, second);
        ASSERT_TRUE(told);
        m_run.readAgain = told;
        m_run.readAgainAt = test::moment(second);
    }
    [[nodiscard]] double sand() const { return inSeconds(m_run.times().sand); }

    CureEngine m_engine;
    const ProductSheet& m_sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    PlanningSet m_set{builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, m_engine};
    BatchRun m_run;
};

TEST_F(Curing, AsItWasNothingChanges)
{
    const auto same = again(20, 20, 200);
    ASSERT_TRUE(same);
    EXPECT_EQ(same->times, m_run.mixed.times);
    EXPECT_EQ(same->howSure, *m_run.mixed.howSure);
    EXPECT_EQ(same->cureCase, *m_run.mixed.cureCase);
}

TEST_F(Curing, AWarmerShopSandsEarlierAndAColderLater)
{
    EXPECT_LT(again(30, 20, 200)->times.sand, m_run.times().sand);
    EXPECT_GT(again(8, 20, 200)->times.sand, m_run.times().sand);
}

/// The later the door opens the less it changes; what has gelled has gelled.
TEST_F(Curing, ItGoesOnFromTheStateReached)
{
    const double before = sand();
    const double early = before - inSeconds(again(30, 20, 60)->times.sand);
    const double late = before - inSeconds(again(30, 20, 400)->times.sand);
    EXPECT_GT(early, late);
    EXPECT_GT(late, 0);
    const int gelled = static_cast<int>(inSeconds(m_run.times().gel)) + 20;
    EXPECT_NEAR(inSeconds(again(35, 35, gelled)->times.gel), inSeconds(m_run.times().gel), 0.5);
}

/// A bare panel follows the air as one lump (Incropera et al., 5.1): 0.8 mm of steel, 7850 kg/m3 and 434 J/(kg K),
/// loses 18 W/(m2 K) to both sides: tau = 7850 * 434 * 0.0008 / 18 = 151 s.
TEST_F(Curing, APanelReadWarmIsExpectedToCool)
{
    tell(20, 32, 100);
    const double tau = 7850 * 434 * 0.0008 / 18;
    EXPECT_NEAR(inCelsius(panelByNow(m_run, seconds(100))), 32, 1e-9);
    EXPECT_NEAR(inCelsius(panelByNow(m_run, seconds(100 + tau))), 20 + 12 / std::exp(1.0), 0.05);
    EXPECT_NEAR(inCelsius(panelByNow(m_run, seconds(5000))), 20, 0.01);
    // Read as it was expected, it changes nothing more.
    const double expected = inCelsius(panelByNow(m_run, seconds(250)));
    EXPECT_NEAR(inSeconds(again(20, expected, 250)->times.sand), sand(), 0.2);
}

/// A lamp: the panel is warmer than it should be. Whether it stays on nobody told, so the early end moves further.
TEST_F(Curing, UnderALampTheEarlyEndReckonsThatItStays)
{
    const auto lamp = again(20, 35, 200);
    ASSERT_TRUE(lamp);
    EXPECT_LT(lamp->times.sand, m_run.times().sand);
    // As early as the fast end of one that was read in air so warm; the late end is of one whose lamp went.
    const Belief& rate = m_run.howSure()->rate;
    const LogRateRange ends = middleOf(rate, Fraction::ofHundred(90));
    const auto sandAt = [&](const CureCase& of, LogRate end) {
        return inSeconds(m_engine.solve(atRate(of, end))->sand);
    };
    EXPECT_NEAR(inSeconds(lamp->howSure.early.sand), sandAt(again(35, 35, 200)->cureCase, ends.high), 0.2);
    EXPECT_NEAR(inSeconds(lamp->howSure.late.sand), sandAt(lamp->cureCase, ends.low), 0.2);
    const auto draught = again(20, 12, 200);
    EXPECT_NEAR(inSeconds(draught->howSure.late.sand), sandAt(again(12, 12, 200)->cureCase, ends.low), 0.2);
    EXPECT_NEAR(inSeconds(draught->howSure.early.sand), sandAt(draught->cureCase, ends.high), 0.2);
}

/// The belief is the batch's own and stays what it was; the sheet's times go with the air, for gels are held
/// against them.
TEST_F(Curing, TheSheetsTimesAreOfTheSameAir)
{
    const auto warm = again(30, 20, 60);
    EXPECT_EQ(warm->howSure.rate, m_run.howSure()->rate);
    EXPECT_EQ(warm->howSure.sheet.sand, warm->times.sand) << "this lot cures as its sheet says";
    EXPECT_LT(warm->howSure.sheet.boardGel, m_run.howSure()->sheet.boardGel) << "the puddle stands in it too";
}

TEST_F(Curing, ReadingsFollowOnOneAnother)
{
    tell(28, 25, 100);
    const double once = sand();
    tell(20, 22, 200);
    EXPECT_GT(sand(), once);
    EXPECT_EQ(m_run.cureCase()->found.size(), 2U);
    EXPECT_EQ(m_run.cureCase()->air.size(), 5U);
}

TEST_F(Curing, WhatSandsOrCameFromNoCureIsNotPredicted)
{
    BatchRun old = m_run;
    old.mixed.howSure.reset();
    EXPECT_FALSE(predictAgain(old, read(20, 20), test::moment(100), m_set));
    m_run.sands = test::moment(900);
    EXPECT_FALSE(again(20, 20, 1000));
}

} // namespace
} // namespace strandbench
