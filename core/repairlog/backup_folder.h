// SPDX-License-Identifier: GPL-3.0-or-later
// Backups of one bench in a folder (a stick, say): named so that what they hold is seen, each verified after writing,
// the oldest given up when there are more than are to be kept.
#pragma once

#include "clock/clock.h"
#include "repairlog/repair_log.h"

namespace strandbench {

/// A backup as its name tells it: "strandbench-1f3a2b4c-20261126-101500-482.sqlite", of the bench (the first eight
/// digits of its origin), of a moment (UTC), with so many events of the bench's own.
struct BackupFile {
    QString path;
    QString bench;
    qint64 utcMs = 0; ///< to the second
    qint64 count = 0;
    bool operator==(const BackupFile&) const = default;
};

/// What lies in a folder, the newest first. bench: the first eight digits of an origin; empty for all benches. Empty
/// where the folder cannot be read.
[[nodiscard]] std::vector<BackupFile> backupsIn(const QString& folder, const QString& bench = {});

/// The bench of a log, as names of backups have it.
[[nodiscard]] QString benchOf(const QString& origin);

/// The end of a log's own chain, read beside whoever writes it.
[[nodiscard]] Logged<ChainHead> headOfLog(const QString& log);

struct BackedUp {
    BackupFile file;
    VerifyReport report;
    QStringList givenUp; ///< paths of older ones that were removed
};

/// The fewest that may be kept: one more than the one that is being replaced.
inline constexpr int fewestBackups = 2;

/// Writes a backup into a folder, then gives up the oldest of this bench's until `keep` are left (at least
/// fewestBackups). One that holds more events than the new one is never given up: what it holds may be nowhere else.
/// Nothing is given up when the new one could not be written and verified. Beside each lies a text with the heads of
/// its chains, for `verify --expect`.
[[nodiscard]] Logged<BackedUp> backupIntoFolder(const QString& log, const QString& folder, int keep,
                                                const Instant& now);

/// Whether a backup is due: there is none yet, or the newest is older than the interval, or of a time to come.
[[nodiscard]] bool backupIsDue(const std::vector<BackupFile>& ofBench, Duration every, const Instant& now);

} // namespace strandbench
