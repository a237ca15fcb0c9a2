// SPDX-License-Identifier: GPL-3.0-or-later
// The digests that an index of repairs keeps: by day, and by lot.
#include "repairlog/connection.h"
#include "repairlog/digest_bytes.h"
#include "repairlog/failure.h"
#include "repairlog/find_index.h"
#include "repairlog/rows.h"
#include "repairlog/transaction.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Repairs of these days, each once.
QString ofDays() { return u"(SELECT DISTINCT id FROM repair_day WHERE local_day BETWEEN ? AND ?)"_s; }

/// Repairs that took of a lot, each once.
QString ofLot()
{
    return u"(SELECT DISTINCT found.id FROM lot_use JOIN found ON found.repair = lot_use.repair "
           "WHERE lot = ? AND product = ?)"_s;
}

Logged<std::vector<QUuid>> undigestedAmong(const SqlConnection& sql, const QString& among, QVariantList binds)
{
    std::vector<QUuid> repairs;
    const auto take = [&repairs](const Row& row) -> Logged<void> {
        repairs.push_back(QUuid::fromString(row.text(0)));
        return {};
    };
    return sql
        .each(u"SELECT found.repair FROM "_s + among +
                  u" AS asked JOIN found ON found.id = asked.id LEFT JOIN digest ON digest.id = asked.id "
                  "WHERE digest.mark IS NOT ? LIMIT ?"_s,
              binds, take)
        .map([&] { return std::move(repairs); });
}

/// One question for both, whether all are there and what they are: a review is asked for far more often than made.
Logged<FindIndex::Digests> digestsAmong(const SqlConnection& sql, const QString& among, QVariantList binds,
                                        const QString& mark)
{
    std::vector<RepairDigest> digests;
    bool whole = true;
    const auto take = [&](const Row& row) -> Logged<void> {
        whole = whole && row.integer(1) != 0;
        if (!whole)
            return {};
        auto digest = digestFrom(row.bytes(0));
        if (!digest)
            return failed(LogTrouble::Damaged, u"digest"_s);
        digests.push_back(*std::move(digest));
        return {};
    };
    binds.prepend(mark);
    return sql
        .each(u"SELECT bytes, mark IS ? FROM "_s + among +
                  u" AS asked LEFT JOIN digest ON digest.id = asked.id ORDER BY asked.id"_s,
              binds, take)
        .map([&] { return whole ? FindIndex::Digests(std::move(digests)) : std::nullopt; });
}

} // namespace

Logged<std::vector<QUuid>> FindIndex::undigested(const QString& fromDay, const QString& toDay, const QString& mark,
                                                 int most) const
{
    return undigestedAmong(*m_sql, ofDays(), {fromDay, toDay, mark, most});
}

Logged<std::vector<QUuid>> FindIndex::undigested(const StockLot& lot, const QString& mark, int most) const
{
    return undigestedAmong(*m_sql, ofLot(), {lot.lot, lot.product, mark, most});
}

Logged<int> FindIndex::repairsOf(const QString& fromDay, const QString& toDay) const
{
    return m_sql
        ->value(u"SELECT count(DISTINCT id) FROM repair_day WHERE local_day BETWEEN ? AND ?"_s, {fromDay, toDay})
        .map([](const QVariant& count) { return count.toInt(); });
}

Logged<void> FindIndex::keep(const std::vector<RepairDigest>& digests, const QString& mark)
{
    auto transaction = Transaction::begin(*m_sql, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    for (const RepairDigest& each : digests)
        if (auto done = m_sql->run(u"INSERT OR REPLACE INTO digest (id, mark, bytes) "
                                   "SELECT id, ?, ? FROM found WHERE repair = ?"_s,
                                   {mark, digestBytes(each), textOf(each.repair)});
            !done)
            return done;
    return transaction->commit();
}

Logged<FindIndex::Digests> FindIndex::digests(const QString& fromDay, const QString& toDay, const QString& mark) const
{
    return digestsAmong(*m_sql, ofDays(), {fromDay, toDay}, mark);
}

Logged<FindIndex::Digests> FindIndex::digests(const StockLot& lot, const QString& mark) const
{
    return digestsAmong(*m_sql, ofLot(), {lot.lot, lot.product}, mark);
}

} // namespace strandbench
