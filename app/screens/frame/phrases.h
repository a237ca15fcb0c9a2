// SPDX-License-Identifier: GPL-3.0-or-later
// Figures put together as the screens and the ribbon say them.
#pragma once

#include "words/words.h"

namespace strandbench::phrases {

[[nodiscard]] QString massPair(const Mix& mix, const Words& words); ///< "38.0 g + 0.75 g"
/// The bead's accepted range by the sheet's hardener band: "25–41 is fine".
[[nodiscard]] QString beadBand(const Mix& mix, const ProductSheet& sheet, const Words& words);
[[nodiscard]] QString batchOf(int batch, int all); ///< "batch 1 of 2"
[[nodiscard]] QString stepOf(int step, int all);   ///< "step 6 of 13"
/// What a prediction stands on: "from the sheet", "from 14 batches of this lot".
[[nodiscard]] QString source(int batches, int otherLots);
[[nodiscard]] QString minuteTick(int minute); ///< "4 min"
[[nodiscard]] QString moreMixes(int count);   ///< "2 more running"
[[nodiscard]] QString noReading();            ///< "air not read yet"
/// Four lines: air and humidity; panel; dew margin; age of the reading and time of day.
[[nodiscard]] QStringList readingLines(const Reading& reading, TemperatureStep margin, Duration age, const Instant& now,
                                       const Words& words);

} // namespace strandbench::phrases
