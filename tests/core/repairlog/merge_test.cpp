// SPDX-License-Identifier: GPL-3.0-or-later
// Logs of several benches brought together: all of both, once, and what they disagree on told.
#include "repairlog/merge.h"

#include "two_logs.h"

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Merge : public TwoLogs {
protected:
    Merge()
    {
        makeAt(ours, u"door"_s);
        makeAt(theirs, u"wing"_s, Station::Mix);
    }
    static QByteArray rowsOf(const QString& path, const QByteArray& origin)
    {
        return Referee(path).value("SELECT group_concat(hex(hash) || hex(payload) || person || repair, ',') FROM "
                                   "(SELECT * FROM event WHERE origin = '" +
                                   origin + "' ORDER BY seq)");
    }
    const QString ours = at(u"ours.db"_s);
    const QString theirs = at(u"theirs.db"_s);
};

TEST_F(Merge, BringsInEveryEventOfTheOtherBenchAsItIsStored)
{
    const ChainHead our = headAt(ours);
    const ChainHead their = headAt(theirs);
    const auto report = mergeLog(ours, theirs, MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_FALSE(report->conflicts());
    EXPECT_EQ(report->added, their.count);
    EXPECT_EQ(report->repairs, 1);
    ASSERT_EQ(report->chains.size(), 1U);
    EXPECT_EQ(report->chains.front(), (MergedChain{their.origin, false, 0, their.count, their.count, 0, their.hash}));
    const VerifyReport after = cleanly(ours);
    EXPECT_EQ(after.events, our.count + their.count);
    EXPECT_EQ(after.repairs, 2);
    EXPECT_EQ(rowsOf(ours, their.origin.toLatin1()), rowsOf(theirs, their.origin.toLatin1()));
    EXPECT_EQ(headAt(ours), our) << "this bench's own chain is as it was";
}

TEST_F(Merge, ASecondTimeAddsNothing)
{
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write));
    const QByteArray before = Referee(ours).value("SELECT count(*) || ' ' || sum(last_seq) FROM event, summary");
    const auto again = mergeLog(ours, theirs, MergeMode::Write);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->added, 0);
    EXPECT_EQ(again->repairs, 0);
    EXPECT_EQ(Referee(ours).value("SELECT count(*) || ' ' || sum(last_seq) FROM event, summary"), before);
}

TEST_F(Merge, LaterWorkFollowsOnWhatCameBefore)
{
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write));
    {
        const auto log = openAt(theirs);
        const Repair repair = *foldRepair(*log->events(log->openRepairs()->front().repair));
        ASSERT_TRUE(log->append(draft(repair.id, actAt(repair), 5000)));
    }
    const auto report = mergeLog(ours, theirs, MergeMode::Write);
    ASSERT_TRUE(report);
    EXPECT_EQ(report->added, 1);
    EXPECT_EQ(cleanly(ours).heads.size(), 2U);
}

TEST_F(Merge, EachIntoTheOtherAndAThirdThroughOneEndAlike)
{
    const QString third = at(u"third.db"_s);
    makeAt(third, u"roof"_s);
    ASSERT_TRUE(mergeLog(theirs, third, MergeMode::Write));
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write)); // brings the third's along
    ASSERT_TRUE(mergeLog(third, ours, MergeMode::Write));
    ASSERT_TRUE(mergeLog(theirs, ours, MergeMode::Write));
    const auto heads = cleanly(ours).heads;
    EXPECT_EQ(heads.size(), 3U);
    EXPECT_EQ(cleanly(theirs).heads, heads);
    EXPECT_EQ(cleanly(third).heads, heads);
}

TEST_F(Merge, IsItselfAnEntryOfTheLog)
{
    const ChainHead their = headAt(theirs);
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write, MergedBy{u"R. Quist"_s, moment(9000)}));
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write, MergedBy{u"R. Quist"_s, moment(9900)}));
    const auto told = *openAt(ours)->events(benchSubject());
    ASSERT_EQ(told.size(), 1U) << "once, and not where nothing was added";
    EXPECT_EQ(std::get<LogMerged>(told.front().payload),
              (LogMerged{their.origin, their.count, their.count, their.hash}));
    EXPECT_EQ(told.front().person, u"R. Quist"_s);
    const QString fresh = at(u"fresh.db"_s);
    static_cast<void>(openAt(fresh));
    ASSERT_TRUE(mergeLog(fresh, theirs, MergeMode::Write, MergedBy{u"R. Quist"_s, moment(9000)}));
    static_cast<void>(cleanly(ours));
    static_cast<void>(cleanly(fresh));
}

TEST_F(Merge, ADryRunSaysTheSameAndChangesNothing)
{
    const auto before = contentsOf(folder());
    const auto dry = mergeLog(ours, theirs, MergeMode::DryRun);
    ASSERT_TRUE(dry) << qPrintable(dry.error().detail);
    EXPECT_EQ(contentsOf(folder()), before);
    const auto report = mergeLog(ours, theirs, MergeMode::Write);
    EXPECT_EQ(dry->chains, report->chains);
    EXPECT_EQ(dry->added, report->added);
    EXPECT_EQ(dry->repairs, report->repairs);
}

TEST_F(Merge, ChainsThatPartAreToldAndLeftAsTheyAre)
{
    // A folder was copied, and both copies went on.
    const QString twin = at(u"twin.db"_s);
    copyFile(ours, twin);
    const qint64 common = headAt(ours).count;
    makeAt(ours, u"left"_s, Station::Assess);
    makeAt(twin, u"right"_s, Station::Decide);
    ASSERT_TRUE(mergeLog(twin, theirs, MergeMode::Write)) << "beside it what does not part";
    const ChainHead our = headAt(ours);
    const auto report = mergeLog(ours, twin, MergeMode::Write);
    ASSERT_TRUE(report) << qPrintable(report.error().detail);
    EXPECT_TRUE(report->conflicts());
    for (const MergedChain& each : report->chains) {
        EXPECT_EQ(each.partsAt, each.own ? common + 1 : 0);
        EXPECT_EQ(each.added, each.own ? 0 : headAt(theirs).count);
    }
    EXPECT_EQ(headAt(ours), our);
    EXPECT_EQ(cleanly(ours).heads.size(), 2U);
}

TEST_F(Merge, ALogThatDoesNotHoldIsNotBroughtIn)
{
    ASSERT_EQ(Referee(theirs).run("DROP TRIGGER event_no_update; UPDATE event SET person = 'x' WHERE seq = 3"), "");
    const auto before = contentsOf(folder());
    EXPECT_EQ(troubleOf(mergeLog(ours, theirs, MergeMode::Write)), LogTrouble::Damaged);
    EXPECT_EQ(contentsOf(folder()), before);
}

TEST_F(Merge, APanelOpenAtBothBenchesIsTold)
{
    makeAt(ours, u"Wing "_s, Station::Assess); // the same by job and name, as they are compared
    const auto report = mergeLog(ours, theirs, MergeMode::Write);
    ASSERT_TRUE(report);
    ASSERT_EQ(report->openTwice.size(), 1U);
    EXPECT_EQ(report->openTwice.front().job, u"4421"_s);
    static_cast<void>(cleanly(ours));
}

TEST_F(Merge, AnotherBenchsRepairIsSeenByItsDayAndGoesOnThereAlone)
{
    const QUuid foreign = openAt(theirs)->openRepairs()->front().repair;
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write));
    const auto log = openAt(ours);
    EXPECT_TRUE(log->openRepairs()->empty());
    const auto events = log->events(foreign);
    ASSERT_TRUE(events);
    EXPECT_EQ(log->repairsOfDay(localDay(events->front().at))->size(), 2U);
    const Repair repair = *foldRepair(*events);
    const auto refused = log->append(draft(foreign, actAt(repair), 5000));
    EXPECT_EQ(troubleOf(refused), LogTrouble::DoesNotFollow);
}

TEST_F(Merge, BlobsComeAlongOnce)
{
    {
        const auto log = openAt(theirs);
        EventDraft taken = draft(QUuid::createUuid(), TakenIn{u"9"_s, u"hood"_s}, 9000);
        taken.blobs = {"a sheet", "a photo"};
        ASSERT_TRUE(log->append(taken));
    }
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write));
    ASSERT_TRUE(mergeLog(ours, theirs, MergeMode::Write));
    for (const char* table : {"blob", "event_blob"})
        EXPECT_EQ(Referee(ours).value("SELECT count(*) FROM " + QByteArray(table)),
                  Referee(theirs).value("SELECT count(*) FROM " + QByteArray(table)));
}

TEST_F(Merge, KilledAnywhereItIsThereWholeOrNotAtAll)
{
    const qint64 our = headAt(ours).count;
    const qint64 both = our + headAt(theirs).count;
    int whole = 0;
    for (int wait = 0; wait < 30; ++wait) {
        const QString copy = at(u"copy.db"_s);
        copyFile(ours, copy);
        Child child([&](Shared& shared) {
            ++shared.acknowledged;
            return mergeLog(copy, theirs, MergeMode::Write) ? 0 : 1;
        });
        ASSERT_TRUE(child.waitFor(1));
        ::usleep(useconds_t(wait * 2000));
        child.kill();
        const qint64 events = cleanly(copy).events;
        EXPECT_TRUE(events == our || events == both) << events;
        whole += events == both ? 1 : 0;
        for (const char* ending : {"", "-wal", "-shm"})
            QFile::remove(copy + QLatin1StringView(ending));
    }
    EXPECT_GT(whole, 0) << "some were not cut off";
}

} // namespace
