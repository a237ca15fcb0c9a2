// SPDX-License-Identifier: GPL-3.0-or-later
// The one way to a connection that writes: a log that is damaged, as far as can be seen at once, is never opened for
// writing.
#pragma once

#include "repairlog/connection.h"

namespace strandbench {

/// How large a log may be to be looked through whole before it is opened for writing: its pages are read once. Of a
/// larger one the newest events are looked at, and the whole beside the work (verifyLog()).
inline constexpr qint64 wholeCheckBytes = 16LL * 1024 * 1024;

/// Opens a log to write it, or makes one where there is none; migrated, durable, in WAL mode. Damaged where it does not
/// hold; CutShort where its file ends before its pages do.
[[nodiscard]] Logged<std::unique_ptr<SqlConnection>> openToWrite(const QString& path);

} // namespace strandbench
