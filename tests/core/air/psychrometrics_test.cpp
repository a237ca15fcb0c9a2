// SPDX-License-Identifier: GPL-3.0-or-later
// The dew point beside two published formulations of the saturation pressure, over all air that a bench may meet.
#include "air/gate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iomanip>
#include <iostream>
#include <sstream>

using namespace strandbench;

namespace {

using Saturation = double (*)(double kelvins); // Pa over water

/// IAPWS-IF97, region 4, equation 30 (revised release of 2007, coefficients of its table 34): 273.15 to 647.096 K.
double saturationIf97(double kelvins)
{
    constexpr double n[] = {0.11670521452767e4,  -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5,
                            -0.32325550322333e7, 0.14915108613530e2,  -0.48232657361591e4, 0.40511340542057e6,
                            -0.23855557567849,   0.65017534844798e3};
    const double t = kelvins + n[8] / (kelvins - n[9]);
    const double a = t * t + n[0] * t + n[1];
    const double b = n[2] * t * t + n[3] * t + n[4];
    const double c = n[5] * t * t + n[6] * t + n[7];
    return 1e6 * std::pow(2 * c / (-b + std::sqrt(b * b - 4 * a * c)), 4);
}

/// Hyland and Wexler 1983 (ASHRAE Trans. 89(2A), 500-519), as ASHRAE Handbook - Fundamentals, ch. 1, equation 6, has
/// it: 0 to 200 degC.
double saturationHylandWexler(double kelvins)
{
    return std::exp(-5.8002206e3 / kelvins + 1.3914993 - 4.8640239e-2 * kelvins + 4.1764768e-5 * kelvins * kelvins -
                    1.4452093e-8 * kelvins * kelvins * kelvins + 6.5459673 * std::log(kelvins));
}

/// The temperature whose saturation pressure is that of the air's water, by halving.
double dewPointBy(Saturation saturation, double air, double percent)
{
    const double wanted = percent / 100 * saturation(air + 273.15);
    double low = 273.15 - 1;
    double high = air + 273.15;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (saturation(middle) < wanted ? low : high) = middle;
    }
    return (low + high) / 2 - 273.15;
}

struct Largest {
    double difference = 0; // K
    double air = 0;        // degC
    double percent = 0;
    int compared = 0;
};

/// The largest difference of the dew point, of air between two temperatures, 5 to 100 % humid; where the dew point is
/// below 0 degC, where both formulations end, nothing is compared.
Largest largestDifference(Saturation saturation, double coldest, double hottest)
{
    Largest largest;
    for (double air = coldest; air <= hottest + 1e-9; air += 0.25)
        for (double percent = 5; percent <= 100; percent += 0.5) {
            const double by = dewPointBy(saturation, air, percent);
            if (by < 0)
                continue;
            ++largest.compared;
            const double difference = std::abs(inCelsius(dewPoint(celsius(air), Fraction::ofHundred(percent))) - by);
            if (difference > largest.difference)
                largest = {difference, air, percent, largest.compared};
        }
    return largest;
}

/// Holds the dew point to a formulation, and says by how much it is off at most.
void compare(const char* name, Saturation saturation)
{
    const Largest bench = largestDifference(saturation, 10, 35);
    const Largest whole = largestDifference(saturation, 0, 45);
    const auto told = [name](const char* range, const Largest& of) {
        std::ostringstream figure;
        figure << std::fixed << std::setprecision(4) << of.difference;
        std::cout << "dew point beside " << name << ", air " << range << ", RH 5-100 %: at most " << figure.str()
                  << " K off (at " << of.air << " degC, " << of.percent << " %; " << of.compared << " compared)\n";
        testing::Test::RecordProperty(std::string("largest_K_") + range, figure.str());
    };
    told("10-35_degC", bench);
    told("0-45_degC", whole);
    EXPECT_LE(bench.difference, 0.05);
    EXPECT_LE(whole.difference, 0.05);
    EXPECT_GT(bench.compared, 10000);
    EXPECT_GT(whole.compared, bench.compared);
}

/// The release's own check values, its table 35: 300, 500 and 600 K.
TEST(Psychrometrics, If97GivesItsPublishedCheckValues)
{
    EXPECT_NEAR(saturationIf97(300) / 1e6, 0.353658941e-2, 0.5e-11);
    EXPECT_NEAR(saturationIf97(500) / 1e6, 2.63889776, 0.5e-8);
    EXPECT_NEAR(saturationIf97(600) / 1e6, 12.3443146, 0.5e-7);
}

/// ASHRAE Handbook - Fundamentals 2017, ch. 1, table 3, as psychrolib's own tests quote it, and as closely.
TEST(Psychrometrics, HylandAndWexlerGiveTheTabulatedPressures)
{
    constexpr double share = 300e-6;
    for (const auto& [air, pascals] : {std::pair{5.0, 872.6}, {25.0, 3169.7}, {50.0, 12351.3}})
        EXPECT_NEAR(saturationHylandWexler(air + 273.15), pascals, share * pascals) << air;
}

/// psychrolib 1.1.1 solves the same formulation; its pressures to their two decimals.
TEST(Psychrometrics, HylandAndWexlerAreAsTheLibraryHasThem)
{
    for (const auto& [air, pascals] : {std::pair{5.0, 872.49}, {25.0, 3169.22}, {50.0, 12349.86}})
        EXPECT_NEAR(saturationHylandWexler(air + 273.15), pascals, 0.005) << air;
}

TEST(Psychrometrics, DewPointBesideIf97) { compare("IAPWS-IF97", saturationIf97); }

TEST(Psychrometrics, DewPointBesideHylandAndWexler) { compare("Hyland and Wexler 1983", saturationHylandWexler); }

/// psychrolib 1.1.1 found 0.017 K at most, for air of 0 to 45 degC on a coarser grid; it is 0.0184 K on this one, in
/// hot and dry air, and 0.015 K where filling happens.
TEST(Psychrometrics, DewPointIsAsNearAsItsHeaderSays)
{
    EXPECT_LE(largestDifference(saturationHylandWexler, 10, 35).difference, 0.015);
    EXPECT_LE(largestDifference(saturationHylandWexler, 0, 45).difference, 0.0185);
}

/// What is left out above: a dew point below freezing stops no panel that is warm enough to be filled.
TEST(Psychrometrics, ADewPointBelowFreezingStopsNoPanelThatMayBeFilled)
{
    int below = 0;
    for (double air = 0; air <= 45; air += 0.25)
        for (double percent = 5; percent <= 100; percent += 0.5) {
            if (dewPointBy(saturationIf97, air, percent) >= 0)
                continue;
            ++below;
            const AirVerdict verdict = judgeAir({celsius(air), celsius(10), Fraction::ofHundred(percent)});
            EXPECT_GT(inKelvinStep(verdict.margin), 9.9) << air << " degC, " << percent << " %";
        }
    EXPECT_GT(below, 100);
}

} // namespace
