// SPDX-License-Identifier: GPL-3.0-or-later
// Panels without end: a seed makes one, the same on every machine.
#pragma once

#include "practice/panel.h"

namespace strandbench {

/// A panel that what it shows solves (unanswered() is empty), over all substrates, damages, refusals and traps; its
/// traps are all that are laid in it. About half are filled. Its right answer is modelAnswer()'s business, like that of
/// any panel. The id is "g" and the seed.
[[nodiscard]] PracticePanel generatedPanel(quint64 seed);

} // namespace strandbench
