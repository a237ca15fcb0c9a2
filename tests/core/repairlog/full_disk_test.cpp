// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that is full, or fails, at any one write: nothing is half saved, and it goes on afterwards.
#include "failing_vfs.h"
#include "log_fixture.h"
#include "referee.h"

#include <QFile>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class FullDisk : public LogTest {
protected:
    /// What a crash at this moment would leave: the file and its WAL.
    void expectSoundAfterACrash(const ChainHead& head) const
    {
        const QString crashed = folder() + u"/crashed.db"_s;
        ASSERT_TRUE(QFile::copy(path(), crashed) && QFile::copy(path() + u"-wal"_s, crashed + u"-wal"_s));
        EXPECT_EQ(RepairLog::open(crashed, LogMode::ReadWrite).value()->head(), head);
        EXPECT_TRUE(verifyLog(crashed)->clean);
        ASSERT_TRUE(QFile::remove(crashed));
    }
    FailingVfs disk;
};

TEST_F(FullDisk, QtsConnectionsGoThroughIt)
{
    makeLog(Station::Assess);
    EXPECT_GT(FailingVfs::writes(), 10);
    EXPECT_GT(FailingVfs::syncs(), 4);
}

TEST_F(FullDisk, EveryCommitIsSyncedBeforeItIsAcknowledged)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    Repair repair = walk(*log, id, Station::Decide);
    while (repair.open()) {
        FailingVfs::work();
        ASSERT_FALSE(apply(repair, *log->append(draft(id, actAt(repair)))));
        ASSERT_GT(FailingVfs::writes(), 0);
        ASSERT_GE(FailingVfs::syncs(), 1);
        ASSERT_EQ(FailingVfs::unsynced(), 0) << "the last write is on the disk, not only the first";
    }
}

TEST_F(FullDisk, AtAnyWriteOfAConfirmationNothingIsHalfSaved)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const Repair repair = walk(*log, id, Station::Decide);
    EventDraft accepted = draft(id, actAt(repair), 900);
    accepted.blobs = {QByteArray(9000, 's')};
    const ChainHead head = *log->head();
    const auto summaries = *log->openRepairs();
    int allowed = 0;
    for (;; ++allowed) {
        ASSERT_LT(allowed, 200);
        FailingVfs::failAfter(allowed, Failure::Full);
        const auto event = log->append(accepted);
        FailingVfs::work();
        if (event)
            break;
        ASSERT_EQ(troubleOf(event), LogTrouble::DiskFull);
        ASSERT_EQ(*log->head(), head);
        ASSERT_EQ(*log->openRepairs(), summaries);
        expectSoundAfterACrash(head);
    }
    EXPECT_GT(allowed, 4) << "the confirmation took several writes";
    EXPECT_EQ(log->head()->count, head.count + 1) << "with room again it goes";
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(FullDisk, AFailingDiskIsToldApartFromAFullOne)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const Repair repair = walk(*log, id, Station::Decide);
    const ChainHead head = *log->head();
    for (Failure failure : {Failure::Write, Failure::Sync}) {
        FailingVfs::failAfter(0, failure);
        EXPECT_EQ(troubleOf(log->append(draft(id, actAt(repair)))), LogTrouble::IoError);
        FailingVfs::work();
        EXPECT_EQ(*log->head(), head);
    }
    EXPECT_TRUE(log->append(draft(id, actAt(repair))));
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(FullDisk, WhileALogIsMadeItIsNothingOrWhole)
{
    int allowed = 0;
    for (;; ++allowed) {
        ASSERT_LT(allowed, 500);
        FailingVfs::failAfter(allowed, Failure::Full);
        const auto log = RepairLog::open(path(), LogMode::ReadWrite);
        FailingVfs::work();
        if (log)
            break;
        ASSERT_EQ(troubleOf(log), LogTrouble::DiskFull) << allowed;
        ASSERT_EQ(open()->head()->count, 0) << "with room again it is made";
        ASSERT_TRUE(verifyLog(path())->clean);
        for (const auto& [name, bytes] : contentsOf(folder()))
            ASSERT_TRUE(QFile::remove(folder() + u'/' + name));
    }
    EXPECT_GT(allowed, 10);
}

TEST_F(FullDisk, ABackupThatDoesNotFitIsTakenAwayAgain)
{
    makeLog();
    const auto before = contentsOf(folder());
    FailingVfs::work();
    ASSERT_TRUE(backupLog(path(), folder() + u"/measure.db"_s));
    const int needed = FailingVfs::writes();
    ASSERT_TRUE(QFile::remove(folder() + u"/measure.db"_s));
    ASSERT_GT(needed, 10);
    for (int allowed = 0; allowed < needed; allowed += 3) {
        FailingVfs::failAfter(allowed, Failure::Full);
        ASSERT_EQ(troubleOf(backupLog(path(), folder() + u"/copy.db"_s)), LogTrouble::DiskFull) << allowed;
        ASSERT_EQ(contentsOf(folder()), before) << allowed;
    }
    FailingVfs::work();
    EXPECT_TRUE(backupLog(path(), folder() + u"/copy.db"_s));
}

} // namespace
