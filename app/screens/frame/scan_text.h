// SPDX-License-Identifier: GPL-3.0-or-later
// What a scanner typed, judged as a text: no screen and no words in it.
#pragma once

#include "quantity/fault.h"

#include <optional>

namespace strandbench {

/// The longest job number or panel's name that is scanned, in characters.
inline constexpr int longestScan = 24;

/// What keeps a scanned text, without the spaces around it, from being a name or a number.
enum class ScanTrouble { Empty, ControlCharacter, TooLong };
/// Empty when nothing does.
[[nodiscard]] std::optional<ScanTrouble> scanTrouble(const QString& text);
/// True when every character can be shown.
[[nodiscard]] bool isShowable(const QString& text);

/// A scan as it can be told: its beginning, on one line.
[[nodiscard]] QString shownScan(QString text);

namespace inhand {

/// The longest lot that is kept, in characters.
inline constexpr int longestLot = 24;

/// A lot as keyed in or scanned, without spaces around it: 1 to 24 printable characters.
[[nodiscard]] Checked<QString> readLot(const QString& text);

} // namespace inhand
} // namespace strandbench
