// SPDX-License-Identifier: GPL-3.0-or-later
// The integer grid of stored quantities. A key's ending names the unit:
//   _um     lengths, micrometres                      _ms   durations, milliseconds
//   _mg     masses of filler, milligrams              _mk   temperatures and their steps, millikelvin
//   _ug     masses of hardener, micrograms            _ppm  shares, millionths of the whole
//   _ul     volumes, microlitres (mm3, 0.001 ml)      _thousandths  bevel ratios
// Rounding is to the nearest, halves away from zero.
#pragma once

#include "quantity/quantity.h"

#include <QtGlobal>

namespace strandbench::grid {

/// No stored integer lies beyond: up to 15 digits go through a double and back unchanged.
inline constexpr qint64 greatest = 999'999'999'999'999;

/// The whole, in millionths.
inline constexpr qint64 one = 1'000'000;

/// The nearest whole number; throws std::logic_error for one that is not finite or beyond the grid.
[[nodiscard]] qint64 whole(double value);

[[nodiscard]] qint64 micrometres(Length q);
[[nodiscard]] qint64 milligrams(Mass q);
[[nodiscard]] qint64 micrograms(Mass q);
[[nodiscard]] qint64 microlitres(Volume q);
[[nodiscard]] qint64 milliseconds(Duration q);
[[nodiscard]] qint64 millikelvin(Temperature q);
[[nodiscard]] qint64 millikelvin(TemperatureStep q);
[[nodiscard]] qint64 millionths(Fraction q);

// Back from the grid. They divide: the result is the double nearest to the decimal, so that 101600 um is
// what 0.1016 m is.
[[nodiscard]] Length fromMicrometres(qint64 n);
[[nodiscard]] Mass fromMilligrams(qint64 n);
[[nodiscard]] Mass fromMicrograms(qint64 n);
[[nodiscard]] Volume fromMicrolitres(qint64 n);
[[nodiscard]] Duration fromMilliseconds(qint64 n);
[[nodiscard]] Temperature fromMillikelvin(qint64 n);
[[nodiscard]] TemperatureStep stepFromMillikelvin(qint64 n);
[[nodiscard]] Fraction fromMillionths(qint64 n);

} // namespace strandbench::grid
