// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged log is not opened for writing; one that was taken away is not written.
#include "repairlog/damage_mark.h"

#include "two_logs.h"

#include <QDir>

#include <csignal>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

using Gate = TwoLogs;

TEST_F(Gate, WithAnyPageDamagedItIsNotOpenedForWritingOrItVerifies)
{
    makeLog();
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const qint64 pages = file.size() / 4096;
    int refused = 0;
    for (qint64 page = 0; page < pages; ++page) {
        ASSERT_TRUE(file.seek(page * 4096));
        const QByteArray kept = file.read(4096);
        ASSERT_TRUE(file.seek(page * 4096));
        file.write(QByteArray(4096, '\x55'));
        file.flush();
        const auto before = contentsOf(folder());
        const auto log = RepairLog::open(path(), LogMode::ReadWrite);
        EXPECT_FALSE(log) << "page " << page;
        if (!log) {
            ++refused;
            EXPECT_EQ(contentsOf(folder()), before) << "page " << page;
        }
        ASSERT_TRUE(file.seek(page * 4096));
        file.write(kept);
        file.flush();
    }
    EXPECT_EQ(refused, pages);
    EXPECT_TRUE(RepairLog::open(path(), LogMode::ReadWrite));
}

TEST_F(Gate, AnEventThatWasChangedAmongTheNewestIsSeenAtOnce)
{
    makeLog();
    ASSERT_EQ(Referee(path()).run("DROP TRIGGER event_no_update; UPDATE event SET person = 'x' WHERE seq = "
                                  "(SELECT max(seq) - 3 FROM event)"),
              "");
    EXPECT_EQ(troubleOf(RepairLog::open(path(), LogMode::ReadWrite)), LogTrouble::Damaged);
    EXPECT_TRUE(RepairLog::open(path(), LogMode::ReadOnly)) << "it can still be looked at";
}

TEST_F(Gate, AtAnyLengthAHalfCopiedFileIsNotOpenedForWriting)
{
    makeLog();
    const QByteArray whole = contentsOf(folder()).begin()->second;
    int cutShort = 0;
    for (qsizetype length = 512; length < whole.size(); length += 512) {
        QFile half(at(u"half.db"_s));
        ASSERT_TRUE(half.open(QIODevice::WriteOnly | QIODevice::Truncate));
        half.write(whole.left(length));
        half.close();
        const auto log = RepairLog::open(half.fileName(), LogMode::ReadWrite);
        ASSERT_FALSE(log) << length;
        cutShort += log.error().trouble == LogTrouble::CutShort ? 1 : 0;
        EXPECT_EQ(contentsOf(folder())[u"half.db"_s], whole.left(length)) << "and is left as it is";
    }
    EXPECT_GT(cutShort, whole.size() / 512 * 9 / 10) << "and said to be half copied";
}

TEST_F(Gate, OnceFoundDamagedItIsVerifiedWholeBeforeItIsWritten)
{
    makeLog();
    const QByteArray damage = "DROP TRIGGER blob_no_update; CREATE TRIGGER blob_no_update BEFORE UPDATE ON blob BEGIN "
                              "SELECT RAISE(ABORT, 'x'); END";
    ASSERT_EQ(Referee(path()).run(damage), "") << "which the look at opening does not see";
    EXPECT_TRUE(RepairLog::open(path(), LogMode::ReadWrite));
    markDamaged(path(), u"blob: seen by a backup"_s);
    EXPECT_EQ(troubleOf(RepairLog::open(path(), LogMode::ReadWrite)), LogTrouble::Damaged);
    EXPECT_TRUE(isMarkedDamaged(path()));
}

TEST_F(Gate, AMarkOnALogThatHoldsIsTakenAway)
{
    makeLog();
    markDamaged(path(), u"a bad cable"_s);
    EXPECT_TRUE(RepairLog::open(path(), LogMode::ReadWrite));
    EXPECT_FALSE(isMarkedDamaged(path()));
}

TEST_F(Gate, AfterARestoreThatWasCutOffNobodyWrites)
{
    makeLog();
    ASSERT_TRUE(markRestoring(path(), u"the folder"_s));
    const auto log = RepairLog::open(path(), LogMode::ReadWrite);
    EXPECT_EQ(troubleOf(log), LogTrouble::Damaged);
    EXPECT_TRUE(log.error().detail.contains(u"the folder"_s));
    ASSERT_TRUE(clearRestoringMark(path()));
    EXPECT_TRUE(RepairLog::open(path(), LogMode::ReadWrite));
}

TEST_F(Gate, ALogThatIsTakenAwayIsNotWritten)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const Repair repair = walk(*log, id, Station::Decide);
    ASSERT_TRUE(QFile::rename(path(), at(u"away.db"_s)));
    EXPECT_EQ(troubleOf(log->append(draft(id, actAt(repair), 900))), LogTrouble::Gone);
    makeAt(path() + u"2"_s, u"wing"_s);
    ASSERT_TRUE(QFile::rename(path() + u"2"_s, path()));
    EXPECT_EQ(troubleOf(log->append(draft(id, actAt(repair), 900))), LogTrouble::Gone) << "nor when another lies there";
    ASSERT_TRUE(QFile::remove(path()) && QFile::rename(at(u"away.db"_s), path()));
    EXPECT_TRUE(log->append(draft(id, actAt(repair), 900))) << "back again";
    EXPECT_TRUE(log->contains(*log->head()));
}

TEST_F(Gate, ClosingALogThatWasReplacedLeavesTheOtherOnesWalAlone)
{
    auto log = open();
    walk(*log, QUuid::createUuid(), Station::Decide);
    const QString other = at(u"other.db"_s);
    ASSERT_EQ(inChild([&] { // one that was killed: its newest events are in its WAL alone
                  const auto second = openAt(other);
                  walk(*second, QUuid::createUuid(), Station::Mix, u"wing"_s);
                  std::raise(SIGKILL);
                  return 0;
              }),
              256 + SIGKILL);
    const qint64 count = RepairLog::open(other, LogMode::ReadOnly).value()->head()->count;
    for (const char* ending : {"", "-wal", "-shm"}) {
        ASSERT_TRUE(QFile::remove(path() + QLatin1StringView(ending)));
        ASSERT_TRUE(QFile::rename(other + QLatin1StringView(ending), path() + QLatin1StringView(ending)));
    }
    log.reset();
    EXPECT_TRUE(QFile::exists(path() + u"-wal"_s));
    EXPECT_FALSE(QFile::exists(path() + u"-wal.kept"_s));
    EXPECT_EQ(headAt(path()).count, count);
}

} // namespace
