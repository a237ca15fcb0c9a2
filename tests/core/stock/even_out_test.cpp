// SPDX-License-Identifier: GPL-3.0-or-later
// How long a tub from the cold takes, against the table of the textbook, against a series with many terms, and against
// a balance of heat.
#include "stock/even_out.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

namespace strandbench {
namespace {

constexpr double airHeat = 8; // W/(m2 K)
const Package tub{grams(1000), gramsPerMillilitre(1.45), joulesPerKilogramKelvin(1250), wattsPerMetreKelvin(0.38)};

/// Incropera, Fundamentals of Heat and Mass Transfer, table 5.1, columns of the infinite cylinder. From memory: mark C.
TEST(EvenOut, FirstTermIsTheTables)
{
    const struct {
        double biot;
        double zeta;
        double c1;
    } rows[] = {{0.01, 0.1412, 1.0025}, {0.1, 0.4417, 1.0246}, {0.5, 0.9408, 1.1143}, {1, 1.2558, 1.2071},
                {2, 1.5995, 1.3384},    {5, 1.9898, 1.5029},   {10, 2.1795, 1.5677},  {100, 2.3809, 1.6015}};
    for (const auto& row : rows) {
        const CylinderTerm term = firstTermOfCylinder(row.biot);
        EXPECT_NEAR(term.zeta, row.zeta, 1.01e-4) << row.biot;
        EXPECT_NEAR(term.c1, row.c1, 1.01e-4) << row.biot;
    }
}

/// The same cylinder on 60 rings by explicit steps: a method that knows nothing of Bessel functions.
double middleByRings(double radius, double biot, double fourier)
{
    constexpr int rings = 60;
    const double dr = radius / rings;
    std::vector<double> theta(rings, 1.0); // difference to the air, middle of each ring; conductivity 1, diffusivity 1
    const double h = biot / radius;
    const double end = fourier * radius * radius;
    const double dt = 0.2 * dr * dr;
    for (double t = 0; t < end; t += dt) {
        std::vector<double> flow(rings + 1, 0.0); // outward, over the face between ring i-1 and i, a radian
        for (int i = 1; i < rings; ++i)
            flow[std::size_t(i)] = i * dr * (theta[std::size_t(i) - 1] - theta[std::size_t(i)]) / dr;
        flow[rings] = radius * theta[rings - 1] / (1 / h + dr / 2);
        for (int i = 0; i < rings; ++i) {
            const double inner = i * dr;
            const double area = ((inner + dr) * (inner + dr) - inner * inner) / 2;
            theta[std::size_t(i)] += std::min(dt, end - t) * (flow[std::size_t(i)] - flow[std::size_t(i) + 1]) / area;
        }
    }
    return theta.front();
}

TEST(EvenOut, TheMiddleIsThereWhenItIsSaid)
{
    for (const double from : {-5.0, 4.0, 12.0, 35.0}) {
        const Duration takes =
            evenAfter(tub, celsius(from), celsius(20), kelvinStep(2), wattsPerSquareMetreKelvin(airHeat));
        const double radius = std::cbrt(0.001 * 1000 / 1450 / (2 * std::numbers::pi));
        const double diffusivity = 0.38 / (1450 * 1250);
        const double theta =
            middleByRings(radius, airHeat * radius / 0.38, diffusivity * inSeconds(takes) / (radius * radius));
        EXPECT_NEAR(theta * std::abs(from - 20), 2, 0.03) << from;
    }
}

TEST(EvenOut, HoursFromTheColdForATub) // common practice, no source
{
    const Duration takes = evenAfter(tub, celsius(5), celsius(20), kelvinStep(2), wattsPerSquareMetreKelvin(airHeat));
    EXPECT_GT(takes, minutes(120));
    EXPECT_LT(takes, minutes(12 * 60));
}

TEST(EvenOut, NothingIsWaitedForWhereItIsWithinAlready)
{
    const auto takes = [](double from) {
        return evenAfter(tub, celsius(from), celsius(20), kelvinStep(2), wattsPerSquareMetreKelvin(airHeat));
    };
    EXPECT_EQ(takes(20), seconds(0));
    EXPECT_EQ(takes(18), seconds(0));
    EXPECT_EQ(takes(22), seconds(0));
    EXPECT_GT(takes(17.9), seconds(0));
}

TEST(EvenOut, LargerAndColderTakesLonger)
{
    const auto takes = [](double mass, double from) {
        Package package = tub;
        package.mass = grams(mass);
        return evenAfter(package, celsius(from), celsius(20), kelvinStep(2), wattsPerSquareMetreKelvin(airHeat));
    };
    EXPECT_LT(takes(40, 5), takes(1000, 5));
    EXPECT_LT(takes(1000, 10), takes(1000, 5));
    EXPECT_EQ(takes(1000, 35), takes(1000, 5)) << "as far above as below";
}

} // namespace
} // namespace strandbench
