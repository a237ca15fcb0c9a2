// SPDX-License-Identifier: GPL-3.0-or-later
// Bringing another log in: the chain of every bench in it is put behind what is here of that bench.
#pragma once

#include "repairlog/repair_log.h"

namespace strandbench {

/// What becomes of one bench's chain.
struct MergedChain {
    QString origin;
    bool own = false;   ///< of the log that takes in
    qint64 here = 0;    ///< events that are here already
    qint64 there = 0;   ///< events that the other log has
    qint64 added = 0;   ///< those that were, or would be, brought in
    qint64 partsAt = 0; ///< the first seq at which the two tell different things; 0: they do not. Then nothing is added
    QByteArray head;    ///< the end of the chain as it is afterwards
    bool operator==(const MergedChain&) const = default;
};

/// A panel that is open in two repairs afterwards: two benches took it in.
struct OpenTwice {
    QString job;
    QString panel;
    bool operator==(const OpenTwice&) const = default;
};

struct MergeReport {
    std::vector<MergedChain> chains; ///< by origin; of all benches in the other log
    qint64 added = 0;
    qint64 repairs = 0; ///< that are new or went on
    std::vector<OpenTwice> openTwice;

    /// Chains that part: two logs went on from the same event, as after a backup was restored or a folder was copied.
    [[nodiscard]] bool conflicts() const;
};

enum class MergeMode {
    DryRun, ///< says what would be; the log is as it was
    Write,
};

/// Who brings it in, and when.
struct MergedBy {
    QString person;
    Instant at;
};

/// Brings what `from` holds and `path` lacks into `path`, in one transaction; a second time adds nothing. `from` is
/// verified first, and only read: Damaged with its place where it does not hold. A chain that parts is told, and left
/// as it is here; the others are brought in. A repair belongs to the bench that took it in: one with events of two
/// benches is Damaged. With `by`, a LogMerged of every bench of which something was added is written with it. Whoever
/// calls it holds the log's WriterLock.
[[nodiscard]] Logged<MergeReport> mergeLog(const QString& path, const QString& from, MergeMode mode,
                                           const std::optional<MergedBy>& by = std::nullopt);

} // namespace strandbench
