// SPDX-License-Identifier: GPL-3.0-or-later
// The update of a belief beside Bayes' rule by numerical integration (Boost.Math), which knows no closed form.
#include "learning/belief.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <functional>

namespace strandbench {
namespace {

LogRate rate(double value) { return LogRate::ofLogarithm(value); }

/// Mean and standard deviation of prior times likelihood.
Belief byIntegration(const Belief& prior, const std::function<double(double)>& likelihood)
{
    using Rule = boost::math::quadrature::gauss_kronrod<double, 61>;
    const boost::math::normal before(prior.mean.value(), prior.spread);
    const auto integral = [&](const std::function<double(double)>& of) {
        const auto f = [&](double x) { return of(x) * pdf(before, x) * likelihood(x); };
        const double reach = 30 * prior.spread;
        return Rule::integrate(f, prior.mean.value() - reach, prior.mean.value() + reach, 15, 1e-13);
    };
    const double all = integral([](double) { return 1.0; });
    const double mean = integral([](double x) { return x; }) / all;
    const double variance = integral([mean](double x) { return (x - mean) * (x - mean); }) / all;
    return {rate(mean), std::sqrt(variance)};
}

TEST(Belief, AfterARateIsBayesRule)
{
    for (const Belief& prior : {Belief{rate(0), 0.1}, Belief{rate(0.3), 0.02}, Belief{rate(-0.5), 0.7}})
        for (const double seen : {-0.4, 0.0, 0.05, 0.336})
            for (const double spread : {0.03, 0.08, 0.3}) {
                const Belief expected =
                    byIntegration(prior, [&](double truth) { return pdf(boost::math::normal(truth, spread), seen); });
                const Belief found = afterSeeing(prior, rate(seen), spread);
                EXPECT_NEAR(found.mean.value(), expected.mean.value(), 1e-9);
                EXPECT_NEAR(found.spread, expected.spread, 1e-9);
            }
}

/// Gelman et al., Bayesian Data Analysis, 3rd ed., eqs. 2.11 and 2.12, with several at once: the mean of n counts as
/// one seen with the spread over the root of n, and the order does not matter.
TEST(Belief, AfterManyIsTheirMeanAtOnce)
{
    const Belief prior{rate(0.02), 0.1};
    Belief forth = prior;
    Belief back = prior;
    const std::vector<double> seen{0.1, 0.31, -0.07, 0.22};
    for (std::size_t i = 0; i < seen.size(); ++i) {
        forth = afterSeeing(forth, rate(seen[i]), 0.08);
        back = afterSeeing(back, rate(seen[seen.size() - 1 - i]), 0.08);
    }
    const Belief atOnce = afterSeeing(prior, rate(0.14), 0.08 / 2);
    for (const Belief& each : {forth, back}) {
        EXPECT_NEAR(each.mean.value(), atOnce.mean.value(), 1e-12);
        EXPECT_NEAR(each.spread, atOnce.spread, 1e-12);
    }
}

TEST(Belief, AfterABoundIsBayesRule)
{
    for (const Belief& prior : {Belief{rate(0), 0.1}, Belief{rate(0.2), 0.05}, Belief{rate(-0.1), 0.7}})
        for (const double least : {-1.0, -0.1, 0.0, 0.2})
            for (const double spread : {0.05, 0.08, 0.2}) {
                const Belief expected =
                    byIntegration(prior, [&](double truth) { return cdf(boost::math::normal(least, spread), truth); });
                const Belief found = afterSeeingAtLeast(prior, rate(least), spread);
                EXPECT_NEAR(found.mean.value(), expected.mean.value(), 1e-8) << least << " " << spread;
                EXPECT_NEAR(found.spread, expected.spread, 1e-8) << least << " " << spread;
            }
}

/// Told long after it sands, 'it sands' says next to nothing.
TEST(Belief, ABoundFarBelowMovesNothing)
{
    const Belief prior{rate(0), 0.1};
    const Belief after = afterSeeingAtLeast(prior, rate(-1), 0.08);
    EXPECT_NEAR(after.mean.value(), 0, 1e-12);
    EXPECT_NEAR(after.spread, 0.1, 1e-12);
}

/// 1.645 standard deviations hold 90 % (any table of the normal distribution), 1.960 hold 95 %.
TEST(Belief, TheMiddleIsTheTables)
{
    const LogRateRange nine = middleOf({rate(0.1), 0.2}, Fraction::ofHundred(90));
    EXPECT_NEAR(nine.low.value(), 0.1 - 1.6449 * 0.2, 1e-4);
    EXPECT_NEAR(nine.high.value(), 0.1 + 1.6449 * 0.2, 1e-4);
    const LogRateRange most = middleOf({rate(0), 1}, Fraction::ofHundred(95));
    EXPECT_NEAR(most.high.value(), 1.9600, 1e-4);
    EXPECT_NEAR(most.low.value(), -most.high.value(), 1e-12);
}

TEST(Belief, TheNextScattersAboutTheTruth)
{
    const Belief next = ofTheNext({rate(0.1), 0.3}, 0.4);
    EXPECT_DOUBLE_EQ(next.mean.value(), 0.1);
    EXPECT_DOUBLE_EQ(next.spread, 0.5);
}

TEST(LogRate, IsTheLogarithmOfPredictedByObserved)
{
    EXPECT_NEAR(LogRate::between(minutes(6), minutes(3))->value(), std::log(2.0), 1e-15);
    EXPECT_NEAR(LogRate::between(minutes(5), minutes(6))->multiplier(), 5.0 / 6.0, 1e-15);
    EXPECT_FALSE(LogRate::between(minutes(5), seconds(0)));
    EXPECT_FALSE(LogRate::between(seconds(-1), minutes(5)));
}

} // namespace
} // namespace strandbench
