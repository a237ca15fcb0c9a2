// SPDX-License-Identifier: GPL-3.0-or-later
// check_chain.py and our own verifying say the same of a log: clean, tampered with, cut; and both the same as the
// example in DEVELOPERS.md.
#include "log_fixture.h"
#include "referee.h"

#include "exchange/events.h"
#include "repairlog/chain.h"
#include "repairlog/schema.h"

#include <QCryptographicHash>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

struct Said {
    int status = -1;
    QString out;
};

Said python(const QStringList& arguments)
{
    QProcess process;
    process.start(QStringLiteral(PYTHON), QStringList{u"-B"_s} + arguments);
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit)
        return {};
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()).trimmed()};
}

Said script(const QStringList& arguments) { return python(QStringList{QStringLiteral(CHAIN_SCRIPT)} + arguments); }

class ChainScript : public LogTest {
protected:
    ChainScript()
    {
        {
            const auto log = open();
            walk(*log, QUuid::createUuid(), Station::Spread);
            EventDraft taken = draft(QUuid::createUuid(), TakenIn{u"77"_s, u"door ü"_s}, 5000);
            taken.blobs = {"a sheet", QByteArray()};
            EXPECT_TRUE(log->append(taken));
            head = *log->head();
        }
        EXPECT_TRUE(QFile::copy(path(), folder() + u"/clean"_s));
    }

    /// By somebody who knows SQL, takes the guards away and puts them back; on the clean log.
    void tamper(const QByteArray& sql) const
    {
        ASSERT_TRUE(QFile::remove(path()) && QFile::copy(folder() + u"/clean"_s, path()));
        const Referee referee(path());
        const QByteArray drops = referee.value("SELECT group_concat('DROP TRIGGER ' || name, ';') FROM sqlite_schema "
                                               "WHERE type = 'trigger'");
        const QByteArray makes =
            referee.value("SELECT group_concat(sql, ';') FROM sqlite_schema WHERE type = 'trigger'");
        ASSERT_TRUE(drops.contains("event_no_update") && makes.contains("event_sealed"));
        ASSERT_EQ(referee.run("PRAGMA foreign_keys = OFF;" + drops), "");
        ASSERT_EQ(referee.run(sql), "");
        ASSERT_EQ(referee.run(makes), "");
    }
    /// Both say clean, with the same heads.
    void expectBothClean(const QString& log, const QStringList& options = {}) const
    {
        const auto report = verifyLog(log, options.value(1));
        ASSERT_TRUE(report && report->clean);
        QString lines;
        for (const ChainHead& each : report->heads)
            lines += u"origin %1: %2 events, head %3\n"_s.arg(each.origin)
                         .arg(each.count)
                         .arg(QString::fromLatin1(each.hash.toHex()));
        const QByteArray blobs = Referee(log).value("SELECT count(*) FROM blob");
        const Said said = script(QStringList{log} + options);
        EXPECT_EQ(said.status, 0);
        EXPECT_EQ(said.out,
                  lines +
                      u"%1 events, %2 blobs: the chain holds"_s.arg(report->events).arg(QString::fromLatin1(blobs)));
    }
    /// Both name the same place, in the same words.
    void expectBothBroken(const QStringList& options = {}) const
    {
        const auto report = verifyLog(path(), options.value(1));
        ASSERT_TRUE(report);
        EXPECT_FALSE(report->clean);
        const Said said = script(QStringList{path()} + options);
        EXPECT_EQ(said.status, 1);
        EXPECT_EQ(said.out, u"BROKEN: "_s + report->where);
    }

    ChainHead head;
};

TEST_F(ChainScript, SaysWhatWeSayOfACleanLogAndLeavesItAlone)
{
    tamper("UPDATE event SET person = person"); // the test's own means leave no trace
    const auto before = contentsOf(folder());
    expectBothClean(path());
    expectBothClean(path(), {u"--expect"_s, QString::fromLatin1(head.hash.toHex())});
    expectBothClean(path(), {u"--expect"_s, QString(64, u'0')});
    EXPECT_EQ(contentsOf(folder()), before);
}

TEST_F(ChainScript, ReadsBesideAProgramThatWrites)
{
    const auto log = open();
    ASSERT_TRUE(log->append(draft(QUuid::createUuid(), TakenIn{u"78"_s, u"roof"_s}, 6000)));
    ASSERT_TRUE(QFile::exists(path() + u"-wal"_s));
    expectBothClean(path());
    EXPECT_TRUE(script({path()}).out.contains(QString::fromLatin1(log->head()->hash.toHex())));
}

TEST_F(ChainScript, SaysWhatWeSayOfEveryStoredLog)
{
    for (int version = 1; version <= currentVersion(); ++version) {
        const QString copy = folder() + u"/stored"_s;
        ASSERT_TRUE(QFile::copy(u"%1/version_%2.db"_s.arg(QStringLiteral(STORED_LOGS)).arg(version), copy));
        expectBothClean(copy);
        ASSERT_TRUE(QFile::remove(copy));
    }
}

TEST_F(ChainScript, NamesAnyChangedFieldWhereWeDo)
{
    for (const char* change :
         {"prev_hash = zeroblob(32)", "origin = '5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5'", "seq = 700",
          "repair = '5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5'", "kind = 'turned'", "kind_version = kind_version + 1",
          "utc_ms = utc_ms + 1", "boottime_ms = -boottime_ms", "boot_id = boot_id || ' '", "utc_offset_s = 0",
          "person = 'R. Quisť'", "payload = CAST(CAST(payload AS TEXT) || ' ' AS BLOB)", "hash = zeroblob(32)"}) {
        SCOPED_TRACE(change);
        tamper("UPDATE event SET " + QByteArray(change) + " WHERE seq = 7");
        expectBothBroken();
    }
}

TEST_F(ChainScript, NamesRowsTakenOutMovedOrPutInWhereWeDo)
{
    const QByteArray count = QByteArray::number(head.count);
    for (const QByteArray& change :
         {QByteArray("DELETE FROM event WHERE seq = 7"), QByteArray("DELETE FROM event WHERE seq = 1"),
          QByteArray("UPDATE event SET seq = 900 WHERE seq = 7; UPDATE event SET seq = 7 WHERE seq = 8;"
                     "UPDATE event SET seq = 8 WHERE seq = 900"),
          "INSERT INTO event SELECT origin, seq + 1, repair, kind, kind_version, utc_ms, boottime_ms, boot_id, "
          "utc_offset_s, local_day, person, payload, hash, hash FROM event WHERE seq = " +
              count}) {
        SCOPED_TRACE(change.constData());
        tamper(change);
        expectBothBroken();
    }
}

TEST_F(ChainScript, NamesACutEndBesideAHeadThatWasWrittenDown)
{
    const QByteArray last = QByteArray::number(head.count);
    tamper("DELETE FROM event_blob; DELETE FROM blob; DELETE FROM event WHERE seq = " + last +
           "; DELETE FROM summary WHERE job = '77'");
    expectBothClean(path());
    expectBothBroken({u"--expect"_s, QString::fromLatin1(head.hash.toHex())});
}

TEST_F(ChainScript, NamesBlobsThatDoNotHold)
{
    tamper("UPDATE blob SET bytes = x'00' WHERE length(bytes) > 0");
    expectBothBroken();
    for (const char* change : {"DELETE FROM blob", "UPDATE event_blob SET seq = 900"}) {
        tamper(change); // which row of the link stands first, each says in its own words
        EXPECT_EQ(verifyLog(path())->breaksAt, u"blob"_s);
        const Said said = script({path()});
        EXPECT_EQ(said.status, 1);
        EXPECT_TRUE(said.out.contains(u"is not there"_s)) << qPrintable(said.out);
    }
}

TEST_F(ChainScript, TellsWhatItCannotReadFromWhatIsBroken)
{
    QFile other(folder() + u"/other"_s);
    ASSERT_TRUE(other.open(QIODevice::WriteOnly) && other.write("no log") > 0);
    other.close();
    for (const QStringList& arguments : {QStringList{},
                                         {folder() + u"/none"_s},
                                         {other.fileName()},
                                         {path(), u"--expect"_s, u"abc"_s},
                                         {path(), u"--expect"_s, QString(62, u'0')},
                                         {path(), u"--wanted"_s, QString(64, u'0')}}) {
        const Said said = script(arguments);
        EXPECT_EQ(said.status, 2) << qPrintable(arguments.join(u' '));
        EXPECT_EQ(said.out, QString());
    }
    EXPECT_FALSE(QFile::exists(folder() + u"/none"_s));
}

/// The lines of the example: name to bytes.
std::vector<std::pair<QString, QByteArray>> example()
{
    QFile file(QStringLiteral(DEVELOPERS_MD));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const QString part = QString::fromUtf8(file.readAll()).section(u"\n## The chain, byte for byte\n"_s, 1, 1);
    static const QRegularExpression line(u"^    ([a-z_0-9 -]+?) +([0-9a-f ]{12,})$"_s,
                                         QRegularExpression::MultilineOption);
    std::vector<std::pair<QString, QByteArray>> found;
    for (auto each = line.globalMatch(part.section(u"\n## "_s, 0, 0)); each.hasNext();) {
        const auto match = each.next();
        found.emplace_back(match.captured(1), QByteArray::fromHex(match.captured(2).toLatin1()));
    }
    return found;
}

TEST_F(ChainScript, TheExampleInTheBookIsWhatBothCompute)
{
    auto lines = example();
    ASSERT_EQ(lines.size(), 13U);
    ASSERT_EQ(lines.back().first, u"sha-256"_s);
    const QByteArray hash = lines.back().second;
    lines.pop_back();
    QByteArray bytes;
    for (const auto& [name, field] : lines)
        bytes += field;
    EXPECT_EQ(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256), hash) << "the lines are what is hashed";

    EventRecord record;
    record.previousHash = emptyChainHash();
    record.origin = u"5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5"_s;
    record.seq = 1;
    record.repair = u"0f7c1b52-8f0e-4c53-9a55-6d3f3b1f0a11"_s;
    const Payload taken = TakenIn{u"7"_s, u"door"_s};
    record.kind = kindOf(taken);
    record.kindVersion = kindVersionOf(taken);
    record.at = {1'768'000'000'123, 5'000'456, u"b1"_s, -18'000};
    record.person = u"Renée"_s;
    record.payload = encodePayload(taken);
    EXPECT_EQ(chainHash(record), hash) << "by our code";

    const QString folder = QStringLiteral(CHAIN_SCRIPT).section(u'/', 0, -2);
    const QString code =
        u"import sys; sys.path.insert(0, %1); import check_chain; print(check_chain.hash_of((bytes(32), '%2', 1, '%3', "
        "'taken_in', 2, 1768000000123, 5000456, 'b1', -18000, 'Ren\\u00e9e', b'%4')).hex())"_s.arg(
            u"'%1'"_s.arg(folder), record.origin, record.repair, QString::fromUtf8(record.payload));
    EXPECT_EQ(python({u"-c"_s, code}).out, QString::fromLatin1(hash.toHex())) << "by the script";
}

} // namespace
