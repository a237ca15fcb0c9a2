// SPDX-License-Identifier: GPL-3.0-or-later
// Conversions against NIST SP 811 (2008), appendix B.8, where the factors below are printed as exact, and
// against definitions that they follow from.
#include "quantity/units.h"

#include <gtest/gtest.h>

using namespace strandbench;

namespace {

TEST(Conversion, LengthIsNistSp811)
{
    EXPECT_DOUBLE_EQ(inMillimetres(inches(1)), 25.4);
    EXPECT_DOUBLE_EQ(inMillimetres(feet(1)), 304.8);
    EXPECT_DOUBLE_EQ(inInches(millimetres(254)), 10.0);
}

TEST(Conversion, MassIsNistSp811)
{
    EXPECT_DOUBLE_EQ(inGrams(pounds(1)), 453.59237);
    EXPECT_DOUBLE_EQ(inGrams(ounces(16)), 453.59237); // sixteen to the pound
    EXPECT_DOUBLE_EQ(inOunces(pounds(1)), 16.0);
    EXPECT_DOUBLE_EQ(inPounds(grams(453.59237)), 1.0);
}

TEST(Conversion, VolumeIsNistSp811)
{
    // A US pint is 16 fl oz: 473.1765 ml in SP 811's seven figures.
    EXPECT_NEAR(inMillilitres(fluidOunces(16)), 473.1765, 5e-5);
    // A US gallon is 231 cubic inches by definition and 128 fl oz.
    const Volume gallon = inches(21) * inches(11) * inches(1);
    EXPECT_NEAR(inFluidOunces(gallon), 128.0, 1e-9);
}

TEST(Conversion, TemperatureIsNistSp811)
{
    EXPECT_DOUBLE_EQ(inCelsius(fahrenheit(32)), 0.0);
    EXPECT_NEAR(inCelsius(fahrenheit(212)), 100.0, 1e-12);
    EXPECT_NEAR(inFahrenheit(celsius(-40)), -40.0, 1e-12);
    EXPECT_DOUBLE_EQ(inKelvin(celsius(0)), 273.15);
    EXPECT_DOUBLE_EQ(inFahrenheitStep(kelvinStep(5)), 9.0);
}

/// Everything typed in one system and read in it comes back; both ways, over five decades.
TEST(Conversion, RoundTripsWithinRounding)
{
    for (double value = 1e-2; value < 1e3; value *= 1.37) {
        EXPECT_NEAR(inInches(inches(value)), value, 1e-12 * value);
        EXPECT_NEAR(inOunces(ounces(value)), value, 1e-12 * value);
        EXPECT_NEAR(inFluidOunces(fluidOunces(value)), value, 1e-12 * value);
        EXPECT_NEAR(inFahrenheit(fahrenheit(value)), value, 1e-10);
    }
}

} // namespace
