// SPDX-License-Identifier: GPL-3.0-or-later
// The witness of the crash tests can be wronged: it names what a kill must never do.
#include "witness.h"

#include "repair/repair.h"
#include "repairlog/repair_log.h"

#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class WitnessOfALog : public ::testing::Test {
protected:
    WitnessOfALog() { write({u"a"_s, u"b"_s, u"c"_s}); }
    void write(const QStringList& marks) const
    {
        const auto log = RepairLog::open(path, LogMode::ReadWrite);
        for (const QString& each : marks)
            EXPECT_TRUE((*log)->append(
                {QUuid::createUuid(), each, TakenIn{QUuid::createUuid().toString(), u"door"_s}, {}, {}}));
    }
    [[nodiscard]] QByteArray hashOf(std::size_t at) const
    {
        return RepairLog::open(path, LogMode::ReadOnly).value()->after(0)->at(at).hash.toHex();
    }
    /// What is wrong once this was told.
    [[nodiscard]] std::string wrong(const std::vector<QByteArray>& lines)
    {
        witness.hear(lines);
        return witness.faultOfLog().toStdString();
    }

    QTemporaryDir folder;
    QString path = folder.filePath(u"bench.sqlite"_s);
    Witness witness{path};
};

TEST_F(WitnessOfALog, HasNothingAgainstWhatIsThere)
{
    EXPECT_EQ(wrong({"phase working", "done a 1", "done b 0", "at c 3 " + hashOf(2)}), "");
    EXPECT_EQ(wrong({}), "") << "and there again";
}

TEST_F(WitnessOfALog, NamesAConfirmedActThatIsNotThere)
{
    EXPECT_EQ(wrong({"done d 0"}), "act d was confirmed and is not there");
}

TEST_F(WitnessOfALog, NamesAnotherPlace) { EXPECT_EQ(wrong({"done b 3"}), "act b was confirmed as seq 3 and is 2"); }

TEST_F(WitnessOfALog, NamesAnotherHash)
{
    EXPECT_EQ(wrong({"at b 2 " + hashOf(2)}), "act b was seq 2 and is gone or another");
}

TEST_F(WitnessOfALog, NamesAnActThatIsThereTwice)
{
    write({u"b"_s});
    EXPECT_EQ(wrong({}), "act b is there twice");
}

TEST_F(WitnessOfALog, NamesALogThatIsGoneOrMadeAnew)
{
    EXPECT_EQ(wrong({"done a 1"}), "");
    ASSERT_TRUE(QFile::remove(path));
    EXPECT_NE(wrong({}), "");
    write({u"e"_s});
    EXPECT_EQ(wrong({}), "act a was confirmed and is not there");
}

TEST_F(WitnessOfALog, HandsOnWhatTheWorkerComplainsOf)
{
    EXPECT_EQ(wrong({"trouble the log does not open"}), "trouble the log does not open");
}

TEST_F(WitnessOfALog, HoldsBackupsToWhatWasConfirmedBeforeThem)
{
    const auto backup = [this](const QString& name) { return folder.filePath(name); };
    ASSERT_TRUE(QFile::copy(path, backup(u"1.backup"_s)));
    witness.hear({"done a 1", "backup 1.backup", "backed 1.backup", "done d 4"});
    EXPECT_EQ(witness.faultOfBackups(), QString());
    EXPECT_EQ(witness.backups(), 1);
    witness.hear({"backed 2.backup"});
    EXPECT_EQ(witness.faultOfBackups(), u"backup 2.backup was said to be there and is not"_s);
    ASSERT_TRUE(QFile::copy(path, backup(u"2.backup"_s)));
    witness.hear({"backup 2.backup"}); // d was confirmed before it
    EXPECT_EQ(witness.faultOfBackups(), u"backup 2.backup: act d was confirmed before it began and is not in it"_s);
    QFile half(backup(u"2.backup"_s));
    ASSERT_TRUE(half.open(QIODevice::ReadWrite) && half.resize(half.size() / 2));
    EXPECT_TRUE(witness.faultOfBackups().startsWith(u"backup 2.backup: it "_s));
    ASSERT_TRUE(half.remove() && QFile::copy(path, backup(u"3.backup.part-x"_s)));
    EXPECT_EQ(witness.halfMade(), 0);
    EXPECT_EQ(witness.faultOfBackups(), u"backup 2.backup was said to be there and is not"_s);
    EXPECT_EQ(witness.halfMade(), 1) << "its name is not a backup's";
}

} // namespace
} // namespace strandbench::test
