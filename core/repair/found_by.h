// SPDX-License-Identifier: GPL-3.0-or-later
// What tells one substrate from another at the bench (common practice, no source).
#pragma once

#include "quantity/codes.h"

namespace strandbench {

enum class FoundBy { Magnet, ZincGauge, Ohmmeter, BrokenEdge, BackMarking, TapSound };
template <> struct Codes<FoundBy> {
    static constexpr std::array<std::pair<FoundBy, const char*>, 6> table{{
        {FoundBy::Magnet, "magnet"},
        {FoundBy::ZincGauge, "zinc_gauge"},
        {FoundBy::Ohmmeter, "ohmmeter"},
        {FoundBy::BrokenEdge, "broken_edge"},
        {FoundBy::BackMarking, "back_marking"},
        {FoundBy::TapSound, "tap_sound"},
    }};
};

} // namespace strandbench
