// SPDX-License-Identifier: GPL-3.0-or-later
// Events of lots beside those of repairs, in one chain.
#include "log_fixture.h"

#include "exchange/events.h"
#include "repair/lot_book.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const LotOfProduct lot{u"demo_mixed"_s, u"H7"_s};
const PatMixed pat{lot.sheetId, lot.hardenerLot, u"L1"_s,    grams(29),  grams(0.58),
                   celsius(20), minutes(5),      minutes(5), minutes(4), minutes(6)};

class LotEvents : public test::LogTest {
protected:
    static EventDraft ofLot(const Payload& payload, int second, const LotOfProduct& subject = lot)
    {
        return draft(lotSubject(subject), payload, second);
    }
};

TEST_F(LotEvents, StandInTheChainAndVerify)
{
    {
        const auto log = open();
        static_cast<void>(walk(*log, QUuid::createUuid(), Station::Prepare));
        ASSERT_TRUE(log->append(ofLot(pat, 900)));
        ASSERT_TRUE(log->append(ofLot(PatGelled{lot.sheetId, lot.hardenerLot}, 1180)));
        ASSERT_TRUE(log->append(ofLot(LotForgotten{lot.sheetId, lot.hardenerLot, u"told_wrong"_s}, 1200)));
        EXPECT_EQ(log->openRepairs()->size(), 1U) << "a lot is no repair";
        const auto events = log->events(lotSubject(lot));
        ASSERT_EQ(events->size(), 3U);
        EXPECT_EQ(events->front().payload, stored(pat));
    }
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    EXPECT_EQ(report->repairs, 1);
}

TEST_F(LotEvents, WhatDoesNotFollowIsRefusedAndNothingIsWritten)
{
    const auto log = open();
    const auto refused = [&](const EventDraft& draft) {
        const auto event = log->append(draft);
        return !event && event.error().trouble == LogTrouble::DoesNotFollow;
    };
    EXPECT_TRUE(refused(ofLot(PatGelled{lot.sheetId, lot.hardenerLot}, 10))) << "no pat waits";
    EXPECT_TRUE(refused(draft(QUuid::createUuid(), pat, 10))) << "of another subject";
    EXPECT_TRUE(refused(ofLot(LotForgotten{lot.sheetId, lot.hardenerLot, u"tired of it"_s}, 10)));
    EXPECT_TRUE(refused(draft({}, pat, 10))) << "of nothing";
    const QUuid repair = QUuid::createUuid();
    static_cast<void>(walk(*log, repair, Station::Prepare));
    const qint64 count = log->head()->count;
    EXPECT_TRUE(refused(draft(repair, pat, 5000))) << "a repair is no lot";
    EXPECT_EQ(log->head()->count, count);
}

/// What the book of lots is made from comes by day, and nothing else.
TEST_F(LotEvents, AreBroughtFromADayOn)
{
    const auto log = open();
    static_cast<void>(walk(*log, QUuid::createUuid(), Station::Done));
    ASSERT_TRUE(log->append(ofLot(pat, 90'000)));
    const QString day = localDay(test::moment(90'000));
    const auto late = log->eventsOfLots(day);
    ASSERT_TRUE(late);
    ASSERT_EQ(late->size(), 1U);
    EXPECT_EQ(late->front().payload, stored(pat));
    const auto all = log->eventsOfLots(u"1970-01-01"_s);
    int mixed = 0;
    for (const Event& each : *all) {
        EXPECT_FALSE(std::holds_alternative<Answered>(each.payload));
        mixed += std::holds_alternative<HardenerIn>(each.payload) ? 1 : 0;
    }
    EXPECT_GT(mixed, 0);
}

} // namespace
} // namespace strandbench
