// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/schema.h"

#include "repairlog/transaction.h"

#include <QUuid>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Version 1. Statements one by one: Qt's driver refuses several at once.
const QStringList& firstTables()
{
    static const QStringList statements{
        uR"(CREATE TABLE meta (
            key TEXT PRIMARY KEY NOT NULL,
            value TEXT NOT NULL) STRICT)"_s,
        uR"(CREATE TABLE event (
            origin TEXT NOT NULL CHECK (length(origin) = 36),
            seq INTEGER NOT NULL CHECK (seq >= 1),
            repair TEXT NOT NULL CHECK (length(repair) = 36),
            kind TEXT NOT NULL CHECK (kind <> ''),
            kind_version INTEGER NOT NULL CHECK (kind_version >= 1),
            utc_ms INTEGER NOT NULL,
            boottime_ms INTEGER NOT NULL,
            boot_id TEXT NOT NULL,
            utc_offset_s INTEGER NOT NULL CHECK (utc_offset_s BETWEEN -86400 AND 86400),
            local_day TEXT NOT NULL CHECK (local_day GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'),
            person TEXT NOT NULL,
            payload BLOB NOT NULL CHECK (length(payload) > 0),
            prev_hash BLOB NOT NULL CHECK (length(prev_hash) = 32),
            hash BLOB NOT NULL CHECK (length(hash) = 32),
            PRIMARY KEY (origin, seq)) STRICT)"_s,
        u"CREATE INDEX event_of_repair ON event (repair, seq)"_s,
        u"CREATE INDEX event_of_day ON event (local_day, repair)"_s,
        uR"(CREATE TABLE blob (
            hash BLOB PRIMARY KEY NOT NULL CHECK (length(hash) = 32),
            bytes BLOB NOT NULL) STRICT)"_s,
        uR"(CREATE TABLE event_blob (
            origin TEXT NOT NULL,
            seq INTEGER NOT NULL,
            hash BLOB NOT NULL REFERENCES blob (hash),
            PRIMARY KEY (origin, seq, hash),
            FOREIGN KEY (origin, seq) REFERENCES event (origin, seq)) STRICT, WITHOUT ROWID)"_s,
        uR"(CREATE TABLE summary (
            repair TEXT PRIMARY KEY NOT NULL CHECK (length(repair) = 36),
            job TEXT NOT NULL,
            panel TEXT NOT NULL,
            job_key TEXT NOT NULL CHECK (job_key <> ''),
            panel_key TEXT NOT NULL CHECK (panel_key <> ''),
            substrate TEXT NOT NULL,
            damage_kind TEXT NOT NULL,
            station TEXT NOT NULL CHECK (station <> ''),
            person TEXT NOT NULL,
            open INTEGER NOT NULL CHECK (open IN (0, 1)),
            first_utc_ms INTEGER NOT NULL,
            last_utc_ms INTEGER NOT NULL,
            last_seq INTEGER NOT NULL CHECK (last_seq >= 1)) STRICT)"_s,
        u"CREATE INDEX summary_open ON summary (open, job_key, panel_key)"_s,
    };
    return statements;
}

/// Nothing that happened is changed or taken away, and nothing is slipped in before the end: that also
/// stops INSERT OR REPLACE, which deletes without asking the delete triggers.
const QStringList& firstGuards()
{
    static const QStringList statements{
        uR"(CREATE TRIGGER event_no_update BEFORE UPDATE ON event
            BEGIN SELECT RAISE(ABORT, 'events are never changed'); END)"_s,
        uR"(CREATE TRIGGER event_no_delete BEFORE DELETE ON event
            BEGIN SELECT RAISE(ABORT, 'events are never deleted'); END)"_s,
        uR"(CREATE TRIGGER event_follows BEFORE INSERT ON event
            WHEN NEW.seq <> (SELECT coalesce(max(seq), 0) + 1 FROM event WHERE origin = NEW.origin)
            BEGIN SELECT RAISE(ABORT, 'events are only added at the end'); END)"_s,
        uR"(CREATE TRIGGER blob_no_update BEFORE UPDATE ON blob
            BEGIN SELECT RAISE(ABORT, 'blobs are never changed'); END)"_s,
        uR"(CREATE TRIGGER blob_no_delete BEFORE DELETE ON blob
            BEGIN SELECT RAISE(ABORT, 'blobs are never deleted'); END)"_s,
        uR"(CREATE TRIGGER blob_no_replace BEFORE INSERT ON blob
            WHEN EXISTS (SELECT 1 FROM blob WHERE hash = NEW.hash)
            BEGIN SELECT RAISE(ABORT, 'blobs are never replaced'); END)"_s,
        uR"(CREATE TRIGGER event_blob_no_update BEFORE UPDATE ON event_blob
            BEGIN SELECT RAISE(ABORT, 'links to blobs are never changed'); END)"_s,
        uR"(CREATE TRIGGER event_blob_no_delete BEFORE DELETE ON event_blob
            BEGIN SELECT RAISE(ABORT, 'links to blobs are never deleted'); END)"_s,
    };
    return statements;
}

/// A repair that was signed off takes nothing but corrections any more.
const QStringList& seal()
{
    static const QStringList statements{
        uR"(CREATE TRIGGER event_sealed BEFORE INSERT ON event
            WHEN NEW.kind <> 'corrected' AND EXISTS
                (SELECT 1 FROM event WHERE repair = NEW.repair AND kind = 'signed_off')
            BEGIN SELECT RAISE(ABORT, 'a repair that is signed off is sealed'); END)"_s,
    };
    return statements;
}

Logged<int> userVersion(const SqlConnection& connection)
{
    return connection.value(u"PRAGMA user_version"_s).map([](const QVariant& held) { return held.toInt(); });
}

Logged<void> stamp(const SqlConnection& connection, const Migration& step, bool isNew)
{
    auto done = setMeta(connection, u"schema_version"_s, QString::number(step.version));
    if (done)
        done = setMeta(connection, u"min_compatible_version"_s, QString::number(step.oldestProgram));
    if (done && isNew)
        done = setMeta(connection, u"origin"_s, QUuid::createUuid().toString(QUuid::WithoutBraces));
    if (done && isNew)
        done = connection.run(u"PRAGMA application_id = %1"_s.arg(logApplicationId));
    if (done)
        done = connection.run(u"PRAGMA user_version = %1"_s.arg(step.version));
    return done;
}

Logged<void> take(const SqlConnection& connection, const Migration& step)
{
    auto transaction = Transaction::begin(connection, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    const auto version = userVersion(connection); // again: another program may have been first
    if (!version)
        return tl::unexpected(version.error());
    if (*version >= step.version)
        return {};
    for (const QString& statement : step.statements)
        if (auto done = connection.run(statement); !done)
            return done;
    if (auto done = stamp(connection, step, *version == 0); !done)
        return done;
    return transaction->commit();
}

} // namespace

QString photosLostKey() { return u"photos_lost"_s; }

Logged<void> setMeta(const SqlConnection& connection, const QString& key, const QString& value)
{
    return connection.run(
        u"INSERT INTO meta (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value"_s,
        {key, value});
}

const std::vector<Migration>& migrations()
{
    // 3 has no tables of its own: from it on a log may hold that it was restored or that another was brought in, which
    // an older program cannot read.
    static const std::vector<Migration> all{{1, 1, firstTables() + firstGuards()}, {2, 2, seal()}, {3, 3, {}}};
    return all;
}

int currentVersion() { return migrations().back().version; }

Logged<void> migrate(const SqlConnection& connection, const std::vector<Migration>& steps)
{
    const auto version = userVersion(connection);
    if (!version)
        return tl::unexpected(version.error());
    for (const Migration& step : steps) {
        if (step.version <= *version)
            continue;
        if (auto done = take(connection, step); !done)
            return done;
    }
    return {};
}

Logged<QString> metaValue(const SqlConnection& connection, const QString& key)
{
    return connection.value(u"SELECT value FROM meta WHERE key = ?"_s, {key}).map([](const QVariant& held) {
        return held.toString();
    });
}

} // namespace strandbench
