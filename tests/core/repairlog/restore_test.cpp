// SPDX-License-Identifier: GPL-3.0-or-later
// A backup in the log's place: what the log held beyond it comes along, and the log itself is kept.
#include "repairlog/restore.h"

#include "repairlog/damage_mark.h"
#include "two_logs.h"

#include <QDir>

#include <csignal>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Restore : public TwoLogs {
protected:
    Restore()
    {
        makeLog();
        if (!backupLog(path(), backup()))
            throw std::runtime_error("no backup");
    }
    QString backup() const { return at(u"backup.db"_s); }
    void goOn() const { makeAt(path(), u"roof"_s, Station::Mix); }
    void damage(qint64 seq) const
    {
        ASSERT_EQ(Referee(path()).run("DROP TRIGGER event_no_update; UPDATE event SET person = 'x' WHERE seq = " +
                                      QByteArray::number(seq)),
                  "");
    }
};

TEST_F(Restore, OfAWholeLogKeepsAllThatItHolds)
{
    goOn();
    const ChainHead head = headAt(path());
    const qint64 held = verifyLog(backup())->events;
    const auto report = restoreLog(path(), backup(), MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_TRUE(report->complete());
    EXPECT_EQ(report->fetched, head.count - held);
    EXPECT_EQ(headAt(path()), head);
    EXPECT_EQ(cleanly(path()).heads, std::vector<ChainHead>{head});
    EXPECT_EQ(verifyLog(report->earlier + u'/' + QFileInfo(path()).fileName())->heads, std::vector<ChainHead>{head});
}

TEST_F(Restore, OfADamagedLogFetchesUpToTheDamage)
{
    const qint64 held = headAt(path()).count;
    goOn();
    damage(held + 4);
    const auto before = contentsOf(folder());
    const auto report = restoreLog(path(), backup(), MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_FALSE(report->complete());
    EXPECT_FALSE(report->logWhole);
    EXPECT_TRUE(report->logBreaks.contains(u"seq %1"_s.arg(held + 4)));
    EXPECT_EQ(report->fetched, 3);
    EXPECT_GT(report->loose, 0);
    EXPECT_EQ(cleanly(path()).events, held + 3);
    EXPECT_EQ(contentsOf(report->earlier).at(QFileInfo(path()).fileName()), before.at(QFileInfo(path()).fileName()));
}

TEST_F(Restore, DamageBeforeTheBackupsEndCostsOnlyWhatCameAfter)
{
    const qint64 held = headAt(path()).count;
    goOn();
    damage(5); // the backup has it whole; what came after it in the log follows on the backup
    const auto report = restoreLog(path(), backup(), MergeMode::Write);
    ASSERT_TRUE(report);
    EXPECT_GE(cleanly(path()).events, held);
    EXPECT_FALSE(report->complete());
}

TEST_F(Restore, ADryRunSaysItAndChangesNothing)
{
    const qint64 held = headAt(path()).count;
    goOn();
    damage(held + 4);
    const auto before = contentsOf(folder());
    const auto dry = restoreLog(path(), backup(), MergeMode::DryRun);
    ASSERT_TRUE(dry) << qPrintable(dry.error().detail);
    EXPECT_EQ(contentsOf(folder()), before);
    EXPECT_EQ(dry->fetched, 3);
    EXPECT_EQ(dry->earlier, QString());
    const auto done = restoreLog(path(), backup(), MergeMode::Write);
    EXPECT_EQ(done->after.heads, dry->after.heads);
    EXPECT_EQ(done->loose, dry->loose);
}

TEST_F(Restore, WhereNothingLiesItIsTheBackup)
{
    const auto heads = verifyLog(backup())->heads;
    const QString fresh = at(u"fresh.db"_s);
    const auto report = restoreLog(fresh, backup(), MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_FALSE(report->logThere);
    EXPECT_TRUE(report->complete());
    EXPECT_EQ(cleanly(fresh).heads, heads);
}

TEST_F(Restore, WhatTheWalHeldIsNotTakenForTheBackups)
{
    ASSERT_EQ(inChild([&] {
                  const auto log = open();
                  walk(*log, QUuid::createUuid(), Station::Mix, u"roof"_s);
                  std::raise(SIGKILL);
                  return 0;
              }),
              256 + SIGKILL);
    ASSERT_TRUE(QFile::exists(path() + u"-wal"_s));
    const auto report = restoreLog(path(), backup(), MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_FALSE(QFile::exists(path() + u"-wal"_s));
    EXPECT_TRUE(QFile::exists(report->earlier + u'/' + QFileInfo(path()).fileName() + u"-wal"_s));
    EXPECT_GT(report->fetched, 0);
    static_cast<void>(cleanly(path()));
}

TEST_F(Restore, ABackupThatDoesNotHoldIsRefused)
{
    ASSERT_EQ(Referee(backup()).run("DROP TRIGGER event_no_update; UPDATE event SET person = 'x' WHERE seq = 4"), "");
    const auto before = contentsOf(folder());
    EXPECT_EQ(troubleOf(restoreLog(path(), backup(), MergeMode::Write)), LogTrouble::Damaged);
    EXPECT_EQ(troubleOf(restoreLog(path(), path(), MergeMode::Write)), LogTrouble::CannotOpen);
    EXPECT_EQ(contentsOf(folder()), before);
}

TEST_F(Restore, WhatWentAnotherWayStaysInTheEarlierLogAndIsTold)
{
    goOn();
    makeAt(backup(), u"another"_s, Station::Assess); // somebody worked on the backup
    const auto report = restoreLog(path(), backup(), MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    ASSERT_EQ(report->parted.size(), 1U);
    EXPECT_FALSE(report->complete());
    EXPECT_EQ(cleanly(path()).heads, verifyLog(backup())->heads);
}

TEST_F(Restore, KilledAnywhereTheLogIsInItsPlaceOrTheMarkSaysWhere)
{
    goOn();
    const auto heads = verifyLog(path())->heads;
    int cut = 0;
    for (int wait = 0; wait < 40; ++wait) {
        const QString log = at(u"bench%1.db"_s.arg(wait));
        copyFile(path(), log);
        Child child([&](Shared& shared) {
            ++shared.acknowledged;
            return restoreLog(log, backup(), MergeMode::Write) ? 0 : 1;
        });
        ASSERT_TRUE(child.waitFor(1));
        ::usleep(useconds_t(wait * 4000));
        cut += child.kill() == 256 + SIGKILL ? 1 : 0;
        if (const QString earlier = restoreCutOff(log); !earlier.isEmpty()) {
            EXPECT_EQ(troubleOf(RepairLog::open(log, LogMode::ReadWrite)), LogTrouble::Damaged);
            EXPECT_EQ(verifyLog(earlier + u'/' + QFileInfo(log).fileName())->heads, heads);
            ASSERT_TRUE(restoreLog(log, backup(), MergeMode::Write)) << "and restoring again mends it";
        }
        EXPECT_EQ(cleanly(log).heads, heads);
        EXPECT_TRUE(RepairLog::open(log, LogMode::ReadWrite));
    }
    EXPECT_GT(cut, 0);
}

} // namespace
