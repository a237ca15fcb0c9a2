// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"

#include <tl/expected.hpp>

#include <optional>
#include <vector>

namespace strandbench {

struct CurvePoint {
    Duration at;
    Temperature face;    ///< of the exposed face
    Temperature hottest; ///< anywhere in the fresh layer
    Fraction mean;       ///< conversion over the layer
    bool operator==(const CurvePoint&) const = default;
};

struct CureResult {
    std::optional<Duration> gel;  ///< any point of the layer; empty when not within the horizon
    std::optional<Duration> sand; ///< the exposed face; never before gel
    Temperature peak;             ///< highest anywhere in the fresh layer
    Duration peakAt;
    Fraction finalMean; ///< conversion at the horizon
    std::vector<CurvePoint> curve;
    int cells = 0; ///< of the fresh layer and its stack
    int steps = 0; ///< tried, those taken back included
    bool operator==(const CureResult&) const = default;
};

/// Why a valid case has no result.
struct CureDifficulty {
    enum class Kind {
        StepTooSmall, ///< the reaction runs away faster than time can be told apart
        TooManySteps, ///< the step budget is used up
    };
    Kind kind = Kind::TooManySteps;
    Duration at; ///< how far it came
    bool operator==(const CureDifficulty&) const = default;
};

using CureOutcome = tl::expected<CureResult, CureDifficulty>;

} // namespace strandbench
