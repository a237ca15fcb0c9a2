// SPDX-License-Identifier: GPL-3.0-or-later
// What a batch calls a person for.
#pragma once

#include "quantity/codes.h"
#include "quantity/quantity.h"

namespace strandbench {

/// In the order of a batch.
enum class AlarmKind {
    EdgesSoon, ///< shortly before the edges are due
    Gels,      ///< it may gel from now on: hands off
    SandFrom,  ///< it sands, by the late end
    SandUntil, ///< from now on it only gets harder
};
template <> struct Codes<AlarmKind> {
    static constexpr std::array<std::pair<AlarmKind, const char*>, 4> table{{
        {AlarmKind::EdgesSoon, "edges_soon"},
        {AlarmKind::Gels, "gels"},
        {AlarmKind::SandFrom, "sand_from"},
        {AlarmKind::SandUntil, "sand_until"},
    }};
};

/// How long before the edges are due a person is called: ours, with no source; time to lay the tool down and walk over.
inline const Duration edgesWarning = seconds(20);

/// Most urgent first: what is lost when nobody comes goes before what only gets harder; 0 is the most urgent.
[[nodiscard]] constexpr int urgencyOf(AlarmKind kind)
{
    switch (kind) {
    case AlarmKind::EdgesSoon:
        return 0;
    case AlarmKind::Gels:
        return 1;
    case AlarmKind::SandUntil:
        return 2;
    case AlarmKind::SandFrom:
        break;
    }
    return 3;
}

} // namespace strandbench
