// SPDX-License-Identifier: GPL-3.0-or-later
#include "mix/mix.h"
#include "mix_sheet.h"

#include <QStringList>

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

// The trade's points: common practice, no source.
struct TradePoint {
    double puddle; // in
    double bead;   // in
};

void PrintTo(const TradePoint& point, std::ostream* out) { *out << point.puddle << " in puddle"; }

class TradePoints : public testing::TestWithParam<TradePoint> {};

TEST_P(TradePoints, AreMetExactlyBothWays)
{
    EXPECT_DOUBLE_EQ(inInches(beadForPuddle(inches(GetParam().puddle))), GetParam().bead);
    EXPECT_DOUBLE_EQ(inInches(puddleForBead(inches(GetParam().bead))), GetParam().puddle);
    // In millimetres too: two inches come as 50.8.
    EXPECT_NEAR(inMillimetres(beadForPuddle(millimetres(GetParam().puddle * 25.4))), GetParam().bead * 25.4, 1e-9);
}

TEST_P(TradePoints, AreMetWithoutAStepOnEitherSide)
{
    for (const double aside : {1.0 - 1e-9, 1.0 + 1e-9})
        EXPECT_NEAR(inInches(beadForPuddle(inches(GetParam().puddle * aside))), GetParam().bead, 1e-7);
}

INSTANTIATE_TEST_SUITE_P(CommonPracticeNoSource, TradePoints,
                         testing::Values(TradePoint{2, 1}, TradePoint{4, 4}, TradePoint{8, 12}));

TEST(BeadForPuddle, IsAPowerLawFromPointToPointWithItsSlopesCarriedOn)
{
    // From 2 to 4 in and below the slope is 2 (twice as wide, four times the bead); from 4 in on it is lb 3.
    EXPECT_NEAR(inInches(beadForPuddle(inches(1))), 0.25, 1e-12);
    EXPECT_NEAR(inInches(beadForPuddle(inches(3))), 2.25, 1e-12);
    EXPECT_NEAR(inInches(beadForPuddle(inches(16))), 36.0, 1e-12);
    EXPECT_NEAR(inInches(beadForPuddle(inches(6))), 4 * std::pow(1.5, std::log2(3.0)), 1e-12);
}

TEST(BeadForPuddle, RisesAndIsUndoneByItsInverse)
{
    Length before;
    for (double mm = 5; mm <= 500; mm += 0.7) {
        const Length bead = beadForPuddle(millimetres(mm));
        EXPECT_GT(bead, before) << mm;
        EXPECT_NEAR(inMillimetres(puddleForBead(bead)), mm, 1e-9 * mm);
        before = bead;
    }
}

TEST(MixForPuddle, WeighsWhatTheBeadMeasures)
{
    // 4 in of bead at 23 mg/mm is 2.3368 g of hardener; at 2 % that is for 116.84 g of filler.
    const Mix mix = mixForPuddle(inches(4), mixSheet());
    EXPECT_NEAR(inInches(mix.bead), 4.0, 1e-12);
    EXPECT_NEAR(inGrams(mix.hardener), 2.3368, 1e-9);
    EXPECT_NEAR(inGrams(mix.filler), 116.84, 1e-9);
    EXPECT_DOUBLE_EQ(mix.hardenerShare.percent(), 2.0);
    EXPECT_NEAR(inGrams(mixForPuddle(inches(2), mixSheet()).filler), 29.21, 1e-9);
    EXPECT_NEAR(inGrams(mixForPuddle(inches(8), mixSheet()).filler), 350.52, 1e-9);
}

TEST(MixForPuddle, IsAFlatRoundPuddle)
{
    // D = 2 sqrt(m / (rho pi t)): 100 g of 1.8 g/ml, 6 mm high, are 108.58 mm across.
    ProductSheet sheet = mixSheet();
    sheet.density = gramsPerMillilitre(1.8);
    sheet.beadMass = 2.0 / 100.0 * grams(100) / beadForPuddle(millimetres(108.58));
    const Mix mix = mixForPuddle(millimetres(108.58), sheet);
    EXPECT_NEAR(inGrams(mix.filler), 100.0, 1e-9);
    EXPECT_NEAR(inMillimetres(mix.puddleHeight), 6.0, 0.001);
}

struct Bead {
    double across; // mm
    double length; // mm
};

// A bead is a cylinder, L = 4 m / (rho pi d2): 2.00 g of 1.18 g/ml, worked out apart. Half as thick is four times as
// long.
TEST(MixForFiller, LaysACylinderOfHardener)
{
    for (const Bead& bead : {Bead{5, 86.32}, Bead{6, 59.95}, Bead{8, 33.72}, Bead{2.5, 4 * 86.32}}) {
        ProductSheet sheet = mixSheet();
        const double area = std::numbers::pi / 4 * bead.across * bead.across; // mm2
        sheet.beadMass = milligramsPerMillimetre(1.18 * area);
        const Mix mix = mixForFiller(grams(100), sheet);
        EXPECT_NEAR(inGrams(mix.hardener), 2.00, 1e-9);
        EXPECT_NEAR(inMillimetres(mix.bead), bead.length, bead.across < 5 ? 0.02 : 0.005) << bead.across;
    }
}

TEST(MixForPuddle, ADenserFillerMakesALowerPuddle)
{
    ProductSheet dense = mixSheet();
    dense.density = gramsPerMillilitre(3.0);
    const Mix light = mixForPuddle(inches(4), mixSheet());
    const Mix heavy = mixForPuddle(inches(4), dense);
    EXPECT_EQ(light.filler, heavy.filler);
    EXPECT_NEAR(light.puddleHeight / heavy.puddleHeight, 2.0, 1e-12);
}

TEST(MixForFiller, ReturnsToItsPuddle)
{
    const ProductSheet sheet = mixSheet();
    double before = 0;
    for (double mm = 5; mm <= 500; mm += 2.3) {
        const Mix laid = mixForPuddle(millimetres(mm), sheet);
        const Mix weighed = mixForFiller(laid.filler, sheet);
        EXPECT_NEAR(inMillimetres(weighed.puddle), mm, 1e-9 * mm);
        EXPECT_NEAR(weighed.bead / laid.bead, 1.0, 1e-12);
        EXPECT_NEAR(weighed.hardener / laid.hardener, 1.0, 1e-12);
        EXPECT_NEAR(weighed.puddleHeight / laid.puddleHeight, 1.0, 1e-9);
        EXPECT_EQ(weighed.filler, laid.filler);
        EXPECT_GT(inGrams(laid.filler), before);
        before = inGrams(laid.filler);
    }
}

TEST(MixForFiller, KeepsRatioAndPuddleInOneAnother)
{
    for (const double each : {0.1, 1.0, 29.21, 100.0, 20000.0}) {
        const Mix mix = mixForFiller(grams(each), mixSheet());
        EXPECT_NEAR(mix.hardener / mix.filler, 0.02, 1e-12) << each;
        const double base = std::numbers::pi / 4 * inMillimetres(mix.puddle) * inMillimetres(mix.puddle);
        EXPECT_NEAR(base * inMillimetres(mix.puddleHeight) * 1.5e-3, each, 1e-9 * each);
    }
}

TEST(LaidAgain, KeepsTheMassesAndLaysThemByTheTubesOwnBead)
{
    const Mix mix = mixForPuddle(inches(4), mixSheet());
    ProductSheet fine = mixSheet();
    fine.beadMass = milligramsPerMillimetre(11.5); // half as heavy, so twice as long
    const Mix laid = laidAgain(mix, fine);
    EXPECT_EQ(laid.filler, mix.filler);
    EXPECT_EQ(laid.hardener, mix.hardener);
    EXPECT_EQ(laid.hardenerShare, mix.hardenerShare);
    EXPECT_NEAR(inInches(laid.bead), 8.0, 1e-12);
    // Between 4 and 8 in across the bead goes with the puddle to the power lb 3.
    EXPECT_NEAR(inInches(laid.puddle), 4 * std::pow(2.0, 1 / std::log2(3.0)), 1e-12);
    const double base = std::numbers::pi / 4 * inMillimetres(laid.puddle) * inMillimetres(laid.puddle);
    EXPECT_NEAR(base * inMillimetres(laid.puddleHeight) * 1.5e-3, inGrams(mix.filler), 1e-9);
}

struct AdviceRow {
    double puddle; // in
    double board;  // in
    QStringList codes;
};

void PrintTo(const AdviceRow& row, std::ostream* out) { *out << row.puddle << " in on " << row.board << " in"; }

class MixAdvice : public testing::TestWithParam<AdviceRow> {};

TEST_P(MixAdvice, NamesEveryBoundThatIsPassed)
{
    const Mix mix = mixForPuddle(millimetres(GetParam().puddle * 25.4), mixSheet());
    QStringList codes;
    for (const Reason& each : mixAdvice(mix, mixSheet(), inches(GetParam().board)))
        codes << each.code;
    EXPECT_EQ(codes.join(u' ').toStdString(), GetParam().codes.join(u' ').toStdString());
}

const QString small = u"puddle_small"_s;
const QString weigh = u"weigh_small"_s;
const QString split = u"split_large"_s;
const QString board = u"wider_than_board"_s;

// Exactly at a bound is within it.
INSTANTIATE_TEST_SUITE_P(Bounds, MixAdvice,
                         testing::Values(AdviceRow{0.99, 12, {small, weigh}}, AdviceRow{1, 12, {weigh}},
                                         AdviceRow{1.99, 12, {weigh}}, AdviceRow{2, 12, {}}, AdviceRow{4, 12, {}},
                                         AdviceRow{10, 12, {}}, AdviceRow{10.01, 12, {split}},
                                         AdviceRow{12.1, 12, {split, board}}, AdviceRow{4.1, 4, {board}},
                                         AdviceRow{4, 4, {}}));

TEST(MixAdviceArguments, AreTheFigureThenTheBound)
{
    const Mix mix = mixForPuddle(inches(0.5), mixSheet());
    const Reasons advice = mixAdvice(mix, mixSheet(), inches(10));
    ASSERT_EQ(advice.size(), 2U);
    EXPECT_EQ(advice[0].arguments, (std::vector<Argument>{mix.puddle, inches(1)}));
    EXPECT_EQ(advice[1].arguments, (std::vector<Argument>{mix.filler, smallestBeadMix(mixSheet())}));
    const Mix large = mixForPuddle(inches(12), mixSheet());
    const Reasons tooLarge = mixAdvice(large, mixSheet(), inches(11));
    ASSERT_EQ(tooLarge.size(), 2U);
    EXPECT_EQ(tooLarge[0].arguments, (std::vector<Argument>{large.puddle, inches(10)}));
    EXPECT_EQ(tooLarge[1].arguments, (std::vector<Argument>{large.puddle, inches(11)}));
}

TEST(SmallestBeadMix, IsATwoInchPuddle)
{
    EXPECT_NEAR(inGrams(smallestBeadMix(mixSheet())), 29.21, 1e-9);
    ProductSheet fine = mixSheet();
    fine.beadMass = milligramsPerMillimetre(11.5); // a finer nozzle measures half of it
    EXPECT_NEAR(inGrams(smallestBeadMix(fine)), 14.605, 1e-9);
}

} // namespace
