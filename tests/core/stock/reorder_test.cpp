// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be reordered, and which lot is next: invariants of a shelf.
#include "stock/reorder.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString mixed = u"demo_mixed_strand"_s;

StockLedger::Told at(int second) { return {{second * 1000LL, 0, {}, 0}, {}, {}}; }

TEST(Reorder, WithoutALevelOnePackageIsKept)
{
    StockLedger ledger;
    ledger.take(StockReceived{{mixed, u"L1"_s}, 1, grams(1000), {}}, at(0));
    ASSERT_EQ(reorderLines(ledger, {}).size(), 1U);
    EXPECT_FALSE(reorderLines(ledger, {}).front().due()) << "a whole package is there";
    ledger.used({mixed, u"L1"_s}, grams(0.5), StockMove::Mixed, at(1));
    EXPECT_EQ(reorderLines(ledger, {}).front(), (ReorderLine{mixed, grams(999.5), grams(1000)}));
    EXPECT_TRUE(reorderLines(ledger, {}).front().due());
    EXPECT_FALSE(reorderLines(ledger, {{mixed, grams(0)}}).front().due()) << "never, by the shop's word";
}

TEST(Reorder, WhatIsDueStandsFirstAndOnlyWhatMayBeUsedCounts)
{
    StockLedger ledger;
    ledger.take(StockReceived{{hardenerProduct, u"H1"_s}, 1, grams(40), {}}, at(0));
    ledger.take(StockReceived{{mixed, u"L1"_s}, 1, grams(1000), {}}, at(0));
    ledger.take(StockEnded{{mixed, u"L1"_s}, StockEnd::Skin, grams(200)}, at(1));
    const auto lines = reorderLines(ledger, {});
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0], (ReorderLine{mixed, grams(0), grams(1000)}));
    EXPECT_FALSE(lines[1].due());
}

TEST(NextLot, TheOpenOneThenTheOneThatCameFirstAndAnEndedOneLastOfAll)
{
    StockLedger ledger;
    EXPECT_EQ(ledger.nextOf(mixed), nullptr);
    ledger.take(StockReceived{{mixed, u"B"_s}, 1, grams(1000), {}}, at(0));
    ledger.take(StockReceived{{mixed, u"A"_s}, 1, grams(1000), {}}, at(5));
    ledger.take(StockReceived{{mixed, u"C"_s}, 1, grams(1000), {}}, at(9));
    EXPECT_EQ(ledger.nextOf(mixed)->of.lot, u"B"_s) << "came first";
    ledger.take(StockOpened{{mixed, u"C"_s}}, at(10));
    EXPECT_EQ(ledger.nextOf(mixed)->of.lot, u"C"_s) << "open";
    ledger.take(StockEnded{{mixed, u"C"_s}, StockEnd::UsedUp, grams(0)}, at(11));
    EXPECT_EQ(ledger.nextOf(mixed)->of.lot, u"B"_s);
    ledger.take(StockEnded{{mixed, u"B"_s}, StockEnd::Skin, grams(0)}, at(12));
    ledger.take(StockEnded{{mixed, u"A"_s}, StockEnd::Skin, grams(0)}, at(13));
    EXPECT_EQ(ledger.nextOf(mixed)->of.lot, u"A"_s) << "all ended: the one that ended last";
    EXPECT_EQ(ledger.nextOf(hardenerProduct), nullptr);
}

} // namespace
} // namespace strandbench
