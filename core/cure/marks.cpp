// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/marks.h"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>

namespace strandbench::cure {
namespace {

constexpr int samplesAStep = 4;
/// The curve is thinned by half when it comes to so many points.
constexpr std::size_t mostPoints = 2000;

/// The greatest value of a profile: of the parabola through the highest node and its two neighbours, which
/// converges faster than the node itself; at an end the node.
double crest(const std::vector<double>& place, const double* value)
{
    const std::size_t count = place.size();
    const auto top = static_cast<std::size_t>(std::max_element(value, value + count) - value);
    if (top == 0 || top + 1 == count)
        return value[top];
    const double left = place[top] - place[top - 1];
    const double right = place[top + 1] - place[top];
    const double rise = (value[top] - value[top - 1]) / left;
    const double fall = (value[top + 1] - value[top]) / right;
    const double curvature = (fall - rise) / (left + right);
    if (curvature >= 0.0)
        return value[top];
    const double slope = (rise * right + fall * left) / (left + right);
    return value[top] - slope * slope / (4.0 * curvature);
}

/// Where within the step a rising watch reaches its mark, as a share from `low` to 1.
template <class Watch> double reach(const Watch& watch, double low, double mark)
{
    const double first = watch(low) - mark;
    const double last = watch(1.0) - mark;
    if (first >= 0.0)
        return low;
    if (last <= 0.0)
        return 1.0;
    std::uintmax_t most = 50;
    const auto [below, above] =
        boost::math::tools::toms748_solve([&](double share) { return watch(share) - mark; }, low, 1.0, first, last,
                                          boost::math::tools::eps_tolerance<double>(30), most);
    return (below + above) / 2.0;
}

} // namespace

Marks::Marks(const CureCase& cureCase, const Grid& grid)
    : m_grid(grid),
      m_law(cureCase.kinetics, cureCase.hardener),
      m_gelAt(cureCase.kinetics.gel.value()),
      m_sandAt(cureCase.kinetics.sand.value()),
      m_wholeRise(cureCase.heat.value() / cureCase.filler.specificHeat.value())
{
    for (const AirPoint& point : cureCase.air)
        m_hottestAir = std::max(m_hottestAir, inKelvin(point.temperature));
}

bool Marks::peakIsPast(const State& state) const
{
    if (m_hottestAir > m_peak)
        return false;
    const double top = m_law.ceiling(m_peak);
    for (std::size_t node = 0; node < state.kelvin.size(); ++node) {
        const double toCome = node < m_grid.fresh ? 0.0 : std::max(0.0, top - state.conversion[node - m_grid.fresh]);
        if (state.kelvin[node] + toCome * m_wholeRise > m_peak)
            return false;
    }
    return true;
}

double Marks::hottest(const State& state) const { return crest(m_grid.place, state.kelvin.data() + m_grid.fresh); }

double Marks::mostCured(const State& state) const { return crest(m_grid.place, state.conversion.data()); }

double Marks::mean(const State& state) const
{
    double sum = 0.0;
    for (std::size_t i = 0; i < state.conversion.size(); ++i)
        sum += m_grid.share[i] * state.conversion[i];
    return std::clamp(sum, 0.0, 1.0);
}

void Marks::addPoint(double second, const State& state, double highest)
{
    if (m_result.curve.size() >= mostPoints) {
        std::size_t kept = 0;
        for (std::size_t i = 0; i < m_result.curve.size(); i += 2)
            m_result.curve[kept++] = m_result.curve[i];
        m_result.curve.resize(kept);
    }
    offerPeak(highest, second);
    // Steps can be too short for the samples' times to be told apart.
    if (!m_result.curve.empty() && second <= inSeconds(m_result.curve.back().at))
        return;
    m_result.curve.push_back(
        {seconds(second), kelvin(state.kelvin.back()), kelvin(highest), Fraction::ofOne(mean(state))});
}

void Marks::offerPeak(double highest, double second)
{
    if (highest <= m_peak)
        return;
    m_peak = highest;
    m_peakSecond = second;
}

void Marks::begin(const State& start)
{
    addPoint(0.0, start,
             *std::max_element(start.kelvin.begin() + static_cast<std::ptrdiff_t>(m_grid.fresh), start.kelvin.end()));
    if (mostCured(start) >= m_gelAt)
        m_result.gel = seconds(0);
    if (start.conversion.back() >= m_sandAt)
        m_result.sand = seconds(0);
}

void Marks::goOnFrom(double second, const State& state) { offerPeak(hottest(state), second); }

void Marks::take(const Trace& step)
{
    findMarks(step);
    findPeak(step);
}

void Marks::findMarks(const Trace& step)
{
    double from = 0.0;
    if (!m_result.gel && mostCured(step.after()) >= m_gelAt) {
        from = reach(
            [&](double share) {
                step.at(share, m_scratch);
                return mostCured(m_scratch);
            },
            0.0, m_gelAt);
        m_result.gel = seconds(step.second(from));
    }
    if (m_result.gel && !m_result.sand && step.after().conversion.back() >= m_sandAt) {
        const double share = reach(
            [&](double each) {
                step.at(each, m_scratch);
                return m_scratch.conversion.back();
            },
            from, m_sandAt);
        m_result.sand = seconds(step.second(share));
    }
}

void Marks::findPeak(const Trace& step)
{
    const auto hotAt = [&](double share) {
        step.at(share, m_scratch);
        return hottest(m_scratch);
    };
    double best = 0.0;
    int bestSample = 0;
    for (int sample = 1; sample <= samplesAStep; ++sample) {
        const double share = static_cast<double>(sample) / samplesAStep;
        if (sample < samplesAStep)
            step.at(share, m_scratch);
        const State& state = sample < samplesAStep ? m_scratch : step.after();
        const double hot = hottest(state);
        if (hot > best) {
            best = hot;
            bestSample = sample;
        }
        addPoint(step.second(share), state, hot);
    }
    // The crest lies within the step: search between the samples beside the best one.
    if (best < m_peak || bestSample == samplesAStep)
        return;
    const double low = static_cast<double>(bestSample - 1) / samplesAStep;
    const double high = static_cast<double>(bestSample + 1) / samplesAStep;
    std::uintmax_t most = 30;
    const auto [share, negative] =
        boost::math::tools::brent_find_minima([&](double each) { return -hotAt(each); }, low, high, 20, most);
    offerPeak(-negative, step.second(share));
}

CureResult Marks::finish(const State& end)
{
    m_result.peak = kelvin(m_peak);
    m_result.peakAt = seconds(m_peakSecond);
    m_result.finalMean = Fraction::ofOne(mean(end));
    return std::move(m_result);
}

} // namespace strandbench::cure
