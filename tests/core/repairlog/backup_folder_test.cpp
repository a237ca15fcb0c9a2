// SPDX-License-Identifier: GPL-3.0-or-later
// Backups in a folder: named, verified, due, and given up.
#include "repairlog/backup_folder.h"

#include "failing_vfs.h"
#include "two_logs.h"

#include <QDateTime>
#include <QDir>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class BackupFolder : public TwoLogs {
protected:
    BackupFolder()
    {
        makeLog(Station::Mix);
        if (!QDir(folder()).mkdir(u"stick"_s))
            throw std::runtime_error("no folder");
    }
    QString stick() const { return at(u"stick"_s); }
    /// At minutes after noon.
    static Instant noon(int minutes)
    {
        Instant at = moment(0);
        at.utcMs = 1'768'046'400'000 + minutes * 60'000LL; // 2026-01-10 12:00 UTC
        return at;
    }
    BackedUp backup(int minutes, int keep = 3) const
    {
        const auto done = backupIntoFolder(path(), stick(), keep, noon(minutes));
        if (!done)
            throw std::runtime_error(done.error().detail.toStdString());
        return *done;
    }
    QStringList names() const { return QDir(stick()).entryList({u"*.sqlite"_s}, QDir::Files, QDir::Name); }
};

TEST_F(BackupFolder, TheNameSaysWhoseAndWhenAndHowMuch)
{
    const ChainHead head = headAt(path());
    const BackedUp done = backup(15);
    EXPECT_EQ(QFileInfo(done.file.path).fileName(),
              u"strandbench-%1-20260110-121500-%2.sqlite"_s.arg(head.origin.left(8)).arg(head.count));
    EXPECT_EQ(done.file.count, head.count);
    EXPECT_EQ(done.file.utcMs, noon(15).utcMs);
    EXPECT_EQ(cleanly(done.file.path).heads, std::vector<ChainHead>{head});
    EXPECT_EQ(backupsIn(stick()), std::vector<BackupFile>{done.file});
    QFile heads(done.file.path + u".heads.txt"_s);
    ASSERT_TRUE(heads.open(QIODevice::ReadOnly));
    EXPECT_EQ(heads.readAll(),
              head.origin.toLatin1() + ' ' + QByteArray::number(head.count) + ' ' + head.hash.toHex() + '\n');
}

TEST_F(BackupFolder, TheOldestAreGivenUpAndOthersFilesStay)
{
    QFile other(stick() + u"/strandbench-holiday.sqlite"_s);
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    ASSERT_TRUE(QFile::copy(path(), stick() + u"/strandbench-00000000-20200101-000000-1.sqlite"_s)) << "another bench";
    for (int minute = 0; minute < 5; ++minute)
        static_cast<void>(backup(minute));
    const auto left = backupsIn(stick(), benchOf(headAt(path()).origin));
    ASSERT_EQ(left.size(), 3U);
    EXPECT_EQ(left.front().utcMs, noon(4).utcMs);
    EXPECT_EQ(left.back().utcMs, noon(2).utcMs);
    EXPECT_EQ(names().size(), 5);
    EXPECT_EQ(QDir(stick()).entryList({u"*.heads.txt"_s}, QDir::Files).size(), 3);
}

TEST_F(BackupFolder, OneThatHoldsMoreIsNeverGivenUp)
{
    const QString shorter = at(u"shorter.db"_s);
    copyFile(path(), shorter);
    makeAt(path(), u"roof"_s, Station::Mix);
    const BackedUp longest = backup(0);
    for (int minute = 1; minute < 6; ++minute) // the bench was restored from an older one, and works on
        ASSERT_TRUE(backupIntoFolder(shorter, stick(), 2, noon(minute)));
    EXPECT_TRUE(QFile::exists(longest.file.path));
    EXPECT_EQ(names().size(), 3);
}

TEST_F(BackupFolder, NoFewerThanTwoAreKept)
{
    for (int minute = 0; minute < 4; ++minute)
        static_cast<void>(backup(minute, 0));
    EXPECT_EQ(names().size(), 2);
}

TEST_F(BackupFolder, TwoInOneSecondGetTwoNames)
{
    static_cast<void>(backup(7));
    static_cast<void>(backup(7));
    EXPECT_EQ(backupsIn(stick()).size(), 2U);
}

TEST_F(BackupFolder, WhatWasCutOffIsTakenAwayOnceItIsOld)
{
    const QString begun =
        stick() + u"/strandbench-%1-20260110-120000-4.sqlite.part-"_s.arg(headAt(path()).origin.left(8));
    for (const char* each : {"old", "new"}) {
        QFile part(begun + QLatin1StringView(each));
        ASSERT_TRUE(part.open(QIODevice::WriteOnly));
        if (each == std::string_view("old")) {
            ASSERT_TRUE(
                part.setFileTime(QDateTime::currentDateTimeUtc().addSecs(-7200), QFileDevice::FileModificationTime));
        }
    }
    static_cast<void>(backup(0));
    EXPECT_FALSE(QFile::exists(begun + u"old"_s));
    EXPECT_TRUE(QFile::exists(begun + u"new"_s)) << "it may be under way";
}

TEST_F(BackupFolder, WhenItDoesNotFitNothingIsGivenUp)
{
    FailingVfs disk;
    for (int minute = 0; minute < 3; ++minute)
        static_cast<void>(backup(minute));
    const auto before = contentsOf(stick());
    FailingVfs::failAfter(6, Failure::Full);
    EXPECT_EQ(troubleOf(backupIntoFolder(path(), stick(), 2, noon(9))), LogTrouble::DiskFull);
    FailingVfs::work();
    EXPECT_EQ(contentsOf(stick()), before);
}

TEST_F(BackupFolder, AFolderThatIsNotThereIsSaid)
{
    EXPECT_EQ(troubleOf(backupIntoFolder(path(), at(u"gone"_s), 3, noon(0))), LogTrouble::CannotOpen);
    EXPECT_TRUE(backupsIn(at(u"gone"_s)).empty());
}

TEST_F(BackupFolder, ItIsDueByTheNewest)
{
    EXPECT_TRUE(backupIsDue({}, minutes(60), noon(0)));
    static_cast<void>(backup(0));
    const auto all = backupsIn(stick());
    EXPECT_FALSE(backupIsDue(all, minutes(60), noon(0)));
    EXPECT_FALSE(backupIsDue(all, minutes(60), noon(59)));
    EXPECT_TRUE(backupIsDue(all, minutes(60), noon(60)));
    EXPECT_TRUE(backupIsDue(all, minutes(60), noon(-1))) << "the clock was set back";
}

} // namespace
