// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/gate.h"

#include <QtGlobal>

#include <cmath>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A reading exactly at a limit is within it; this absorbs what adding 273.15 rounds away.
const TemperatureStep roundingSlack = kelvinStep(1e-9);

bool below(Temperature reading, Temperature limit) { return limit - reading > roundingSlack; }
bool above(Temperature reading, Temperature limit) { return reading - limit > roundingSlack; }

} // namespace

Temperature dewPoint(Temperature air, Fraction humidity)
{
    if (!(humidity.value() > 0.0) || humidity > Fraction::ofOne(1.0))
        throw std::logic_error("relative humidity must be above 0 and at most 1");
    constexpr double a = 17.269;
    constexpr double b = 237.3; // °C
    const double t = inCelsius(air);
    // Magnus e = c exp(a t / (b + t)), solved for the temperature at which e is reached.
    const double gamma = std::log(humidity.value()) + a * t / (b + t);
    return celsius(b * gamma / (a - gamma));
}

AirVerdict judgeAir(const Reading& reading, const FillingLimits& limits)
{
    AirVerdict verdict;
    verdict.dewPoint = dewPoint(reading.air, reading.humidity);
    verdict.margin = reading.panel - verdict.dewPoint;
    if (limits.dewMargin - verdict.margin > roundingSlack)
        verdict.stops.push_back({u"panel_near_dew_point"_s, {verdict.margin, limits.dewMargin}});
    if (below(reading.panel, limits.panelLow))
        verdict.stops.push_back({u"panel_too_cold"_s, {reading.panel, limits.panelLow}});
    else if (below(reading.panel, limits.panelCautionBelow))
        verdict.cautions.push_back({u"panel_cool"_s, {reading.panel, limits.panelCautionBelow}});
    if (above(reading.panel, limits.panelHigh))
        verdict.stops.push_back({u"panel_too_hot"_s, {reading.panel, limits.panelHigh}});
    if (below(reading.air, limits.airLow))
        verdict.stops.push_back({u"air_too_cold"_s, {reading.air, limits.airLow}});
    if (above(reading.air, limits.airHigh))
        verdict.stops.push_back({u"air_too_hot"_s, {reading.air, limits.airHigh}});
    verdict.mayFill = verdict.stops.empty();
    return verdict;
}

} // namespace strandbench
