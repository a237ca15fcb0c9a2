// SPDX-License-Identifier: GPL-3.0-or-later
// Event payloads as stored bytes: compact JSON, quantities as integers (micrometres, milligrams,
// microlitres, millikelvin, milliseconds, millionths of a fraction), keys sorted. Read strictly.
#pragma once

#include "quantity/fault.h"
#include "repair/event.h"

namespace strandbench {

/// The bytes to store. They are hashed as they are and never written again.
[[nodiscard]] QByteArray encodePayload(const Payload& payload);

/// Reads stored bytes back. A kind or a version that this program does not know is a fault (NotOneOf).
[[nodiscard]] Checked<Payload> decodePayload(const QString& kind, int version, const QByteArray& bytes);

/// A payload as it will read back: quantities on the integer grid of storage. encode(stored(p)) == encode(p).
[[nodiscard]] Payload stored(const Payload& payload);

} // namespace strandbench
