// SPDX-License-Identifier: GPL-3.0-or-later
// keep, merge, restore and rescue, as a script runs them.
#include "program.h"

#include "repair_script.h"
#include "repairlog/repair_log.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class Keeping : public testing::Test {
protected:
    void SetUp() override
    {
        takeIn(log(), u"door"_s);
        takeIn(log(), u"roof"_s);
        takeIn(other(), u"wing"_s);
    }
    static void takeIn(const QString& path, const QString& panel)
    {
        static int seconds = 0;
        auto log = RepairLog::open(path, LogMode::ReadWrite);
        ASSERT_TRUE(log) << log.error().detail.toStdString();
        const auto written = (*log)->append(
            {QUuid::createUuid(), u"R. Quist"_s, TakenIn{u"4421"_s, panel}, test::moment(++seconds), {}});
        ASSERT_TRUE(written) << written.error().detail.toStdString();
    }
    [[nodiscard]] QString file(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] QString log() const { return file(u"bench.sqlite"_s); }
    [[nodiscard]] QString other() const { return file(u"other.sqlite"_s); }
    [[nodiscard]] Ran keep(const QStringList& more = {}) const
    {
        return program(QStringList{u"keep"_s, u"--log"_s, log(), u"--folder"_s, file(u"stick"_s)} + more);
    }
    [[nodiscard]] Ran merge(const QStringList& more = {}) const
    {
        return program(QStringList{u"merge"_s, u"--log"_s, log(), u"--from"_s, other(), u"--person"_s, u"A"_s} + more);
    }
    [[nodiscard]] Ran restore(const QString& from, const QStringList& more = {}, const QByteArray& pin = {}) const
    {
        return program(QStringList{u"restore"_s, u"--log"_s, log(), u"--from"_s, from, u"--person"_s, u"A"_s} + more,
                       pin);
    }
    /// Other bytes in the place of the first panel.
    void damage() const
    {
        QFile bench(log());
        ASSERT_TRUE(bench.open(QIODevice::ReadWrite));
        const qsizetype at = bench.readAll().indexOf("\"panel\":\"roof\"");
        ASSERT_GE(at, 0);
        bench.seek(at);
        bench.write("\"panel\":\"ROOF\"");
    }
    QTemporaryDir m_folder;
};

TEST_F(Keeping, KeepWritesIntoAFolderAndGivesUpTheOldest)
{
    EXPECT_EQ(keep().status, 1) << "there is no such folder";
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(u"stick"_s));
    for (int i = 0; i < 4; ++i) {
        const Ran ran = keep({u"--copies"_s, u"2"_s});
        ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
        EXPECT_TRUE(QFile::exists(ran.json()[u"file"_s].toString()));
        EXPECT_EQ(ran.json()[u"given_up"_s].toArray().size(), i < 2 ? 0 : 1);
    }
    EXPECT_EQ(QDir(file(u"stick"_s)).entryList({u"*.sqlite"_s}).size(), 2);
    for (const char* odd : {"1", "1001", "many"})
        EXPECT_EQ(keep({u"--copies"_s, QString::fromLatin1(odd)}).status, 2) << odd;
}

TEST_F(Keeping, MergeSaysFirstAndThenDoes)
{
    const Ran dry = merge({u"--dry-run"_s});
    ASSERT_EQ(dry.status, 0) << dry.err.toStdString();
    EXPECT_EQ(dry.json()[u"added"_s].toInt(), 1);
    EXPECT_EQ(verifyLog(log())->events, 2) << "nothing was done";
    EXPECT_EQ(merge().json()[u"added"_s].toInt(), 1);
    EXPECT_EQ(verifyLog(log())->events, 4) << "with the entry that it was done";
    EXPECT_EQ(merge().json()[u"added"_s].toInt(), 0);
    EXPECT_EQ(verifyLog(log())->events, 4);
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(Keeping, MergeTellsLogsThatPart)
{
    ASSERT_TRUE(QFile::remove(other()) && QFile::copy(log(), other()));
    takeIn(log(), u"left"_s);
    takeIn(other(), u"right"_s);
    const Ran ran = merge();
    EXPECT_EQ(ran.status, 1);
    EXPECT_EQ(ran.json()[u"chains"_s][0][u"parts_at"_s].toInt(), 3);
    ASSERT_EQ(ran.messages().size(), 1);
    EXPECT_TRUE(ran.messages().first().contains(u"from entry 3 on"_s)) << ran.err.toStdString();
}

TEST_F(Keeping, RestoreSaysFirstAndThenDoes)
{
    const QString copy = file(u"copy.sqlite"_s);
    ASSERT_EQ(program({u"backup"_s, u"--log"_s, log(), u"--to"_s, copy}).status, 0);
    takeIn(log(), u"hood"_s);
    const Ran dry = restore(copy, {u"--dry-run"_s});
    ASSERT_EQ(dry.status, 0) << dry.err.toStdString();
    EXPECT_TRUE(dry.json()[u"earlier_log"_s].isNull());
    EXPECT_EQ(dry.json()[u"fetched"_s].toInt(), 1);
    const Ran ran = restore(copy);
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.json()[u"complete"_s].toBool());
    EXPECT_TRUE(QFileInfo(ran.json()[u"earlier_log"_s].toString()).isDir());
    EXPECT_EQ(verifyLog(log())->events, 4) << "with the entry that it was done";
}

TEST_F(Keeping, RestoreNeedsThePinWhereOneIsSet)
{
    const QString copy = file(u"copy.sqlite"_s);
    ASSERT_EQ(program({u"backup"_s, u"--log"_s, log(), u"--to"_s, copy}).status, 0);
    ASSERT_EQ(program({u"supervise"_s, u"--log"_s, log(), u"--act"_s, u"new_pin"_s, u"--person"_s, u"A"_s}, "271828\n")
                  .status,
              0);
    const auto before = verifyLog(log())->heads;
    EXPECT_EQ(restore(copy, {}, "314159\n").status, 2);
    EXPECT_EQ(restore(copy).status, 2);
    EXPECT_EQ(verifyLog(log())->heads, before);
    EXPECT_EQ(restore(copy, {u"--dry-run"_s}).status, 0) << "looking needs none";
    EXPECT_EQ(restore(copy, {}, "271828\n").status, 0);
}

TEST_F(Keeping, RescueGivesWhatHolds)
{
    damage();
    EXPECT_EQ(program({u"verify"_s, u"--log"_s, log()}).status, 3);
    const QString saved = file(u"saved.sqlite"_s);
    const Ran ran = program({u"rescue"_s, u"--log"_s, log(), u"--to"_s, saved});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(ran.json()[u"events"_s].toInt(), 1);
    EXPECT_EQ(ran.json()[u"loose"_s].toInt(), 1);
    EXPECT_TRUE(QFile::exists(ran.json()[u"loose_file"_s].toString()));
    EXPECT_EQ(program({u"verify"_s, u"--log"_s, saved}).status, 0);
    EXPECT_EQ(program({u"rescue"_s, u"--log"_s, log(), u"--to"_s, saved}).status, 2) << "nothing is overwritten";
}

TEST_F(Keeping, WhatIsNotALogIsToldByItsName)
{
    QFile text(file(u"text"_s));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write(QByteArray(4096, 'x'));
    text.close();
    for (const Ran& ran :
         {program({u"merge"_s, u"--log"_s, log(), u"--from"_s, text.fileName(), u"--person"_s, u"A"_s}),
          restore(text.fileName())}) {
        EXPECT_EQ(ran.status, 3);
        ASSERT_EQ(ran.messages().size(), 1);
        EXPECT_TRUE(ran.messages().first().startsWith(text.fileName())) << ran.err.toStdString();
    }
}

} // namespace
} // namespace strandbench
