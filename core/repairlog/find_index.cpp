// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/find_index.h"

#include "repairlog/connection.h"
#include "repairlog/failure.h"
#include "repairlog/find_documents.h"
#include "repairlog/rows.h"
#include "repairlog/transaction.h"
#include "stock/ledger.h"

#include <QFile>
#include <QRegularExpression>

#include <algorithm>
#include <limits>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// 2 since days and digests stand in it, 3 since longer beginnings do, 4 since it knows when it was put in order.
constexpr int indexVersion = 4;

/// Words lie in pieces, the more the longer a log is; a search goes through each of them. They are put together once so
/// many events, and a tenth of all, came in since: what that rewrites is as much as all there is.
constexpr qint64 untidyEvents = 20'000;
constexpr int untidyPart = 10;
constexpr int pagesAtOnce = 500; ///< of words put in order in one transaction

const QStringList& tables()
{
    static const QStringList statements{
        u"CREATE TABLE taken_up (origin TEXT PRIMARY KEY NOT NULL, seq INTEGER NOT NULL, hash BLOB NOT NULL) STRICT"_s,
        uR"(CREATE TABLE found (
            id INTEGER PRIMARY KEY,
            repair TEXT NOT NULL UNIQUE,
            job TEXT NOT NULL,
            panel TEXT NOT NULL,
            people TEXT NOT NULL,
            lots TEXT NOT NULL,
            notes TEXT NOT NULL) STRICT)"_s,
        uR"(CREATE VIRTUAL TABLE found_words USING fts5 (job, panel, people, lots, notes, content = 'found',
            content_rowid = 'id', tokenize = 'unicode61 remove_diacritics 2',
            prefix = '2 3 4 5 6 7 8 9 10 11 12 13 14 15 16'))"_s,
        uR"(CREATE TRIGGER found_put AFTER INSERT ON found BEGIN
            INSERT INTO found_words (rowid, job, panel, people, lots, notes)
            VALUES (NEW.id, NEW.job, NEW.panel, NEW.people, NEW.lots, NEW.notes); END)"_s,
        uR"(CREATE TRIGGER found_changed AFTER UPDATE ON found BEGIN
            INSERT INTO found_words (found_words, rowid, job, panel, people, lots, notes)
            VALUES ('delete', OLD.id, OLD.job, OLD.panel, OLD.people, OLD.lots, OLD.notes);
            INSERT INTO found_words (rowid, job, panel, people, lots, notes)
            VALUES (NEW.id, NEW.job, NEW.panel, NEW.people, NEW.lots, NEW.notes); END)"_s,
        uR"(CREATE TABLE lot_use (
            lot TEXT NOT NULL,
            product TEXT NOT NULL,
            utc_ms INTEGER NOT NULL,
            origin TEXT NOT NULL,
            seq INTEGER NOT NULL,
            repair TEXT NOT NULL,
            person TEXT NOT NULL,
            local_day TEXT NOT NULL,
            amount_ug INTEGER NOT NULL,
            finishing INTEGER NOT NULL,
            batch INTEGER NOT NULL,
            PRIMARY KEY (lot, product, utc_ms, origin, seq)) STRICT, WITHOUT ROWID)"_s,
        uR"(CREATE TABLE repair_day (
            local_day TEXT NOT NULL,
            id INTEGER NOT NULL,
            PRIMARY KEY (local_day, id)) STRICT, WITHOUT ROWID)"_s,
        u"CREATE TABLE tidied (events INTEGER NOT NULL) STRICT"_s,
        u"INSERT INTO tidied VALUES (0)"_s,
        uR"(CREATE TABLE digest (
            id INTEGER PRIMARY KEY,
            mark TEXT NOT NULL,
            bytes BLOB NOT NULL) STRICT)"_s,
        u"PRAGMA user_version = %1"_s.arg(indexVersion),
    };
    return statements;
}

Logged<void> makeTables(const SqlConnection& sql)
{
    auto transaction = Transaction::begin(sql, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    for (const QString& each : tables())
        if (auto done = sql.run(each); !done)
            return done;
    return transaction->commit();
}

/// The connection with tables of this version; a failure where what lies there is none of ours.
Logged<std::unique_ptr<SqlConnection>> opened(const QString& path)
{
    auto sql = SqlConnection::open(path, Access::ReadWrite);
    if (!sql)
        return sql;
    // It can be made anew at any time: a power cut may cost it, not the record.
    if (auto done = (*sql)->run(u"PRAGMA synchronous = OFF"_s); !done)
        return tl::unexpected(done.error());
    if (auto done = (*sql)->keepPagesAtHand(); !done)
        return tl::unexpected(done.error());
    const auto version = (*sql)->value(u"PRAGMA user_version"_s);
    if (!version)
        return tl::unexpected(version.error());
    if (version->toInt() == indexVersion)
        return sql;
    const auto any = (*sql)->value(u"SELECT count(*) FROM sqlite_schema"_s);
    if (!any)
        return tl::unexpected(any.error());
    if (any->toInt() > 0)
        return failed(LogTrouble::NotALog, path);
    if (auto made = makeTables(**sql); !made)
        return tl::unexpected(made.error());
    return sql;
}

/// What FTS5 is asked: every word as a phrase, its beginning where that is indexed. Empty when nothing can be asked.
/// Of a beginning that is not indexed FTS5 reads every repair with such a word before it gives the newest: of a single
/// letter half of all, so that is not asked; of more than 16 letters those few with so long a word.
QString asked(const QString& text)
{
    static const QRegularExpression blanks(u"\\s+"_s);
    static const QRegularExpression letter(u"[\\p{L}\\p{N}]"_s);
    static const QRegularExpression twoAtTheEnd(u"[\\p{L}\\p{N}]{2}[^\\p{L}\\p{N}]*$"_s);
    QStringList phrases;
    for (QString word : text.split(blanks, Qt::SkipEmptyParts)) {
        if (!letter.match(word).hasMatch())
            continue;
        const bool begins = twoAtTheEnd.match(word).hasMatch();
        word.replace(u'"', u"\"\""_s);
        phrases << u'"' + word + u'"' + (begins ? u"*"_s : QString());
    }
    return phrases.join(u" AND "_s);
}

QStringList linesOf(const QString& column) { return column.split(u'\n', Qt::SkipEmptyParts); }

} // namespace

QString findIndexPath(const QString& log) { return log + u".find"_s; }

FindIndex::FindIndex(std::unique_ptr<SqlConnection> connection) : m_sql(std::move(connection)) {}
FindIndex::~FindIndex() = default;

Logged<std::unique_ptr<FindIndex>> FindIndex::open(const QString& path)
{
    auto sql = opened(path);
    if (!sql && sql.error().trouble != LogTrouble::Locked) {
        for (const QString& each : {path, path + u"-journal"_s, path + u"-wal"_s, path + u"-shm"_s})
            QFile::remove(each);
        sql = opened(path);
    }
    if (!sql)
        return tl::unexpected(sql.error());
    return std::unique_ptr<FindIndex>(new FindIndex(*std::move(sql)));
}

Logged<bool> FindIndex::holds(const RepairLog& log) const
{
    std::vector<ChainHead> indexed;
    const auto take = [&](const Row& row) -> Logged<void> {
        indexed.push_back({row.text(0), row.integer(1), row.bytes(2)});
        return {};
    };
    if (auto done = m_sql->each(u"SELECT origin, seq, hash FROM taken_up"_s, {}, take); !done)
        return tl::unexpected(done.error());
    for (const ChainHead& each : indexed)
        if (const auto there = log.contains(each); !there || !*there)
            return there;
    return true;
}

Logged<void> FindIndex::beginAnew() const
{
    for (const QString& statement :
         {u"INSERT INTO found_words (found_words) VALUES ('delete-all')"_s, u"DELETE FROM found"_s,
          u"DELETE FROM lot_use"_s, u"DELETE FROM repair_day"_s, u"DELETE FROM digest"_s,
          u"UPDATE tidied SET events = 0"_s, u"DELETE FROM taken_up"_s})
        if (auto done = m_sql->run(statement); !done)
            return done;
    return {};
}

Logged<bool> FindIndex::takeIn(const RepairLog& log, const QString& origin, int most) const
{
    const auto from = m_sql->value(u"SELECT seq FROM taken_up WHERE origin = ?"_s, {origin});
    if (!from)
        return tl::unexpected(from.error());
    const auto events = log.eventsAfter(origin, from->toLongLong(), most);
    if (!events)
        return tl::unexpected(events.error());
    if (events->empty())
        return true;
    FindDocuments documents(*m_sql);
    for (const Event& each : *events)
        if (auto done = documents.take(each); !done)
            return tl::unexpected(done.error());
    if (auto done = documents.put(); !done)
        return tl::unexpected(done.error());
    const auto head = log.headAt(origin, events->back().seq);
    if (!head)
        return tl::unexpected(head.error());
    return m_sql
        ->run(u"INSERT INTO taken_up (origin, seq, hash) VALUES (?, ?, ?) "
              "ON CONFLICT (origin) DO UPDATE SET seq = excluded.seq, hash = excluded.hash"_s,
              {origin, head->count, head->hash})
        .map([&] { return static_cast<int>(events->size()) < most; });
}

/// FTS5's own merging, a part at a time: with a number below nought it goes on until all lies in one piece, and changes
/// less than two rows where nothing is left to do.
Logged<bool> FindIndex::tidy() const
{
    const auto taken = m_sql->value(u"SELECT coalesce(sum(seq), 0) FROM taken_up"_s);
    const auto tidied = m_sql->value(u"SELECT events FROM tidied"_s);
    if (!taken || !tidied)
        return tl::unexpected(!taken ? taken.error() : tidied.error());
    const qint64 since = taken->toLongLong() - tidied->toLongLong();
    if (since < std::max(untidyEvents, taken->toLongLong() / untidyPart))
        return true;
    const auto before = m_sql->value(u"SELECT total_changes()"_s);
    if (auto done = m_sql->run(u"INSERT INTO found_words (found_words, rank) VALUES ('merge', ?)"_s, {-pagesAtOnce});
        !done)
        return tl::unexpected(done.error());
    const auto after = m_sql->value(u"SELECT total_changes()"_s);
    if (!before || !after)
        return tl::unexpected(!before ? before.error() : after.error());
    if (after->toLongLong() - before->toLongLong() >= 2)
        return false;
    return m_sql->run(u"UPDATE tidied SET events = ?"_s, {*taken}).map([] { return true; });
}

Logged<bool> FindIndex::catchUp(const RepairLog& log, int most)
{
    auto transaction = Transaction::begin(*m_sql, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    const auto same = holds(log);
    if (!same)
        return same;
    if (!*same)
        if (auto done = beginAnew(); !done)
            return tl::unexpected(done.error());
    const auto origins = log.origins();
    if (!origins)
        return tl::unexpected(origins.error());
    bool whole = true;
    for (const QString& each : *origins) {
        const auto done = takeIn(log, each, most);
        if (!done)
            return done;
        whole = whole && *done;
    }
    if (whole) {
        const auto tidied = tidy();
        if (!tidied)
            return tidied;
        whole = *tidied;
    }
    return transaction->commit().map([whole] { return whole; });
}

Logged<std::vector<FoundRepair>> FindIndex::search(const QString& text, int most, qint64 before) const
{
    std::vector<FoundRepair> found;
    const QString match = asked(text);
    if (match.isEmpty())
        return found;
    const auto take = [&](const Row& row) -> Logged<void> {
        found.push_back({QUuid::fromString(row.text(1)), row.text(2), row.text(3), linesOf(row.text(4)),
                         linesOf(row.text(5)), row.integer(0) / FindDocuments::placesInAMillisecond, row.integer(0)});
        return {};
    };
    const qint64 end = before > 0 ? before : std::numeric_limits<qint64>::max();
    return m_sql
        ->each(u"SELECT id, repair, job, panel, people, lots FROM found WHERE id IN (SELECT rowid FROM found_words "
               "WHERE found_words MATCH ? AND rowid < ? ORDER BY rowid DESC LIMIT ?) ORDER BY id DESC"_s,
               {match, end, most}, take)
        .map([&] { return std::move(found); });
}

Logged<std::vector<LotUse>> FindIndex::usesOf(const StockLot& lot, int most, qint64 beforeUtcMs) const
{
    std::vector<LotUse> uses;
    const auto take = [&](const Row& row) -> Logged<void> {
        uses.push_back({lot, QUuid::fromString(row.text(0)), row.text(1), row.text(2), row.text(3), row.text(4),
                        row.integer(5), fromMicrogramsOfStock(row.integer(6)), row.integer(7) != 0,
                        static_cast<int>(row.integer(8))});
        return {};
    };
    const qint64 end = beforeUtcMs > 0 ? beforeUtcMs : std::numeric_limits<qint64>::max();
    return m_sql
        ->each(u"SELECT lot_use.repair, coalesce(job, ''), coalesce(panel, ''), person, local_day, utc_ms, amount_ug, "
               "finishing, batch FROM lot_use LEFT JOIN found ON found.repair = lot_use.repair "
               "WHERE lot = ? AND product = ? AND utc_ms < ? ORDER BY utc_ms DESC, origin DESC, seq DESC LIMIT ?"_s,
               {lot.lot, lot.product, end, most}, take)
        .map([&] { return std::move(uses); });
}

Logged<std::vector<StockLot>> FindIndex::lotsNamed(const QString& lot) const
{
    std::vector<StockLot> lots;
    const auto take = [&](const Row& row) -> Logged<void> {
        lots.push_back({row.text(0), lot});
        return {};
    };
    // From product to product, whatever their batches number.
    return m_sql
        ->each(u"WITH RECURSIVE named (product) AS (SELECT min(product) FROM lot_use WHERE lot = ? UNION ALL "
               "SELECT (SELECT min(product) FROM lot_use WHERE lot = ? AND product > named.product) FROM named "
               "WHERE named.product IS NOT NULL) SELECT product FROM named WHERE product IS NOT NULL"_s,
               {lot, lot}, take)
        .map([&] { return std::move(lots); });
}

} // namespace strandbench
