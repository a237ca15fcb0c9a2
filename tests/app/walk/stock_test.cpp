// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf by taps: booked in, mixed of, counted, put right, ended, and told with the plan. Amounts are worked out
// here from what was keyed in and what the log says was mixed.
#include "bench_fixture.h"
#include "shown.h"

#include "repair/stock_book.h"
#include "screens/job/in_hand.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class StockOnTheBench : public BenchTest {
protected:
    void keyIn(const QString& figure, const QString& keys)
    {
        tap(figure + u"_figure"_s);
        for (const QChar key : keys)
            tap(key == u'.' ? u"key_point"_s : u"key_"_s + key);
        tap(u"answer_way_on"_s);
    }
    void keyInLot(const QString& digits)
    {
        for (const QChar key : digits)
            tap(key == u'-' ? u"key_dash"_s : u"key_"_s + key);
        tap(u"answer_way_on"_s);
    }
    void toShelf()
    {
        window().showHome();
        bench().thumb().settle();
        tap(u"stock"_s);
        ASSERT_EQ(screen(), u"screen_stock"_s);
    }
    /// From the shelf's list to the page of the lot that came in.
    void bookIn(const QString& product, const QString& lot, const QString& packages, const QString& grams,
                const std::optional<QStringList>& yearMonthDay = {})
    {
        toShelf();
        tap(u"answer_way_on"_s);
        tap(u"product_"_s + product);
        keyInLot(lot);
        ASSERT_EQ(screen(), u"screen_stock_book_in"_s);
        keyIn(u"stock_packages"_s, packages);
        keyIn(u"stock_each"_s, grams);
        tap(u"answer_way_on"_s);
        if (!yearMonthDay) {
            tap(u"stock_not_dated"_s);
        } else {
            tap(u"stock_dated"_s);
            keyIn(u"stock_year"_s, yearMonthDay->at(0));
            keyIn(u"stock_month"_s, yearMonthDay->at(1));
            keyIn(u"stock_day"_s, yearMonthDay->at(2));
            tap(u"answer_way_on"_s);
        }
        ASSERT_EQ(screen(), u"screen_stock_lot"_s);
    }
    /// From wherever the glass is.
    void walkFromHome(Station station)
    {
        window().showHome();
        bench().thumb().settle();
        ASSERT_NO_FATAL_FAILURE(walkTo(skirtPanel(), station));
        ASSERT_FALSE(HasFailure());
    }
    [[nodiscard]] const StockState& state(const QString& product, const QString& lot)
    {
        return *bench().bench().stock().ledger().of({product, lot});
    }
    [[nodiscard]] double gramsLeft(const QString& product, const QString& lot)
    {
        return inGrams(state(product, lot).left());
    }
    /// The shelf as the log tells it, read from the file by a book of its own.
    [[nodiscard]] StockBook fromLog()
    {
        StockBook book;
        const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
        const auto events = (*opened)->after(0);
        for (const Event& each : *events)
            book.add(each);
        return book;
    }
};

const QString mixed = u"demo_mixed_strand"_s;

TEST_F(StockOnTheBench, BookedInWithItsDateItStandsInTheListAndInTheLog)
{
    open();
    toShelf();
    EXPECT_FALSE(shown(window(), u"stock_none"_s).isEmpty());
    bookIn(mixed, u"77-1"_s, u"2"_s, u"1000"_s, QStringList{u"2027"_s, u"6"_s, u"30"_s});
    EXPECT_DOUBLE_EQ(gramsLeft(mixed, u"77-1"_s), 2000);
    EXPECT_EQ(state(mixed, u"77-1"_s).unopened, 2);
    EXPECT_EQ(state(mixed, u"77-1"_s).bestBefore, QDate(2027, 6, 30));
    EXPECT_TRUE(shown(window(), u"stock_last_day"_s).contains(u"printed"_s));
    toShelf();
    EXPECT_TRUE(shown(window(), u"stock_row_0"_s).contains(u"77-1"_s));
    EXPECT_EQ(*fromLog().ledger().of({mixed, u"77-1"_s}), state(mixed, u"77-1"_s));
    const StockState before = state(mixed, u"77-1"_s);
    open();
    EXPECT_EQ(state(mixed, u"77-1"_s), before) << "the same after a restart";
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(StockOnTheBench, ABatchTakesOffWhatTheLogSaysWasMixed)
{
    open();
    bookIn(mixed, u"77"_s, u"1"_s, u"1000"_s);
    bookIn(hardenerProduct, u"5"_s, u"1"_s, u"40"_s);
    ASSERT_NO_FATAL_FAILURE(walkFromHome(Station::Mix));
    tap(u"in_hand"_s);
    EXPECT_EQ(shown(window(), u"lot_0"_s), u"77"_s) << "offered, for it is on the shelf";
    tap(u"lot_0"_s);
    EXPECT_EQ(shown(window(), u"lot_0"_s), u"5"_s) << "then the hardener";
    tap(u"lot_0"_s);
    tap(u"answer_way_on"_s);
    ASSERT_NO_FATAL_FAILURE(walkFromHome(Station::Spread));
    const HardenerIn& act = bench().repair(u"4421"_s)->runs.front().mixed;
    EXPECT_EQ(act.lot, u"77"_s);
    EXPECT_NEAR(gramsLeft(mixed, u"77"_s), 1000 - inGrams(act.filler), 1e-5);
    EXPECT_NEAR(gramsLeft(hardenerProduct, u"5"_s), 40 - inGrams(act.hardener), 1e-5);
    toShelf();
    tap(u"stock_row_0"_s);
    tap(u"stock_moves"_s);
    EXPECT_TRUE(allShown(window()).join(u'\n').contains(u"Batch of job 4421"_s));
}

TEST_F(StockOnTheBench, TooLittleAndUntriedAreToldWithThePlanBeforeAnythingIsPrepared)
{
    open();
    bookIn(mixed, u"77"_s, u"1"_s, u"5"_s);
    ASSERT_NO_FATAL_FAILURE(walkFromHome(Station::Decide));
    ASSERT_EQ(screen(), u"screen_plan"_s);
    tap(u"plan_stock"_s);
    ASSERT_EQ(screen(), u"screen_stock_notes"_s);
    const QString told = allShown(window()).join(u'\n');
    EXPECT_TRUE(told.contains(u"Too little"_s)) << told.toStdString();
    EXPECT_TRUE(told.contains(u"test pat"_s)) << told.toStdString();
    tap(u"to_the_shelf"_s);
    EXPECT_EQ(screen(), u"screen_stock"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_stock_notes"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_plan"_s);
}

TEST_F(StockOnTheBench, WhatIsOutOfDateOrOpenTooLongIsToldWithThePlan)
{
    open();
    bookIn(mixed, u"77"_s, u"1"_s, u"1000"_s, QStringList{u"2026"_s, u"1"_s, u"31"_s});
    ASSERT_NO_FATAL_FAILURE(walkFromHome(Station::Decide));
    tap(u"plan_stock"_s);
    EXPECT_TRUE(allShown(window()).join(u'\n').contains(u"Its date is past"_s));
}

TEST_F(StockOnTheBench, CountedPutRightAndEnded)
{
    open();
    bookIn(mixed, u"77"_s, u"2"_s, u"1000"_s);
    tap(u"stock_open"_s);
    EXPECT_TRUE(state(mixed, u"77"_s).opened);
    EXPECT_EQ(state(mixed, u"77"_s).unopened, 1);
    tap(u"stock_count"_s);
    keyIn(u"stock_there"_s, u"1650"_s);
    EXPECT_TRUE(shown(window(), u"verdict"_s).contains(u"350"_s)) << "how far off is told before it is written";
    tap(u"answer_way_on"_s);
    EXPECT_DOUBLE_EQ(gramsLeft(mixed, u"77"_s), 1650);
    tap(u"stock_change"_s);
    tap(u"change_spilled_less"_s);
    keyIn(u"stock_by"_s, u"50"_s);
    tap(u"answer_way_on"_s);
    EXPECT_DOUBLE_EQ(gramsLeft(mixed, u"77"_s), 1600);
    tap(u"stock_change"_s);
    tap(u"change_keyed_in_wrong_more"_s);
    keyIn(u"stock_by"_s, u"20"_s);
    tap(u"answer_way_on"_s);
    EXPECT_DOUBLE_EQ(gramsLeft(mixed, u"77"_s), 1620);
    tap(u"stock_end"_s);
    tap(u"end_skin"_s);
    keyIn(u"stock_thrown_away"_s, u"620"_s);
    tap(u"answer_way_on"_s);
    EXPECT_DOUBLE_EQ(gramsLeft(mixed, u"77"_s), 1000);
    EXPECT_FALSE(state(mixed, u"77"_s).ended) << "one is unopened still";
    tap(u"stock_open"_s);
    tap(u"stock_end"_s);
    tap(u"end_used_up"_s);
    EXPECT_EQ(state(mixed, u"77"_s).ended, StockEnd::UsedUp);
    EXPECT_EQ(*fromLog().ledger().of({mixed, u"77"_s}), state(mixed, u"77"_s));
    EXPECT_EQ(state(mixed, u"77"_s).movements.size(), 6U);
}

TEST_F(StockOnTheBench, ATubFromTheColdEvensOutAndAProbeEndsTheWaiting)
{
    open();
    ASSERT_NO_FATAL_FAILURE(walkFromHome(Station::Decide)); // the air is read
    bookIn(mixed, u"77"_s, u"1"_s, u"1000"_s);
    tap(u"stock_moved"_s);
    keyIn(u"stock_temperature"_s, u"2"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(shown(window(), u"stock_note_0"_s).contains(u"evens out"_s));
    tap(u"stock_probe"_s);
    keyIn(u"stock_temperature"_s, u"19"_s);
    tap(u"answer_way_on"_s);
    EXPECT_FALSE(allShown(window()).join(u'\n').contains(u"evens out"_s));
}

TEST_F(StockOnTheBench, ATestPatTriesTheLot)
{
    open();
    ASSERT_NO_FATAL_FAILURE(walkFromHome(Station::Decide));
    bookIn(hardenerProduct, u"5"_s, u"1"_s, u"40"_s);
    bookIn(mixed, u"77"_s, u"1"_s, u"1000"_s);
    EXPECT_TRUE(shown(window(), u"stock_note_0"_s).contains(u"test pat"_s));
    tap(u"stock_pat"_s);
    ASSERT_EQ(screen(), u"screen_lot_page"_s);
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    const auto& lots = bench().bench().lots();
    const auto pat = lots.patOf({mixed, u"5"_s});
    ASSERT_TRUE(pat);
    bench().clock().advance(pat->mixed.gel);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(bench().bench().stock().tried({mixed, u"77"_s}));
    EXPECT_NEAR(gramsLeft(mixed, u"77"_s), 1000 - inGrams(pat->mixed.filler), 1e-5);
}

TEST_F(StockOnTheBench, WhatRunsShortIsOnTheReorderListByItsLevel)
{
    open();
    bookIn(mixed, u"77"_s, u"2"_s, u"1000"_s);
    toShelf();
    tap(u"reorder_list"_s);
    tap(u"reorder_row_0"_s);
    keyIn(u"reorder_below"_s, u"2500"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_reorder"_s);
    EXPECT_TRUE(allShown(window()).join(u'\n').contains(u"reorder"_s));
    EXPECT_DOUBLE_EQ(inGrams(window().settings().reorderBelow.at(mixed)), 2500);
    const Settings kept = window().settings(); // the window goes when the bench opens anew
    open(kept);
    toShelf();
    EXPECT_EQ(window().findChild<TapButton*>(u"reorder_list"_s)->secondLine(), u"1 product to reorder"_s);
}

TEST_F(StockOnTheBench, ABadDateOrLotIsToldAndNothingIsWritten)
{
    open();
    toShelf();
    tap(u"answer_way_on"_s);
    tap(u"product_"_s + mixed);
    keyInLot(u"77"_s);
    keyIn(u"stock_packages"_s, u"1.5"_s);
    EXPECT_FALSE(window().screen()->troubleShown().isEmpty()) << "half a package";
    tap(u"answer_back"_s);
    keyIn(u"stock_packages"_s, u"1"_s);
    keyIn(u"stock_each"_s, u"1000"_s);
    tap(u"answer_way_on"_s);
    tap(u"stock_dated"_s);
    keyIn(u"stock_year"_s, u"2027"_s);
    keyIn(u"stock_month"_s, u"2"_s);
    keyIn(u"stock_day"_s, u"30"_s);
    EXPECT_TRUE(shown(window(), u"verdict"_s).contains(u"no such day"_s));
    EXPECT_FALSE(bench().thumb().tap(u"answer_way_on"_s));
    EXPECT_TRUE(bench().bench().stock().ledger().all().empty());
}

TEST_F(StockOnTheBench, AScannedLotOpensItsPageOrIsBookedIn)
{
    open();
    bookIn(mixed, u"77"_s, u"1"_s, u"1000"_s);
    toShelf();
    EXPECT_TRUE(window().screen()->scanned(u"77"_s));
    bench().thumb().settle();
    EXPECT_EQ(screen(), u"screen_stock_lot"_s);
    toShelf();
    EXPECT_TRUE(window().screen()->scanned(u"F-2026-9"_s));
    bench().thumb().settle();
    tap(u"product_"_s + mixed);
    EXPECT_EQ(shown(window(), u"lot_typed"_s).remove(QChar(0x200b)), u"F-2026-9"_s);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_stock"_s);
}

} // namespace
} // namespace strandbench::test
