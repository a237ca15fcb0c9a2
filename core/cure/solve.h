// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cure/cure_case.h"
#include "cure/cure_result.h"

namespace strandbench {

/// How far a case is followed, the horizon at the most.
enum class CureUntil {
    Horizon,
    Marks, ///< until gel and sand are found
    Peak,  ///< and nothing in the layer can come to be hotter than it was
};

/// How finely a case is solved. The code's own choice keeps, on the bench's range (0.5-25 mm, 5-40 degC,
/// hardener 1-4 %, gel 1-30 min), gel and sand within 0.5 % and the peak within 0.5 K or 1 % of its rise.
struct CureFineness {
    std::optional<int> cells; ///< of the fresh layer; the code's own choice when empty
    double tolerance = 2e-4;  ///< of a step
    CureUntil until = CureUntil::Horizon;
};

/// Solves a case from 'hardener in' to its horizon: heat through the thickness (finite volumes) and cure, by a
/// stiffly accurate Rosenbrock method of order 4 with dense output. A mark that the horizon does not reach is
/// left empty. The same case gives the same result. Expects the ranges of `strandbench cure`; a case beyond
/// them ends with a difficulty, never with a number that is none.
[[nodiscard]] CureOutcome solveCure(const CureCase& cureCase, const CureFineness& fineness = {});

} // namespace strandbench
