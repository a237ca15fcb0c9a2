// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include "repairlog/repair_log.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class LogCommands : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        auto log = RepairLog::open(path(), LogMode::ReadWrite);
        ASSERT_TRUE(log) << log.error().detail.toStdString();
        const QUuid repair = QUuid::createUuid();
        append(**log, repair, TakenIn{u"4421"_s, u"skirt panel"_s});
        append(**log, repair, Answered{Question::Substrate, Substrate::Smc, {}});
        const auto head = (*log)->head();
        ASSERT_TRUE(head);
        m_head = QString::fromLatin1(head->hash.toHex());
    }

    void append(RepairLog& log, const QUuid& repair, const Payload& payload)
    {
        const qint64 second = ++m_seconds;
        const auto written = log.append({repair,
                                         u"Technician 2"_s,
                                         payload,
                                         Instant{1'700'000'000'000 + second * 1000, second * 1000, u"boot"_s, 3600},
                                         {}});
        ASSERT_TRUE(written) << written.error().detail.toStdString();
    }

    /// Writes other bytes of the same number over the first place where `was` stands in the file.
    static void overwrite(const QString& path, const QByteArray& was, const QByteArray& with)
    {
        ASSERT_EQ(was.size(), with.size());
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        const qsizetype at = file.readAll().indexOf(was);
        ASSERT_GE(at, 0) << "the file does not hold what is to be changed";
        file.seek(at);
        file.write(with);
    }

    [[nodiscard]] QString path() const { return m_folder.filePath(u"bench.sqlite"_s); }
    [[nodiscard]] QString file(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] Ran verify(const QStringList& more = {}) const
    {
        return program(QStringList{u"verify"_s, u"--log"_s, path()} + more);
    }
    [[nodiscard]] Ran backup(const QString& to) const
    {
        return program({u"backup"_s, u"--log"_s, path(), u"--to"_s, to});
    }

    QTemporaryDir m_folder;
    QString m_head;
    qint64 m_seconds = 0;
};

TEST_F(LogCommands, VerifyingACleanLogTellsItsHeads)
{
    const Ran ran = verify();
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty());
    const QJsonObject json = ran.json();
    EXPECT_EQ(json.keys(), (QStringList{u"breaks_at"_s, u"clean"_s, u"events"_s, u"heads"_s, u"repairs"_s,
                                        u"schema_version"_s, u"where"_s}));
    EXPECT_TRUE(json[u"clean"_s].toBool());
    EXPECT_EQ(json[u"events"_s].toInt(), 2);
    EXPECT_EQ(json[u"repairs"_s].toInt(), 1);
    EXPECT_GE(json[u"schema_version"_s].toInt(), 1);
    EXPECT_TRUE(json[u"breaks_at"_s].isNull() && json[u"where"_s].isNull());
    const QJsonArray heads = json[u"heads"_s].toArray();
    ASSERT_EQ(heads.size(), 1);
    EXPECT_EQ(heads[0][u"count"_s].toInt(), 2);
    EXPECT_EQ(heads[0][u"hash"_s].toString(), m_head);
    EXPECT_FALSE(heads[0][u"origin"_s].toString().isEmpty());
}

TEST_F(LogCommands, VerifyingLooksForTheHeadThatIsExpected)
{
    EXPECT_EQ(verify({u"--expect"_s, m_head}).status, 0);
    EXPECT_EQ(verify({u"--expect"_s, m_head.toUpper()}).status, 0);
    const Ran other = verify({u"--expect"_s, QString(64, u'a')});
    EXPECT_EQ(other.status, 3);
    EXPECT_EQ(other.json()[u"breaks_at"_s].toString(), u"expected_head"_s);
    EXPECT_EQ(other.messages().size(), 1);
    for (const QString& odd : {u"1234"_s, QString(64, u'g'), QString(63, u'a')})
        EXPECT_EQ(verify({u"--expect"_s, odd}).status, 2) << odd.toStdString();
}

TEST_F(LogCommands, VerifyingNamesTheFirstPlaceThatWasChanged)
{
    overwrite(path(), "skirt panel", "skirt pane1");
    const Ran ran = verify();
    EXPECT_EQ(ran.status, 3);
    EXPECT_FALSE(ran.json()[u"clean"_s].toBool());
    EXPECT_FALSE(ran.json()[u"breaks_at"_s].toString().isEmpty());
    EXPECT_FALSE(ran.json()[u"where"_s].toString().isEmpty());
    ASSERT_EQ(ran.messages().size(), 1);
    EXPECT_TRUE(ran.messages().first().startsWith(path() + u": it breaks here: "_s)) << ran.err.toStdString();
    EXPECT_FALSE(ran.messages().first().contains(u'[')) << ran.err.toStdString();
}

TEST_F(LogCommands, ALogThatCannotBeOpenedIsStatusThree)
{
    const QString text = file(u"text.sqlite"_s);
    QFile other(text);
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("this is a text file and no database, but long enough to look at");
    other.close();
    for (const QString& each : {file(u"none.sqlite"_s), text, m_folder.path()}) {
        for (const Ran& ran : {program({u"verify"_s, u"--log"_s, each}),
                               program({u"backup"_s, u"--log"_s, each, u"--to"_s, file(u"copy.sqlite"_s)})}) {
            EXPECT_EQ(ran.status, 3) << each.toStdString() << ": " << ran.err.toStdString();
            EXPECT_EQ(ran.messages().size(), 1) << ran.err.toStdString();
            EXPECT_TRUE(ran.messages().value(0).contains(each)) << ran.err.toStdString();
        }
        EXPECT_FALSE(QFile::exists(file(u"copy.sqlite"_s)));
    }
    EXPECT_FALSE(QFile::exists(file(u"none.sqlite"_s))) << "verifying made the log that it did not find";
}

TEST_F(LogCommands, ABackupIsVerifiedAndHoldsTheSameHeads)
{
    const QString to = file(u"copy.sqlite"_s);
    const Ran ran = backup(to);
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.json()[u"clean"_s].toBool());
    EXPECT_EQ(ran.json()[u"to"_s].toString(), to);
    EXPECT_EQ(ran.json()[u"heads"_s], verify().json()[u"heads"_s]);
    const Ran copy = program({u"verify"_s, u"--log"_s, to, u"--expect"_s, m_head});
    EXPECT_EQ(copy.status, 0) << copy.err.toStdString();
}

TEST_F(LogCommands, ABackupWorksWhileTheLogIsOpen)
{
    const auto log = RepairLog::open(path(), LogMode::ReadWrite);
    ASSERT_TRUE(log);
    append(**log, QUuid::createUuid(), TakenIn{u"4422"_s, u"roof cap"_s});
    const Ran ran = backup(file(u"copy.sqlite"_s));
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(ran.json()[u"events"_s].toInt(), 3);
}

TEST_F(LogCommands, ABackupNeverOverwrites)
{
    const QString to = file(u"there.txt"_s);
    QFile there(to);
    ASSERT_TRUE(there.open(QIODevice::WriteOnly));
    there.write("mine");
    there.close();
    const Ran ran = backup(to);
    EXPECT_EQ(ran.status, 2);
    ASSERT_EQ(ran.messages().size(), 1);
    EXPECT_TRUE(ran.messages().first().startsWith(u"--to: '%1'"_s.arg(to)));
    ASSERT_TRUE(there.open(QIODevice::ReadOnly));
    EXPECT_EQ(there.readAll(), "mine");
    EXPECT_EQ(backup(path()).status, 2) << "onto the log itself";
    EXPECT_EQ(verify().status, 0);
}

TEST_F(LogCommands, ABackupThatCannotBeWrittenIsStatusOne)
{
    const Ran ran = backup(file(u"no/such/folder/copy.sqlite"_s));
    EXPECT_EQ(ran.status, 1);
    ASSERT_EQ(ran.messages().size(), 1);
    EXPECT_TRUE(ran.messages().first().startsWith(u"--to: "_s)) << ran.err.toStdString();
}

TEST_F(LogCommands, ABackupOfADamagedLogIsStatusThreeAndLeavesNoCopy)
{
    overwrite(path(), "skirt panel", "skirt pane1");
    const QString to = file(u"copy.sqlite"_s);
    const Ran ran = backup(to);
    EXPECT_EQ(ran.status, 3) << ran.err.toStdString();
    EXPECT_EQ(ran.messages().size(), 1);
    EXPECT_FALSE(QFile::exists(to));
}

} // namespace
} // namespace strandbench
