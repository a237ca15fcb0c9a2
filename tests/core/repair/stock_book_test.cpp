// SPDX-License-Identifier: GPL-3.0-or-later
// Stock from events: what batches and pats took, and which acts follow.
#include "repair/stock_book.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const StockLot tub{u"demo_mixed_strand"_s, u"L1"_s};
const StockLot tube{hardenerProduct, u"H1"_s};

Event event(const QUuid& subject, const Payload& payload, qint64 second = 0)
{
    Event made;
    made.repair = subject;
    made.payload = payload;
    made.at.utcMs = second * 1000;
    return made;
}
Event ofStock(const Payload& payload, qint64 second = 0)
{
    return event(stockSubject(*stockLotOf(payload)), payload, second);
}
HardenerIn batchOf(const QString& lot, const QString& hardenerLot)
{
    HardenerIn mixed;
    mixed.filler = grams(50);
    mixed.hardener = grams(1);
    mixed.sheetId = tub.product;
    mixed.lot = lot;
    mixed.hardenerLot = hardenerLot;
    return mixed;
}

TEST(StockBook, ABatchTakesOffBothLotsAndNamesItsJob)
{
    const QUuid repair = QUuid::createUuid();
    StockBook book;
    book.add(ofStock(StockReceived{tub, 1, grams(1000), {}}));
    book.add(ofStock(StockReceived{tube, 2, grams(40), {}}));
    book.add(event(repair, TakenIn{u"4421"_s, u"door"_s}));
    book.add(event(repair, batchOf(tub.lot, tube.lot), 60));
    EXPECT_EQ(book.ledger().of(tub)->micrograms, 950'000'000);
    EXPECT_EQ(book.ledger().of(tube)->micrograms, 79'000'000);
    EXPECT_EQ(book.ledger().of(tub)->movements.back().note, u"4421"_s);
}

TEST(StockBook, ALotThatNobodyToldTakesNothing)
{
    StockBook book;
    book.add(ofStock(StockReceived{tub, 1, grams(1000), {}}));
    book.add(event(QUuid::createUuid(), batchOf({}, {})));
    EXPECT_EQ(book.ledger().of(tub)->micrograms, 1'000'000'000);
}

TEST(StockBook, ATestPatTakesOffAndTriesBothLots)
{
    StockBook book;
    book.add(ofStock(StockReceived{tub, 1, grams(1000), {}}));
    const QUuid pat = QUuid::createUuid();
    PatMixed mixed;
    mixed.sheetId = tub.product;
    mixed.lot = tub.lot;
    mixed.hardenerLot = tube.lot;
    mixed.filler = grams(29);
    mixed.hardener = grams(0.58);
    book.add(event(pat, mixed, 10));
    EXPECT_FALSE(book.tried(tub)) << "it has not gelled yet";
    book.add(event(pat, PatGelled{tub.product, tube.lot}, 300));
    EXPECT_TRUE(book.tried(tub));
    EXPECT_TRUE(book.tried(tube));
    EXPECT_EQ(book.ledger().of(tub)->movements.back().move, StockMove::TestPat);
    EXPECT_EQ(book.ledger().of(tub)->micrograms, 971'000'000);
}

TEST(StockBook, ABatchThatGelledTriesItsLots)
{
    const QUuid repair = QUuid::createUuid();
    StockBook book;
    book.add(event(repair, batchOf(tub.lot, tube.lot)));
    EXPECT_FALSE(book.tried(tube));
    book.add(event(QUuid::createUuid(), Gelled{}));
    EXPECT_FALSE(book.tried(tube)) << "another repair";
    book.add(event(repair, Gelled{}));
    EXPECT_TRUE(book.tried(tube));
}

TEST(StockBook, WhatCannotFollowIsNamed)
{
    const auto follows = [](const Payload& payload, const std::vector<Event>& before = {}) {
        return followsOfStock(before, ofStock(payload));
    };
    const Event came = ofStock(StockReceived{tub, 1, grams(1000), {}});
    EXPECT_FALSE(follows(came.payload));
    EXPECT_FALSE(follows(StockCounted{tub, grams(0)})) << "a count may be the first that is told";
    EXPECT_EQ(follows(StockOpened{tub})->kind, FaultKind::NotFound);
    EXPECT_FALSE(follows(StockOpened{tub}, {came}));
    EXPECT_EQ(follows(StockReceived{{tub.product, u" "_s}, 1, grams(1), {}})->field, u"lot"_s);
    EXPECT_EQ(follows(StockReceived{tub, 0, grams(1), {}})->field, u"packages"_s);
    EXPECT_EQ(follows(StockReceived{tub, 1, grams(0), {}})->field, u"each_ug"_s);
    EXPECT_EQ(follows(StockReceived{tub, 1, grams(100'001), {}})->kind, FaultKind::OutOfRange);
    EXPECT_EQ(follows(StockReceived{tub, 1, grams(1), QDate(1026, 1, 1)})->field, u"best_before.year"_s);
    EXPECT_EQ(follows(StockAdjusted{tub, grams(0), true, StockChange::Spilled}, {came})->field, u"by_ug"_s);
    EXPECT_EQ(follows(StockProbed{tub, celsius(90)}, {came})->field, u"middle_mk"_s);
    EXPECT_TRUE(followsOfStock({}, event(QUuid::createUuid(), came.payload))) << "of another subject";
    EXPECT_TRUE(followsOfStock({}, event(stockSubject(tub), Turned{})));
}

TEST(StockBook, BatchesAreNeededFromTheFirstLotThatHasNotEnded)
{
    constexpr qint64 day = 86'400;
    const StockLot later{tub.product, u"L2"_s};
    std::vector<Event> acts{ofStock(StockReceived{tub, 1, grams(1000), {}}, 0),
                            ofStock(StockReceived{later, 1, grams(1000), {}}, 10 * day),
                            ofStock(StockCounted{later, grams(900)}, 12 * day)};
    EXPECT_EQ(stockFromDay(acts), u"1970-01-01"_s);
    acts.push_back(ofStock(StockEnded{tub, StockEnd::UsedUp, grams(0)}, 13 * day));
    EXPECT_EQ(stockFromDay(acts), u"1970-01-11"_s);
    acts.push_back(ofStock(StockEnded{later, StockEnd::UsedUp, grams(0)}, 14 * day));
    EXPECT_EQ(stockFromDay(acts), QString());
}

} // namespace
} // namespace strandbench
