// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of verifying a log. Each says where it breaks, or that it holds.
#pragma once

#include "repairlog/connection.h"

namespace strandbench {

/// What breaks, as VerifyReport codes it, and where.
struct Break {
    QString at;
    QString where;
};

/// The break, if there is one; a failure when the check itself could not be made.
using Finding = Logged<std::optional<Break>>;

/// SQLite's own check of pages, indexes and types. Of a file opened to be read it knows no CHECKs: what they keep from
/// happening, the other checks find.
[[nodiscard]] Finding checkIntegrity(const SqlConnection& connection);
/// Tables and indexes as this program makes them, the version stamps agreeing with each other.
[[nodiscard]] Finding checkTables(const SqlConnection& connection);
/// The triggers that keep the log append-only, and nothing that is not ours.
[[nodiscard]] Finding checkGuards(const SqlConnection& connection);

/// Every chain link by link, and each event's day against its time. Counts events and heads into the report.
/// `expected` is a head that must be in a chain: the hash of some event, or of the empty chain; empty for none.
[[nodiscard]] Finding checkChains(const SqlConnection& connection, const QByteArray& expected, VerifyReport& report);

/// Every payload readable, every repair foldable, every summary as its events say. Counts repairs.
[[nodiscard]] Finding checkRepairs(const SqlConnection& connection, VerifyReport& report);

/// Blobs against their hashes, links on both sides, the bytes of every photo and kept sheet linked to it.
[[nodiscard]] Finding checkBlobs(const SqlConnection& connection);
/// What the log says of itself: its versions, and a bench that has a chain in it as soon as there is one.
[[nodiscard]] Finding checkMeta(const SqlConnection& connection);

/// verifyLog(), with what does not hold as a failure (Damaged).
[[nodiscard]] Logged<VerifyReport> verifiedLog(const QString& path);

} // namespace strandbench
