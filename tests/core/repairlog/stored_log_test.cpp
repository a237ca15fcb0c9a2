// SPDX-License-Identifier: GPL-3.0-or-later
// A log of every version that ever landed, as a program of that version wrote it: read as it lies, and migrated.
#include "failing_vfs.h"
#include "log_fixture.h"
#include "referee.h"

#include "repairlog/schema.h"

#include <QCryptographicHash>
#include <QFile>

#include <csignal>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

QString storedLog(int version) { return u"%1/version_%2.db"_s.arg(QStringLiteral(STORED_LOGS)).arg(version); }

/// All that happened, as it is stored.
std::vector<QByteArray> happened(const QString& path)
{
    const Referee referee(path);
    std::vector<QByteArray> all;
    for (const char* sql : {"SELECT * FROM event ORDER BY origin, seq", "SELECT * FROM blob ORDER BY hash",
                            "SELECT * FROM event_blob ORDER BY origin, seq, hash",
                            "SELECT * FROM summary ORDER BY repair", "SELECT value FROM meta WHERE key = 'origin'"})
        for (const QByteArray& row : referee.rows(sql))
            all.push_back(row);
    return all;
}

class StoredLog : public LogTest, public ::testing::WithParamInterface<int> {
protected:
    StoredLog() { layOut(); }

    /// Lays the stored log out anew, with nothing beside it.
    void layOut() const
    {
        for (const auto& [name, bytes] : contentsOf(folder()))
            QFile::remove(folder() + u'/' + name);
        EXPECT_TRUE(QFile::copy(storedLog(GetParam()), path())) << "no stored log of version " << GetParam();
        QFile::setPermissions(path(), QFile::ReadOwner | QFile::WriteOwner);
    }
    [[nodiscard]] int version() const
    {
        return Referee(path()).value("SELECT value FROM meta WHERE key = 'schema_version'").toInt();
    }
    /// After a migration that was cut off: all that happened is there, in the old version or in the new.
    void expectOldOrNew(const std::vector<QByteArray>& before, const QString& head, int cut) const
    {
        const auto report = verifyLog(path(), head);
        ASSERT_TRUE(report) << cut << ": " << qPrintable(report.error().detail);
        ASSERT_TRUE(report->clean) << cut << ": " << qPrintable(report->breaksAt + u' ' + report->where);
        ASSERT_TRUE(report->schemaVersion >= GetParam() && report->schemaVersion <= currentVersion()) << cut;
        {
            const auto log = open();
            ASSERT_EQ(QString::fromLatin1(log->head()->hash.toHex()), head) << cut;
        }
        ASSERT_EQ(version(), currentVersion()) << cut << ": the next opening migrates it";
        ASSERT_EQ(happened(path()), before) << cut;
        ASSERT_TRUE(verifyLog(path(), head)->clean) << cut;
    }
    static QString headOf(const QString& path)
    {
        return QString::fromLatin1(verifyLog(path)->heads.at(0).hash.toHex());
    }
};

std::string versionName(const ::testing::TestParamInfo<int>& info) { return "Version" + std::to_string(info.param); }

INSTANTIATE_TEST_SUITE_P(Every, StoredLog, ::testing::Range(1, currentVersion() + 1), versionName);

TEST_P(StoredLog, IsOfItsVersionAndSmall)
{
    EXPECT_EQ(version(), GetParam());
    EXPECT_EQ(Referee(path()).value("PRAGMA user_version").toInt(), GetParam());
    EXPECT_EQ(Referee(path()).value("PRAGMA journal_mode"), "wal") << "as the program left it";
    EXPECT_LT(QFile(storedLog(GetParam())).size(), 150'000);
}

TEST_P(StoredLog, ReadsAndVerifiesAsItLiesWithoutAChange)
{
    const auto before = contentsOf(folder());
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << qPrintable(report->breaksAt + u' ' + report->where);
    EXPECT_EQ(report->schemaVersion, GetParam());
    EXPECT_GE(report->events, 60);
    EXPECT_EQ(report->repairs, GetParam() < 3 ? 3 : 4) << "since then with one of another bench";
    {
        const auto log = open(LogMode::ReadOnly);
        const auto repairs = log->openRepairs();
        ASSERT_TRUE(repairs);
        ASSERT_EQ(repairs->size(), 2U);
        const auto waiting = foldRepair(*log->events(repairs->front().repair));
        ASSERT_TRUE(waiting);
        EXPECT_TRUE(waiting->runs.back().running()) << "a batch cures";
        EXPECT_EQ(log->events(repairs->back().repair)->size(), 1U) << "just taken in";
        EXPECT_FALSE(log->eventsOfLots(u"0000-00-00"_s)->empty());
        const QByteArray sheet = QCryptographicHash::hash("a sheet", QCryptographicHash::Sha256);
        EXPECT_EQ(*log->blob(sheet), "a sheet");
    }
    EXPECT_EQ(contentsOf(folder()), before) << "not a byte, and nothing beside it";
}

TEST_P(StoredLog, OpenedToWriteIsOfThePresentVersionWithAllThatHappened)
{
    const auto before = happened(path());
    const QString head = headOf(path());
    for (int opening = 0; opening < 2; ++opening) {
        ASSERT_TRUE(open());
        EXPECT_EQ(version(), currentVersion());
        EXPECT_EQ(happened(path()), before);
        const auto report = verifyLog(path(), head);
        EXPECT_TRUE(report->clean) << qPrintable(report->breaksAt + u' ' + report->where);
        EXPECT_EQ(report->schemaVersion, currentVersion());
        EXPECT_EQ(headOf(path()), head);
    }
    const auto once = contentsOf(folder());
    ASSERT_TRUE(open());
    EXPECT_EQ(contentsOf(folder()), once) << "opened again, nothing is done";
}

TEST_P(StoredLog, OpenRepairsGoOn)
{
    const QString head = headOf(path());
    {
        const auto log = open();
        const qint64 count = log->head()->count;
        const auto repairs = *log->openRepairs();
        ASSERT_EQ(repairs.size(), 2U);
        for (const RepairSummary& each : repairs) {
            Repair repair = *foldRepair(*log->events(each.repair));
            while (repair.open()) {
                const auto event = log->append(draft(each.repair, actAt(repair), 20000));
                ASSERT_TRUE(event) << qPrintable(event.error().detail);
                ASSERT_FALSE(apply(repair, *event));
            }
        }
        EXPECT_GT(log->head()->count, count + 40);
    }
    EXPECT_TRUE(verifyLog(path(), head)->clean);
}

TEST_P(StoredLog, AFullDiskAtAnyWriteOfTheMigrationLeavesOldOrNew)
{
    const auto before = happened(path());
    const QString head = headOf(path());
    const FailingVfs disk;
    int refused = 0;
    for (;; ++refused) {
        ASSERT_LT(refused, 500);
        FailingVfs::failAfter(refused, Failure::Full);
        const bool opened = RepairLog::open(path(), LogMode::ReadWrite).has_value();
        FailingVfs::work();
        expectOldOrNew(before, head, refused);
        if (HasFatalFailure() || opened)
            break;
        layOut();
    }
    EXPECT_TRUE(GetParam() == currentVersion() || refused > 2) << "there was something to refuse";
}

TEST_P(StoredLog, AKillInAnyWriteOrSyncOfTheMigrationLeavesOldOrNew)
{
    const auto before = happened(path());
    const QString head = headOf(path());
    const FailingVfs disk;
    for (const Failure death : {Failure::DieInWrite, Failure::DieInSync}) {
        int killed = 0;
        int status = 256 + SIGKILL;
        for (; status == 256 + SIGKILL; ++killed) {
            ASSERT_LT(killed, 500);
            layOut();
            status = inChild([&] {
                FailingVfs::failAfter(killed, death);
                return RepairLog::open(path(), LogMode::ReadWrite).has_value() ? 0 : 1;
            });
            expectOldOrNew(before, head, killed);
            if (HasFatalFailure())
                return;
        }
        ASSERT_EQ(status, 0);
        EXPECT_TRUE(GetParam() == currentVersion() || killed > 2) << "there was something to kill in";
    }
}

} // namespace
