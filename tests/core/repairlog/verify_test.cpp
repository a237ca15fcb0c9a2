// SPDX-License-Identifier: GPL-3.0-or-later
// Tampering, by somebody who knows SQL and puts the guards back.
#include "log_fixture.h"
#include "referee.h"

#include "repairlog/chain.h"
#include "repairlog/schema.h"

#include <QFile>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Verify : public LogTest {
protected:
    Verify()
    {
        const auto log = open();
        walk(*log, first, Station::Done);
        EventDraft taken = draft(second, TakenIn{u"77"_s, u"door"_s}, 5000);
        taken.blobs = {"a sheet"};
        EXPECT_TRUE(log->append(taken));
        head = *log->head();
    }
    /// Drops every trigger, runs the SQL, and makes the triggers again.
    void tamper(const QByteArray& sql) const
    {
        const Referee referee(path());
        QByteArray drops;
        QByteArray makes;
        for (const QString& statement : migrations().front().statements)
            if (statement.startsWith(u"CREATE TRIGGER"_s)) {
                drops += "DROP TRIGGER " + statement.section(u' ', 2, 2).toUtf8() + ";";
                makes += statement.toUtf8() + ";";
            }
        ASSERT_EQ(referee.run("PRAGMA foreign_keys = OFF;" + drops), "");
        ASSERT_EQ(referee.run(sql), "");
        ASSERT_EQ(referee.run(makes), "");
    }
    void expectBreak(const QString& at, const QString& where) const
    {
        const auto report = verifyLog(path());
        ASSERT_TRUE(report);
        EXPECT_FALSE(report->clean);
        EXPECT_EQ(report->breaksAt, at);
        EXPECT_TRUE(report->where.contains(where)) << qPrintable(report->where);
        EXPECT_EQ(troubleOf(backupLog(path(), folder() + u"/copy.db"_s)), LogTrouble::Damaged);
        EXPECT_FALSE(QFile::exists(folder() + u"/copy.db"_s));
    }
    QString seq(qint64 n) const { return u"origin %1, seq %2:"_s.arg(head.origin).arg(n); }

    QUuid first = QUuid::createUuid();
    QUuid second = QUuid::createUuid();
    ChainHead head;
};

TEST_F(Verify, AnUntouchedLogIsClean)
{
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << qPrintable(report->breaksAt + u' ' + report->where);
    EXPECT_EQ(report->schemaVersion, currentVersion());
    EXPECT_EQ(report->events, head.count);
    EXPECT_EQ(report->repairs, 2);
    EXPECT_EQ(report->heads, std::vector<ChainHead>{head});
    EXPECT_EQ(report->breaksAt, QString());
}

TEST_F(Verify, TamperingItselfWithoutAChangeIsNotSeen)
{
    tamper("UPDATE event SET person = person"); // the test's own means leave no trace
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Verify, AnyChangedFieldOfAnEventIsNamedBySeq)
{
    for (const char* change : {"person = 'x'", "utc_ms = utc_ms + 1", "boottime_ms = 0", "boot_id = 'x'",
                               "utc_offset_s = 0", "kind = 'turned'", "kind_version = kind_version + 1",
                               "payload = CAST(CAST(payload AS TEXT) || ' ' AS BLOB)"}) {
        const QString saved = folder() + u"/saved"_s;
        ASSERT_TRUE(QFile::copy(path(), saved));
        tamper("UPDATE event SET " + QByteArray(change) + " WHERE seq = 7");
        expectBreak(u"chain"_s, seq(7));
        ASSERT_TRUE(QFile::remove(path()) && QFile::rename(saved, path()));
    }
}

TEST_F(Verify, AnEventGivenToAnotherRepairIsNamed)
{
    tamper("UPDATE event SET repair = '" + second.toByteArray(QUuid::WithoutBraces) + "' WHERE seq = 7");
    expectBreak(u"chain"_s, seq(7));
}

TEST_F(Verify, AHashMadeAnewBreaksAtTheNextEvent)
{
    // Whoever changes an event and hashes it anew must hash all that follow.
    EventRecord record;
    const auto event = open()->events(first)->at(6);
    const Referee referee(path());
    record.previousHash = QByteArray::fromHex(referee.value("SELECT hex(prev_hash) FROM event WHERE seq = 7"));
    record.origin = event.origin;
    record.seq = 7;
    record.repair = first.toString(QUuid::WithoutBraces);
    record.kind = kindOf(event.payload);
    record.kindVersion = kindVersionOf(event.payload);
    record.at = event.at;
    record.payload = referee.value("SELECT CAST(payload AS TEXT) FROM event WHERE seq = 7");
    record.person = u"R. Quist"_s;
    ASSERT_EQ(chainHash(record), event.hash) << "the record is the stored one";
    record.person = u"somebody else"_s;
    tamper("UPDATE event SET person = 'somebody else', hash = x'" + chainHash(record).toHex() + "' WHERE seq = 7");
    expectBreak(u"chain"_s, seq(8));
}

TEST_F(Verify, AnEventTakenOutOfTheMiddleIsNamed)
{
    tamper("DELETE FROM event WHERE seq = 7");
    expectBreak(u"chain"_s, u"seq 7 is not there"_s);
}

TEST_F(Verify, AnEventTakenFromTheEndShowsInTheSummary)
{
    tamper("DELETE FROM event WHERE seq = (SELECT max(seq) FROM event WHERE repair = '" +
           first.toByteArray(QUuid::WithoutBraces) + "') OR repair = '" + second.toByteArray(QUuid::WithoutBraces) +
           "'; DELETE FROM event_blob; DELETE FROM summary WHERE job = '77'");
    expectBreak(u"summary"_s, first.toString(QUuid::WithoutBraces));
}

TEST_F(Verify, ARepairTakenFromTheEndLeavesItsSummary)
{
    tamper("DELETE FROM event WHERE repair = '" + second.toByteArray(QUuid::WithoutBraces) +
           "'; DELETE FROM event_blob");
    expectBreak(u"summary"_s, u"it has a summary and no event"_s);
}

TEST_F(Verify, ATidyCutShowsOnlyBesideAHeadWrittenDown)
{
    const QString printed = QString::fromLatin1(head.hash.toHex());
    EXPECT_TRUE(verifyLog(path(), printed)->clean);
    tamper("DELETE FROM event WHERE repair = '" + second.toByteArray(QUuid::WithoutBraces) +
           "'; DELETE FROM event_blob; DELETE FROM blob; DELETE FROM summary WHERE job = '77'");
    EXPECT_TRUE(verifyLog(path())->clean) << "a chain without a key cannot know";
    const auto report = verifyLog(path(), printed);
    ASSERT_TRUE(report);
    EXPECT_EQ(report->breaksAt, u"expected_head"_s);
    EXPECT_TRUE(report->where.contains(printed));
}

TEST_F(Verify, AnExpectedHeadMayBeOlderThanTheNewest)
{
    const auto events = open()->events(first);
    for (std::size_t i : {std::size_t(0), std::size_t(9), events->size() - 1})
        EXPECT_TRUE(verifyLog(path(), QString::fromLatin1((*events)[i].hash.toHex()).toUpper())->clean);
    EXPECT_TRUE(verifyLog(path(), QString(64, u'0'))->clean) << "printed before the first event";
    for (const QString& wrong : {QString(64, u'1'), u"abc"_s, QString(64, u'x'), QString(63, u'0')})
        EXPECT_EQ(verifyLog(path(), wrong)->breaksAt, u"expected_head"_s);
}

TEST_F(Verify, AChangedSummaryIsNamed)
{
    for (const char* change :
         {"job = 'x', job_key = 'x'", "panel_key = 'x'", "substrate = 'steel'", "station = 'mix'", "person = 'x'",
          "open = 1", "first_utc_ms = 0", "last_utc_ms = 0", "last_seq = 2", "damage_kind = ''"}) {
        const QString saved = folder() + u"/saved"_s;
        ASSERT_TRUE(QFile::copy(path(), saved));
        ASSERT_EQ(Referee(path()).run("UPDATE summary SET " + QByteArray(change) + " WHERE job <> '77'"), "");
        expectBreak(u"summary"_s, first.toString(QUuid::WithoutBraces));
        ASSERT_TRUE(QFile::remove(path()) && QFile::rename(saved, path()));
    }
}

TEST_F(Verify, AMissingSummaryIsNamed)
{
    ASSERT_EQ(Referee(path()).run("DELETE FROM summary WHERE job = '77'"), "");
    expectBreak(u"summary"_s, u"it has no summary"_s);
}

TEST_F(Verify, AChangedDayIsNamed)
{
    tamper("UPDATE event SET local_day = '2020-01-01' WHERE seq = 3");
    expectBreak(u"event"_s, seq(3));
}

TEST_F(Verify, AChangedOrMissingBlobIsNamed)
{
    tamper("UPDATE blob SET bytes = x'00'");
    expectBreak(u"blob"_s, u"another hash"_s);
    tamper("DELETE FROM blob");
    expectBreak(u"blob"_s, u"event_blob"_s);
}

TEST_F(Verify, AMissingGuardIsNamed)
{
    ASSERT_EQ(Referee(path()).run("DROP TRIGGER event_no_update"), "");
    expectBreak(u"schema"_s, u"trigger event_no_update is missing"_s);
}

TEST_F(Verify, AChangeIsNamedBeforeTheGuardThatLetItThrough)
{
    ASSERT_EQ(Referee(path()).run("DROP TRIGGER event_no_update; UPDATE event SET person = 'x' WHERE seq = 5"), "");
    expectBreak(u"chain"_s, seq(5));
}

TEST_F(Verify, TablesAndVersionsMustBeOurs)
{
    ASSERT_EQ(Referee(path()).run("UPDATE meta SET value = '99' WHERE key = 'schema_version'"), "");
    expectBreak(u"schema"_s, u"meta says '99'"_s);
    ASSERT_EQ(Referee(path()).run("CREATE TABLE notes (a)"), "");
    expectBreak(u"schema"_s, u"table notes is not of this program"_s);
    ASSERT_EQ(Referee(path()).run("DROP TABLE notes; DROP INDEX event_of_day"), "");
    expectBreak(u"schema"_s, u"index event_of_day is missing"_s);
}

TEST_F(Verify, ADamagedPageIsNamed)
{
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const qint64 pages = file.size() / 4096;
    int seen = 0;
    for (qint64 page = 1; page < pages; ++page) {
        ASSERT_TRUE(file.seek(page * 4096));
        const QByteArray kept = file.read(4096);
        ASSERT_TRUE(file.seek(page * 4096));
        file.write(QByteArray(4096, '\x55'));
        file.flush();
        const auto report = verifyLog(path());
        ASSERT_TRUE(report) << page << " " << qPrintable(report.error().detail);
        EXPECT_FALSE(report->clean) << "page " << page;
        ASSERT_TRUE(file.seek(page * 4096));
        file.write(kept);
        file.flush();
        ++seen;
    }
    EXPECT_GT(seen, 10);
    EXPECT_TRUE(verifyLog(path())->clean);
}

} // namespace
