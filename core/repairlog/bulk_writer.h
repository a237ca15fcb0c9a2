// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a log that is made, not kept: a demo's, a benchmark's. Of what happened at a bench RepairLog::append() alone
// tells: act by act, each on the disk before the next.
#pragma once

#include "repairlog/chain.h"
#include "repairlog/transaction.h"

#include <map>

namespace strandbench {

class BulkWriter {
public:
    /// A new log of this bench, at a path where nothing lies (CannotOpen). Until finish() it has neither guards nor
    /// indexes, and nothing that was written is synced.
    [[nodiscard]] static Logged<std::unique_ptr<BulkWriter>> create(const QString& path, const QUuid& bench);
    /// Takes away what was not finished.
    ~BulkWriter();
    BulkWriter(const BulkWriter&) = delete;
    BulkWriter& operator=(const BulkWriter&) = delete;

    /// The seq that the next event of a bench gets.
    [[nodiscard]] qint64 nextSeq(const QString& origin) const;
    /// Puts an event at the end of its origin's chain, with its blobs, and gives it its seq and its hash. `payload` is
    /// what encodePayload() makes of its payload. Whether it may follow is the caller's to know: nothing asks.
    [[nodiscard]] Logged<void> append(Event& event, const QByteArray& payload,
                                      const std::vector<QByteArray>& blobs = {});
    /// The summary of a repair as it now stands; `person` told its newest event.
    [[nodiscard]] Logged<void> summarize(const Repair& repair, const QString& person) const;
    /// Makes it a log like any other: indexes, guards, WAL. verifyLog() tells whether all of it follows.
    [[nodiscard]] Logged<void> finish();

private:
    BulkWriter(std::unique_ptr<SqlConnection> sql, QString path) : m_sql(std::move(sql)), m_path(std::move(path)) {}
    [[nodiscard]] Logged<void> layAside(); ///< guards and indexes
    [[nodiscard]] Logged<void> inTransaction();

    struct Object {
        QString type;
        QString name;
        QString sql;
    };
    std::unique_ptr<SqlConnection> m_sql;
    QString m_path;
    std::vector<Object> m_aside;
    std::optional<Transaction> m_transaction;
    std::map<QString, ChainHead> m_heads; ///< by origin
    qint64 m_uncommitted = 0;             ///< events
    bool m_finished = false;
};

} // namespace strandbench
