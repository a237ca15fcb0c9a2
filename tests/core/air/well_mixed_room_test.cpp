// SPDX-License-Identifier: GPL-3.0-or-later
// The room beside worked examples, and beside a general-purpose library's integration of its equation.
#include "air/well_mixed_room.h"
#include "quantity/units.h"

#include <boost/numeric/odeint.hpp>

#include <gtest/gtest.h>

#include <array>
#include <random>
#include <stdexcept>

using namespace strandbench;

namespace {

constexpr double endless = 1e9; // seconds

double milligrams(Concentration q) { return inMilligramsPerCubicMetre(q); }

/// So much a second for as long as anybody looks.
Release steady(double gramsPerSecond) { return {grams(gramsPerSecond * endless), seconds(0), seconds(endless)}; }

/// University of Southampton, worked solution on carbon monoxide in a room (EdShare, document 5370): 40 m3, 3e-3 m3/s
/// of fresh air, 1.2e-6 m3/s of gas; a share of 1.2e-4 after about 1.3 hours, 4e-4 in the end. Shares of the air obey
/// the equation as masses do; here a cubic metre of gas stands for a kilogram.
TEST(WellMixedRoom, FillsAsInTheWorkedExampleOnCarbonMonoxide)
{
    const WellMixedRoom room(cubicMetres(40), perSecond(3e-3 / 40));
    const std::vector<Release> gas{steady(1.2e-3)};
    EXPECT_NEAR(room.at(gas, seconds(4755.7)).value(), 1.2e-4, 1e-9);
    EXPECT_NEAR(4755.7 / 3600, 1.3, 0.05) << "as it is printed there";
    EXPECT_NEAR(room.at(gas, seconds(endless / 2)).value(), 4e-4, 1e-12);
}

/// One gram a minute into 6 x 6 x 3 m with 10 m3 of fresh air a minute: 100 mg/m3 in the end (G/Q), 95 % of it after
/// (V/Q) ln 20 = 32.35 minutes.
TEST(WellMixedRoom, NearsWhatIsGivenOffByWhatIsBroughtIn)
{
    const WellMixedRoom room(cubicMetres(108), perSecond(10.0 / 60 / 108));
    const std::vector<Release> solvent{steady(1.0 / 60)};
    EXPECT_NEAR(milligrams(room.at(solvent, minutes(32.35))), 95, 0.01);
    EXPECT_NEAR(milligrams(room.at(solvent, minutes(1000))), 100, 1e-6);
}

/// The dilution equation: to a tenth in 2.3026 V/Q.
TEST(WellMixedRoom, IsPurgedByTheDilutionEquation)
{
    const WellMixedRoom room(cubicMetres(75), changesPerHour(6));
    const std::vector<Release> released{{grams(3), seconds(0), minutes(10)}};
    const Duration until = minutes(10) + minutes(2.3026 * 60 / 6);
    EXPECT_NEAR(room.at(released, until).value() / room.at(released, minutes(10)).value(), 0.1, 1e-5);
}

/// A worked answer on formaldehyde (a public question-and-answer page): 100 boards of 1.4 mg an hour in 500 m3, 1000 m3
/// of fresh air an hour; 0.4 of it an hour decays, which takes it away as fresh air would. 0.117 mg/m3 in the end,
/// 0.067 after 21.35 minutes.
TEST(WellMixedRoom, TakesDecayAsMoreFreshAir)
{
    const WellMixedRoom room(cubicMetres(500), changesPerHour(1000.0 / 500 + 0.4));
    const std::vector<Release> boards{steady(100 * 1.4e-3 / 3600)};
    EXPECT_NEAR(milligrams(room.at(boards, minutes(10000))), 0.117, 0.0005);
    EXPECT_NEAR(milligrams(room.at(boards, minutes(21.35))), 0.067, 0.0005);
}

struct Dilution {
    Vapour vapour;
    double gramsOfAMillilitre;
    double ppm;
    double cubicFeetAMinute; ///< with five times the air that mixing well would ask for
};

/// ACGIH's rule for dilution (as the University of Toledo's course on industrial ventilation has it):
/// Q = 403e6 SG ER K / (MW C), in cubic feet and pints a minute. One pint an hour, K 5: 913 cubic feet for acetone at
/// 500 ppm, 14665 for styrene at 20 ppm. A fifth of that air, mixed well, must hold the level; 403 cubic feet are what
/// a pint's vapour fills at 21 degC, so that two percent are left to it.
TEST(WellMixedRoom, HoldsTheLevelOfTheRuleForDilution)
{
    constexpr double ofIt = 0.02;
    for (const Dilution& row :
         {Dilution{Vapour::Acetone, 0.79, 500, 913}, Dilution{Vapour::Styrene, 0.91, 20, 14665}}) {
        const Volume air = cubicMetres(100);
        const Volume pint = fluidOunces(16);
        const Volume cubicFoot = feet(1) * feet(1) * feet(1);
        const WellMixedRoom room(air, perSecond((row.cubicFeetAMinute / 5 / 60 * cubicFoot / air).value()));
        const std::vector<Release> solvent{steady(inMillilitres(pint) * row.gramsOfAMillilitre / 3600)};
        const Fraction level = shareOf(row.vapour, room.at(solvent, seconds(endless / 2)));
        EXPECT_NEAR(inPartsPerMillion(level), row.ppm, ofIt * row.ppm);
    }
}

/// What was given off and wholly carried away gives a mean over eight hours of M/(Q 480 min), however it was given off:
/// 2.7 g within 10 minutes, 75 m3, 7.5 m3 a minute: 0.75 mg/m3, 0.176 ppm of styrene; 22.756 mg/m3 or 5.34 ppm at most.
TEST(WellMixedRoom, MeanOfAPurgedReleaseIsItsMassOverTheAirBroughtIn)
{
    const WellMixedRoom room(cubicMetres(75), changesPerHour(6));
    const std::vector<Release> released{{grams(2.7), seconds(0), minutes(10)}};
    const Concentration mean = room.mean(released, seconds(0), minutes(480));
    EXPECT_NEAR(milligrams(mean), 0.75, 1e-9);
    EXPECT_NEAR(inPartsPerMillion(shareOf(Vapour::Styrene, mean)), 0.176, 0.0005);
    EXPECT_NEAR(milligrams(room.peak(released)), 22.756, 0.0005);
    EXPECT_NEAR(inPartsPerMillion(shareOf(Vapour::Styrene, room.peak(released))), 5.34, 0.005);
}

TEST(WellMixedRoom, WithoutFreshAirAllStaysAndWithLittleNothingJumps)
{
    const std::vector<Release> released{{grams(3), minutes(5), minutes(10)}};
    const WellMixedRoom shut(cubicMetres(60), changesPerHour(0));
    EXPECT_NEAR(milligrams(shut.at(released, minutes(500))), 50, 1e-9);
    EXPECT_NEAR(milligrams(shut.at(released, minutes(10))), 25, 1e-9);
    EXPECT_NEAR(milligrams(shut.mean(released, minutes(5), minutes(15))), 25, 1e-9);
    for (const double changes : {1e-12, 1e-9, 1e-6, 1e-3, 0.01}) {
        const WellMixedRoom nearly(cubicMetres(60), changesPerHour(changes));
        EXPECT_NEAR(milligrams(nearly.mean(released, minutes(5), minutes(15))), 25, 25 * changes) << changes;
    }
}

TEST(WellMixedRoom, OfNoSizeOrWithAirThatComesBackIsNone)
{
    EXPECT_THROW(WellMixedRoom(cubicMetres(0), changesPerHour(1)), std::logic_error);
    EXPECT_THROW(WellMixedRoom(cubicMetres(60), changesPerHour(-1)), std::logic_error);
    const WellMixedRoom room(cubicMetres(60), changesPerHour(1));
    EXPECT_THROW((void)room.mean({}, minutes(1), minutes(1)), std::logic_error);
    EXPECT_THROW((void)room.highestMean({}, minutes(0)), std::logic_error);
    EXPECT_EQ(milligrams(room.highestMean({}, minutes(15))), 0);
    EXPECT_EQ(milligrams(room.peak({})), 0);
}

/// Several releases, one over another, beside Boost.Odeint's integration of the equation; the highest value that it
/// meets is never above the peak.
TEST(WellMixedRoom, AgreesWithAnIntegrationOfItsEquation)
{
    namespace odeint = boost::numeric::odeint;
    using State = std::array<double, 2>; // kg/m3, and its integral over time
    std::mt19937 random(20261126);
    const auto between = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    for (int run = 0; run < 50; ++run) {
        const double volume = between(20, 2000);
        const double changes = between(0.1, 20);
        std::vector<Release> releases;
        std::vector<double> stops{0};
        for (int i = 0; i < 4; ++i) {
            releases.push_back({grams(between(0, 20)), seconds(between(0, 7200)), seconds(between(1, 3600))});
            stops.push_back(releases.back().from.value());
            stops.push_back(stops.back() + releases.back().lasting.value());
        }
        stops.push_back(14400);
        std::sort(stops.begin(), stops.end());
        const WellMixedRoom room(cubicMetres(volume), changesPerHour(changes));
        State state{0, 0};
        double highest = 0;
        for (std::size_t i = 1; i < stops.size(); ++i) { // smooth between these
            double given = 0;
            for (const Release& each : releases)
                if (each.from.value() < stops[i] && each.from.value() + each.lasting.value() > stops[i - 1] + 1e-9)
                    given += each.mass.value() / each.lasting.value();
            const auto slope = [&](const State& now, State& change, double) {
                change = {given / volume - changes / 3600 * now[0], now[0]};
            };
            odeint::integrate_adaptive(odeint::make_controlled<odeint::runge_kutta_dopri5<State>>(1e-15, 1e-11), slope,
                                       state, stops[i - 1], stops[i], 1.0,
                                       [&](const State& now, double) { highest = std::max(highest, now[0]); });
            EXPECT_NEAR(room.at(releases, seconds(stops[i])).value(), state[0], 1e-8 * highest) << run;
        }
        EXPECT_NEAR(room.mean(releases, seconds(0), seconds(14400)).value() * 14400, state[1], 1e-7 * state[1]) << run;
        EXPECT_LE(highest, room.peak(releases).value() * (1 + 1e-7)) << run;
        EXPECT_GE(highest, room.peak(releases).value() * (1 - 1e-7)) << run;
    }
}

/// One release shorter than the time, into a room where nothing leaves for as long as it lasts: the mean is highest
/// where concentrations at both ends of the time are alike. For C rising as 1 - exp(-k t) for T and falling after it,
/// the time w of the highest mean begins at s with 1 - exp(-k s) = (1 - exp(-k T)) exp(-k (s + w - T)).
TEST(WellMixedRoom, HighestMeanOfOneReleaseIsWhereItsEndsAreAlike)
{
    const double k = 6.0 / 3600;
    const double lasting = 600;
    const double over = 900;
    const WellMixedRoom room(cubicMetres(75), changesPerHour(6));
    const std::vector<Release> released{{grams(2.7), seconds(0), seconds(lasting)}};
    // Solved for exp(-k s), which stands on both sides once.
    const double decay = 1 / (1 + -std::expm1(-k * lasting) * std::exp(-k * (over - lasting)));
    const double begin = -std::log(decay) / k;
    const Concentration there = room.mean(released, seconds(begin), seconds(begin + over));
    EXPECT_NEAR(room.highestMean(released, seconds(over)).value() / there.value(), 1, 1e-12);
    EXPECT_GT(begin, 0);
    EXPECT_LT(begin, lasting);
}

/// Beside the highest of every second's mean, which can only be a hair lower; with air that leaves and without.
TEST(WellMixedRoom, HighestMeanIsNoLowerThanAnyMomentsMean)
{
    std::mt19937 random(915);
    const auto between = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    for (int run = 0; run < 40; ++run) {
        const WellMixedRoom room(cubicMetres(between(20, 500)), changesPerHour(run % 8 == 0 ? 0 : between(0.1, 20)));
        std::vector<Release> releases;
        for (int i = 0; i < 4; ++i)
            releases.push_back({grams(between(0, 20)), seconds(between(0, 7200)), seconds(between(1, 3600))});
        const double over = between(60, 7200);
        double tried = 0;
        for (double end = 0; end < 20000; end += 5)
            tried = std::max(tried, room.mean(releases, seconds(end - over), seconds(end)).value());
        const double highest = room.highestMean(releases, seconds(over)).value();
        EXPECT_GE(highest, tried * (1 - 1e-12)) << run;
        EXPECT_LE(highest, tried * (1 + 1e-3)) << run;
        EXPECT_LE(highest, room.peak(releases).value() * (1 + 1e-12)) << run;
    }
}

} // namespace
