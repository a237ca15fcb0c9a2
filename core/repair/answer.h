// SPDX-License-Identifier: GPL-3.0-or-later
// Putting an answer into an assessment. Inside core/repair only.
#pragma once

#include "repair/repair.h"

namespace strandbench {

/// Puts an answer in, with the seq that gave it, or says why it does not fit; then nothing has changed.
/// A correction to another substrate drops the core when the new one is no laminate; a correction to
/// another kind of damage drops the weld, the adhesive, the size and the reach from behind, since all four
/// were said of the old damage. What is dropped is asked again. The same answer again drops nothing.
[[nodiscard]] std::optional<Fault> putAnswer(Repair& repair, const Answered& answered, qint64 seq);

} // namespace strandbench
