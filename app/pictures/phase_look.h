// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of the phases of a batch, alike on the ribbon at the top and on the clock's own.
#pragma once

#include "clock/batch_clock.h"
#include "theme/theme.h"

namespace strandbench {

struct PhaseLook {
    QColor ground;
    QColor ink;   ///< text and sign upon it
    bool hatched; ///< hands off: struck through, whatever the colour
};

[[nodiscard]] PhaseLook lookOf(Phase phase, const Theme& theme);

} // namespace strandbench
