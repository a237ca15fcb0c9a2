// SPDX-License-Identifier: GPL-3.0-or-later
// The dew point and whether filling may start.
#pragma once

#include "air/reading.h"
#include "quantity/reason.h"

namespace strandbench {

/// Limits for filling (job.md, 'Assumptions': ours, no source); a sheet's own apply where narrower.
struct FillingLimits {
    Temperature panelLow = celsius(10);
    Temperature panelHigh = celsius(30);
    Temperature panelCautionBelow = celsius(15);
    Temperature airLow = celsius(10);
    Temperature airHigh = celsius(35);
    /// ISO 8502-4 / ISO 12944-7 practice: the surface at least 3 degrees above the dew point.
    TemperatureStep dewMargin = kelvinStep(3);
};

/// Dew point of air over water by the Magnus form with the coefficients of Alduchov and Eskridge 1996
/// (J. Appl. Meteor. 35, 601-609): a = 17.625, b = 243.04 degC. Humidity in (0, 1].
[[nodiscard]] Temperature dewPoint(Temperature air, Fraction humidity);

struct AirVerdict {
    Temperature dewPoint;
    TemperatureStep margin; ///< panel less dew point
    bool mayFill = false;
    Reasons stops;          ///< panel_near_dew_point, panel_too_cold, panel_too_hot, air_too_cold, air_too_hot
    Reasons cautions;       ///< panel_cool: within limits, but slower and with less grip
};

/// Judges a reading. Stops carry the reading and the limit as arguments, in that order.
[[nodiscard]] AirVerdict judgeAir(const Reading& reading, const FillingLimits& limits = {});

} // namespace strandbench
