// SPDX-License-Identifier: GPL-3.0-or-later
// What at the bench can be lit, from which temperature on. It says what can burn, never that something cannot.
#pragma once

#include "air/vapour.h"
#include "harm/harm.h"

namespace strandbench {

/// What a flash point is known by.
enum class FlashBy {
    Published, ///< of what the material gives off: flashPoint() of its vapour
    Class,     ///< it lies below the temperature; how far, the product's own sheet says
    Always,    ///< a spray can: it can be lit at any temperature
};

struct FirePoint {
    QString material; ///< code of the table
    FlashBy by = FlashBy::Always;
    std::optional<Temperature> flash; ///< empty for Always
};

/// Every material of the table whose classes say that it can be lit, in the table's order. A paste goes by its styrene.
/// Flam. Liq. 2 has its flash point below 23 degC, Flam. Liq. 3 at most at 60 (CLP Annex I, Table 2.6.1, remembered).
[[nodiscard]] std::vector<FirePoint> firePoints(const HarmTable& table);

/// How much warmer the air may become until the vapour over the liquid can be lit; empty where it can be already, or
/// may be for all that is known. A heater, the sun or a lump that gets hot makes it warmer in one place.
[[nodiscard]] std::optional<TemperatureStep> belowFlash(const FirePoint& point, Temperature air);

} // namespace strandbench
