// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/rows.h"

#include "exchange/events.h"
#include "repair/stock_book.h"
#include "repairlog/failure.h"

#include <QCryptographicHash>

#include <algorithm>
#include <iterator>

using namespace Qt::StringLiterals;

namespace strandbench {

QString recordColumns()
{
    return u"prev_hash, origin, seq, repair, kind, kind_version, utc_ms, boottime_ms, boot_id, utc_offset_s, "
           "person, payload, hash, local_day"_s;
}

EventRecord readRecord(const Row& row)
{
    EventRecord record;
    record.previousHash = row.bytes(0);
    record.origin = row.text(1);
    record.seq = row.integer(2);
    record.repair = row.text(3);
    record.kind = row.text(4);
    record.kindVersion = row.integer(5);
    record.at.utcMs = row.integer(6);
    record.at.boottimeMs = row.integer(7);
    record.at.bootId = row.text(8);
    record.at.utcOffsetSeconds = int(row.integer(9));
    record.person = row.text(10);
    record.payload = row.bytes(11);
    record.hash = row.bytes(12);
    record.localDay = row.text(13);
    return record;
}

QString storedTexts(const QStringList& columns)
{
    QStringList casts;
    for (const QString& column : columns)
        casts << u"CAST(%1 AS BLOB)"_s.arg(column);
    return casts.join(u", "_s);
}

QStringList recordTexts() { return {u"origin"_s, u"repair"_s, u"kind"_s, u"boot_id"_s, u"person"_s, u"local_day"_s}; }

bool readsAsStored(const EventRecord& record, const Row& row, int firstText)
{
    const QStringList texts{record.origin,    record.repair, record.kind,
                            record.at.bootId, record.person, record.localDay};
    for (qsizetype i = 0; i < texts.size(); ++i)
        if (texts[i].toUtf8() != row.bytes(firstText + int(i)))
            return false;
    return record.at.utcOffsetSeconds == row.integer(9); // of which only the lower half is read
}

Logged<std::optional<EventRecord>> lastRecord(const SqlConnection& connection, const QString& origin)
{
    std::optional<EventRecord> last;
    const auto take = [&](const Row& row) -> Logged<void> {
        last = readRecord(row);
        return {};
    };
    return connection
        .each(u"SELECT %1 FROM event WHERE origin = ? ORDER BY seq DESC LIMIT 1"_s.arg(recordColumns()), {origin}, take)
        .map([&] { return last; });
}

bool isSameAct(const EventRecord& one, const EventRecord& other)
{
    return one.repair == other.repair && one.kind == other.kind && one.kindVersion == other.kindVersion &&
           one.at == other.at && one.person == other.person && one.payload == other.payload;
}

Logged<ChainHead> headOf(const SqlConnection& connection, const QString& origin)
{
    ChainHead head{origin, 0, emptyChainHash()};
    const auto take = [&](const Row& row) -> Logged<void> {
        head.count = row.integer(0);
        head.hash = row.bytes(1);
        return {};
    };
    return connection.each(u"SELECT seq, hash FROM event WHERE origin = ? ORDER BY seq DESC LIMIT 1"_s, {origin}, take)
        .map([&] { return head; });
}

Logged<void> insertRecord(const SqlConnection& connection, const EventRecord& record)
{
    static const QString insert =
        u"INSERT INTO event ("_s + recordColumns() + u") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s;
    return connection.run(insert,
                          {record.previousHash, record.origin, record.seq, record.repair, record.kind,
                           record.kindVersion, record.at.utcMs, record.at.boottimeMs, record.at.bootId,
                           record.at.utcOffsetSeconds, record.person, record.payload, record.hash, record.localDay});
}

Logged<Event> readEvent(const EventRecord& record)
{
    auto payload = decodePayload(record.kind, int(record.kindVersion), record.payload);
    if (!payload)
        return failed(
            LogTrouble::Damaged,
            u"origin %1, seq %2: %3"_s.arg(record.origin).arg(record.seq).arg(inWords(payload.error().front())));
    Event event;
    event.origin = record.origin;
    event.seq = record.seq;
    event.repair = QUuid::fromString(record.repair);
    event.person = record.person;
    event.payload = *std::move(payload);
    event.at = record.at;
    event.hash = record.hash;
    return event;
}

Logged<std::vector<Event>> eventsWhere(const SqlConnection& connection, const QString& condition,
                                       const QVariantList& binds)
{
    std::vector<Event> events;
    const auto take = [&](const Row& row) -> Logged<void> {
        auto event = readEvent(readRecord(row));
        if (!event)
            return tl::unexpected(event.error());
        events.push_back(*std::move(event));
        return {};
    };
    if (auto done = connection.each(u"SELECT %1 FROM event WHERE %2"_s.arg(recordColumns(), condition), binds, take);
        !done)
        return tl::unexpected(done.error());
    return events;
}

Logged<std::vector<Event>> eventsOf(const SqlConnection& connection, const QUuid& repair)
{
    return eventsWhere(connection, u"repair = ? ORDER BY seq"_s, {textOf(repair)});
}

Logged<std::vector<Event>> eventsOfLots(const SqlConnection& connection, const QString& fromLocalDay,
                                        const QString& ownOrigin)
{
    return eventsWhere(
        connection,
        u"local_day >= ? AND kind IN ('taken_in', 'hardener_in', 'predicted_again', 'edges_clear', 'gelled', 'sands', "
        "'pat_mixed', 'pat_gelled', 'lot_forgotten') AND "
        "(kind NOT IN ('pat_mixed', 'pat_gelled') OR origin = ?) ORDER BY origin, seq"_s,
        {fromLocalDay, ownOrigin});
}

Logged<std::vector<Event>> eventsOfStock(const SqlConnection& connection, const QString& fromLocalDay,
                                         const QString& ownOrigin)
{
    auto acts = eventsWhere(connection, u"local_day >= ? AND kind GLOB 'stock_*' AND origin = ? ORDER BY seq"_s,
                            {fromLocalDay, ownOrigin});
    if (!acts)
        return acts;
    const QString from = stockFromDay(*acts);
    if (from.isEmpty())
        return acts;
    auto mixed = eventsWhere(connection,
                             u"local_day >= ? AND kind IN ('taken_in', 'hardener_in', 'gelled', 'pat_mixed', "
                             "'pat_gelled') AND origin = ? ORDER BY seq"_s,
                             {from, ownOrigin});
    if (!mixed)
        return mixed;
    std::vector<Event> all;
    std::ranges::merge(*acts, *mixed, std::back_inserter(all), {}, &Event::seq, &Event::seq);
    return all;
}

Logged<std::vector<Event>> eventsOfAir(const SqlConnection& connection, const QString& fromLocalDay,
                                       const QString& toLocalDay, const QString& ownOrigin)
{
    // '+origin': the chain's own index would be walked from its beginning.
    return eventsWhere(connection,
                       u"local_day BETWEEN ? AND ? AND +origin = ? AND kind IN ('answered', 'reading_taken', "
                       "'hardener_in', 'pat_mixed', 'step_done') ORDER BY seq"_s,
                       {fromLocalDay, toLocalDay, ownOrigin});
}

Logged<void> insertBlob(const SqlConnection& connection, const EventRecord& record, const QByteArray& bytes)
{
    const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
    auto done = connection.run(
        u"INSERT INTO blob (hash, bytes) SELECT ?, ? WHERE NOT EXISTS (SELECT 1 FROM blob WHERE hash = ?)"_s,
        {hash, bytes, hash});
    if (!done)
        return done;
    return connection.run(u"INSERT INTO event_blob (origin, seq, hash) SELECT ?, ?, ? WHERE NOT EXISTS "
                          "(SELECT 1 FROM event_blob WHERE origin = ? AND seq = ? AND hash = ?)"_s,
                          {record.origin, record.seq, hash, record.origin, record.seq, hash});
}

Logged<bool> hasBlobs(const SqlConnection& connection, const EventRecord& record, const std::vector<QByteArray>& blobs)
{
    for (const QByteArray& bytes : blobs) {
        const auto linked =
            connection.value(u"SELECT 1 FROM event_blob WHERE origin = ? AND seq = ? AND hash = ?"_s,
                             {record.origin, record.seq, QCryptographicHash::hash(bytes, QCryptographicHash::Sha256)});
        if (!linked)
            return tl::unexpected(linked.error());
        if (!linked->isValid())
            return false;
    }
    return true;
}

RepairSummary summaryOf(const Repair& repair, const QString& person)
{
    RepairSummary summary;
    summary.repair = repair.id;
    summary.job = repair.job;
    summary.panel = repair.panel;
    if (repair.assessment.substrate)
        summary.substrate = codeOf(*repair.assessment.substrate);
    if (repair.assessment.damage)
        summary.damageKind = codeOf(repair.assessment.damage->kind);
    summary.station = codeOf(nextStep(repair).station);
    summary.person = person;
    summary.open = repair.open();
    summary.firstUtcMs = repair.takenInAt.utcMs;
    summary.lastUtcMs = repair.lastAt.utcMs;
    summary.lastSeq = repair.lastSeq;
    return summary;
}

QString summaryColumns()
{
    return u"repair, job, panel, substrate, damage_kind, station, person, open, first_utc_ms, last_utc_ms, "
           "last_seq"_s;
}

RepairSummary readSummary(const Row& row)
{
    RepairSummary summary;
    summary.repair = QUuid::fromString(row.text(0));
    summary.job = row.text(1);
    summary.panel = row.text(2);
    summary.substrate = row.text(3);
    summary.damageKind = row.text(4);
    summary.station = row.text(5);
    summary.person = row.text(6);
    summary.open = row.integer(7) != 0;
    summary.firstUtcMs = row.integer(8);
    summary.lastUtcMs = row.integer(9);
    summary.lastSeq = row.integer(10);
    return summary;
}

Logged<void> putSummary(const SqlConnection& connection, const RepairSummary& summary)
{
    static const QString put =
        u"INSERT INTO summary (%1, job_key, panel_key) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
        "ON CONFLICT (repair) DO UPDATE SET job = excluded.job, panel = excluded.panel, "
        "substrate = excluded.substrate, damage_kind = excluded.damage_kind, station = excluded.station, "
        "person = excluded.person, open = excluded.open, first_utc_ms = excluded.first_utc_ms, "
        "last_utc_ms = excluded.last_utc_ms, last_seq = excluded.last_seq, job_key = excluded.job_key, "
        "panel_key = excluded.panel_key"_s.arg(summaryColumns());
    return connection.run(put,
                          {textOf(summary.repair), summary.job, summary.panel, summary.substrate, summary.damageKind,
                           summary.station, summary.person, summary.open ? 1 : 0, summary.firstUtcMs, summary.lastUtcMs,
                           summary.lastSeq, comparable(summary.job), comparable(summary.panel)});
}

QString comparable(const QString& name)
{
    return name.normalized(QString::NormalizationForm_C).simplified().toCaseFolded();
}

QString textOf(const QUuid& id) { return id.toString(QUuid::WithoutBraces); }

} // namespace strandbench
