// SPDX-License-Identifier: GPL-3.0-or-later
// Names of codes; only app/words includes this, everybody else asks Words.
#pragma once

#include <QString>

namespace strandbench::words {

enum class NameOf {
    Substrate,
    Damage,
    Weld,
    Surface,
    Zone,
    Moisture,
    Core,
    Filler,
    Face,
    Phase,
    Station,
    Question,
};

/// The name of a code of one enumeration, as it stands inside a sentence; in brackets when there is none.
[[nodiscard]] QString nameOf(NameOf what, const QString& code);

/// The name of a code that stands as an argument of a reason or a step: a substrate, a damage, a filler, a
/// question, and whatever else an assessment holds.
[[nodiscard]] QString nameOfAnyCode(const QString& code);

} // namespace strandbench::words
