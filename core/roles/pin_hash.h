// SPDX-License-Identifier: GPL-3.0-or-later
// A PIN as a memory-hard hash. Inside core/roles only.
#pragma once

#include "roles/pin_door.h"

namespace strandbench {

/// libsodium's own text of an Argon2id hash: cost, salt and hash. Empty when the memory for it is not there.
[[nodiscard]] QByteArray hashOf(const QString& pin, const PinCost& cost);
/// Whether it is such a text, whole; of a letter that became another nothing is told.
[[nodiscard]] bool isHash(const QByteArray& hash);
/// Costs as much time and memory as the hash says.
[[nodiscard]] bool matches(const QByteArray& hash, const QString& pin);

} // namespace strandbench
