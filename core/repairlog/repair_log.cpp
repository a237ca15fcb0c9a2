// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/repair_log.h"

#include "repairlog/appender.h"
#include "repairlog/failure.h"
#include "repairlog/file_identity.h"
#include "repairlog/gate.h"
#include "repairlog/kept_sheets.h"
#include "repairlog/probe.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"
#include "repairlog/strangers_wal.h"

using namespace Qt::StringLiterals;

namespace strandbench {
struct RepairLog::Connection {
    Connection(std::unique_ptr<SqlConnection> connection, LogMode how, QString where, QString bench)
        : sql(std::move(connection)),
          mode(how),
          path(std::move(where)),
          file(FileIdentity::of(path)),
          origin(std::move(bench)),
          appender(*sql, origin)
    {}
    ~Connection()
    {
        const StrangersWal guard(path, !stillThere());
        sql.reset();
    }
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    std::unique_ptr<SqlConnection> sql;
    LogMode mode;
    QString path;
    std::optional<FileIdentity> file; ///< as it was opened
    QString origin;
    Appender appender;

    /// SQLite goes on writing into a file that was taken away or replaced: nobody would ever find it.
    [[nodiscard]] Logged<void> stillThere() const
    {
        if (FileIdentity::of(path) == file)
            return {};
        return failed(LogTrouble::Gone, path);
    }
    [[nodiscard]] Logged<std::vector<RepairSummary>> summaries(const QString& where, const QVariantList& binds) const;
};

Logged<std::vector<RepairSummary>> RepairLog::Connection::summaries(const QString& where,
                                                                    const QVariantList& binds) const
{
    std::vector<RepairSummary> found;
    const auto take = [&](const Row& row) -> Logged<void> {
        found.push_back(readSummary(row));
        return {};
    };
    return sql
        ->each(u"SELECT %1 FROM summary WHERE %2 ORDER BY first_utc_ms, repair"_s.arg(summaryColumns(), where), binds,
               take)
        .map([&] { return std::move(found); });
}

RepairLog::RepairLog(std::unique_ptr<Connection> connection) : m_connection(std::move(connection)) {}
RepairLog::~RepairLog() = default;

Logged<std::unique_ptr<RepairLog>> RepairLog::open(const QString& path, LogMode mode)
{
    auto sql = mode == LogMode::ReadWrite ? openToWrite(path) : probe(path).and_then(openToRead);
    if (!sql)
        return tl::unexpected(sql.error());
    if (auto done = (*sql)->keepPagesAtHand(); !done) // from here on: until it is made, others see what is not whole
        return tl::unexpected(done.error());
    const auto origin = metaValue(**sql, u"origin"_s);
    if (!origin)
        return tl::unexpected(origin.error());
    if (QUuid::fromString(*origin).isNull())
        return failed(LogTrouble::Damaged, u"meta: origin is '%1'"_s.arg(*origin));
    auto connection = std::make_unique<Connection>(*std::move(sql), mode, path, *origin);
    return std::unique_ptr<RepairLog>(new RepairLog(std::move(connection)));
}

Logged<Event> RepairLog::append(const EventDraft& draft)
{
    if (m_connection->mode == LogMode::ReadOnly)
        return failed(LogTrouble::ReadOnly, u"the log was opened for reading"_s);
    return m_connection->appender.append(draft, [this] { return m_connection->stillThere(); });
}

Logged<std::vector<Event>> RepairLog::events(const QUuid& repair) const { return eventsOf(*m_connection->sql, repair); }

Logged<std::vector<Event>> RepairLog::clockJumps(const QString& fromLocalDay) const
{
    return eventsWhere(*m_connection->sql, u"origin = ? AND repair = ? AND local_day >= ? AND kind = ? ORDER BY seq"_s,
                       {m_connection->origin, textOf(benchSubject()), fromLocalDay, kindOf(ClockJumped{})});
}

Logged<std::vector<Event>> RepairLog::beadCalibrations() const
{
    return eventsWhere(*m_connection->sql, u"origin = ? AND repair = ? AND kind = ? ORDER BY seq"_s,
                       {m_connection->origin, textOf(benchSubject()), kindOf(BeadCalibrated{})});
}

Logged<std::vector<Event>> RepairLog::ofBench(const QString& localDay) const
{
    return eventsWhere(*m_connection->sql, u"origin = ? AND repair = ? AND local_day = ? ORDER BY seq"_s,
                       {m_connection->origin, textOf(benchSubject()), localDay});
}

Logged<std::vector<Event>> RepairLog::after(qint64 seq) const
{
    return eventsWhere(*m_connection->sql, u"origin = ? AND seq > ? ORDER BY seq"_s, {m_connection->origin, seq});
}

Logged<QStringList> RepairLog::origins() const
{
    QStringList origins;
    const auto take = [&](const Row& row) -> Logged<void> {
        origins << row.text(0);
        return {};
    };
    // From one to the next by the key, whatever their events number.
    return m_connection->sql
        ->each(u"WITH RECURSIVE bench (origin) AS (SELECT min(origin) FROM event UNION ALL SELECT (SELECT min(origin) "
               "FROM event WHERE origin > bench.origin) FROM bench WHERE bench.origin IS NOT NULL) "
               "SELECT origin FROM bench WHERE origin IS NOT NULL"_s,
               {}, take)
        .map([&] { return origins; });
}

Logged<std::vector<Event>> RepairLog::eventsAfter(const QString& origin, qint64 seq, int most) const
{
    return eventsWhere(*m_connection->sql, u"origin = ? AND seq > ? ORDER BY seq LIMIT ?"_s, {origin, seq, most});
}

Logged<ChainHead> RepairLog::headAt(const QString& origin, qint64 seq) const
{
    const auto hash = m_connection->sql->value(u"SELECT hash FROM event WHERE origin = ? AND seq = ?"_s, {origin, seq});
    if (!hash)
        return tl::unexpected(hash.error());
    if (!hash->isValid())
        return failed(LogTrouble::DoesNotFollow, u"origin %1 has no seq %2"_s.arg(origin).arg(seq));
    return ChainHead{origin, seq, hash->toByteArray()};
}

Logged<SheetBook> RepairLog::sheets() const { return sheetBookOf(*m_connection->sql, m_connection->origin); }

Logged<std::optional<Instant>> RepairLog::lastWritten() const
{
    return lastRecord(*m_connection->sql, m_connection->origin).map([](const std::optional<EventRecord>& last) {
        return last ? std::optional(last->at) : std::nullopt;
    });
}

Logged<std::vector<Event>> RepairLog::eventsOfLots(const QString& fromLocalDay) const
{
    return strandbench::eventsOfLots(*m_connection->sql, fromLocalDay, m_connection->origin);
}

Logged<std::vector<Event>> RepairLog::eventsOfStock(const QString& fromLocalDay) const
{
    return strandbench::eventsOfStock(*m_connection->sql, fromLocalDay, m_connection->origin);
}

Logged<std::vector<Event>> RepairLog::eventsOfAir(const QString& fromLocalDay, const QString& toLocalDay) const
{
    return strandbench::eventsOfAir(*m_connection->sql, fromLocalDay, toLocalDay, m_connection->origin);
}

Logged<std::vector<RepairSummary>> RepairLog::openRepairs() const
{
    return m_connection->summaries(
        u"open = 1 AND EXISTS (SELECT 1 FROM event WHERE event.repair = summary.repair AND event.origin = ?)"_s,
        {m_connection->origin});
}

Logged<std::vector<RepairSummary>> RepairLog::repairsOfDay(const QString& localDay) const
{
    return m_connection->summaries(u"repair IN (SELECT repair FROM event WHERE local_day = ?)"_s, {localDay});
}

Logged<QByteArray> RepairLog::blob(const QByteArray& hash) const
{
    const auto bytes = m_connection->sql->value(u"SELECT bytes FROM blob WHERE hash = ?"_s, {hash});
    if (!bytes)
        return tl::unexpected(bytes.error());
    if (!bytes->isValid())
        return failed(LogTrouble::DoesNotFollow, u"no blob %1"_s.arg(QString::fromLatin1(hash.toHex())));
    return bytes->toByteArray();
}

Logged<ChainHead> RepairLog::head() const { return headOf(*m_connection->sql, m_connection->origin); }

Logged<bool> RepairLog::contains(const ChainHead& head) const
{
    if (head.count == 0)
        return true;
    return m_connection->sql->value(u"SELECT hash FROM event WHERE origin = ? AND seq = ?"_s, {head.origin, head.count})
        .map([&](const QVariant& hash) { return hash.toByteArray() == head.hash; });
}

const QString& RepairLog::origin() const { return m_connection->origin; }

} // namespace strandbench
