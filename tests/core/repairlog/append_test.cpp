// SPDX-License-Identifier: GPL-3.0-or-later
// Writing and reading back.
#include "log_fixture.h"

#include "exchange/events.h"
#include "repairlog/chain.h"

#include <QCryptographicHash>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

using Append = LogTest;

TEST_F(Append, AWholeRepairComesBackAfterReopening)
{
    const QUuid id = QUuid::createUuid();
    Repair written;
    {
        const auto log = open();
        written = walk(*log, id, Station::Done);
    }
    const auto log = open();
    const auto events = log->events(id);
    ASSERT_TRUE(events);
    const auto folded = foldRepair(*events);
    ASSERT_TRUE(folded);
    EXPECT_EQ(*folded, written);
    EXPECT_FALSE(folded->open());
    EXPECT_EQ(log->head()->count, qint64(events->size()));
    EXPECT_EQ(log->head()->hash, events->back().hash);
    for (std::size_t i = 0; i < events->size(); ++i)
        EXPECT_EQ((*events)[i].seq, qint64(i) + 1);
}

TEST_F(Append, AnEventComesBackAsItWillBeRead)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    EventDraft taken = draft(id, TakenIn{u"Ä 17/b"_s, u"door, “left”"_s}, 12);
    taken.person = u"Renée"_s;
    const auto event = log->append(taken);
    ASSERT_TRUE(event);
    EXPECT_EQ(event->repair, id);
    EXPECT_EQ(event->person, u"Renée"_s);
    EXPECT_EQ(event->payload, stored(taken.payload));
    EXPECT_EQ(event->at, taken.at);
    EXPECT_EQ(event->origin, log->head()->origin);
    EXPECT_EQ(log->events(id)->front(), *event);
}

TEST_F(Append, AnEmptyChainHasZerosForItsHead)
{
    const auto log = open();
    EXPECT_EQ(*log->head(), (ChainHead{log->head()->origin, 0, emptyChainHash()}));
    EXPECT_FALSE(QUuid::fromString(log->head()->origin).isNull());
    EXPECT_TRUE(log->openRepairs()->empty());
    EXPECT_TRUE(log->events(QUuid::createUuid())->empty());
}

TEST_F(Append, OriginIsMadeOnce)
{
    const QString origin = open()->head()->origin;
    EXPECT_EQ(open()->head()->origin, origin);
}

TEST_F(Append, WhatDoesNotFollowLeavesNothing)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const Repair repair = walk(*log, id, Station::Mix);
    const ChainHead head = *log->head();
    const auto summaries = *log->openRepairs();
    EventDraft wrong = draft(id, Sands{{false, 0}});
    wrong.blobs = {"a blob that must not stay"};
    EXPECT_EQ(troubleOf(log->append(wrong)), LogTrouble::DoesNotFollow);
    EXPECT_EQ(troubleOf(log->append(draft(QUuid::createUuid(), Turned{}))), LogTrouble::DoesNotFollow);
    EXPECT_EQ(troubleOf(log->append(draft(QUuid(), TakenIn{u"1"_s, u"p"_s}))), LogTrouble::DoesNotFollow);
    EXPECT_EQ(troubleOf(log->append(draft(QUuid::createUuid(), TakenIn{u" "_s, u"p"_s}))), LogTrouble::DoesNotFollow);
    EXPECT_EQ(*log->head(), head);
    EXPECT_EQ(*log->openRepairs(), summaries);
    const QByteArray hash = QCryptographicHash::hash(wrong.blobs.front(), QCryptographicHash::Sha256);
    EXPECT_FALSE(log->blob(hash));
    EXPECT_TRUE(log->append(draft(id, actAt(repair)))) << "what is due still goes on";
}

TEST_F(Append, WhatCannotBeStoredIsAFailure)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const Repair repair = walk(*log, id, Station::Mix);
    HardenerIn mixed = std::get<HardenerIn>(actAt(repair));
    mixed.filler = grams(-5);
    EXPECT_EQ(troubleOf(log->append(draft(id, mixed))), LogTrouble::DoesNotFollow);
    mixed.filler = grams(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(troubleOf(log->append(draft(id, mixed))), LogTrouble::DoesNotFollow);
    EXPECT_EQ(troubleOf(log->append(draft(id, Answered{Question::Zone, Moisture::Dry, {}}))),
              LogTrouble::DoesNotFollow);
    EXPECT_EQ(log->head()->count, repair.lastSeq);
}

TEST_F(Append, RepairsInterleaveInOneChain)
{
    const auto log = open();
    const QUuid first = QUuid::createUuid();
    const QUuid second = QUuid::createUuid();
    Repair one = walk(*log, first, Station::Mix, u"door"_s);
    Repair two = walk(*log, second, Station::Mix, u"roof"_s);
    for (int i = 0; i < 8; ++i)
        for (Repair* repair : {&one, &two}) {
            const auto event = log->append(draft(repair->id, actAt(*repair), 2000 + i));
            ASSERT_TRUE(event) << qPrintable(event.error().detail);
            ASSERT_FALSE(apply(*repair, *event));
        }
    EXPECT_EQ(*foldRepair(*log->events(first)), one);
    EXPECT_EQ(*foldRepair(*log->events(second)), two);
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Append, TwoWritersSeeEachOther)
{
    const auto here = open();
    const auto there = open();
    const QUuid id = QUuid::createUuid();
    Repair repair = walk(*here, id, Station::Decide);
    for (int i = 0; i < 12; ++i) {
        const auto event = (i % 2 == 0 ? there : here)->append(draft(id, actAt(repair), 3000 + i));
        ASSERT_TRUE(event) << i << qPrintable(event.error().detail);
        ASSERT_FALSE(apply(repair, *event));
    }
    EXPECT_EQ(*here->head(), *there->head());
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Append, AnOpenPanelIsNotTakenInTwice)
{
    const auto log = open();
    const QUuid first = QUuid::createUuid();
    Repair repair = walk(*log, first, Station::Assess);
    const auto again = log->append(draft(QUuid::createUuid(), TakenIn{u" 4421"_s, u"SKIRT  panel, right rear "_s}));
    EXPECT_EQ(troubleOf(again), LogTrouble::AlreadyOpen);
    EXPECT_EQ(again.error().detail, first.toString(QUuid::WithoutBraces));
    EXPECT_TRUE(log->append(draft(QUuid::createUuid(), TakenIn{u"4421"_s, u"roof"_s}))) << "another panel";
    EXPECT_TRUE(log->append(draft(QUuid::createUuid(), TakenIn{u"4422"_s, u"skirt panel, right rear"_s})))
        << "another job";
    while (repair.open())
        ASSERT_FALSE(apply(repair, *log->append(draft(first, actAt(repair)))));
    EXPECT_TRUE(log->append(draft(QUuid::createUuid(), TakenIn{u"4421"_s, u"skirt panel, right rear"_s})))
        << "rework is a new repair";
}

TEST_F(Append, SummariesFollowTheEvents)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const Repair repair = walk(*log, id, Station::Spread);
    const auto open = *log->openRepairs();
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open.front(),
              (RepairSummary{id, u"4421"_s, u"skirt panel, right rear"_s, u"smc"_s, u"hole"_s, u"spread"_s,
                             u"R. Quist"_s, true, repair.takenInAt.utcMs, repair.lastAt.utcMs, repair.lastSeq}));
    EventDraft other = draft(id, actAt(repair), 5000);
    other.person = u"A. Baum"_s;
    ASSERT_TRUE(log->append(other));
    EXPECT_EQ(log->openRepairs()->front().person, u"A. Baum"_s) << "the newest event's";
    EXPECT_EQ(log->openRepairs()->front().lastUtcMs, other.at.utcMs);
}

TEST_F(Append, HandedOverIsNotOpenAnyMore)
{
    const auto log = open();
    walk(*log, QUuid::createUuid(), Station::Done);
    EXPECT_TRUE(log->openRepairs()->empty());
    EXPECT_EQ(log->repairsOfDay(localDay(moment(0)))->size(), 1U);
}

TEST_F(Append, DaysAreFixedByTheOffsetOfTheMoment)
{
    const auto log = open();
    const QUuid id = QUuid::createUuid();
    const auto at = [](qint64 utcMs, int offset) { return Instant{utcMs, 1, u"boot"_s, offset}; };
    constexpr qint64 eveningUtc = 1'767'223'800'000; // 2025-12-31 23:30 UTC
    EventDraft taken = draft(id, TakenIn{u"1"_s, u"p"_s});
    taken.at = at(eveningUtc, 0);
    ASSERT_TRUE(log->append(taken));
    EventDraft answer = draft(id, Answered{Question::Substrate, Substrate::Smc, {}});
    answer.at = at(eveningUtc + 1000, 3600); // an hour east it is the next year
    ASSERT_TRUE(log->append(answer));
    EXPECT_EQ(log->repairsOfDay(u"2025-12-31"_s)->size(), 1U);
    EXPECT_EQ(log->repairsOfDay(u"2026-01-01"_s)->size(), 1U) << "a repair spans days";
    EXPECT_TRUE(log->repairsOfDay(u"2026-01-02"_s)->empty());
}

TEST_F(Append, BlobsAreStoredOnceByTheirContent)
{
    const QByteArray sheet = R"({"id":"demo_mixed"})";
    const QByteArray hash = QCryptographicHash::hash(sheet, QCryptographicHash::Sha256);
    {
        const auto log = open();
        for (const char16_t* panel : {u"door", u"roof"}) {
            EventDraft taken = draft(QUuid::createUuid(), TakenIn{u"1"_s, QString::fromUtf16(panel)});
            taken.blobs = {sheet, sheet, QByteArray()};
            ASSERT_TRUE(log->append(taken));
        }
    }
    const auto log = open(LogMode::ReadOnly);
    EXPECT_EQ(*log->blob(hash), sheet);
    const auto empty = log->blob(QCryptographicHash::hash({}, QCryptographicHash::Sha256));
    ASSERT_TRUE(empty);
    EXPECT_TRUE(empty->isEmpty());
    EXPECT_FALSE(log->blob("unknown"));
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Append, TextThatUtf8CannotHoldStillVerifies)
{
    const auto log = open();
    EventDraft taken = draft(QUuid::createUuid(), TakenIn{u"1"_s, u"p"_s});
    taken.person = u"half "_s + QChar(0xd83d) + u" pair"_s;
    taken.at.bootId = QString();
    ASSERT_TRUE(log->append(taken));
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Append, AReaderBesideTheWriterSeesWhatIsWritten)
{
    const auto writer = open();
    const QUuid id = QUuid::createUuid();
    Repair repair = walk(*writer, id, Station::Decide);
    const auto reader = open(LogMode::ReadOnly);
    EXPECT_EQ(reader->events(id)->size(), writer->events(id)->size());
    ASSERT_TRUE(writer->append(draft(id, actAt(repair), 4000)));
    EXPECT_EQ(*reader->head(), *writer->head());
    EXPECT_EQ(troubleOf(reader->append(draft(id, Turned{}))), LogTrouble::ReadOnly);
}

TEST_F(Append, TheSameTwiceInOneMomentIsTwice)
{
    const auto log = open();
    const EventDraft refused = draft(benchSubject(), ActRefused{SupervisorAct::SignOff, ActRefusal::WrongPin}, 900);
    ASSERT_EQ(log->append(refused)->seq, 1);
    EXPECT_EQ(log->append(refused)->seq, 2) << "nothing failed between the two";
}

} // namespace
