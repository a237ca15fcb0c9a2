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

/// A figure of a bead, the least and the most it may be, and beads with it at a value, others staying in the middle.
struct Bound {
    QString field;
    double least;
    double most;
    QString unit;
    LaidBead (*at)(double value);
};

void PrintTo(const Bound& bound, std::ostream* out) { *out << bound.field.toStdString(); }

class BeadBounds : public testing::TestWithParam<Bound> {};

TEST_P(BeadBounds, AreWithinAndNamedByWhatLiesBeyond)
{
    const Bound& bound = GetParam();
    for (const double value : {bound.least, bound.most}) {
        const auto faultsAt = [&](double there) {
            std::vector<LaidBead> laid = beads({2.3, 2.3, 2.3});
            laid[1] = bound.at(there);
            const auto found = calibrateBead(laid);
            return found ? Faults{} : found.error();
        };
        // Beside two others of 23 mg/mm it may scatter; of itself it is one that can be.
        for (const Fault& each : faultsAt(value))
            EXPECT_EQ(each.field, u"spread_percent"_s) << value;
        const double beyond = value == bound.least ? value * 0.999 : value * 1.0001;
        const Fault expected{
            u"beads[1]."_s + bound.field,
            QString::number(beyond),
            FaultKind::OutOfRange,
            {QString::number(bound.least), QString::number(bound.most), bound.unit},
        };
        EXPECT_THAT(faultsAt(beyond), ElementsAre(expected)) << value;
    }
}

INSTANTIATE_TEST_SUITE_P(AsTheHeaderTells, BeadBounds,
                         testing::Values(Bound{u"length_mm"_s, 20, 1000, u"mm"_s,
                                               [](double mm) {
                                                   return LaidBead{millimetres(mm), grams(0.023 * mm)};
                                               }},
                                         Bound{u"mass_g"_s, 0.05, 100, u"g"_s,
                                               [](double g) {
                                                   return LaidBead{millimetres(g < 1 ? 30 : 500), grams(g)};
                                               }},
                                         Bound{u"mg_per_mm"_s, 1, 500, u"mg/mm"_s, [](double each) {
                                                   return LaidBead{millimetres(100), grams(0.1 * each)};
                                               }}));

TEST(BeadCalibration, IsOfTwentyBeadsAtMostAndSaysSo)
{
    EXPECT_TRUE(calibrateBead(beads(std::vector<double>(20, 2.3))));
    const auto found = calibrateBead(beads(std::vector<double>(21, 2.3)));
    ASSERT_FALSE(found);
    EXPECT_THAT(found.error(), ElementsAre(Fault{u"beads"_s, u"21"_s, FaultKind::OutOfRange, {u"3"_s, u"20"_s, {}}}));
}

TEST(BeadCalibration, ThatScattersSaysHowFarItMay)
{
    // 2.0, 2.3 and 2.6: deviation 0.3, so 13 % of the mean.
    const auto found = calibrateBead(beads({2.0, 2.3, 2.6}));
    ASSERT_FALSE(found);
    ASSERT_EQ(found.error().size(), 1U);
    EXPECT_NEAR(found.error()[0].value.toDouble(), 30 / 2.3, 1e-4);
    EXPECT_THAT(found.error()[0].allowed, ElementsAre(u"0"_s, u"10"_s, u"%"_s));
}

TEST(BeadCalibration, ThatScattersIsLaidAgain)
{
    EXPECT_THAT(fieldsOf(beads({2.1, 2.3, 2.5})), ElementsAre());
    EXPECT_THAT(fieldsOf(beads({2.0, 2.3, 2.6})), ElementsAre("spread_percent"));
}

} // namespace
