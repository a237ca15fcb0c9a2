// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a refusal by code; only app/words includes this, everybody else asks Words. A code without a
// text comes back in brackets.
#pragma once

#include <QString>

namespace strandbench::words {

[[nodiscard]] bool isStop(const QString& code);
[[nodiscard]] QString stopHeadline(const QString& code);
[[nodiscard]] QString stopWrong(const QString& code); ///< with the reason's placeholders
[[nodiscard]] QString stopWhy(const QString& code);

/// What to do instead, in one line, and what goes with it; by the code in Stop::instead.
[[nodiscard]] QString insteadLine(const QString& code);
[[nodiscard]] QString insteadDetail(const QString& code);

/// Where a parked job goes ("to the welding shop"), by the code in Stop::parkTo.
[[nodiscard]] QString placeOf(const QString& code);

} // namespace strandbench::words
