// SPDX-License-Identifier: GPL-3.0-or-later
// The air in words: vapours, what a published limit is about, and how what the box holds lies to it.
#pragma once

#include "air/fire.h"
#include "air/shop_air.h"
#include "words/words.h"

namespace strandbench::words {

[[nodiscard]] QString vapour(Vapour vapour);                ///< "Styrene"
[[nodiscard]] QString limitKind(LimitKind kind);            ///< "mean of 8 hours"
[[nodiscard]] QString ppm(Fraction level, const Words& in); ///< "3.2 ppm"; "under 0.1 ppm"
/// "0.9 to 3.2 ppm"; one figure where both read alike.
[[nodiscard]] QString ppm(const VapourRange& range, const Words& in);
/// "OSHA PEL, mean of 8 hours: 100 ppm"
[[nodiscard]] QString limitLine(const ExposureLimit& limit, const Words& in);
/// "Reckoned 0.9 to 3.2 ppm: up to 4 % of it", "… may be above it. Ventilate now."
[[nodiscard]] QString besideLine(const LimitBeside& beside, const Words& in);
/// "Flash point 31 °C: air 10 °C below it, a warm spot need not be"; air: empty when none was read.
[[nodiscard]] QString fireLine(const FirePoint& point, const std::optional<Temperature>& air, const Words& in);

} // namespace strandbench::words
