// SPDX-License-Identifier: GPL-3.0-or-later
// Settings, guards and migrations, looked at through SQLite's own library.
#include "repairlog/schema.h"

#include "log_fixture.h"
#include "referee.h"

#include <QSqlDatabase>
#include <QSqlDriver>

#include <sqlite3.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

/// SQLite's handle of the one connection that is open.
sqlite3* handleOfTheLog()
{
    const QStringList names = QSqlDatabase::connectionNames();
    if (names.size() != 1)
        throw std::runtime_error("one connection was expected");
    const QVariant handle = QSqlDatabase::database(names.front(), false).driver()->handle();
    return *static_cast<sqlite3* const*>(handle.constData());
}

using Schema = LogTest;

TEST_F(Schema, AConnectionIsDurableAndChecksItsKeys)
{
    for (int opening = 0; opening < 2; ++opening) { // made, and opened again
        const auto log = open();
        const Referee referee(handleOfTheLog());
        EXPECT_EQ(referee.value("PRAGMA journal_mode"), "wal");
        EXPECT_EQ(referee.value("PRAGMA synchronous"), "2");
        EXPECT_EQ(referee.value("PRAGMA foreign_keys"), "1");
        EXPECT_EQ(referee.value("PRAGMA busy_timeout"), "2000");
    }
    EXPECT_TRUE(QSqlDatabase::connectionNames().isEmpty()) << "handles are dropped";
}

TEST_F(Schema, TheFileSaysWhatItIs)
{
    makeLog(Station::Assess);
    const Referee referee(path());
    EXPECT_EQ(referee.value("PRAGMA application_id"), QByteArray::number(0x53424C47));
    EXPECT_EQ(referee.value("PRAGMA user_version"), "3");
    EXPECT_EQ(referee.value("SELECT value FROM meta WHERE key = 'schema_version'"), "3");
    EXPECT_EQ(referee.value("SELECT value FROM meta WHERE key = 'min_compatible_version'"), "3");
    EXPECT_EQ(referee.value("SELECT length(value) FROM meta WHERE key = 'origin'"), "36");
    EXPECT_EQ(referee.value("SELECT count(*) FROM pragma_table_list "
                            "WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite%' AND NOT strict"),
              "0")
        << "every table is STRICT";
}

TEST_F(Schema, WhatHappenedIsNeitherChangedNorTakenAway)
{
    {
        const auto log = open();
        EventDraft taken = draft(QUuid::createUuid(), TakenIn{u"1"_s, u"p"_s});
        taken.blobs = {"sheet"};
        ASSERT_TRUE(log->append(taken));
    }
    const Referee referee(path());
    for (const char* sql : {
             "UPDATE event SET person = 'x'",
             "DELETE FROM event",
             "INSERT OR REPLACE INTO event SELECT * FROM event",
             "INSERT INTO event SELECT origin, seq + 2, repair, kind, kind_version, utc_ms, boottime_ms, boot_id, "
             "utc_offset_s, local_day, person, payload, prev_hash, hash FROM event",
             "UPDATE blob SET bytes = x'00'",
             "DELETE FROM blob",
             "INSERT OR REPLACE INTO blob SELECT hash, x'00' FROM blob",
             "UPDATE event_blob SET seq = 2",
             "DELETE FROM event_blob",
         })
        EXPECT_TRUE(
            QByteArray(referee.run(sql)).contains(QByteArray(sql).contains("INTO event") ? "only added" : "never"))
            << sql;
    EXPECT_EQ(referee.value("SELECT count(*) FROM event"), "1");
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Schema, ColumnsRefuseWhatTheyCannotHold)
{
    makeLog(Station::Assess);
    const Referee referee(path());
    const QByteArray next = "INSERT INTO event SELECT origin, (SELECT max(seq) + 1 FROM event), repair, kind, "
                            "kind_version, utc_ms, boottime_ms, boot_id, utc_offset_s, local_day, person, payload, "
                            "prev_hash, hash FROM event WHERE seq = 1";
    const auto with = [&](QByteArray column, const QByteArray& value) {
        QByteArray sql = next;
        const auto at = sql.indexOf(column, sql.indexOf("SELECT origin"));
        return referee.run(sql.replace(at, column.size(), value));
    };
    EXPECT_TRUE(with("repair,", "'short',").contains("CHECK"));
    EXPECT_TRUE(with("utc_ms,", "'soon',").contains("cannot store TEXT")) << "STRICT";
    EXPECT_TRUE(with("utc_ms,", "NULL,").contains("NOT NULL"));
    EXPECT_TRUE(with("utc_offset_s,", "90000,").contains("CHECK"));
    EXPECT_TRUE(with("local_day,", "'1 May',").contains("CHECK"));
    EXPECT_TRUE(with("payload,", "x'',").contains("CHECK"));
    EXPECT_TRUE(with("prev_hash,", "x'00',").contains("CHECK"));
}

TEST_F(Schema, TheDayIsFoundByItsIndex)
{
    makeLog(Station::Assess);
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open(path().toUtf8().constData(), &handle), SQLITE_OK);
    sqlite3_stmt* statement = nullptr;
    ASSERT_EQ(sqlite3_prepare_v2(handle, "EXPLAIN QUERY PLAN SELECT repair FROM event WHERE local_day = '2026-01-10'",
                                 -1, &statement, nullptr),
              SQLITE_OK);
    ASSERT_EQ(sqlite3_step(statement), SQLITE_ROW);
    const QByteArray plan(reinterpret_cast<const char*>(sqlite3_column_text(statement, 3)));
    EXPECT_TRUE(plan.contains("COVERING INDEX event_of_day")) << plan.constData();
    sqlite3_finalize(statement);
    sqlite3_close(handle);
}

const std::vector<Migration>& twoSteps()
{
    static const std::vector<Migration> steps{
        {1, 1, {u"CREATE TABLE meta (key TEXT PRIMARY KEY NOT NULL, value TEXT NOT NULL) STRICT"_s}},
        {2, 1, {u"CREATE TABLE second (a INTEGER) STRICT"_s, u"INSERT INTO second VALUES (7)"_s}},
    };
    return steps;
}

TEST_F(Schema, MigrationsRunInOrderAndOnce)
{
    const auto connection = SqlConnection::open(path(), Access::ReadWrite);
    ASSERT_TRUE(connection);
    ASSERT_TRUE(migrate(**connection, {twoSteps().front()}));
    const QString origin = *metaValue(**connection, u"origin"_s);
    for (int i = 0; i < 2; ++i)
        ASSERT_TRUE(migrate(**connection, twoSteps()));
    EXPECT_EQ((*connection)->value(u"SELECT count(*) FROM second"_s)->toInt(), 1);
    EXPECT_EQ((*connection)->value(u"PRAGMA user_version"_s)->toInt(), 2);
    EXPECT_EQ(*metaValue(**connection, u"schema_version"_s), u"2"_s);
    EXPECT_EQ(*metaValue(**connection, u"origin"_s), origin) << "a bench keeps its origin";
}

TEST_F(Schema, AMigrationThatFailsLeavesTheVersionBefore)
{
    std::vector<Migration> steps = twoSteps();
    steps.back().statements << u"CREATE TABLE second (again INTEGER)"_s;
    const auto connection = SqlConnection::open(path(), Access::ReadWrite);
    ASSERT_TRUE(connection);
    EXPECT_FALSE(migrate(**connection, steps));
    EXPECT_EQ((*connection)->value(u"PRAGMA user_version"_s)->toInt(), 1);
    EXPECT_EQ(*metaValue(**connection, u"schema_version"_s), u"1"_s);
    EXPECT_EQ((*connection)->value(u"SELECT count(*) FROM sqlite_schema WHERE name = 'second'"_s)->toInt(), 0);
}

TEST_F(Schema, ASettingThatDoesNotTakeEffectIsAFailure)
{
    const auto connection = SqlConnection::open({}, Access::Memory); // memory knows no WAL
    ASSERT_TRUE(connection);
    const auto done = (*connection)->set(u"journal_mode"_s, u"WAL"_s, u"wal"_s);
    ASSERT_FALSE(done);
    EXPECT_TRUE(done.error().detail.contains(u"journal_mode is memory"_s)) << qPrintable(done.error().detail);
}

} // namespace
