// SPDX-License-Identifier: GPL-3.0-or-later
// The text of a reason by code; only app/words includes this, everybody else asks Words.
#pragma once

#include <QString>

namespace strandbench::words {

/// The text with its placeholders, stops included; a code without one comes back in brackets.
[[nodiscard]] QString reasonText(const QString& code);
/// True when the code has a text.
[[nodiscard]] bool hasReason(const QString& code);

} // namespace strandbench::words
