// SPDX-License-Identifier: GPL-3.0-or-later
// A digest of a repair as the index keeps it. Enumerations are kept by their place: digestMark() changes with them.
#pragma once

#include "review/digest.h"

namespace strandbench {

[[nodiscard]] QByteArray digestBytes(const RepairDigest& digest);
/// Empty where the bytes are not a whole digest.
[[nodiscard]] std::optional<RepairDigest> digestFrom(const QByteArray& bytes);

} // namespace strandbench
