// SPDX-License-Identifier: GPL-3.0-or-later
// The table of what does harm as JSON, and the one that the program carries.
#pragma once

#include "harm/harm.h"
#include "quantity/fault.h"

namespace strandbench {

/// Reads the table. Every fault at once, the rules over it among them: a place names materials that are there; it lacks
/// no measure that one of them calls for (extraction before dust, no spark near a solvent); 'never with' is mutual;
/// two that are never together share no place; peroxide and accelerator are always such a pair.
[[nodiscard]] Checked<HarmTable> readHarmTable(const QByteArray& json);

/// resources/harm/harm.json. Throws std::logic_error when it does not parse, which is a defect of the build.
[[nodiscard]] const HarmTable& builtInHarm();

} // namespace strandbench
