// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan takes off the shelf: sums over its batches, worked out by hand.
#include "repair/stock_needs.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

ProductSheet sheetNamed(const QString& id, int monthsOpened)
{
    ProductSheet sheet;
    sheet.id = id;
    sheet.monthsOpened = monthsOpened;
    sheet.monthsSealed = 12;
    return sheet;
}

class StockNeeds : public ::testing::Test {
protected:
    StockNeeds() : catalogue({sheetNamed(u"fibre"_s, 6), sheetNamed(u"smooth"_s, 3)})
    {
        plan.sheetId = u"fibre"_s;
        plan.finishSheetId = u"smooth"_s;
        plan.lifts.resize(1);
        plan.batches = {batch(40, 0.8), batch(25, 0.5)};
        plan.finish.batches = {batch(12, 0.24)};
    }
    static Batch batch(double filler, double hardener)
    {
        Batch made;
        made.mix.filler = grams(filler);
        made.mix.hardener = grams(hardener);
        return made;
    }
    [[nodiscard]] std::vector<StockNeed> needs(const std::map<QString, QString>& inHand = {}) const
    {
        std::vector<BatchInHand> toMix;
        for (const BatchRef& each : stillToMix(repair, plan))
            toMix.push_back({each, batchOf(plan, each), catalogue.byId(sheetIdOf(plan, each)), true});
        return stockNeedsOf(plan, toMix, inHand, catalogue, stock);
    }
    void onTheShelf(const StockLot& lot)
    {
        Event event;
        event.repair = stockSubject(lot);
        event.payload = StockReceived{lot, 1, grams(1000), {}};
        stock.add(event);
    }

    Catalogue catalogue;
    RepairPlan plan;
    Repair repair;
    StockBook stock;
};

TEST_F(StockNeeds, OfWhatNobodyKeepsNothingIsAsked) { EXPECT_TRUE(needs().empty()); }

TEST_F(StockNeeds, BatchesOfOneProductAddUpAndTheHardenerIsThatOfAll)
{
    onTheShelf({u"fibre"_s, u"L1"_s});
    onTheShelf({hardenerProduct, u"H1"_s});
    const auto all = needs({{u"smooth"_s, u"S9"_s}});
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0].of, (StockLot{u"fibre"_s, u"L1"_s}));
    EXPECT_DOUBLE_EQ(inGrams(all[0].amount), 65);
    EXPECT_EQ(all[1].of, (StockLot{u"smooth"_s, u"S9"_s})) << "the lot in the hand";
    EXPECT_DOUBLE_EQ(inGrams(all[1].amount), 12);
    EXPECT_EQ(all[2].of, (StockLot{hardenerProduct, u"H1"_s}));
    EXPECT_DOUBLE_EQ(inGrams(all[2].amount), 1.54);
    EXPECT_EQ(all[2].sheet->id, u"smooth"_s) << "the sheet that lets it stand open for the shortest time";
    EXPECT_FALSE(all[0].tried);
}

TEST_F(StockNeeds, WhatIsMixedAlreadyIsNotAskedAgain)
{
    onTheShelf({u"fibre"_s, u"L1"_s});
    repair.plan = plan;
    BatchRun run;
    run.batch = {false, 0};
    repair.runs.push_back(run);
    ASSERT_EQ(needs().size(), 1U);
    EXPECT_DOUBLE_EQ(inGrams(needs().front().amount), 25);
    plan.batches.push_back(batch(10, 0.2)); // another plan: all of it
    EXPECT_DOUBLE_EQ(inGrams(needs().front().amount), 75);
}

} // namespace
} // namespace strandbench
