// SPDX-License-Identifier: GPL-3.0-or-later
// The dew point and whether filling may start.
#pragma once

#include "air/reading.h"
#include "quantity/reason.h"

namespace strandbench {

/// Limits for filling (our assumptions, no source); a sheet's own apply where narrower.
struct FillingLimits {
    Temperature panelLow = celsius(10);
    Temperature panelHigh = celsius(30);
    Temperature panelCautionBelow = celsius(15);
    Temperature airLow = celsius(10);
    Temperature airHigh = celsius(35);
    /// ISO 8502-4 / ISO 12944-7 practice: the surface at least 3 degrees above the dew point.
    TemperatureStep dewMargin = kelvinStep(3);
};

/// Dew point of air over water by the Magnus form with Tetens' coefficients, a = 17.269, b = 237.3 degC, as
/// Murray 1967 gives them (J. Appl. Meteor. 6, 203-204; the page from memory). Of the usual sets it is the
/// closest to the ASHRAE 2017 formulation where filling happens: within 0.0185 K for air of 0-45 degC with a
/// dew point not below 0 degC; a set 0.01 K off would pass a panel that the full formulation stops.
/// Humidity in (0, 1]; throws std::logic_error outside it.
[[nodiscard]] Temperature dewPoint(Temperature air, Fraction humidity);

struct AirVerdict {
    Temperature dewPoint;
    TemperatureStep margin; ///< panel less dew point
    bool mayFill = false;
    Reasons stops;    ///< panel_near_dew_point, panel_too_cold, panel_too_hot, air_too_cold, air_too_hot
    Reasons cautions; ///< panel_cool: within limits, but slower and with less grip
};

/// Judges a reading. Stops carry the reading and the limit as arguments, in that order.
[[nodiscard]] AirVerdict judgeAir(const Reading& reading, const FillingLimits& limits = {});

} // namespace strandbench
