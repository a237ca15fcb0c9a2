// SPDX-License-Identifier: GPL-3.0-or-later
// A whole repair, station by station.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

QString written(const NextStep& next)
{
    QString text = codeOf(next.station);
    if (next.question)
        text += u' ' + codeOf(*next.question);
    if (next.batch)
        text += (next.batch->finishing ? u" coat "_s : u" batch "_s) + QString::number(next.batch->index);
    if (next.station == Station::Prepare || next.station == Station::Finish || next.station == Station::HandOver)
        text += u' ' + QString::number(next.index);
    return text;
}

QStringList walked(RepairScript& script)
{
    QStringList stations{written(script.next())};
    while (script.next().station != Station::Done) {
        if (const auto fault = script.put(actAt(script.repair()))) {
            ADD_FAILURE() << "at " << qPrintable(stations.last()) << ": " << qPrintable(fault->field);
            break;
        }
        stations << written(script.next());
    }
    return stations;
}

TEST(Walk, PassesEveryStationOfTheSampleInOrder)
{
    RepairScript script;
    const QStringList expected{
        u"assess substrate"_s, u"assess damage_kind"_s, u"assess size"_s, u"assess rear_access"_s, u"assess surface"_s,
        u"assess zone"_s, u"assess moisture"_s, u"assess reading"_s, u"decide"_s, u"prepare 0"_s, u"prepare 1"_s,
        u"prepare 2"_s,
        // the first lift in two batches: the second is mixed when the first's edges are clear
        u"mix batch 0"_s, u"spread batch 0"_s, u"mix batch 1"_s, u"spread batch 1"_s, u"wait batch 1"_s,
        u"sand batch 1"_s, u"mix batch 2"_s, u"spread batch 2"_s, u"wait batch 2"_s, u"sand batch 2"_s, u"turn"_s,
        u"mix batch 3"_s, u"spread batch 3"_s, u"wait batch 3"_s, u"sand batch 3"_s, u"mix coat 0"_s,
        u"spread coat 0"_s, u"wait coat 0"_s, u"sand coat 0"_s, u"mix coat 1"_s, u"spread coat 1"_s, u"wait coat 1"_s,
        u"sand coat 1"_s, u"finish 0"_s, u"finish 1"_s, u"hand_over 0"_s, u"hand_over 1"_s, u"hand_over 2"_s,
        u"hand_over 3"_s, u"hand_over 4"_s, u"hand_over 5"_s, u"hand_over 6"_s, u"done"_s};
    EXPECT_EQ(walked(script).join(u'\n').toStdString(), expected.join(u'\n').toStdString());
    EXPECT_FALSE(script.repair().open());
}

TEST(Walk, FoldsToTheSameRepairFromItsEvents)
{
    RepairScript script;
    walked(script);
    const auto folded = foldRepair(script.events());
    ASSERT_TRUE(folded);
    EXPECT_EQ(*folded, script.repair());
}

/// What a restart relies on: cut off after any event, the fold leads to the step that was due then.
TEST(Walk, ComesBackToTheSameStepAfterAnyEvent)
{
    RepairScript script;
    while (script.next().station != Station::Done) {
        ASSERT_FALSE(script.put(actAt(script.repair())));
        const auto folded = foldRepair(script.events());
        ASSERT_TRUE(folded);
        ASSERT_EQ(nextStep(*folded), script.next());
    }
}

TEST(Walk, KeepsTheMomentsOfABatch)
{
    RepairScript script;
    script.walkTo(Station::Spread);
    const BatchRef first{false, 0};
    const Instant mixedAt = script.repair().lastAt;
    ASSERT_FALSE(script.put(Gelled{first, GelPlace::Board}));
    const Instant boardAt = script.repair().lastAt;
    ASSERT_FALSE(script.put(EdgesClear{first}));
    const Instant clearAt = script.repair().lastAt;
    ASSERT_FALSE(script.put(Gelled{first, GelPlace::Panel}));
    const BatchRun* run = script.repair().run(first);
    ASSERT_TRUE(run);
    EXPECT_EQ(run->hardenerIn, mixedAt);
    EXPECT_EQ(run->boardGelled, boardAt);
    EXPECT_EQ(run->edgesClear, clearAt);
    EXPECT_EQ(run->panelGelled, script.repair().lastAt);
    EXPECT_TRUE(run->running());
    EXPECT_EQ(script.repair().run({false, 1}), nullptr);
    EXPECT_EQ(script.repair().run({true, 0}), nullptr) << "a coat is not a batch of fibre filler";
}

TEST(Walk, SandingALiftStopsTheClocksOfAllItsBatches)
{
    RepairScript script;
    script.walkTo(Station::Sand);
    ASSERT_FALSE(script.put(Sanded{{false, 1}}));
    EXPECT_EQ(script.repair().run({false, 0})->sanded, script.repair().lastAt);
    EXPECT_EQ(script.repair().run({false, 1})->sanded, script.repair().lastAt);
}

TEST(Walk, SandingALiftLeavesOtherLiftsAlone)
{
    RepairScript script;
    script.walkTo(Station::Turn);
    const Instant firstLift = *script.repair().run({false, 1})->sanded;
    const Instant secondLift = *script.repair().run({false, 2})->sanded;
    EXPECT_NE(firstLift, secondLift);
    script.walkTo(Station::Finish);
    EXPECT_EQ(script.repair().run({false, 0})->sanded, firstLift);
    EXPECT_EQ(script.repair().run({false, 2})->sanded, secondLift);
}

TEST(Walk, WhatSandsHasNoEdgeLeftToClear)
{
    RepairScript script;
    script.walkTo(Station::Mix);
    script.put(actAt(script.repair()));
    ASSERT_FALSE(script.put(Sands{{false, 0}})) << "the edges were never confirmed";
    EXPECT_EQ(script.next(), (NextStep{Station::Mix, {}, 0, BatchRef{false, 1}}));
    EXPECT_TRUE(script.put(EdgesClear{{false, 0}}));
}

TEST(Walk, ReadingsTakenLaterLeaveTheAssessmentAsItWas)
{
    RepairScript script;
    script.toPlan();
    const Assessment assessed = script.repair().assessment;
    const Reading later{celsius(21), celsius(20), Fraction::ofHundred(40)};
    ASSERT_FALSE(script.put(ReadingTaken{later}));
    EXPECT_EQ(script.repair().lastReading, later);
    EXPECT_EQ(script.repair().assessment, assessed);
    EXPECT_EQ(script.next().index, 0);
}

TEST(Walk, HandOverTestsAreTheSix)
{
    EXPECT_EQ(handOverTests(), (std::vector<QString>{u"guide_coat_gone"_s, u"straightedge"_s, u"no_pinholes"_s,
                                                     u"nail_and_paper"_s, u"tap_sound"_s, u"no_edge"_s}));
}

} // namespace
