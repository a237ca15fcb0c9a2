// SPDX-License-Identifier: GPL-3.0-or-later
// What an instrument says, and what is wrong with it, in a person's words.
#pragma once

#include "gear/instrument_feed.h"
#include "words/words.h"

namespace strandbench::instruments {

/// "151.24 g", "21.4 °C, 48 %": what was read of a line, as finely as it was sent.
[[nodiscard]] QString reading(const LineReading& reading, const Words& words);
/// A weight to 0.01 g, or to 0.001 oz.
[[nodiscard]] QString weight(Mass mass, const Words& words);
/// One line: what it says now, or what is wrong.
[[nodiscard]] QString headline(const InstrumentView& view, const InstrumentSetting& setting, const Words& words);
/// What to do about it; empty where there is nothing to be done.
[[nodiscard]] QString advice(const InstrumentView& view, const Words& words);
/// True for what a person must see to.
[[nodiscard]] bool isTrouble(const InstrumentView& view);
/// A path or pattern, which may be broken behind any of its signs.
[[nodiscard]] QString breakable(const QString& text);

} // namespace strandbench::instruments
