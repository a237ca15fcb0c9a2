// SPDX-License-Identifier: GPL-3.0-or-later
// Copies: whole, verified, in place at once, never over something else.
#include "log_fixture.h"
#include "referee.h"

#include <QDir>
#include <QFile>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Backup : public LogTest {
protected:
    QString copy() const { return folder() + u"/copy ü.db"_s; }
};

TEST_F(Backup, OfAClosedLogHoldsAllAndLeavesTheLogAlone)
{
    makeLog();
    const auto before = contentsOf(folder());
    const auto report = backupLog(path(), copy());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_TRUE(report->clean);
    auto after = contentsOf(folder());
    EXPECT_EQ(after.erase(u"copy ü.db"_s), 1U) << "and nothing else is left";
    EXPECT_EQ(after, before);
    EXPECT_EQ(report->heads, verifyLog(path())->heads);
    EXPECT_EQ(Referee(copy()).value("PRAGMA integrity_check"), "ok");
}

TEST_F(Backup, WhileAWriterIsActiveHoldsAllThatWasAcknowledged)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    Repair repair = walk(*log, id, Station::Mix);
    const ChainHead head = *log->head();
    const auto report = backupLog(path(), copy());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_EQ(report->heads, std::vector<ChainHead>{head});
    ASSERT_TRUE(log->append(draft(id, actAt(repair), 9000))) << "the program goes on";
    EXPECT_EQ(verifyLog(copy())->heads, std::vector<ChainHead>{head});
    EXPECT_TRUE(verifyLog(copy(), QString::fromLatin1(head.hash.toHex()))->clean);
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Backup, DuringATransactionOfAnotherProgramHoldsWhatWasCommitted)
{
    makeLog();
    const auto log = open();
    const Referee other(path());
    ASSERT_EQ(other.run("BEGIN IMMEDIATE; UPDATE summary SET person = 'half'"), "");
    const auto report = backupLog(path(), copy());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_TRUE(report->clean);
    EXPECT_EQ(other.run("ROLLBACK"), "");
}

TEST_F(Backup, IsALogThatCanBeWorkedOn)
{
    makeLog(Station::Mix);
    ASSERT_TRUE(backupLog(path(), copy()));
    {
        const auto log = RepairLog::open(copy(), LogMode::ReadWrite);
        ASSERT_TRUE(log);
        EXPECT_TRUE((*log)->append(draft(QUuid::createUuid(), TakenIn{u"9"_s, u"roof"_s})));
        EXPECT_EQ((*log)->head()->origin, open()->head()->origin);
    }
    EXPECT_EQ(Referee(copy()).value("PRAGMA journal_mode"), "wal");
    EXPECT_TRUE(verifyLog(copy())->clean);
}

TEST_F(Backup, NeverReplacesAnything)
{
    makeLog(Station::Assess);
    QFile there(copy());
    ASSERT_TRUE(there.open(QIODevice::WriteOnly) && there.write("mine") == 4);
    there.close();
    const auto before = contentsOf(folder());
    EXPECT_EQ(troubleOf(backupLog(path(), copy())), LogTrouble::CannotOpen);
    EXPECT_EQ(troubleOf(backupLog(path(), path())), LogTrouble::CannotOpen) << "onto itself";
    EXPECT_EQ(troubleOf(backupLog(path(), folder())), LogTrouble::CannotOpen) << "onto a folder";
    EXPECT_EQ(contentsOf(folder()), before);
    ASSERT_TRUE(QFile::link(folder() + u"/gone"_s, folder() + u"/link"_s));
    EXPECT_EQ(troubleOf(backupLog(path(), folder() + u"/link"_s)), LogTrouble::CannotOpen) << "through a link";
}

TEST_F(Backup, OfADamagedIndexIsRefusedThoughACopyWouldNotHaveIt)
{
    makeLog(Station::Assess);
    const QByteArray page =
        Referee(path()).value("SELECT rootpage FROM sqlite_schema WHERE name = 'sqlite_autoindex_summary_1'");
    const QByteArray uuid = Referee(path()).value("SELECT repair FROM summary");
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const qint64 start = (page.toLongLong() - 1) * 4096;
    ASSERT_TRUE(file.seek(start));
    const auto at = file.read(4096).indexOf(uuid);
    ASSERT_GE(at, 0);
    ASSERT_TRUE(file.seek(start + at));
    ASSERT_TRUE(file.putChar(uuid[0] == 'a' ? 'b' : 'a'));
    file.close();
    ASSERT_EQ(verifyLog(path())->breaksAt, u"integrity"_s);
    EXPECT_EQ(troubleOf(backupLog(path(), copy())), LogTrouble::Damaged);
    EXPECT_FALSE(QFile::exists(copy()));
}

TEST_F(Backup, NeedsALogAndAFolder)
{
    EXPECT_EQ(troubleOf(backupLog(path(), copy())), LogTrouble::CannotOpen);
    makeLog(Station::Assess);
    EXPECT_EQ(troubleOf(backupLog(path(), folder() + u"/none/copy.db"_s)), LogTrouble::CannotOpen);
    EXPECT_EQ(troubleOf(backupLog(path(), {})), LogTrouble::CannotOpen);
    EXPECT_EQ(QDir(folder()).entryList(QDir::Files).size(), 1);
}

} // namespace
