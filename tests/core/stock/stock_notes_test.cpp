// SPDX-License-Identifier: GPL-3.0-or-later
// What is told of a lot at the decision. Dates and temperatures: store 12 months sealed, 6 opened;
// tub at 18 to 25 degrees (common practice, no source).
#include "stock/stock_notes.h"

#include <QDateTime>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const StockLot tub{u"demo_mixed_strand"_s, u"L1"_s};

Instant on(int year, int month, int day, int hour = 8)
{
    return {QDateTime(QDate(year, month, day), QTime(hour, 0), Qt::UTC).toMSecsSinceEpoch(), 0, {}, 0};
}

class StockNotes : public ::testing::Test {
protected:
    StockNotes()
    {
        sheet.monthsSealed = 12;
        sheet.monthsOpened = 6;
        sheet.density = gramsPerMillilitre(1.45);
        sheet.specificHeat = joulesPerKilogramKelvin(1250);
        sheet.conductivity = wattsPerMetreKelvin(0.38);
        ledger.take(StockReceived{tub, 1, grams(1000), std::nullopt}, {on(2026, 1, 31), {}});
    }

    [[nodiscard]] QStringList codes(const Instant& now, Mass amount = grams(100),
                                    std::optional<Temperature> air = celsius(20), bool tried = true) const
    {
        QStringList all;
        for (const StockNote& each : notes(now, amount, air, tried))
            all << each.reason.code;
        return all;
    }
    [[nodiscard]] std::vector<StockNote> notes(const Instant& now, Mass amount = grams(100),
                                               std::optional<Temperature> air = celsius(20), bool tried = true) const
    {
        return notesOf(ledger.of(tub), {tub, amount, &sheet, tried}, {now, air, wattsPerSquareMetreKelvin(8)});
    }

    ProductSheet sheet;
    StockLedger ledger;
};

TEST_F(StockNotes, NothingIsToldWhereNothingIsWrong) { EXPECT_EQ(codes(on(2026, 2, 1)), QStringList()); }

TEST_F(StockNotes, TooLittleIsToldWithBothAmounts)
{
    EXPECT_EQ(codes(on(2026, 2, 1), grams(1000)), QStringList()) << "just enough";
    const auto told = notes(on(2026, 2, 1), grams(1000.5));
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told.front().reason, (Reason{u"stock_short"_s, {grams(1000.5), grams(1000)}}));
}

TEST_F(StockNotes, MoreUsedThanWasThereIsToldWhateverIsNeeded)
{
    ledger.used(tub, grams(1003), StockMove::Mixed, {on(2026, 2, 1), {}});
    EXPECT_EQ(codes(on(2026, 2, 1), grams(0)), QStringList{u"stock_overdrawn"_s});
}

TEST_F(StockNotes, TheSheetsMonthsCountFromTheDayItCame)
{
    EXPECT_EQ(codes(on(2027, 1, 31)), QStringList());
    EXPECT_EQ(codes(on(2027, 2, 1)), QStringList{u"stock_past_its_date"_s});
}

TEST_F(StockNotes, APrintedDateWins)
{
    ledger.take(StockReceived{tub, 1, grams(1000), QDate(2026, 5, 31)}, {on(2026, 2, 1), {}});
    EXPECT_EQ(codes(on(2026, 5, 31)), QStringList());
    EXPECT_EQ(notes(on(2026, 6, 1)).front().reason, (Reason{u"stock_past_its_date"_s, {u"2026-05-31"_s}}));
}

TEST_F(StockNotes, OpenTooLongCountsFromTheFirstBatch)
{
    ledger.used(tub, grams(10), StockMove::Mixed, {on(2026, 2, 28), {}});
    EXPECT_EQ(codes(on(2026, 8, 28)), QStringList());
    EXPECT_EQ(notes(on(2026, 8, 29)).front().reason, (Reason{u"stock_open_too_long"_s, {u"2026-02-28"_s, Count{6}}}));
}

TEST_F(StockNotes, AnEndedLotIsToldFirst)
{
    ledger.take(StockEnded{tub, StockEnd::Skin, grams(1000)}, {on(2026, 2, 1), {}});
    EXPECT_EQ(codes(on(2026, 2, 2)), (QStringList{u"stock_has_ended"_s, u"stock_short"_s}));
}

TEST_F(StockNotes, FromTheColdItTakesHoursOrAProbe)
{
    ledger.take(StockMoved{tub, celsius(5)}, {on(2026, 2, 2, 6), {}});
    EXPECT_EQ(codes(on(2026, 2, 2, 7)), QStringList{u"stock_evens_out"_s});
    EXPECT_EQ(codes(on(2026, 2, 2, 7), grams(1), std::nullopt), QStringList{u"stock_air_unknown"_s});
    EXPECT_EQ(codes(on(2026, 2, 3)), QStringList()) << "a night later";
    ledger.take(StockProbed{tub, celsius(17.5)}, {on(2026, 2, 2, 8), {}});
    EXPECT_EQ(notes(on(2026, 2, 2, 9)).front().reason,
              (Reason{u"stock_probe_off"_s, {celsius(17.5), celsius(18), celsius(25)}}));
    ledger.take(StockProbed{tub, celsius(18)}, {on(2026, 2, 2, 9), {}});
    EXPECT_EQ(codes(on(2026, 2, 2, 9)), QStringList());
}

TEST_F(StockNotes, ANewLotAsksForATestPatEvenWhereNothingIsKept)
{
    EXPECT_EQ(codes(on(2026, 2, 1), grams(1), celsius(20), false), QStringList{u"stock_untried"_s});
    const StockNow now{on(2026, 2, 1), celsius(20), wattsPerSquareMetreKelvin(8)};
    EXPECT_EQ(notesOf(nullptr, {tub, grams(1), &sheet, false}, now).size(), 1U);
    EXPECT_EQ(notesOf(nullptr, {tub, grams(1), &sheet, true}, now).size(), 0U);
}

} // namespace
} // namespace strandbench
