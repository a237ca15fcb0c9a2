// SPDX-License-Identifier: GPL-3.0-or-later
// What is there of a lot: invariants of bookkeeping.
#include "stock/ledger.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const StockLot tub{u"demo_mixed_strand"_s, u"L1"_s};
const StockLot tube{hardenerProduct, u"H1"_s};

StockLedger::Told at(int second, const QString& note = {}) { return {{second * 1000LL, 0, {}, 0}, u"Renée"_s, note}; }

TEST(Ledger, OfALotThatNeverCameNothingIsKept)
{
    StockLedger ledger;
    ledger.used(tub, grams(38), StockMove::Mixed, at(1));
    EXPECT_EQ(ledger.of(tub), nullptr);
    EXPECT_FALSE(ledger.keeps(tub.product));
}

TEST(Ledger, WhatCameLessWhatWasMixedIsLeft)
{
    StockLedger ledger;
    ledger.take(StockReceived{tub, 2, grams(1000), {}}, at(0));
    ledger.used(tub, grams(38.5), StockMove::Mixed, at(60, u"4421"_s));
    const StockState& state = *ledger.of(tub);
    EXPECT_EQ(state.micrograms, 1'961'500'000);
    EXPECT_EQ(state.unopened, 1) << "the first batch opens a tub";
    EXPECT_EQ(state.opened->utcMs, 60'000);
    EXPECT_DOUBLE_EQ(inGrams(state.inTheOpenOne()), 961.5);
    EXPECT_EQ(state.movements.back(), (StockMovement{StockMove::Mixed, -38'500'000, at(60).at, u"Renée"_s, u"4421"_s}));
}

TEST(Ledger, MoreThanWasThereShowsAsLessThanNothing)
{
    StockLedger ledger;
    ledger.take(StockReceived{tube, 1, grams(1), {}}, at(0));
    ledger.used(tube, grams(1.25), StockMove::Mixed, at(1));
    EXPECT_EQ(ledger.of(tube)->micrograms, -250'000);
    EXPECT_DOUBLE_EQ(inGrams(ledger.usable(hardenerProduct)), 0) << "a debt of one lot is not paid by another";
    ledger.take(StockCounted{tube, grams(0.4)}, at(2));
    EXPECT_EQ(ledger.of(tube)->micrograms, 400'000) << "the count holds, whatever was thought";
}

TEST(Ledger, ATubThatEndsLeavesTheUnopenedOnes)
{
    StockLedger ledger;
    ledger.take(StockReceived{tub, 2, grams(1000), {}}, at(0));
    ledger.take(StockOpened{tub}, at(1));
    ledger.used(tub, grams(300), StockMove::Mixed, at(2));
    ledger.take(StockEnded{tub, StockEnd::Skin, ledger.of(tub)->inTheOpenOne()}, at(3));
    EXPECT_EQ(ledger.of(tub)->micrograms, 1'000'000'000);
    EXPECT_FALSE(ledger.of(tub)->ended);
    EXPECT_FALSE(ledger.of(tub)->opened);
    ledger.take(StockEnded{tub, StockEnd::Separated, grams(1000)}, at(4));
    EXPECT_EQ(ledger.of(tub)->ended, StockEnd::Separated);
    EXPECT_DOUBLE_EQ(inGrams(ledger.usable(tub.product)), 0);
    ledger.take(StockReceived{tub, 1, grams(1000), {}}, at(5));
    EXPECT_FALSE(ledger.of(tub)->ended) << "more of the same lot came";
}

TEST(Ledger, TheEarliestDateHolds)
{
    StockLedger ledger;
    ledger.take(StockReceived{tub, 1, grams(1000), QDate(2027, 6, 1)}, at(0));
    ledger.take(StockReceived{tub, 1, grams(1000), QDate(2027, 3, 1)}, at(1));
    ledger.take(StockReceived{tub, 1, grams(1000), std::nullopt}, at(2));
    EXPECT_EQ(ledger.of(tub)->bestBefore, QDate(2027, 3, 1));
}

TEST(Ledger, AProbeSaysMoreThanWhereItCameFrom)
{
    StockLedger ledger;
    ledger.take(StockReceived{tub, 1, grams(1000), {}}, at(0));
    ledger.take(StockMoved{tub, celsius(4)}, at(1));
    ledger.take(StockProbed{tub, celsius(19)}, at(2));
    EXPECT_EQ(ledger.of(tub)->probed->first, celsius(19));
    ledger.take(StockMoved{tub, celsius(4)}, at(3));
    EXPECT_FALSE(ledger.of(tub)->probed) << "it was in the cold again";
}

/// Any history: what is left is the sum of its movements, to the microgram, and a count always holds.
TEST(Ledger, LeftIsAlwaysOpeningPlusMovements)
{
    std::mt19937 random(20261126);
    std::uniform_real_distribution<double> amount(0.001, 900);
    for (int history = 0; history < 300; ++history) {
        StockLedger ledger;
        for (int step = 0; step < 60; ++step) {
            const StockLot lot = random() % 2 ? tub : tube;
            const Mass mass = grams(amount(random));
            switch (ledger.of(lot) ? random() % 7 : 0) {
            case 0:
                ledger.take(StockReceived{lot, int(random() % 4) + 1, mass, {}}, at(step));
                break;
            case 1:
                ledger.take(StockOpened{lot}, at(step));
                break;
            case 2:
                ledger.take(StockCounted{lot, mass}, at(step));
                ASSERT_EQ(ledger.of(lot)->micrograms, inMicrograms(mass));
                break;
            case 3:
                ledger.take(StockAdjusted{lot, mass, random() % 2 == 0, StockChange::Spilled}, at(step));
                break;
            case 4:
                ledger.take(StockEnded{lot, StockEnd::UsedUp, mass}, at(step));
                break;
            default:
                ledger.used(lot, mass, StockMove::Mixed, at(step));
            }
            for (const StockState* each : ledger.all()) {
                const qint64 sum =
                    std::accumulate(each->movements.begin(), each->movements.end(), qint64(0),
                                    [](qint64 all, const StockMovement& m) { return all + m.micrograms; });
                ASSERT_EQ(each->micrograms, sum);
                ASSERT_GE(each->unopened, 0);
                ASSERT_GE(inGrams(each->inTheOpenOne()), 0);
            }
        }
    }
}

} // namespace
} // namespace strandbench
