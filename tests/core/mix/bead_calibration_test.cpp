// SPDX-License-Identifier: GPL-3.0-or-later
#include "mix/bead_calibration.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <limits>

using namespace Qt::StringLiterals;
using namespace strandbench;
using ::testing::ElementsAre;

namespace {

/// Beads of 100 mm by their masses.
std::vector<LaidBead> beads(const std::vector<double>& inGrammes)
{
    std::vector<LaidBead> all;
    for (const double mass : inGrammes)
        all.push_back({millimetres(100), grams(mass)});
    return all;
}

std::vector<std::string> fieldsOf(const std::vector<LaidBead>& laid)
{
    std::vector<std::string> fields;
    if (const auto found = calibrateBead(laid); !found)
        for (const Fault& each : found.error())
            fields.push_back(each.field.toStdString());
    return fields;
}

/// Figures that anyone can follow:
/// 2.2, 2.3 and 2.4 g have the mean 2.3 and the deviation 0.1.
TEST(BeadCalibration, IsMeanAndDeviationOfTheBeads)
{
    const auto found = calibrateBead(beads({2.2, 2.4, 2.3}));
    ASSERT_TRUE(found);
    EXPECT_NEAR(inMilligramsPerMillimetre(found->mean), 23, 1e-9);
    EXPECT_NEAR(found->spread.percent(), 100 * 0.1 / 2.3, 1e-9);
}

TEST(BeadCalibration, KnowsNoOrderAndNoLength)
{
    const std::vector<LaidBead> laid{{millimetres(50), grams(1.2)},
                                     {millimetres(200), grams(4.4)},
                                     {millimetres(100), grams(2.3)},
                                     {millimetres(300), grams(6.9)}};
    std::vector<LaidBead> turned(laid.rbegin(), laid.rend());
    for (LaidBead& each : turned) {
        each.length = each.length * 2.0;
        each.mass = each.mass * 2.0;
    }
    const auto one = calibrateBead(laid);
    const auto other = calibrateBead(turned);
    ASSERT_TRUE(one && other);
    EXPECT_NEAR(one->mean / other->mean, 1, 1e-12);
    EXPECT_NEAR(one->spread.value(), other->spread.value(), 1e-12);
    EXPECT_NEAR(inMilligramsPerMillimetre(one->mean), 23, 1e-9);
}

TEST(BeadCalibration, IsOfThreeBeadsAndNotOfTwo)
{
    EXPECT_THAT(fieldsOf({}), ElementsAre("beads"));
    EXPECT_THAT(fieldsOf(beads({2.3, 2.3})), ElementsAre("beads"));
    EXPECT_THAT(fieldsOf(beads({2.3, 2.3, 2.3})), ElementsAre());
    EXPECT_THAT(fieldsOf(beads(std::vector<double>(21, 2.3))), ElementsAre("beads"));
}

TEST(BeadCalibration, NamesEveryBeadThatCannotBe)
{
    std::vector<LaidBead> laid = beads({2.3, 0, 2.3, -1, 2.3, std::numeric_limits<double>::quiet_NaN()});
    laid[0].length = millimetres(0);
    laid[2] = {millimetres(20), grams(90)};
    EXPECT_THAT(fieldsOf(laid), ElementsAre("beads[0].length_mm", "beads[1].mass_g", "beads[2].mg_per_mm",
                                            "beads[3].mass_g", "beads[5].mass_g"));
}

TEST(BeadCalibration, ThatScattersIsLaidAgain)
{
    EXPECT_THAT(fieldsOf(beads({2.1, 2.3, 2.5})), ElementsAre());
    EXPECT_THAT(fieldsOf(beads({2.0, 2.3, 2.6})), ElementsAre("spread_percent"));
}

} // namespace
