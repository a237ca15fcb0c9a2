// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/well_mixed_room.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strandbench {
namespace {

/// (1 - exp(-k t)) / k, which is t for k = 0.
double filling(double rate, double time) { return rate > 0 ? -std::expm1(-rate * time) / rate : time; }

/// The integral of filling() over time. Where k t is small the difference has lost its digits: a series instead.
double filled(double rate, double time)
{
    const double x = rate * time;
    if (x < 1e-3)
        return time * time * (1.0 / 2 - x / 6 + x * x / 24 - x * x * x / 120);
    return (time - filling(rate, time)) / rate;
}

} // namespace

WellMixedRoom::WellMixedRoom(Volume air, Rate changes) : m_volume(air.value()), m_rate(inPerSecond(changes))
{
    if (!(m_volume > 0) || !(m_rate >= 0))
        throw std::logic_error("a room without air, or whose air comes back");
}

double WellMixedRoom::concentration(const Release& release, double when) const
{
    const double since = when - release.from.value();
    if (since <= 0)
        return 0;
    const double perSecond = release.mass.value() / release.lasting.value();
    const double during = std::min(since, release.lasting.value());
    return perSecond / m_volume * filling(m_rate, during) * std::exp(-m_rate * (since - during));
}

double WellMixedRoom::dose(const Release& release, double when) const
{
    const double since = when - release.from.value();
    if (since <= 0)
        return 0;
    const double lasting = release.lasting.value();
    const double perSecond = release.mass.value() / lasting / m_volume;
    const double during = std::min(since, lasting);
    return perSecond * filled(m_rate, during) +
           perSecond * filling(m_rate, lasting) * filling(m_rate, std::max(0.0, since - lasting));
}

Concentration WellMixedRoom::at(const std::vector<Release>& releases, Duration when) const
{
    double sum = 0;
    for (const Release& each : releases)
        sum += concentration(each, when.value());
    return sum * si::kilogram / si::cubic_metre;
}

Concentration WellMixedRoom::peak(const std::vector<Release>& releases) const
{
    // Between two moments at which a release begins or ends, the concentration nears one value: it is highest at one
    // of these moments.
    Concentration highest = milligramsPerCubicMetre(0);
    for (const Release& each : releases)
        highest = std::max({highest, at(releases, each.from), at(releases, each.from + each.lasting)});
    return highest;
}

Concentration WellMixedRoom::mean(const std::vector<Release>& releases, Duration from, Duration until) const
{
    if (!(until > from))
        throw std::logic_error("a mean over no time");
    double sum = 0;
    for (const Release& each : releases)
        sum += dose(each, until.value()) - dose(each, from.value());
    return sum / (until - from).value() * si::kilogram / si::cubic_metre;
}

std::optional<double> WellMixedRoom::zeroBetween(double from, double until, double first, double last) const
{
    if (!(first > 0 && last < 0))
        return std::nullopt;
    // It is A + B exp(-k t) there; a straight line where nothing leaves.
    const double decay = m_rate * (until - from);
    if (decay < 1e-9)
        return from + (until - from) * first / (first - last);
    return from - std::log1p(first * std::expm1(-decay) / (first - last)) / m_rate;
}

Concentration WellMixedRoom::highestMean(const std::vector<Release>& releases, Duration over) const
{
    if (!(over > seconds(0)))
        throw std::logic_error("a mean over no time");
    const double window = over.value();
    std::vector<double> ends; // of the time, between which concentrations at both of its ends near one value each
    for (const Release& each : releases)
        for (const double moment : {each.from.value(), (each.from + each.lasting).value()}) {
            ends.push_back(moment);
            ends.push_back(moment + window);
        }
    std::sort(ends.begin(), ends.end());
    const auto rise = [&](double end) {
        return (at(releases, seconds(end)) - at(releases, seconds(end - window))).value();
    };
    Concentration highest = milligramsPerCubicMetre(0);
    const auto look = [&](double end) {
        highest = std::max(highest, mean(releases, seconds(end - window), seconds(end)));
    };
    for (std::size_t i = 0; i < ends.size(); ++i) {
        look(ends[i]);
        if (i > 0 && ends[i] > ends[i - 1])
            if (const auto top = zeroBetween(ends[i - 1], ends[i], rise(ends[i - 1]), rise(ends[i])))
                look(*top);
    }
    return highest;
}

} // namespace strandbench
