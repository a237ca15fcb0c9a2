// SPDX-License-Identifier: GPL-3.0-or-later
// What told the substrate, in the person's language.
#pragma once

#include "repair/event.h"

namespace strandbench {

/// "magnet", as it stands within a list or a sentence.
[[nodiscard]] QString foundByName(FoundBy by);
/// An answer with what told it: "SMC (told by broken edge, tap sound)"; the answer alone when that is not told.
[[nodiscard]] QString withFoundBy(const QString& answer, const std::vector<FoundBy>& foundBy);

} // namespace strandbench
