// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/bulk_writer.h"

#include "repairlog/failure.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"

#include <QFile>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr qint64 eventsATransaction = 50'000;

/// What makes it quick, and worth nothing after a power cut.
Logged<void> makeQuick(const SqlConnection& sql)
{
    return sql.set(u"journal_mode"_s, u"OFF"_s, u"off"_s)
        .and_then([&] { return sql.set(u"synchronous"_s, u"OFF"_s, u"0"_s); })
        .and_then([&] { return sql.set(u"cache_size"_s, u"-262144"_s, u"-262144"_s); }); // KiB
}

/// As a row holds it, but for its place in the chain.
EventRecord recordOf(const Event& event, const QByteArray& payload)
{
    EventRecord record;
    record.origin = event.origin;
    record.repair = textOf(event.repair);
    record.kind = kindOf(event.payload);
    record.kindVersion = kindVersionOf(event.payload);
    record.at = event.at;
    record.person = event.person;
    record.payload = payload;
    record.localDay = localDay(event.at);
    return record;
}

} // namespace

Logged<std::unique_ptr<BulkWriter>> BulkWriter::create(const QString& path, const QUuid& bench)
{
    if (QFile::exists(path))
        return failed(LogTrouble::CannotOpen, u"%1 is there already"_s.arg(path));
    auto sql = SqlConnection::open(path, Access::ReadWrite);
    if (!sql)
        return tl::unexpected(sql.error());
    std::unique_ptr<BulkWriter> writer(new BulkWriter(*std::move(sql), path));
    auto made = makeQuick(*writer->m_sql)
                    .and_then([&] { return migrate(*writer->m_sql, migrations()); })
                    .and_then([&] { return setMeta(*writer->m_sql, u"origin"_s, textOf(bench)); })
                    .and_then([&] { return writer->layAside(); });
    if (!made)
        return tl::unexpected(made.error());
    return writer;
}

BulkWriter::~BulkWriter()
{
    if (m_finished)
        return;
    m_transaction.reset();
    m_sql.reset();
    QFile::remove(m_path);
}

/// Sorting an index once costs less than keeping it in order, and every guard asks the indexes.
Logged<void> BulkWriter::layAside()
{
    const auto take = [&](const Row& row) -> Logged<void> {
        m_aside.push_back({row.text(0), row.text(1), row.text(2)});
        return {};
    };
    auto done = m_sql->each(u"SELECT type, name, sql FROM sqlite_schema WHERE type IN ('index', 'trigger') AND "
                            "sql IS NOT NULL ORDER BY rowid"_s,
                            {}, take);
    for (std::size_t i = 0; done && i < m_aside.size(); ++i)
        done = m_sql->run(u"DROP %1 %2"_s.arg(m_aside[i].type, m_aside[i].name));
    return done;
}

Logged<void> BulkWriter::inTransaction()
{
    if (m_transaction)
        return {};
    auto begun = Transaction::begin(*m_sql, Transaction::Kind::Write);
    if (!begun)
        return tl::unexpected(begun.error());
    m_transaction.emplace(*std::move(begun));
    m_uncommitted = 0;
    return {};
}

qint64 BulkWriter::nextSeq(const QString& origin) const
{
    const auto head = m_heads.find(origin);
    return head == m_heads.end() ? 1 : head->second.count + 1;
}

Logged<void> BulkWriter::append(Event& event, const QByteArray& payload, const std::vector<QByteArray>& blobs)
{
    ChainHead& head = m_heads.try_emplace(event.origin, ChainHead{event.origin, 0, emptyChainHash()}).first->second;
    EventRecord record = recordOf(event, payload);
    record.seq = head.count + 1;
    record.previousHash = head.hash;
    record.hash = chainHash(record);
    auto done = inTransaction().and_then([&] { return insertRecord(*m_sql, record); });
    for (std::size_t i = 0; done && i < blobs.size(); ++i)
        done = insertBlob(*m_sql, record, blobs[i]);
    if (!done)
        return done;
    event.seq = head.count = record.seq;
    event.hash = head.hash = record.hash;
    if (++m_uncommitted < eventsATransaction)
        return {};
    done = m_transaction->commit();
    m_transaction.reset();
    return done;
}

Logged<void> BulkWriter::summarize(const Repair& repair, const QString& person) const
{
    return putSummary(*m_sql, summaryOf(repair, person));
}

Logged<void> BulkWriter::finish()
{
    Logged<void> done;
    if (m_transaction)
        done = m_transaction->commit();
    m_transaction.reset();
    for (std::size_t i = 0; done && i < m_aside.size(); ++i)
        done = m_sql->run(m_aside[i].sql);
    if (done)
        done = m_sql->set(u"synchronous"_s, u"FULL"_s, u"2"_s); // what comes now is on the disk, or fails
    if (done)
        done = m_sql->set(u"journal_mode"_s, u"WAL"_s, u"wal"_s);
    if (!done)
        return done;
    m_finished = true;
    m_sql.reset();
    return {};
}

} // namespace strandbench
