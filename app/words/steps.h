// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a step's text and of a caution's by code; only app/words includes this, everybody else asks
// Words. A code without a text comes back in brackets.
#pragma once

#include <QString>

namespace strandbench::words {

[[nodiscard]] QString stepSentence(const QString& code); ///< imperative, at most ten words, no full stop
[[nodiscard]] QString stepDetail(const QString& code);   ///< at most two short sentences, with placeholders
[[nodiscard]] QString stepWayOn(const QString& code);    ///< what confirming records

[[nodiscard]] QString cautionLead(const QString& code);
[[nodiscard]] QString cautionRest(const QString& code);

} // namespace strandbench::words
