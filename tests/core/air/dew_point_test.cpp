// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/gate.h"

#include <gtest/gtest.h>

#include <stdexcept>

using namespace strandbench;

namespace {

struct Row {
    double air;      // °C
    double humidity; // %
    double dewPoint; // °C
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.air << " °C, " << row.humidity << " %"; }

Temperature dewPointOf(const Row& row) { return dewPoint(celsius(row.air), Fraction::ofHundred(row.humidity)); }

class DewPoint : public testing::TestWithParam<Row> {};

/// The form is within 0.0185 K of the ASHRAE 2017 formulation at and above 0 °C; a row is given to 0.01 K, and
/// its humidity to 0.01 %.
TEST_P(DewPoint, IsThePublishedOne) { EXPECT_NEAR(inCelsius(dewPointOf(GetParam())), GetParam().dewPoint, 0.025); }

// Exact by construction: the humidity is the quotient of two saturation pressures, ASHRAE Handbook -
// Fundamentals 2017, ch. 1; the first from its Table 3 (872.6 Pa at 5 °C, 3169.7 Pa at 25 °C).
INSTANTIATE_TEST_SUITE_P(Ashrae2017SaturationPressures, DewPoint,
                         testing::Values(Row{25, 27.53, 5}, Row{15, 51.16, 5}, Row{20, 52.51, 10}, Row{25, 53.81, 15},
                                         Row{30, 55.08, 20}, Row{35, 56.31, 25}, Row{20, 82.86, 17}));

// The library psychrolib 1.1.1, which solves the ASHRAE 2017 formulation.
INSTANTIATE_TEST_SUITE_P(Psychrolib, DewPoint,
                         testing::Values(Row{5, 80, 1.84}, Row{10, 70, 4.79}, Row{15, 60, 7.31}, Row{15, 85, 12.50},
                                         Row{20, 50, 9.27}, Row{20, 60, 12.01}, Row{20, 85, 17.40}, Row{23, 50, 12.03},
                                         Row{25, 60, 16.70}, Row{25, 85, 22.30}, Row{30, 40, 14.94}, Row{30, 70, 23.93},
                                         Row{35, 55, 24.61}, Row{40, 30, 19.13}));

TEST(DewPointOf, AshraeExample1)
{
    // ASHRAE Handbook - Fundamentals 2017, ch. 1, example 1: 40 °C, 20 °C wet bulb, RH 14 %: dew point 7 °C,
    // read off a chart; psychrolib's own test allows 0.5 K.
    EXPECT_NEAR(inCelsius(dewPointOf({40, 14, 7})), 7.0, 0.5);
}

TEST(DewPointOf, FollowsTheRuleOfThumb)
{
    // Lawrence 2005, Bull. Amer. Meteor. Soc. 86, 225-233: above 50 % about 1 K for every 5 %.
    for (double humidity = 55; humidity <= 100; humidity += 5)
        EXPECT_NEAR(inCelsius(dewPointOf({20, humidity, 0})), 20 - (100 - humidity) / 5, 1.0) << humidity;
}

TEST(DewPointOf, SaturatedAirIsTheAirItself)
{
    for (double air = -10; air <= 45; air += 5)
        EXPECT_NEAR(inCelsius(dewPointOf({air, 100, 0})), air, 1e-9);
}

TEST(DewPointOf, RisesWithHumidityAndWithAir)
{
    for (double humidity = 2; humidity <= 100; humidity += 1) {
        EXPECT_GT(dewPointOf({20, humidity, 0}), dewPointOf({20, humidity - 1, 0})) << humidity;
        EXPECT_GT(dewPointOf({21, humidity, 0}), dewPointOf({20, humidity, 0})) << humidity;
        EXPECT_LE(dewPointOf({20, humidity, 0}), celsius(20 + 1e-9)) << humidity;
    }
}

TEST(DewPointOf, HumidityOutsideItsDefinitionIsADefect)
{
    for (const double humidity : {0.0, -5.0, 100.1})
        EXPECT_THROW((void)dewPointOf({20, humidity, 0}), std::logic_error) << humidity;
}

} // namespace
