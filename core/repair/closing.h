// SPDX-License-Identifier: GPL-3.0-or-later
// What may come after a repair was handed over: it is signed off, or returned and done again; and what is put right.
#pragma once

#include "repair/repair.h"

namespace strandbench {

/// True of the kinds of event that are told of a repair that was handed over, and of no other.
[[nodiscard]] bool isClosing(const Payload& payload);

/// Folds one of them; the fault, as apply() gives it, names what does not follow:
/// - Signed off once, or returned once for a reason, never both.
/// - The rework of a returned repair begins once, and is another repair.
/// - Corrections name an entry of the repair, at any time.
[[nodiscard]] std::optional<Fault> putClosing(Repair& repair, const Event& event);

} // namespace strandbench
