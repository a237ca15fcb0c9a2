// SPDX-License-Identifier: GPL-3.0-or-later
#include "accuracy.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>

namespace strandbench::curebench {
namespace {

constexpr double timeAllowed = 0.005;
constexpr double kelvinsAllowed = 0.5;
constexpr double riseAllowed = 0.01;

constexpr int rungsATenth = 8;
constexpr double loosest = 0.1;
constexpr double tightest = 1e-11;

/// One that takes long is run less often, but never less often than this.
constexpr std::size_t leastRuns = 5;
constexpr double longTogether = 2000.0;

double off(double time, double reference)
{
    if (std::isnan(time) && std::isnan(reference))
        return 0.0;
    return std::isnan(time) || std::isnan(reference) ? std::numeric_limits<double>::infinity()
                                                     : std::abs(time - reference);
}

double millisecondsOf(const std::function<void()>& run)
{
    const auto begun = std::chrono::steady_clock::now();
    run();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun).count();
}

double median(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

Accuracy accuracyOf(const Found& found, const Found& reference, double startKelvin)
{
    Accuracy accuracy{off(found.gel, reference.gel), off(found.sand, reference.sand), off(found.peak, reference.peak),
                      0.0};
    const double peakAllowed = std::max(kelvinsAllowed, riseAllowed * (reference.peak - startKelvin));
    accuracy.share = accuracy.peak / peakAllowed;
    if (!std::isnan(reference.gel))
        accuracy.share = std::max(accuracy.share, accuracy.gel / (timeAllowed * reference.gel));
    if (!std::isnan(reference.sand))
        accuracy.share = std::max(accuracy.share, accuracy.sand / (timeAllowed * reference.sand));
    return accuracy;
}

std::optional<double> loosestFor(const Contender& contender, const Found& reference, double startKelvin,
                                 double targetShare)
{
    for (int rung = 0;; ++rung) {
        const double tolerance = loosest * std::pow(10.0, -static_cast<double>(rung) / rungsATenth);
        if (tolerance < tightest)
            return {};
        if (accuracyOf(contender.solve(tolerance), reference, startKelvin).share <= targetShare)
            return tolerance;
    }
}

std::vector<double> timesOf(const std::vector<std::function<void()>>& runs, int rounds)
{
    std::vector<std::vector<double>> times(runs.size());
    std::vector<double> together(runs.size(), 0.0);
    for (int round = 0; round < rounds; ++round)
        for (std::size_t i = 0; i < runs.size(); ++i) {
            if (times[i].size() >= leastRuns && together[i] > longTogether)
                continue;
            times[i].push_back(millisecondsOf(runs[i]));
            together[i] += times[i].back();
        }
    std::vector<double> medians;
    for (const std::vector<double>& each : times)
        medians.push_back(median(each));
    return medians;
}

} // namespace strandbench::curebench
