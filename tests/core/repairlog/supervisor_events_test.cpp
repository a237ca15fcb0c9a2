// SPDX-License-Identifier: GPL-3.0-or-later
// A supervisor's acts and the bench's own events in the log: what is refused, and what holds without this program.
#include "log_fixture.h"
#include "referee.h"

#include "exchange/events.h"
#include "repairlog/schema.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using test::Referee;

class SupervisorEvents : public test::LogTest {
protected:
    /// Refused, and nothing was written.
    static bool refused(RepairLog& log, const EventDraft& draft)
    {
        const qint64 count = log.head()->count;
        const auto event = log.append(draft);
        return !event && event.error().trouble == LogTrouble::DoesNotFollow && log.head()->count == count;
    }
};

TEST_F(SupervisorEvents, ARepairThatIsSignedOffIsSealedForEverybody)
{
    const QUuid repair = QUuid::createUuid();
    {
        const auto log = open();
        static_cast<void>(walk(*log, repair, Station::Done));
        ASSERT_TRUE(log->append(draft(repair, SignedOff{}, 9000)));
        EXPECT_TRUE(refused(*log, draft(repair, Noted{{}, u"too late"_s}, 9001)));
        EXPECT_TRUE(refused(*log, draft(repair, SignedOff{}, 9002)));
        ASSERT_TRUE(log->append(draft(repair, Corrected{1, u"it was the left one"_s}, 9003)));
    }
    // Another program, which knows nothing of the folding: the trigger stands in the file itself.
    const auto insert = [&](const QByteArray& kind) {
        return Referee(path()).run(
            "INSERT INTO event SELECT origin, seq + 1, repair, '" + kind +
            "', 1, utc_ms, boottime_ms, boot_id, utc_offset_s, local_day, person, payload, hash, hash "
            "FROM event ORDER BY seq DESC LIMIT 1");
    };
    EXPECT_EQ(insert("noted"), "a repair that is signed off is sealed");
    EXPECT_EQ(insert("signed_off"), "a repair that is signed off is sealed");
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    EXPECT_EQ(insert("corrected"), "") << "a correction is let in";
}

TEST_F(SupervisorEvents, AReturnedRepairIsOnTheRailAgainAndItsReworkNamesIt)
{
    const auto log = open();
    const QUuid first = QUuid::createUuid();
    const QUuid rework = QUuid::createUuid();
    static_cast<void>(walk(*log, first, Station::Done));
    const auto taken = std::get<TakenIn>(log->events(first)->front().payload);
    ASSERT_TRUE(log->openRepairs()->empty());
    EXPECT_TRUE(refused(*log, draft(rework, TakenIn{taken.job, taken.panel, first}, 9000))) << "not returned";
    EXPECT_TRUE(refused(*log, draft(first, Returned{u"because"_s}, 9001)));
    EXPECT_TRUE(refused(*log, draft(first, Returned{u"other"_s, u" "_s}, 9002))) << "in words, and without any";
    ASSERT_TRUE(log->append(draft(first, Returned{u"pinholes"_s}, 9003)));
    ASSERT_EQ(log->openRepairs()->size(), 1U);
    EXPECT_EQ(log->openRepairs()->front().station, u"returned"_s);

    const auto again = log->append(draft(QUuid::createUuid(), TakenIn{taken.job, taken.panel}, 9004));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().trouble, LogTrouble::AlreadyOpen) << "taken in without its link";
    ASSERT_TRUE(log->append(draft(rework, TakenIn{taken.job, taken.panel, first}, 9005)));
    ASSERT_TRUE(log->append(draft(first, ReworkBegun{rework}, 9006)));
    ASSERT_EQ(log->openRepairs()->size(), 1U);
    EXPECT_EQ(log->openRepairs()->front().repair, rework);
    EXPECT_TRUE(refused(*log, draft(QUuid::createUuid(), TakenIn{u"77"_s, taken.panel, first}, 9007)))
        << "a second rework";
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(SupervisorEvents, ACorrectionNamesAnEventOfItsOwnRepair)
{
    const auto log = open();
    const QUuid first = QUuid::createUuid();
    const QUuid second = QUuid::createUuid();
    static_cast<void>(walk(*log, first, Station::Assess));
    const qint64 ofFirst = log->head()->count;
    static_cast<void>(walk(*log, second, Station::Done, u"other panel"_s));
    EXPECT_TRUE(refused(*log, draft(second, Corrected{ofFirst, u"not this one"_s}, 9000)));
    EXPECT_TRUE(log->append(draft(second, Corrected{ofFirst + 1, u"this one"_s}, 9001)));
}

TEST_F(SupervisorEvents, WhatIsNobodysToOverrideIsNotOverridden)
{
    const auto log = open();
    int nobodys = 0;
    for (const QString& code : knownStopCodes()) {
        const QUuid repair = QUuid::createUuid();
        ASSERT_TRUE(log->append(draft(repair, TakenIn{code, u"panel"_s}, 1)));
        ASSERT_TRUE(log->append(draft(repair, Answered{Question::Substrate, Substrate::Magnesium, {}}, 2)));
        const EventDraft over = draft(repair, Overridden{{code}, u"maker_allows"_s}, 3);
        if (stopOf({code, {}}).overridable == Override::Supervisor) {
            EXPECT_TRUE(log->append(over)) << code.toStdString();
            continue;
        }
        ++nobodys;
        EXPECT_TRUE(refused(*log, over)) << code.toStdString();
        EXPECT_TRUE(refused(*log, draft(repair, Overridden{{u"moisture_damp"_s, code}, u"maker_allows"_s}, 3)))
            << "hidden among others";
    }
    EXPECT_GT(nobodys, 5);
    // The issue's own three, by name.
    for (const QString& code : {u"zone_structural"_s, u"zone_restraint"_s, u"zone_fuel_or_pressure"_s})
        EXPECT_EQ(stopOf({code, {}}).overridable, Override::Nobody) << code.toStdString();
}

TEST_F(SupervisorEvents, AnOverrideHasAReasonThatIsKnown)
{
    const auto log = open();
    const QUuid repair = QUuid::createUuid();
    ASSERT_TRUE(log->append(draft(repair, TakenIn{u"1"_s, u"panel"_s}, 1)));
    ASSERT_TRUE(log->append(draft(repair, Answered{Question::Substrate, Substrate::Thermoplastic, {}}, 2)));
    EXPECT_TRUE(refused(*log, draft(repair, Overridden{{u"moisture_damp"_s}, u"because"_s}, 3)));
    EXPECT_TRUE(refused(*log, draft(repair, Overridden{{u"no_such_stop"_s}, u"maker_allows"_s}, 3)));
    for (const QString& reason : overrideReasons())
        EXPECT_TRUE(log->append(draft(repair, Overridden{{u"moisture_damp"_s}, reason}, 3))) << reason.toStdString();
}

TEST_F(SupervisorEvents, WhatHappenedToTheBenchIsFoundByItsDay)
{
    const Payload jump = ClockJumped{ClockJump::WallStepped, seconds(-3600.5)};
    {
        const auto log = open();
        static_cast<void>(walk(*log, QUuid::createUuid(), Station::Prepare));
        EXPECT_TRUE(refused(*log, draft(QUuid::createUuid(), jump, 900))) << "of another subject";
        ASSERT_TRUE(log->append(draft(benchSubject(), jump, 900)));
        ASSERT_TRUE(log->append(draft(benchSubject(), ActRefused{SupervisorAct::Forget, ActRefusal::NoPin}, 901)));
        const qint64 before = log->head()->count;
        const auto last = log->append(draft(benchSubject(), PinSet{true}, 902));
        ASSERT_TRUE(last);
        EXPECT_EQ(log->openRepairs()->size(), 1U) << "a bench is no repair";
        const QString day = localDay(last->at);
        ASSERT_EQ(log->ofBench(day)->size(), 3U);
        EXPECT_EQ(log->ofBench(day)->front().payload, jump);
        EXPECT_TRUE(log->ofBench(u"2001-01-01"_s)->empty());
        ASSERT_EQ(log->clockJumps(day)->size(), 1U);
        EXPECT_EQ(*log->lastWritten(), last->at);
        ASSERT_EQ(log->after(before)->size(), 1U);
        EXPECT_EQ(log->after(before)->front().seq, last->seq);
    }
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
}

TEST_F(SupervisorEvents, ALogOfTheFirstVersionVerifiesAsItIsAndIsSealableOnceOpened)
{
    {
        const auto sql = SqlConnection::open(path(), Access::ReadWrite);
        ASSERT_TRUE(sql);
        ASSERT_TRUE(migrate(**sql, {migrations().front()}));
    }
    auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    EXPECT_EQ(report->schemaVersion, 1);
    static_cast<void>(open());
    report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    EXPECT_EQ(report->schemaVersion, currentVersion());
    EXPECT_EQ(Referee(path()).value("SELECT count(*) FROM sqlite_schema WHERE name = 'event_sealed'"), "1");
}

} // namespace
} // namespace strandbench
