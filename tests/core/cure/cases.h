// SPDX-License-Identifier: GPL-3.0-or-later
// Cure cases to try: a few by hand, and a seeded crowd of what a bench may hold.
#pragma once

#include "cure/solve.h"

#include <random>

namespace strandbench::test {

/// Filler of no maker: density 1150, specific heat 1250, conductivity 0.35.
[[nodiscard]] ThermalMaterial filler();
// Textbook figures of Incropera, table A.1; the board and the laminate as the code's own test pieces have them.
[[nodiscard]] ThermalMaterial steel();
[[nodiscard]] ThermalMaterial aluminium();
[[nodiscard]] ThermalMaterial laminate();
[[nodiscard]] ThermalMaterial board();

[[nodiscard]] StackLayer layerOf(const ThermalMaterial& material, double millimetresThick, double degreesCelsius);

/// 4 mm of filler on 0.8 mm of steel, all at 25 degC, 2 % of hardener, followed for an hour.
[[nodiscard]] CureCase skirtPanel();
/// 0.1 mm without a stack, its faces held at the air's temperature: it stays there whatever it gives off.
[[nodiscard]] CureCase heldFilm(double degreesCelsius);
/// No stack, nothing goes out.
[[nodiscard]] CureCase insulated(CureCase cureCase);
/// Filler, stack and air at once.
[[nodiscard]] CureCase warmer(CureCase cureCase, double kelvins);

/// From anywhere on the bench: 0.5-25 mm, 5-40 degC, hardener 1-4 %, gel 1-30 min at 25 degC and 2 %, on steel,
/// aluminium, laminate or board, some with a cured lift between.
[[nodiscard]] CureCase benchCase(std::mt19937_64& random);

[[nodiscard]] double between(std::mt19937_64& random, double low, double high);
/// Even on the logarithm.
[[nodiscard]] double scaledBetween(std::mt19937_64& random, double low, double high);
[[nodiscard]] bool chance(std::mt19937_64& random, double share);

/// The result, or a failed check and an empty one.
[[nodiscard]] CureResult solved(const CureCase& cureCase, const CureFineness& fineness = {});
/// Seconds of a mark, NaN when it was not reached: no comparison holds then.
[[nodiscard]] double secondsOf(const std::optional<Duration>& mark);

} // namespace strandbench::test
