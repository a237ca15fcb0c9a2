// SPDX-License-Identifier: GPL-3.0-or-later
// Codes and figures that stand in a mark; only app/words includes this.
#pragma once

#include "words/words.h"

namespace strandbench::words {

/// Any code that a mark names: a stop, a way, a step, a test, an answer, a filler, yes or no.
[[nodiscard]] QString markedCode(const QString& code);
/// An argument of a mark, its rule or its consequence.
[[nodiscard]] QString markedArgument(const Argument& argument, const Words& words);
/// Arguments in a list: "60 mm, 40 mm".
[[nodiscard]] QString markedList(const std::vector<Argument>& arguments, const Words& words);

} // namespace strandbench::words
