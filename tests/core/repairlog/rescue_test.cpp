// SPDX-License-Identifier: GPL-3.0-or-later
// What is left of a damaged log: all that holds, and the log itself untouched.
#include "repairlog/rescue.h"

#include "two_logs.h"

#include <QCryptographicHash>

#include <csignal>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Rescue : public TwoLogs {
protected:
    Rescue() { makeLog(); }
    void tamper(const QByteArray& sql) const
    {
        ASSERT_EQ(Referee(path()).run("PRAGMA foreign_keys = OFF; DROP TRIGGER event_no_update; DROP TRIGGER "
                                      "event_no_delete; DROP TRIGGER event_blob_no_delete;" +
                                      sql),
                  "");
    }
    QString saved() const { return at(u"saved.db"_s); }
};

TEST_F(Rescue, AWholeLogIsRescuedWhole)
{
    const auto report = rescueLog(path(), saved());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_EQ(cleanly(saved()).heads, cleanly(path()).heads);
    EXPECT_EQ(report->loose, 0);
    EXPECT_EQ(report->unreadBytes, 0);
    EXPECT_EQ(report->blobsMissing, 0);
    EXPECT_FALSE(report->originGuessed);
    EXPECT_EQ(openAt(saved())->origin(), openAt(path())->origin());
}

TEST_F(Rescue, WhatIsStillInTheWalIsRescuedToo)
{
    const qint64 count = headAt(path()).count;
    ASSERT_EQ(inChild([&] {
                  const auto log = open();
                  if (!log->append(draft(QUuid::createUuid(), TakenIn{u"9"_s, u"hood"_s}, 9000)))
                      return 1;
                  std::raise(SIGKILL);
                  return 0;
              }),
              256 + SIGKILL);
    const auto before = contentsOf(folder());
    const auto report = rescueLog(path(), saved());
    ASSERT_TRUE(report);
    EXPECT_EQ(report->rescued.events, count + 1);
    for (const auto& [name, bytes] : before)
        EXPECT_EQ(contentsOf(folder())[name], bytes) << "the damaged log and what lies beside it stay";
}

TEST_F(Rescue, AfterAChangedEventTheRestIsKeptAsText)
{
    const qint64 count = headAt(path()).count;
    tamper("UPDATE event SET person = 'x' WHERE seq = 20");
    const auto report = rescueLog(path(), saved());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_EQ(report->rescued.events, 19);
    EXPECT_EQ(report->loose, count - 19);
    EXPECT_EQ(cleanly(saved()).events, 19);
    QFile loose(report->looseFile);
    ASSERT_TRUE(loose.open(QIODevice::ReadOnly));
    const QByteArrayList lines = loose.readAll().trimmed().split('\n');
    ASSERT_EQ(lines.size(), count - 19);
    EXPECT_TRUE(lines.front().contains("\"hash_holds\":false"));
    EXPECT_TRUE(lines.back().contains("\"hash_holds\":true"));
}

TEST_F(Rescue, APhotoWhoseBytesAreLostIsKnownToBeLost)
{
    const QByteArray bytes(9000, 'p');
    const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
    {
        const auto log = open();
        const QUuid id = log->openRepairs()->front().repair;
        EventDraft photo = draft(id, PhotoTaken{PhotoMoment::AsFound, hash, u"image/jpeg"_s}, 9000);
        photo.blobs = {bytes};
        ASSERT_TRUE(log->append(photo));
    }
    tamper("DROP TRIGGER blob_no_update; UPDATE blob SET bytes = x'00' WHERE length(bytes) = 9000");
    const qint64 count = RepairLog::open(path(), LogMode::ReadOnly).value()->head()->count;
    const auto report = rescueLog(path(), saved());
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_EQ(report->blobsMissing, 1);
    EXPECT_EQ(cleanly(saved()).events, count);
    ASSERT_EQ(Referee(saved()).run("UPDATE meta SET value = '2' WHERE key = 'photos_lost'"), "");
    EXPECT_EQ(verifyLog(saved())->breaksAt, u"blob"_s) << "and no more than was known";
}

TEST_F(Rescue, WithoutItsOriginItIsTakenForItsFirstEventsBench)
{
    const QString origin = openAt(path())->origin();
    ASSERT_EQ(Referee(path()).run("DELETE FROM meta WHERE key = 'origin'"), "");
    const auto report = rescueLog(path(), saved());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->originGuessed);
    EXPECT_EQ(openAt(saved())->origin(), origin);
}

TEST_F(Rescue, WhateverPageIsDamagedWhatItSavesHolds)
{
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const qint64 pages = file.size() / 4096;
    const qint64 all = verifyLog(path())->events;
    int saved = 0;
    int some = 0;
    for (qint64 page = 0; page < pages; ++page) {
        ASSERT_TRUE(file.seek(page * 4096));
        const QByteArray kept = file.read(4096);
        ASSERT_TRUE(file.seek(page * 4096));
        file.write(QByteArray(4096, '\x55'));
        file.flush();
        const QString to = at(u"page%1.db"_s.arg(page));
        const auto report = rescueLog(path(), to);
        if (report) {
            EXPECT_EQ(cleanly(to).events, report->rescued.events);
            EXPECT_LE(report->rescued.events + report->loose, all) << page;
            ++saved;
            some += report->rescued.events > 0 ? 1 : 0;
        } else {
            EXPECT_FALSE(QFile::exists(to));
        }
        ASSERT_TRUE(file.seek(page * 4096));
        file.write(kept);
        file.flush();
    }
    EXPECT_GT(some, pages / 2) << "of " << pages << ", " << saved << " gave a log";
    EXPECT_LT(saved, pages) << "of the first page nothing is read";
}

TEST_F(Rescue, AHalfCopiedFileGivesWhatItHolds)
{
    const auto whole = cleanly(path());
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.resize(file.size() / 4096 * 2 / 3 * 4096));
    file.close();
    const auto opened = RepairLog::open(path(), LogMode::ReadWrite);
    EXPECT_EQ(troubleOf(opened), LogTrouble::CutShort);
    const auto report = rescueLog(path(), saved());
    if (report)
        EXPECT_LE(cleanly(saved()).events, whole.events);
    else
        EXPECT_EQ(troubleOf(report), LogTrouble::Damaged) << "SQLite reads nothing of a file that ends too early";
}

TEST_F(Rescue, NothingIsOverwritten)
{
    makeAt(saved(), u"wing"_s);
    const auto before = contentsOf(folder());
    EXPECT_EQ(troubleOf(rescueLog(path(), saved())), LogTrouble::CannotOpen);
    EXPECT_EQ(contentsOf(folder()), before);
}

} // namespace
