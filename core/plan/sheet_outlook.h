// SPDX-License-Identifier: GPL-3.0-or-later
// What the engine makes of a product sheet: its times on the test pieces that they were stated on, in other air, and
// the greatest lift that stays below its peak.
#pragma once

#include "plan/cure_engine.h"

namespace strandbench {

struct SheetOutlook {
    struct At {
        Temperature temperature;        ///< of filler, test piece and air
        std::optional<Duration> gel;    ///< of the puddle on the board; empty when it does not gel within a day
        std::optional<Duration> sand;   ///< of the layer on steel; likewise
        std::optional<Length> greatest; ///< lift on that steel, whose peak stays below the sheet's; empty: none does
        bool operator==(const At&) const = default;
    };
    std::vector<At> at;
    Length looked; ///< greatest lifts are looked for up to so much
    bool operator==(const SheetOutlook&) const = default;
};

/// At 10, 18, 25 and 32 degC, with the nominal hardener. At the sheet's reference temperature the two times are those
/// that it states. The reason when its two times fit no law of cure. Takes seconds: compute it beside the glass.
[[nodiscard]] CureAnswer<SheetOutlook> outlookOf(const ProductSheet& sheet, const CureEngine& engine);

/// The two times alone, of one temperature.
[[nodiscard]] CureAnswer<SheetOutlook::At> timesAt(const ProductSheet& sheet, Temperature temperature,
                                                   const CureEngine& engine);

} // namespace strandbench
