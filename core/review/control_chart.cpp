// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/control_chart.h"

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// Of pairs of neighbours: d2 = 1.128, D4 = 3.267 (NIST/SEMATECH 6.3.2.2).
constexpr double d2 = 1.128;
constexpr double d4 = 3.267;

double meanOf(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

/// Looks at a series that ends with the value at `last`.
class Runs {
public:
    Runs(const std::vector<double>& values, double centre, double sigma)
        : m_values(values), m_centre(centre), m_sigma(sigma)
    {}

    [[nodiscard]] bool completes(RunRule rule, std::size_t last) const
    {
        switch (rule) {
        case RunRule::BeyondThreeSigma:
            return m_sigma > 0 && std::abs(m_values[last] - m_centre) > 3 * m_sigma;
        case RunRule::TwoOfThreeBeyondTwo:
            return m_sigma > 0 && manyBeyond(last, 3, 2, 2);
        case RunRule::FourOfFiveBeyondOne:
            return m_sigma > 0 && manyBeyond(last, 5, 4, 1);
        case RunRule::EightOnOneSide:
            return manyBeyond(last, 8, 8, 0);
        case RunRule::SixTrending:
            return steps(last, 6, 1) || steps(last, 6, -1);
        case RunRule::FourteenAlternating:
            return alternates(last, 14);
        }
        return false;
    }

private:
    /// Of the last `of` values at least `many` on one side, further from the centre than so many sigmas, the newest
    /// one of them.
    [[nodiscard]] bool manyBeyond(std::size_t last, std::size_t of, int many, double sigmas) const
    {
        if (last + 1 < static_cast<std::size_t>(many))
            return false;
        const std::size_t first = last + 1 >= of ? last + 1 - of : 0;
        for (const int side : {1, -1}) {
            const auto beyond = [&](double value) { return side * (value - m_centre) > sigmas * m_sigma; };
            const auto from = m_values.begin();
            if (beyond(m_values[last]) && std::count_if(from + static_cast<std::ptrdiff_t>(first),
                                                        from + static_cast<std::ptrdiff_t>(last) + 1, beyond) >= many)
                return true;
        }
        return false;
    }
    /// The last `count` values each go the same way.
    [[nodiscard]] bool steps(std::size_t last, std::size_t count, int way) const
    {
        if (last + 1 < count)
            return false;
        for (std::size_t i = last + 2 - count; i <= last; ++i)
            if (way * (m_values[i] - m_values[i - 1]) <= 0)
                return false;
        return true;
    }
    [[nodiscard]] bool alternates(std::size_t last, std::size_t count) const
    {
        if (last + 1 < count)
            return false;
        for (std::size_t i = last + 3 - count; i <= last; ++i)
            if ((m_values[i] - m_values[i - 1]) * (m_values[i - 1] - m_values[i - 2]) >= 0)
                return false;
        return true;
    }

    const std::vector<double>& m_values;
    double m_centre;
    double m_sigma;
};

} // namespace

Checked<IndividualsChart> individualsChart(const std::vector<double>& values)
{
    if (values.size() < 2)
        return tl::unexpected(
            Faults{{u"values"_s, QString::number(values.size()), FaultKind::OutOfRange, {u"2"_s, u"1000000"_s, {}}}});
    for (const double each : values)
        if (!std::isfinite(each))
            return tl::unexpected(Faults{{u"values"_s, QString::number(each), FaultKind::WrongKind, {u"number"_s}}});
    IndividualsChart chart;
    chart.values = values;
    for (std::size_t i = 1; i < values.size(); ++i)
        chart.movingRanges.push_back(std::abs(values[i] - values[i - 1]));
    const double range = meanOf(chart.movingRanges);
    const double centre = meanOf(values);
    chart.sigma = range / d2;
    chart.limits = {centre, centre - 3 * chart.sigma, centre + 3 * chart.sigma};
    chart.rangeLimits = {range, 0, d4 * range};
    return chart;
}

std::vector<RunSignal> runSignals(const std::vector<double>& values, double centre, double sigma)
{
    const Runs runs(values, centre, sigma);
    std::vector<RunSignal> found;
    for (std::size_t i = 0; i < values.size(); ++i)
        for (const auto& [rule, code] : Codes<RunRule>::table)
            if (runs.completes(rule, i))
                found.push_back({rule, i});
    return found;
}

EwmaChart ewmaChart(const std::vector<double>& values, double target, double sigma, double weight, double width)
{
    EwmaChart chart;
    chart.averages.push_back(target);
    for (const double each : values)
        chart.averages.push_back(weight * each + (1 - weight) * chart.averages.back());
    const double away = width * sigma * std::sqrt(weight / (2 - weight));
    chart.limits = {target, target - away, target + away};
    return chart;
}

Checked<ShareChart> shareChart(const std::vector<ShareSample>& samples)
{
    double hits = 0;
    double tried = 0;
    for (const ShareSample& each : samples) {
        if (each.tried <= 0 || each.hits < 0 || each.hits > each.tried)
            return tl::unexpected(Faults{{u"hits"_s,
                                          QString::number(each.hits),
                                          FaultKind::OutOfRange,
                                          {u"0"_s, QString::number(each.tried), {}}}});
        hits += each.hits;
        tried += each.tried;
    }
    if (samples.empty())
        return tl::unexpected(Faults{{u"samples"_s, u"0"_s, FaultKind::OutOfRange, {u"1"_s, u"1000000"_s, {}}}});
    ShareChart chart;
    chart.centre = hits / tried;
    for (const ShareSample& each : samples) {
        const double away = 3 * std::sqrt(chart.centre * (1 - chart.centre) / each.tried);
        chart.shares.push_back(double(each.hits) / each.tried);
        chart.limits.push_back({chart.centre, std::max(0.0, chart.centre - away), std::min(1.0, chart.centre + away)});
    }
    return chart;
}

} // namespace strandbench
