// SPDX-License-Identifier: GPL-3.0-or-later
// The other published sets of coefficients of the Magnus form, e = c exp(a t / (b + t)): the dew point must lie as near
// to each of them as they lie to one another.
#include "air/gate.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace strandbench;

namespace {

/// Over water: a, and b in degC. The third, c, stands on both sides of a dew point and falls out.
struct MagnusSet {
    const char* name;
    double a;
    double b;
};

// Alduchov and Eskridge 1996, J. Appl. Meteor. 35, 601-609.
constexpr MagnusSet alduchov{"Alduchov and Eskridge", 17.625, 243.04};
// Sonntag 1990, Z. Meteorol. 70, 340-344.
constexpr MagnusSet sonntag{"Sonntag", 17.62, 243.12};
// Bolton 1980, Mon. Wea. Rev. 108, 1046-1053.
constexpr MagnusSet bolton{"Bolton", 17.67, 243.5};

double dewPointBy(const MagnusSet& set, double air, double percent)
{
    const double gamma = std::log(percent / 100) + set.a * air / (set.b + air);
    return set.b * gamma / (set.a - gamma);
}

/// The humidity that a set gives for this air and this dew point, in %.
double humidityBy(const MagnusSet& set, double air, double dewPoint)
{
    return 100 * std::exp(set.a * dewPoint / (set.b + dewPoint) - set.a * air / (set.b + air));
}

double ours(double air, double percent) { return inCelsius(dewPoint(celsius(air), Fraction::ofHundred(percent))); }

/// For air between two temperatures with a dew point not below 0 degC, each quarter of a degree and each half percent.
template <class Check> int overAir(double coldest, double hottest, const Check& check)
{
    int checked = 0;
    for (double air = coldest; air <= hottest + 1e-9; air += 0.25)
        for (double percent = 5; percent <= 100; percent += 0.5)
            if (ours(air, percent) >= 0) {
                check(air, percent);
                ++checked;
            }
    return checked;
}

struct Tabulated {
    double air;      // degC
    double humidity; // %
    double alduchov; // dew point, degC
    double sonntag;
};

// Worked out apart from this code; the humidity is rounded to 0.01 % there before the dew point is taken back, so that
// the last digit may differ.
TEST(MagnusSets, AreWrittenDownRight)
{
    for (const Tabulated& row : {Tabulated{25, 27.53, 4.981, 4.971},
                                 {15, 51.16, 4.986, 4.980},
                                 {20, 52.51, 9.990, 9.984},
                                 {25, 53.81, 14.995, 14.989},
                                 {30, 55.08, 20.001, 19.996},
                                 {35, 56.31, 25.009, 25.004},
                                 {20, 82.86, 16.998, 16.996}}) {
        EXPECT_NEAR(dewPointBy(alduchov, row.air, row.humidity), row.alduchov, 0.002) << row.air;
        EXPECT_NEAR(dewPointBy(sonntag, row.air, row.humidity), row.sonntag, 0.002) << row.air;
    }
}

/// The sets differ from one another by a few hundredths of a degree where filling happens.
TEST(MagnusSets, GiveTheSameDewPoint)
{
    for (const MagnusSet& set : {alduchov, sonntag, bolton}) {
        const int checked = overAir(10, 35, [&](double air, double percent) {
            EXPECT_NEAR(ours(air, percent), dewPointBy(set, air, percent), 0.05)
                << set.name << ": " << air << " degC, " << percent << " %";
        });
        EXPECT_GT(checked, 10000);
    }
}

/// Alduchov and Eskridge claim at most 0.4 % of the pressure (from memory). Our dew point, turned back into humidity by
/// their coefficients and by Sonntag's, is the humidity that it was taken of, as closely.
TEST(MagnusSets, TurnOurDewPointBackIntoItsHumidity)
{
    constexpr double claimed = 0.004;
    for (const MagnusSet& set : {alduchov, sonntag}) {
        const int checked = overAir(0, 45, [&](double air, double percent) {
            EXPECT_NEAR(humidityBy(set, air, ours(air, percent)) / percent, 1, claimed)
                << set.name << ": " << air << " degC, " << percent << " %";
        });
        EXPECT_GT(checked, 10000);
    }
}

} // namespace
