// SPDX-License-Identifier: GPL-3.0-or-later
// Charts against the worked examples of the NIST/SEMATECH e-Handbook of Statistical Methods, to their printed digits;
// run rules against series made for them.
#include "review/control_chart.h"
#include "review/proportion.h"

#include <boost/math/special_functions/beta.hpp>
#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// NIST/SEMATECH 6.3.2.2: flow rates of ten batches.
const std::vector<double> flowRates{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

TEST(IndividualsChart, NistFlowRates)
{
    const auto chart = individualsChart(flowRates);
    ASSERT_TRUE(chart);
    EXPECT_NEAR(chart->limits.centre, 50.81, 0.005);
    EXPECT_NEAR(chart->rangeLimits.centre, 1.8778, 0.00005);
    EXPECT_NEAR(chart->limits.upper, 55.8041, 0.00005);
    EXPECT_NEAR(chart->limits.lower, 45.8159, 0.00005);
    const std::vector<double> ranges{2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5};
    ASSERT_EQ(chart->movingRanges.size(), ranges.size());
    for (std::size_t i = 0; i < ranges.size(); ++i)
        EXPECT_NEAR(chart->movingRanges[i], ranges[i], 1e-12) << i;
    for (const double each : flowRates)
        EXPECT_TRUE(chart->limits.holds(each)) << "the handbook: in control";
    EXPECT_TRUE(runSignals(flowRates, chart->limits.centre, chart->sigma).empty());
    EXPECT_NEAR(chart->rangeLimits.upper, 3.267 * 1.8778, 0.0005);
}

TEST(IndividualsChart, OneValueIsNoSeries)
{
    EXPECT_FALSE(individualsChart({}));
    EXPECT_FALSE(individualsChart({1.0}));
    EXPECT_FALSE(individualsChart({1.0, std::nan("")}));
    EXPECT_EQ(individualsChart({1.0}).error().front().field, u"values"_s);
}

TEST(EwmaChart, NistTwentyValues)
{
    std::vector<double> values{52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5};
    values.insert(values.end(), flowRates.begin(), flowRates.end());
    const EwmaChart chart = ewmaChart(values, 50, 2.0539, 0.3, 3);
    const std::vector<double> printed{50.00, 50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33,
                                      50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99};
    ASSERT_EQ(chart.averages.size(), printed.size());
    for (std::size_t i = 0; i < printed.size(); ++i)
        EXPECT_NEAR(chart.averages[i], printed[i], 0.0051) << i; // NIST prints two digits, carrying the rounded ones on
    EXPECT_NEAR(chart.limits.upper, 52.5884, 0.00005);
    EXPECT_NEAR(chart.limits.lower, 47.4115, 0.0001); // cut off, not rounded, in the handbook
    for (const double each : chart.averages)
        EXPECT_TRUE(chart.limits.holds(each));
}

TEST(ShareChart, NistWafers)
{
    const std::vector<int> counts{12, 15, 8, 10, 4,  7,  16, 9,  14, 10, 5,  6, 17, 12, 22,
                                  8,  10, 5, 13, 11, 20, 18, 24, 15, 9,  12, 7, 13, 9,  6};
    std::vector<ShareSample> samples;
    for (const int each : counts)
        samples.push_back({each, 50});
    const auto chart = shareChart(samples);
    ASSERT_TRUE(chart);
    EXPECT_NEAR(chart->centre, 0.2313, 0.00005);
    EXPECT_NEAR(chart->limits.front().upper, 0.4103, 0.0001); // 0.41024 exactly
    EXPECT_NEAR(chart->limits.front().lower, 0.0524, 0.00005);
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < samples.size(); ++i)
        if (!chart->limits[i].holds(chart->shares[i]))
            out.push_back(i + 1);
    EXPECT_EQ(out, (std::vector<std::size_t>{15, 23})) << "the samples that the handbook names";
}

/// The same wafers without the two that were out, worked out apart from the program: the next one comes out then.
TEST(ShareChart, NistWafersWithoutTheTwo)
{
    std::vector<ShareSample> samples;
    for (const int each :
         {12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 8, 10, 5, 13, 11, 20, 18, 15, 9, 12, 7, 13, 9, 6})
        samples.push_back({each, 50});
    const auto chart = shareChart(samples);
    ASSERT_TRUE(chart);
    EXPECT_NEAR(chart->centre, 0.2150, 0.00005);
    EXPECT_NEAR(chart->limits.front().upper, 0.3893, 0.00005);
    EXPECT_NEAR(chart->limits.front().lower, 0.0407, 0.00005);
    std::vector<double> out;
    for (std::size_t i = 0; i < samples.size(); ++i)
        if (!chart->limits[i].holds(chart->shares[i]))
            out.push_back(chart->shares[i]);
    EXPECT_EQ(out, std::vector<double>{0.40}) << "sample 21 of the thirty";
}

/// Montgomery, Introduction to Statistical Quality Control, exercise 6-1: 20 samples of 100, 117 in all; without the
/// twelfth 102, so that it had 15. Limits do not ask how the others share them.
TEST(ShareChart, MontgomerysExercise)
{
    std::vector<ShareSample> samples(19, ShareSample{5, 100});
    for (std::size_t i = 0; i < 7; ++i)
        ++samples[i].hits; // 102 in all
    const auto without = shareChart(samples);
    samples.insert(samples.begin() + 11, ShareSample{15, 100});
    const auto all = shareChart(samples);
    ASSERT_TRUE(without && all);
    EXPECT_NEAR(all->centre, 0.0585, 0.00005);
    EXPECT_NEAR(all->limits.front().upper, 0.1289, 0.00005);
    EXPECT_EQ(all->limits.front().lower, 0);
    EXPECT_FALSE(all->limits[11].holds(all->shares[11]));
    EXPECT_NEAR(without->centre, 0.0537, 0.00005);
    EXPECT_NEAR(without->limits.front().upper, 0.1213, 0.00005);
}

/// NIST/SEMATECH 6.3.3.1 draws 28 on its limit of 28 and calls it in control, 31 out: on a limit is within.
TEST(ControlLimits, HoldWhatIsOnThem)
{
    const ControlLimits counts{16, 4, 28};
    EXPECT_TRUE(counts.holds(28));
    EXPECT_TRUE(counts.holds(4));
    EXPECT_FALSE(counts.holds(31));
}

/// NIST, Statistical Reference Datasets, Michelson's hundred speeds of light in 1000 km/s above 299: the certified mean
/// is 299.8524, to all of its digits.
TEST(IndividualsChart, MichelsonsCertifiedMean)
{
    const std::vector<int> last{850,  740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000,
                                1000, 960, 960, 960,  940, 960, 940, 880, 800, 850, 880,  900, 840, 830, 790, 810, 880,
                                880,  830, 800, 790,  760, 800, 880, 880, 880, 860, 720,  720, 620, 860, 970, 950, 880,
                                910,  850, 870, 840,  840, 850, 840, 840, 840, 890, 810,  810, 820, 800, 770, 760, 740,
                                750,  760, 910, 920,  890, 860, 880, 720, 840, 850, 850,  780, 890, 840, 780, 810, 760,
                                810,  790, 810, 820,  850, 870, 870, 810, 740, 810, 940,  950, 800, 810, 870};
    std::vector<double> speeds;
    for (const int each : last)
        speeds.push_back(299 + each / 1000.0);
    ASSERT_EQ(speeds.size(), 100U);
    const auto chart = individualsChart(speeds);
    ASSERT_TRUE(chart);
    EXPECT_NEAR(chart->limits.centre, 299.8524, 1e-11);
}

TEST(ShareChart, LimitsFollowEachSamplesSizeAndStayWithinNothingAndAll)
{
    const auto chart = shareChart({{1, 4}, {20, 400}});
    ASSERT_TRUE(chart);
    EXPECT_EQ(chart->limits[0].lower, 0);
    EXPECT_GT(chart->limits[0].upper, chart->limits[1].upper);
    EXPECT_FALSE(shareChart({}));
    EXPECT_FALSE(shareChart({{5, 4}}));
    EXPECT_FALSE(shareChart({{0, 0}}));
}

/// The rules that a series completes with its last value; with sigma 1 about 0.
std::vector<RunRule> atTheEnd(const std::vector<double>& values)
{
    std::vector<RunRule> rules;
    for (const RunSignal& each : runSignals(values, 0, 1))
        if (each.at + 1 == values.size())
            rules.push_back(each.rule);
    return rules;
}

TEST(RunRules, EachIsFoundByASeriesMadeForIt)
{
    EXPECT_EQ(atTheEnd({0.1, -3.1}), std::vector{RunRule::BeyondThreeSigma});
    EXPECT_EQ(atTheEnd({2.1, 0.1, 2.2}), std::vector{RunRule::TwoOfThreeBeyondTwo});
    EXPECT_EQ(atTheEnd({-1.1, -1.3, -0.2, -1.2, -1.4}), std::vector{RunRule::FourOfFiveBeyondOne});
    EXPECT_EQ(atTheEnd({.1, .3, .2, .4, .1, .3, .2, .5}), std::vector{RunRule::EightOnOneSide});
    EXPECT_EQ(atTheEnd({-.5, -.3, -.1, .1, .3, .5}), std::vector{RunRule::SixTrending});
    EXPECT_EQ(atTheEnd({.5, .3, .1, -.1, -.3, -.5}), std::vector{RunRule::SixTrending});
    EXPECT_EQ(atTheEnd({.1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1}),
              std::vector{RunRule::FourteenAlternating});
}

TEST(RunRules, OneShortOfARuleIsNone)
{
    EXPECT_TRUE(atTheEnd({0.1, 3.0}).empty()) << "on the limit";
    EXPECT_TRUE(atTheEnd({2.1, -2.2}).empty()) << "on two sides";
    EXPECT_TRUE(atTheEnd({2.1, 2.2, 0.1}).empty()) << "the newest one is not among them";
    EXPECT_TRUE(atTheEnd({1.1, 0.2, 1.3, -0.2, 1.4}).empty());
    EXPECT_TRUE(atTheEnd({-.1, .1, .3, .2, .4, .1, .3, .2}).empty());
    EXPECT_TRUE(atTheEnd({.5, .3, .1, -.1, -.3}).empty());
    EXPECT_TRUE(atTheEnd({.1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1, -.1, .1}).empty());
}

TEST(RunRules, WithoutAScatterOnlySidesAndTrendsAreLookedAt)
{
    const auto found = runSignals({5, 5, 5, 5, 5, 5, 5, 5}, 0, 0);
    EXPECT_EQ(found, (std::vector<RunSignal>{{RunRule::EightOnOneSide, 7}}));
}

/// The chance of so many hits.
double chance(int hits, int tried, double p)
{
    return std::exp(std::lgamma(tried + 1) - std::lgamma(hits + 1) - std::lgamma(tried - hits + 1) +
                    hits * std::log(p) + (tried - hits) * std::log1p(-p));
}

TEST(ProportionInterval, IsTheMiddleOfTheBetaThatJeffreysNames)
{
    // Brown, Cai and DasGupta (2001): the ends are quantiles of Beta(x + 1/2, n - x + 1/2).
    const auto interval = proportionInterval(36, 40, Fraction::ofHundred(90));
    EXPECT_NEAR(boost::math::ibeta(36.5, 4.5, interval.low.value()), 0.05, 1e-9);
    EXPECT_NEAR(boost::math::ibeta(36.5, 4.5, interval.high.value()), 0.95, 1e-9);
    EXPECT_EQ(proportionInterval(0, 12, Fraction::ofHundred(95)).low.value(), 0);
    EXPECT_EQ(proportionInterval(12, 12, Fraction::ofHundred(95)).high.value(), 1);
}

TEST(ProportionInterval, HoldsTheTrueShareAboutAsOftenAsItSays)
{
    // Summed exactly over all outcomes, averaged over true shares: not a simulation.
    for (const int tried : {10, 40, 200}) {
        double covered = 0;
        int shares = 0;
        for (double p = 0.02; p < 0.99; p += 0.01, ++shares)
            for (int hits = 0; hits <= tried; ++hits) {
                const auto interval = proportionInterval(hits, tried, Fraction::ofHundred(95));
                if (interval.low.value() <= p && p <= interval.high.value())
                    covered += chance(hits, tried, p);
            }
        EXPECT_NEAR(covered / shares, 0.95, 0.01) << tried;
    }
}

} // namespace
} // namespace strandbench
