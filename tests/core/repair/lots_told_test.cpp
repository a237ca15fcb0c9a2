// SPDX-License-Identifier: GPL-3.0-or-later
// What is tapped of batches becomes what is told of their lots.
#include "repair/lots_told.h"

#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

BatchRun mixed(int atSecond, const QString& hardenerLot, const QString& sheet = u"demo_mixed"_s)
{
    BatchRun run;
    run.mixed.sheetId = sheet;
    run.mixed.hardenerLot = hardenerLot;
    run.mixed.times = {seconds(240), seconds(300), seconds(480), seconds(600)};
    run.hardenerIn = test::moment(atSecond);
    return run;
}

Repair repairWith(std::vector<BatchRun> runs)
{
    Repair repair;
    repair.id = QUuid::createUuid();
    repair.runs = std::move(runs);
    return repair;
}

const LotOfProduct lot{u"demo_mixed"_s, u"H7"_s};

TEST(LotsTold, WithoutRepairsThereIsNone) { EXPECT_TRUE(lotsToldBy({}).empty()); }

/// Board and panel each beside their own prediction: 240 s told at 200, 300 s told at 330, 480 s told at 500.
TEST(LotsTold, EachTapIsHeldAgainstItsOwnPrediction)
{
    BatchRun run = mixed(1000, u"H7"_s);
    run.boardGelled = test::moment(1200);
    run.panelGelled = test::moment(1330);
    run.sands = test::moment(1500);
    const auto lots = lotsToldBy({repairWith({run})});
    ASSERT_EQ(lots.size(), 1U);
    const BatchTold told = lots.at(lot).front().told;
    EXPECT_NEAR(told.board->value(), std::log(240.0 / 200.0), 1e-12);
    EXPECT_NEAR(told.panel->value(), std::log(300.0 / 330.0), 1e-12);
    EXPECT_NEAR(told.sandsBy->value(), std::log(480.0 / 500.0), 1e-12);
}

TEST(LotsTold, NothingToldIsNothing)
{
    const auto lots = lotsToldBy({repairWith({mixed(1000, u"H7"_s)})});
    const BatchTold told = lots.at(lot).front().told;
    EXPECT_FALSE(told.board || told.panel || told.sandsBy);
    BatchRun atOnce = mixed(1000, u"H7"_s);
    atOnce.panelGelled = test::moment(1000);
    EXPECT_FALSE(lotsToldBy({repairWith({atOnce})}).at(lot).front().told.panel) << "a slip of the thumb";
}

TEST(LotsTold, ALotThatNobodyToldTeachesNothing)
{
    BatchRun run = mixed(1000, {});
    run.panelGelled = test::moment(1200);
    EXPECT_TRUE(lotsToldBy({repairWith({run})}).empty());
}

TEST(LotsTold, ProductsAndLotsAreApartAndInOrder)
{
    BatchRun early = mixed(500, u"H7"_s);
    early.panelGelled = test::moment(800);
    const Repair one = repairWith({mixed(1000, u"H7"_s), mixed(2000, u"H8"_s)});
    const Repair two = repairWith({early, mixed(3000, u"H7"_s, u"demo_short"_s)});
    const auto lots = lotsToldBy({one, two});
    EXPECT_EQ(lots.size(), 3U);
    const std::vector<BatchOfLot>& batches = lots.at(lot);
    ASSERT_EQ(batches.size(), 2U);
    EXPECT_EQ(batches[0].repair, two.id) << "the older first, whichever repair comes first";
    EXPECT_EQ(batches[1].repair, one.id);
    const std::vector<BatchTold> told = toldOf(batches);
    ASSERT_EQ(told.size(), 2U);
    EXPECT_TRUE(told[0].panel.has_value());
    EXPECT_FALSE(told[1].panel.has_value());
}

/// A whole walk of a repair, each event folded: what its taps tell comes out.
TEST(LotsTold, OfAWalkedRepair)
{
    test::RepairScript script;
    script.walkTo(Station::Mix);
    Payload act = test::actAt(script.repair());
    std::get<HardenerIn>(act).hardenerLot = u"H7"_s;
    const BatchRef batch = std::get<HardenerIn>(act).batch;
    ASSERT_FALSE(script.put(act));
    ASSERT_FALSE(script.put(EdgesClear{batch}));
    ASSERT_FALSE(script.put(Gelled{batch, GelPlace::Panel}));
    const auto lots = lotsToldBy({script.repair()});
    ASSERT_EQ(lots.size(), 1U);
    // An event every 30 s: the gel was told 60 s after the hardener went in, 280 s are predicted.
    EXPECT_NEAR(lots.at(lot).front().told.panel->value(), std::log(280.0 / 60.0), 1e-12);
}

} // namespace
} // namespace strandbench
