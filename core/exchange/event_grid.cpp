// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/event_grid.h"

#include <cmath>
#include <stdexcept>

namespace strandbench::grid {

qint64 whole(double value)
{
    if (!std::isfinite(value) || std::abs(value) > static_cast<double>(greatest))
        throw std::logic_error("a quantity beyond the grid of storage");
    return std::llround(value);
}

qint64 micrometres(Length q) { return whole(q.value() * 1e6); }
qint64 milligrams(Mass q) { return whole(q.value() * 1e6); }
qint64 micrograms(Mass q) { return whole(q.value() * 1e9); }
qint64 microlitres(Volume q) { return whole(q.value() * 1e9); }
qint64 milliseconds(Duration q) { return whole(q.value() * 1e3); }
qint64 millikelvin(Temperature q) { return whole(q.value() * 1e3); }
qint64 millikelvin(TemperatureStep q) { return whole(q.value() * 1e3); }
qint64 millionths(Fraction q) { return whole(q.value() * 1e6); }

Length fromMicrometres(qint64 n) { return metres(static_cast<double>(n) / 1e6); }
Mass fromMilligrams(qint64 n) { return static_cast<double>(n) / 1e6 * si::kilogram; }
Mass fromMicrograms(qint64 n) { return static_cast<double>(n) / 1e9 * si::kilogram; }
Volume fromMicrolitres(qint64 n) { return static_cast<double>(n) / 1e9 * si::cubic_metre; }
Duration fromMilliseconds(qint64 n) { return seconds(static_cast<double>(n) / 1e3); }
Temperature fromMillikelvin(qint64 n) { return kelvin(static_cast<double>(n) / 1e3); }
TemperatureStep stepFromMillikelvin(qint64 n) { return kelvinStep(static_cast<double>(n) / 1e3); }
Fraction fromMillionths(qint64 n) { return Fraction::ofOne(static_cast<double>(n) / 1e6); }

} // namespace strandbench::grid
