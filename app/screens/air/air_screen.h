// SPDX-License-Identifier: GPL-3.0-or-later
// The air of the bench: the newest reading, and the ways to dew, vapour and fire.
#pragma once

#include "screens/frame/screen.h"

#include <functional>

namespace strandbench {

struct AirWays {
    std::function<void()> dew;
    std::function<void()> vapour;
    std::function<void()> fire;
};

/// One tap from the ribbon's reading, wherever that is.
[[nodiscard]] Screen* makeAirScreen(const Surroundings& around, const AirWays& ways, QWidget* parent);

/// The line that stands above each of its screens: the newest reading.
[[nodiscard]] QString airContext(const Surroundings& around);

} // namespace strandbench
