// SPDX-License-Identifier: GPL-3.0-or-later
// What the work gives off beside the box's analytic solution, with its mass balance, and beside the published limits.
#include "air/emission.h"
#include "air/shop_air.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <stdexcept>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

double ppm(Fraction share) { return inPartsPerMillion(share); }

ShopRoom roomOf(double cubic, double changes)
{
    ShopRoom room;
    room.air = cubicMetres(cubic);
    room.changes = changesPerHour(changes);
    return room;
}

/// 400 g of a filler with 15 % of styrene, given off evenly in 300 s into 200 m3 with two changes an hour: at 300 s it
/// is G/(kV) (1 - exp(-k 300 s)). 40 CFR 63, Subpart VVVV, Table 3 has 0.014 15^2.275 and 0.445 15^1.675 kg of a
/// megagram.
TEST(ShopAir, OfOneBatchIsTheBoxesAnalyticSolution)
{
    const ShopAir air(roomOf(200, 2), {{{grams(400), Fraction::ofHundred(15), minutes(10), seconds(300)}}, {}});
    const double k = 2.0 / 3600;
    const auto at = [&](double shareGivenOff) {
        const double perSecond = 0.4 * shareGivenOff / 300; // kg
        const double level = perSecond / (k * 200) * -std::expm1(-k * 300);
        return level * 1e6 / (104.15 / 24.45);
    };
    const VapourRange end = air.at(Vapour::Styrene, minutes(15));
    EXPECT_NEAR(ppm(end.least), at(0.014e-3 * std::pow(15, 2.275)), 1e-9);
    EXPECT_NEAR(ppm(end.most), at(0.445e-3 * std::pow(15, 1.675)), 1e-9);
    EXPECT_EQ(ppm(air.at(Vapour::Styrene, minutes(10)).most), 0);
    EXPECT_NEAR(ppm(air.peak(Vapour::Styrene).most), ppm(end.most), 1e-9);
    EXPECT_NEAR(ppm(air.at(Vapour::Styrene, minutes(45)).most), ppm(end.most) * std::exp(-k * 1800), 1e-9);
    EXPECT_FALSE(air.gaveOff(Vapour::Acetone));
    EXPECT_EQ(ppm(air.peak(Vapour::Acetone).most), 0);
}

/// A wipe gives off all that it takes: with nothing leaving, mass over volume stays.
TEST(ShopAir, OfAWipeIsAllOfItsSolvent)
{
    ShopRoom room = roomOf(100, 0);
    room.wipe = grams(20);
    room.wipeGone = minutes(5);
    const ShopAir air(room, {{}, {{Vapour::Acetone, minutes(1)}, {Vapour::Naphtha, minutes(2)}}});
    const double acetone = 200 / (58.08 / 24.45); // 200 mg/m3
    EXPECT_NEAR(ppm(air.at(Vapour::Acetone, minutes(6)).least), acetone, 1e-9);
    EXPECT_NEAR(ppm(air.at(Vapour::Acetone, minutes(600)).most), acetone, 1e-9);
    EXPECT_NEAR(ppm(air.at(Vapour::Acetone, minutes(3.5)).most), acetone / 2, 1e-9);
    EXPECT_NEAR(ppm(air.highestMean(Vapour::Naphtha, minutes(15)).most), 200 / (99 / 24.45), 1e-9);
}

/// What was given off is what is still there and what the air that left took with it: V C(t) + k V (integral of C).
TEST(ShopAir, LosesNoMass) // invariant
{
    std::mt19937 random(8);
    const auto between = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    for (int run = 0; run < 50; ++run) {
        const double cubic = between(20, 2000);
        const double changes = between(0.1, 20);
        WorkInRoom work;
        double given = 0; // g
        for (int i = 0; i < 6; ++i) {
            const double filler = between(1, 900);
            const double percent = between(5, 45);
            work.fillers.push_back(
                {grams(filler), Fraction::ofHundred(percent), minutes(between(0, 400)), minutes(between(1, 20))});
            given += filler * styreneGivenOff(Spreading::GelCoat, Fraction::ofHundred(percent)).value();
        }
        const ShopAir air(roomOf(cubic, changes), work);
        const auto level = [&](double minute) { // g/m3
            return inMilligramsPerCubicMetre(
                       concentrationOf(Vapour::Styrene, air.at(Vapour::Styrene, minutes(minute)).most)) /
                   1000;
        };
        const double end = 421;
        double taken = 0; // by Simpson's rule, g
        const int parts = 8000;
        for (int i = 0; i <= parts; ++i)
            taken += level(end * i / parts) * (i == 0 || i == parts ? 1 : i % 2 ? 4 : 2);
        taken *= end / parts / 3 * changes / 60 * cubic;
        EXPECT_NEAR(level(end) * cubic + taken, given, 1e-3 * given) << run;
        // The mean over all its time, however long, is at most the highest of its time.
        EXPECT_GE(air.highestMean(Vapour::Styrene, minutes(15)).most.value(),
                  air.highestMean(Vapour::Styrene, minutes(480)).most.value());
        EXPECT_GE(air.peak(Vapour::Styrene).most.value() * (1 + 1e-12),
                  air.highestMean(Vapour::Styrene, minutes(15)).most.value());
    }
}

TEST(ShopAir, GivesOffMoreWithMoreAndLessIntoMoreAir) // metamorphic
{
    const auto peak = [](double cubic, double changes, double filler) {
        const FillerSpread spread{grams(filler), Fraction::ofHundred(15), minutes(0), minutes(5)};
        return ppm(ShopAir(roomOf(cubic, changes), {{spread}, {}}).peak(Vapour::Styrene).most);
    };
    EXPECT_LT(peak(400, 2, 300), peak(200, 2, 300));
    EXPECT_LT(peak(200, 6, 300), peak(200, 2, 300));
    EXPECT_NEAR(peak(200, 2, 600), 2 * peak(200, 2, 300), 1e-9);
}

TEST(ShopAir, StandsBesideEachLimitOfItsOwnKind)
{
    const ShopAir air(roomOf(60, 1), {{{grams(1500), Fraction::ofHundred(17), minutes(0), minutes(6)}}, {}});
    const std::vector<LimitBeside> beside = air.besideLimits(Vapour::Styrene);
    ASSERT_EQ(beside.size(), 8U);
    for (const LimitBeside& each : beside) {
        const VapourRange box = air.ofKind(Vapour::Styrene, each.limit.kind);
        EXPECT_EQ(each.box.most, box.most);
        EXPECT_LE(each.box.least, each.box.most);
        EXPECT_EQ(each.lies == BesideIt::Above, each.box.least > each.limit.level) << qPrintable(each.limit.name);
        EXPECT_EQ(each.lies == BesideIt::Below, each.box.most <= each.limit.level) << qPrintable(each.limit.name);
        EXPECT_EQ(each.limit.vapour, Vapour::Styrene);
    }
    // Enough of it in a small room: all three are met.
    const auto found = [&](BesideIt lies) {
        return std::count_if(beside.begin(), beside.end(), [&](const LimitBeside& each) { return each.lies == lies; });
    };
    EXPECT_GT(found(BesideIt::Below), 0);
    EXPECT_GT(found(BesideIt::MayBeAbove), 0);
    EXPECT_GT(found(BesideIt::Above), 0);
}

/// 29 CFR 1910.1000: an eight-hour average (Table Z-1), a peak of five minutes (Table Z-2, styrene); short-term limits
/// are of fifteen minutes (NIOSH). A release that is gone soon tells these times apart.
TEST(ShopAir, TakesTheTimeThatEachKindOfLimitIsAbout)
{
    const ShopAir air(roomOf(60, 20), {{{grams(800), Fraction::ofHundred(17), minutes(0), minutes(2)}}, {}});
    const auto mean = [&](double over) { return air.highestMean(Vapour::Styrene, minutes(over)).most; };
    const auto most = [&](LimitKind kind) { return air.ofKind(Vapour::Styrene, kind).most; };
    EXPECT_EQ(most(LimitKind::TimeWeighted), mean(480));
    EXPECT_EQ(most(LimitKind::ShortTerm), mean(15));
    EXPECT_EQ(most(LimitKind::Peak), mean(5));
    EXPECT_EQ(most(LimitKind::Ceiling), air.peak(Vapour::Styrene).most);
    EXPECT_EQ(most(LimitKind::LifeOrHealth), air.peak(Vapour::Styrene).most);
    EXPECT_LT(ppm(mean(480)) * 10, ppm(mean(15)));
    EXPECT_LT(ppm(mean(15)) * 1.5, ppm(mean(5)));
    EXPECT_LT(ppm(mean(5)) * 1.1, ppm(air.peak(Vapour::Styrene).most));
}

/// 29 CFR 1910.1000(d)(2): the shares of the limits are summed: each alone may lie below, and all together above.
TEST(ShopAir, OfAMixtureIsTheSumOfShares)
{
    ShopRoom room = roomOf(50, 0);
    room.wipe = grams(50);
    const ShopAir air(room, {{{grams(500), Fraction::ofHundred(15), minutes(0), minutes(6)}},
                             {{Vapour::Acetone, minutes(0)}, {Vapour::Naphtha, minutes(0)}}});
    const auto share = [&](Vapour vapour, double limit) {
        return ppm(air.ofKind(vapour, LimitKind::TimeWeighted).most) / limit;
    };
    EXPECT_NEAR(air.ofMixtureLimit(u"OSHA PEL"_s).most.value(),
                share(Vapour::Styrene, 100) + share(Vapour::Acetone, 1000) + share(Vapour::Naphtha, 500), 1e-12);
    EXPECT_EQ(ShopAir(room, {}).ofMixtureLimit(u"OSHA PEL"_s).most, Fraction());
}

TEST(ShopAir, WithoutStyreneGivesOffNoneAndAnImpossibleFillerIsADefect)
{
    const auto of = [](double percent) {
        return ShopAir({}, {{{grams(100), Fraction::ofHundred(percent), minutes(0), minutes(5)}}, {}});
    };
    EXPECT_FALSE(of(0).gaveOff(Vapour::Styrene));
    EXPECT_TRUE(of(1).gaveOff(Vapour::Styrene));
    EXPECT_THROW((void)of(61), std::logic_error);
    EXPECT_THROW(ShopAir(roomOf(0, 1), {}), std::logic_error);
}

} // namespace
