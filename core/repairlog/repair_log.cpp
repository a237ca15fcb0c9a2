// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/repair_log.h"

#include "exchange/events.h"
#include "repairlog/failure.h"
#include "repairlog/file_identity.h"
#include "repairlog/gate.h"
#include "repairlog/probe.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"
#include "repairlog/strangers_wal.h"
#include "repairlog/transaction.h"
#include "repair/lot_book.h"

#include <algorithm>
#include <exception>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The record of a draft, but for its place in the chain. Text is kept as UTF-8 holds it, since that is
/// what is stored and hashed. The codec throws for a payload that no screen can make (a negative mass, an
/// answer of another question's kind): here it is input, so it becomes a failure.
Logged<EventRecord> recordOf(const EventDraft& draft)
{
    const auto utf8 = [](const QString& text) { return QString::fromUtf8(text.toUtf8()); };
    EventRecord record;
    record.repair = textOf(draft.repair);
    record.kind = kindOf(draft.payload);
    record.kindVersion = kindVersionOf(draft.payload);
    record.at = draft.at;
    record.at.bootId = utf8(draft.at.bootId);
    record.person = utf8(draft.person);
    record.localDay = localDay(draft.at);
    try {
        record.payload = encodePayload(draft.payload);
    } catch (const std::exception& reason) {
        return failed(LogTrouble::DoesNotFollow, record.kind + u": "_s + QString::fromUtf8(reason.what()));
    }
    return record;
}

} // namespace

struct RepairLog::Connection {
    Connection() = default;
    ~Connection()
    {
        const StrangersWal guard(path, !stillThere());
        sql.reset();
    }
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    struct Written {
        Event event;
        std::optional<Repair> repair; ///< empty for an event of a lot, and for one that was there
    };

    std::unique_ptr<SqlConnection> sql;
    LogMode mode = LogMode::ReadOnly;
    QString path;
    std::optional<FileIdentity> file; ///< as it was opened
    QString origin;
    bool doubtful = true; ///< after opening, or a failure: the newest event may be of the draft that is told again
    /// Repairs as folded up to their newest event; whoever reads one compares its seq with the log's first.
    std::map<QUuid, Repair> folded;

    [[nodiscard]] Logged<ChainHead> head() const;
    [[nodiscard]] Logged<void> stillThere() const;
    [[nodiscard]] Logged<Repair> repair(const QUuid& id);
    [[nodiscard]] Logged<void> refuseOpenPanel(const TakenIn& taken) const;
    [[nodiscard]] Logged<void> refuseOfAnotherBench(const QUuid& repair) const;
    [[nodiscard]] Logged<void> refuseStrayCorrection(const Event& event, const Corrected& correction) const;
    /// What depends on more than the repair itself.
    [[nodiscard]] Logged<void> refuse(const Event& event) const;
    /// The newest event when it is this very act, told again.
    [[nodiscard]] Logged<std::optional<Event>> toldBefore(const EventDraft& draft, const EventRecord& record) const;
    [[nodiscard]] Logged<Event> follow(EventRecord& record) const;
    /// The repair as it is after the event; empty for an event of a lot. DoesNotFollow when it cannot follow.
    [[nodiscard]] Logged<std::optional<Repair>> after(const Event& event);
    [[nodiscard]] Logged<Written> write(const EventDraft& draft, EventRecord& record);
    [[nodiscard]] Logged<std::vector<RepairSummary>> summaries(const QString& where, const QVariantList& binds) const;
    void remember(Repair repair);
};

Logged<ChainHead> RepairLog::Connection::head() const { return headOf(*sql, origin); }

/// SQLite goes on writing into a file that was taken away or replaced: nobody would ever find it.
Logged<void> RepairLog::Connection::stillThere() const
{
    if (FileIdentity::of(path) == file)
        return {};
    return failed(LogTrouble::Gone, path);
}

Logged<Repair> RepairLog::Connection::repair(const QUuid& id)
{
    const auto newest = sql->value(u"SELECT max(seq) FROM event WHERE repair = ?"_s, {textOf(id)});
    if (!newest)
        return tl::unexpected(newest.error());
    if (newest->isNull())
        return Repair{};
    const auto known = folded.find(id);
    if (known != folded.end() && known->second.lastSeq == newest->toLongLong())
        return known->second;
    const auto events = eventsOf(*sql, id);
    if (!events)
        return tl::unexpected(events.error());
    const auto repair = foldRepair(*events);
    if (!repair)
        return failed(LogTrouble::Damaged, inWords(repair.error().front()));
    return *repair;
}

Logged<void> RepairLog::Connection::refuseOpenPanel(const TakenIn& taken) const
{
    const auto open = sql->value(u"SELECT repair FROM summary WHERE open = 1 AND job_key = ? AND panel_key = ?"_s,
                                 {comparable(taken.job), comparable(taken.panel)});
    if (!open)
        return tl::unexpected(open.error());
    if (open->isValid())
        return failed(LogTrouble::AlreadyOpen, open->toString());
    return {};
}

Logged<void> RepairLog::Connection::refuseOfAnotherBench(const QUuid& repair) const
{
    const auto other =
        sql->value(u"SELECT origin FROM event WHERE repair = ? AND origin <> ? LIMIT 1"_s, {textOf(repair), origin});
    if (!other)
        return tl::unexpected(other.error());
    if (other->isValid())
        return failed(LogTrouble::DoesNotFollow, u"repair: bench %1 took it in"_s.arg(other->toString()));
    return {};
}

Logged<void> RepairLog::Connection::refuseStrayCorrection(const Event& event, const Corrected& correction) const
{
    const auto found = sql->value(u"SELECT 1 FROM event WHERE origin = ? AND seq = ? AND repair = ?"_s,
                                  {origin, correction.seq, textOf(event.repair)});
    if (!found)
        return tl::unexpected(found.error());
    if (!found->isValid())
        return failed(LogTrouble::DoesNotFollow, u"corrected: seq %1 is not of this repair"_s.arg(correction.seq));
    return {};
}

/// Not the folding's business: what may be overridden may change with the program, what was overridden stays.
Logged<void> refuseOverride(const Overridden& over)
{
    for (const QString& each : over.stops)
        if (!std::ranges::count(knownStopCodes(), each) || stopOf({each, {}}).overridable != Override::Supervisor)
            return failed(LogTrouble::DoesNotFollow, u"overridden: %1 is nobody's to override"_s.arg(each));
    if (!std::ranges::count(overrideReasons(), over.reason))
        return failed(LogTrouble::DoesNotFollow, u"overridden: reason '%1'"_s.arg(over.reason));
    return {};
}

Logged<void> RepairLog::Connection::refuse(const Event& event) const
{
    if (const auto* taken = std::get_if<TakenIn>(&event.payload))
        return refuseOpenPanel(*taken);
    if (const auto* over = std::get_if<Overridden>(&event.payload))
        return refuseOverride(*over);
    if (const auto* correction = std::get_if<Corrected>(&event.payload))
        return refuseStrayCorrection(event, *correction);
    return {};
}

Logged<std::optional<Event>> RepairLog::Connection::toldBefore(const EventDraft& draft, const EventRecord& record) const
{
    const auto last = doubtful ? lastRecord(*sql, origin) : Logged<std::optional<EventRecord>>();
    if (!last)
        return tl::unexpected(last.error());
    if (!*last || !isSameAct(**last, record))
        return std::optional<Event>();
    const auto whole = hasBlobs(*sql, **last, draft.blobs);
    if (!whole)
        return tl::unexpected(whole.error());
    return *whole ? readEvent(**last).map([](const Event& event) { return std::optional(event); }) : std::nullopt;
}

/// Gives a record its place at the end of the chain. The event is what will be read back.
Logged<Event> RepairLog::Connection::follow(EventRecord& record) const
{
    const auto last = head();
    if (!last)
        return tl::unexpected(last.error());
    record.origin = last->origin;
    record.seq = last->count + 1;
    record.previousHash = last->hash;
    record.hash = chainHash(record);
    auto event = readEvent(record);
    if (!event)
        return failed(LogTrouble::DoesNotFollow, event.error().detail);
    return event;
}

Logged<std::optional<Repair>> RepairLog::Connection::after(const Event& event)
{
    if (subjectOf(event.payload) == Subject::Bench) {
        if (event.repair != benchSubject())
            return failed(LogTrouble::DoesNotFollow, kindOf(event.payload) + u": it is not of the bench"_s);
        return std::optional<Repair>();
    }
    if (isOfALot(event.payload)) {
        auto before = eventsOf(*sql, event.repair); // the same lot may be at several benches
        if (!before)
            return tl::unexpected(before.error());
        std::erase_if(*before, [this](const Event& each) { return each.origin != origin; });
        if (const auto fault = followsOfLot(*before, event))
            return failed(LogTrouble::DoesNotFollow, inWords(*fault));
        return std::optional<Repair>();
    }
    if (auto own = refuseOfAnotherBench(event.repair); !own)
        return tl::unexpected(own.error());
    auto folding = repair(event.repair);
    if (!folding)
        return tl::unexpected(folding.error());
    if (const auto fault = apply(*folding, event))
        return failed(LogTrouble::DoesNotFollow, inWords(*fault));
    return std::optional<Repair>(*std::move(folding));
}

Logged<RepairLog::Connection::Written> RepairLog::Connection::write(const EventDraft& draft, EventRecord& record)
{
    const auto before = toldBefore(draft, record);
    if (!before)
        return tl::unexpected(before.error());
    if (*before)
        return Written{**before, std::nullopt};
    const auto event = follow(record);
    if (!event)
        return tl::unexpected(event.error());
    auto changed = after(*event);
    if (!changed)
        return tl::unexpected(changed.error());
    if (auto may = refuse(*event); !may)
        return tl::unexpected(may.error());
    if (auto done = insertRecord(*sql, record); !done)
        return tl::unexpected(done.error());
    for (const QByteArray& bytes : draft.blobs)
        if (auto done = insertBlob(*sql, record, bytes); !done)
            return tl::unexpected(done.error());
    if (*changed)
        if (auto done = putSummary(*sql, summaryOf(**changed, record.person)); !done)
            return tl::unexpected(done.error());
    return Written{*event, *std::move(changed)};
}

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
        .map([&] { return found; });
}

void RepairLog::Connection::remember(Repair repair)
{
    const QUuid id = repair.id;
    if (repair.open())
        folded.insert_or_assign(id, std::move(repair));
    else
        folded.erase(id);
}

RepairLog::RepairLog(std::unique_ptr<Connection> connection) : m_connection(std::move(connection)) {}
RepairLog::~RepairLog() = default;

Logged<std::unique_ptr<RepairLog>> RepairLog::open(const QString& path, LogMode mode)
{
    auto sql = mode == LogMode::ReadWrite ? openToWrite(path) : probe(path).and_then(openToRead);
    if (!sql)
        return tl::unexpected(sql.error());
    const auto origin = metaValue(**sql, u"origin"_s);
    if (!origin)
        return tl::unexpected(origin.error());
    if (QUuid::fromString(*origin).isNull())
        return failed(LogTrouble::Damaged, u"meta: origin is '%1'"_s.arg(*origin));
    auto connection = std::make_unique<Connection>();
    connection->sql = *std::move(sql);
    connection->mode = mode;
    connection->path = path;
    connection->file = FileIdentity::of(path);
    connection->origin = *origin;
    return std::unique_ptr<RepairLog>(new RepairLog(std::move(connection)));
}

Logged<Event> RepairLog::append(const EventDraft& draft)
{
    if (m_connection->mode == LogMode::ReadOnly)
        return failed(LogTrouble::ReadOnly, u"the log was opened for reading"_s);
    if (draft.repair.isNull())
        return failed(LogTrouble::DoesNotFollow, u"repair: no uuid"_s);
    auto record = recordOf(draft);
    if (!record)
        return tl::unexpected(record.error());
    if (auto there = m_connection->stillThere(); !there)
        return tl::unexpected(there.error());
    auto transaction = Transaction::begin(*m_connection->sql, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    auto written = m_connection->write(draft, *record);
    m_connection->doubtful = true;
    if (!written)
        return tl::unexpected(written.error());
    if (auto done = transaction->commit().and_then([&] { return m_connection->stillThere(); }); !done)
        return tl::unexpected(done.error());
    m_connection->doubtful = false;
    if (written->repair)
        m_connection->remember(*std::move(written->repair));
    return std::move(written->event);
}

Logged<std::vector<Event>> RepairLog::events(const QUuid& repair) const { return eventsOf(*m_connection->sql, repair); }

Logged<std::vector<Event>> RepairLog::clockJumps(const QString& fromLocalDay) const
{
    return eventsWhere(*m_connection->sql, u"origin = ? AND repair = ? AND local_day >= ? AND kind = ? ORDER BY seq"_s,
                       {m_connection->origin, textOf(benchSubject()), fromLocalDay, kindOf(ClockJumped{})});
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

Logged<ChainHead> RepairLog::head() const { return m_connection->head(); }

Logged<bool> RepairLog::contains(const ChainHead& head) const
{
    if (head.count == 0)
        return true;
    return m_connection->sql->value(u"SELECT hash FROM event WHERE origin = ? AND seq = ?"_s, {head.origin, head.count})
        .map([&](const QVariant& hash) { return hash.toByteArray() == head.hash; });
}

const QString& RepairLog::origin() const { return m_connection->origin; }

} // namespace strandbench
