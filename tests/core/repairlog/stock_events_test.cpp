// SPDX-License-Identifier: GPL-3.0-or-later
// Stock through the log: random histories with kills between. What the ledger says is what SQL sums from the stored
// bytes, and it never passes zero unseen.
#include "log_fixture.h"
#include "referee.h"

#include "repair/lot_book.h"
#include "repair/stock_book.h"

#include <csignal>
#include <iostream>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const std::vector<StockLot> lots{
    {u"demo_mixed_strand"_s, u"L1"_s}, {u"demo_finish_smooth"_s, u"L2"_s}, {hardenerProduct, u"H1"_s}};

class StockEvents : public test::LogTest {
protected:
    static EventDraft ofStock(const Payload& payload, int second)
    {
        return draft(stockSubject(*stockLotOf(payload)), payload, second);
    }
    [[nodiscard]] StockBook book(LogMode mode = LogMode::ReadOnly) const
    {
        StockBook made;
        const auto log = open(mode);
        const auto events = log->eventsOfStock(u"1970-01-01"_s);
        EXPECT_TRUE(events);
        for (const Event& each : *events)
            made.add(each);
        return made;
    }
};

/// What may be told of a lot at random.
Payload actAtRandom(std::mt19937& random)
{
    const StockLot& lot = lots[random() % lots.size()];
    const Mass mass = grams(double(random() % 400'000 + 1) / 1000);
    switch (random() % 8) {
    case 0:
        return StockReceived{lot, int(random() % 3) + 1, mass, {}};
    case 1:
        return StockOpened{lot};
    case 2:
        return StockCounted{lot, mass};
    case 3:
        return StockAdjusted{lot, mass, random() % 2 == 0, StockChange::ToAnotherBench};
    case 4:
        return StockEnded{lot, StockEnd::HardHardener, grams(double(random() % 50))};
    default:
        break;
    }
    PatMixed pat;
    pat.sheetId = lots.front().product;
    pat.hardenerLot = lots.back().lot;
    pat.lot = lots.front().lot;
    pat.filler = grams(double(random() % 200 + 1));
    pat.hardener = pat.filler * 0.02;
    return pat;
}

EventDraft draftOf(const Payload& payload, int second)
{
    EventDraft made;
    made.repair = stockLotOf(payload) ? stockSubject(*stockLotOf(payload)) : lotSubject(*lotOf(payload));
    made.payload = payload;
    made.at = {1'768'000'000'000 + second * 1000LL, second * 1000LL, u"b1"_s, 0};
    return made;
}

/// One lot's amount by SQL alone, over the stored JSON: counts set it, all else adds. It knows nothing of our ledger.
qint64 bySql(const test::Referee& referee, const StockLot& lot)
{
    const auto told = [&](const char* sql) {
        QString text = QString::fromLatin1(sql);
        text.replace(u"$product"_s, lot.product).replace(u"$lot"_s, lot.lot);
        return referee.value(text.toUtf8()).toLongLong();
    };
    return told(R"(
        WITH act AS (SELECT seq, kind, CAST(payload AS TEXT) AS p FROM event),
        known AS (SELECT min(seq) AS first FROM act WHERE kind GLOB 'stock_*'
                  AND p ->> '$.of.product' = '$product' AND p ->> '$.of.lot' = '$lot'),
        move AS (
            SELECT seq, CASE kind
                WHEN 'stock_received' THEN (p ->> '$.packages') * (p ->> '$.each_ug')
                WHEN 'stock_adjusted' THEN (CASE WHEN p ->> '$.less' THEN -1 ELSE 1 END) * (p ->> '$.by_ug')
                WHEN 'stock_ended' THEN -(p ->> '$.thrown_away_ug') ELSE 0 END AS by
            FROM act WHERE kind GLOB 'stock_*' AND p ->> '$.of.product' = '$product' AND p ->> '$.of.lot' = '$lot'
            UNION ALL
            SELECT seq, -1000 * (p ->> '$.filler_mg') FROM act WHERE kind = 'pat_mixed'
                AND p ->> '$.sheet_id' = '$product' AND p ->> '$.lot' = '$lot'
            UNION ALL
            SELECT seq, -(p ->> '$.hardener_ug') FROM act WHERE kind = 'pat_mixed'
                AND 'hardener' = '$product' AND p ->> '$.hardener_lot' = '$lot'),
        counted AS (SELECT coalesce(max(seq), 0) AS last FROM act WHERE kind = 'stock_counted'
                    AND p ->> '$.of.product' = '$product' AND p ->> '$.of.lot' = '$lot')
        SELECT coalesce((SELECT p ->> '$.there_ug' FROM act, counted WHERE seq = last), 0) +
               coalesce((SELECT sum(by) FROM move, counted, known WHERE seq > last AND seq >= first), 0))");
}

TEST_F(StockEvents, StandInTheChainAndVerify)
{
    {
        const auto log = open();
        ASSERT_TRUE(log->append(ofStock(StockReceived{lots[0], 1, grams(1000), QDate(2027, 3, 1)}, 10)));
        ASSERT_TRUE(log->append(ofStock(StockOpened{lots[0]}, 20)));
        EXPECT_EQ(log->openRepairs()->size(), 0U) << "a tub is no repair";
    }
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    EXPECT_EQ(report->repairs, 0);
}

TEST_F(StockEvents, WhatDoesNotFollowIsRefusedAndNothingIsWritten)
{
    const auto log = open();
    const auto refused = [&](const EventDraft& draft) {
        const auto event = log->append(draft);
        return !event && event.error().trouble == LogTrouble::DoesNotFollow;
    };
    EXPECT_TRUE(refused(ofStock(StockOpened{lots[0]}, 10))) << "it never came";
    EXPECT_TRUE(refused(ofStock(StockReceived{lots[0], 0, grams(1), {}}, 10)));
    EXPECT_TRUE(refused(draft(QUuid::createUuid(), StockReceived{lots[0], 1, grams(1), {}}, 10)));
    EXPECT_EQ(log->head()->count, 0);
}

TEST_F(StockEvents, AnotherBenchsShelfIsItsOwn)
{
    {
        const auto log = open();
        ASSERT_TRUE(log->append(ofStock(StockReceived{lots[0], 1, grams(1000), {}}, 10)));
    }
    ASSERT_EQ(test::Referee(path()).run("UPDATE meta SET value = '00000000-0000-4000-8000-000000000001' "
                                        "WHERE key = 'origin'"),
              "");
    EXPECT_TRUE(book().ledger().all().empty());
}

TEST_F(StockEvents, RandomHistoriesWithKillsBetweenAddUp)
{
    int below = 0;
    int written = 0;
    for (unsigned round = 0; round < 12; ++round) {
        ASSERT_EQ(test::inChild([&] {
                      std::mt19937 random(20261126 + round);
                      const auto log = open();
                      const int first = int(log->head()->count);
                      const int acts = int(random() % 25) + 1;
                      for (int i = 0; i < acts; ++i)
                          (void)log->append(draftOf(actAtRandom(random), 30 * (first + i))); // some do not follow
                      std::raise(SIGKILL);
                      return 0;
                  }),
                  256 + SIGKILL);
        const StockBook kept = book(); // as it lies there after the kill
        const test::Referee referee(path());
        for (const StockLot& each : lots) {
            const StockState* state = kept.ledger().of(each);
            if (!state || state->ended)
                continue; // of one that has ended, older batches need not be read
            ASSERT_EQ(state->micrograms, bySql(referee, each)) << "round " << round << ' ' << qPrintable(each.lot);
            const ProductSheet sheet;
            const auto notes = notesOf(state, {each, grams(0), nullptr, true}, {});
            const bool told = std::ranges::any_of(
                notes, [](const StockNote& note) { return note.reason.code == u"stock_overdrawn"_s; });
            ASSERT_EQ(told, state->micrograms < 0) << "it passed zero unseen, or is said to have";
            below += state->micrograms < 0 ? 1 : 0;
            written += int(state->movements.size());
        }
    }
    EXPECT_TRUE(verifyLog(path())->clean);
    EXPECT_GT(written, 300) << "enough was told";
    EXPECT_GT(below, 0) << "some history went below nothing";
    std::cout << written << " movements seen over 12 kills, " << below << " times below nothing\n";
}

} // namespace
} // namespace strandbench
