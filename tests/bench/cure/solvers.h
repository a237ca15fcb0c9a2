// SPDX-License-Identifier: GPL-3.0-or-later
// The engine, and the general-purpose solvers that it is measured beside.
#pragma once

#include "watch.h"

namespace strandbench::curebench {

/// A step's error is weighed against tolerance times (scale + the unknown's own size). Found by trial over the
/// bench cases to cost both solvers the least, or nearly, for their accuracy. By the engine's weights, 100 K and
/// 0.1, CVODE evaluates a sixth more and GSL two thirds more.
inline constexpr double kelvinScale = 1000.0;
inline constexpr double conversionScale = 0.003;

/// The engine on a grid of so many fresh cells, to the case's horizon.
[[nodiscard]] Found solveWithEngine(const CureCase& cureCase, int cells, double tolerance);

/// Empty when the library is not installed.
[[nodiscard]] const char* gslVersion();
[[nodiscard]] const char* cvodeVersion();

/// BDF of variable order with dense linear algebra, `gsl_odeiv2_step_msbdf`, by the exact Jacobian. Dense output
/// is the cubic through both ends of a step.
[[nodiscard]] Found solveWithGsl(const System& system, const CureCase& cureCase, double tolerance);

/// How CVODE comes by its Jacobian.
enum class CvodeJacobian { Exact, Differences };

/// CVODE's BDF with banded linear algebra and its own dense output.
[[nodiscard]] Found solveWithCvode(const System& system, const CureCase& cureCase, double tolerance,
                                   CvodeJacobian jacobian);

} // namespace strandbench::curebench
