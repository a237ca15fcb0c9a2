// SPDX-License-Identifier: GPL-3.0-or-later
// What can still be read of a damaged log, into a log of its own.
#pragma once

#include "repairlog/repair_log.h"

namespace strandbench {

struct RescueReport {
    VerifyReport rescued;       ///< of the log that was written
    qint64 loose = 0;           ///< events that can be read and do not follow on what could be read before them
    QString looseFile;          ///< where those are, one JSON object a line; empty when there are none
    qint64 unreadBytes = 0;     ///< of the damaged file: its disk gave no answer
    qint64 blobsMissing = 0;    ///< sheets and photos that events name and that could not be read
    bool originGuessed = false; ///< whose log it is could not be read: it is taken to be its first event's bench
};

/// Writes the beginning of every chain, as far as it holds, as a new log, and what can be read beyond that as text
/// beside it. The damaged log is only read, from a copy of its bytes: it stays as it is, and nothing is left beside it.
/// A whole log is rescued whole. Refuses to overwrite (CannotOpen); Damaged or NotADatabase when not even its first
/// page can be read. No connection of this process may have the log open: its locks would be lost.
[[nodiscard]] Logged<RescueReport> rescueLog(const QString& path, const QString& to);

} // namespace strandbench
