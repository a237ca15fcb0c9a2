// SPDX-License-Identifier: GPL-3.0-or-later
// An answer corrected after the plan was accepted: what is open again, what stays frozen.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

/// The moisture of the panel corrected, and back.
std::optional<Fault> correct(RepairScript& script, Moisture to)
{
    return script.put(Answered{Question::Moisture, to, script.repair().answeredBy.at(Question::Moisture)});
}

/// The sample plan with an answer of its own, so that it is due again.
PlanAccepted planFor(const Repair& repair, RepairPlan plan) { return {repair.assessment, std::move(plan)}; }

TEST(Replan, ACorrectedAnswerMakesThePlanDueAgain)
{
    RepairScript script;
    script.walkTo(Station::Mix);
    const NextStep before = script.next();
    ASSERT_FALSE(correct(script, Moisture::Damp));
    EXPECT_TRUE(script.repair().replanDue());
    EXPECT_EQ(script.next().station, Station::Decide);
    ASSERT_FALSE(correct(script, Moisture::Dry));
    EXPECT_FALSE(script.repair().replanDue()) << "changed back, the plan stands";
    EXPECT_EQ(script.next(), before);
}

TEST(Replan, WhatACorrectionDropsIsAskedAgainBeforeThePlan)
{
    RepairScript script;
    script.walkTo(Station::Mix);
    ASSERT_FALSE(script.put(
        Answered{Question::DamageKind, DamageKind::BondSeam, script.repair().answeredBy.at(Question::DamageKind)}));
    EXPECT_EQ(script.next().station, Station::Assess);
    EXPECT_EQ(script.next().question, Question::AdhesiveCured);
}

TEST(Replan, StepsNotAsTheyWereAreOpenAgainAndAllAfterThem)
{
    RepairScript script;
    script.walkTo(Station::Mix);
    ASSERT_EQ(script.repair().prepDone, 3);
    ASSERT_FALSE(correct(script, Moisture::Damp));
    RepairPlan other = samplePlan();
    other.prep[1].arguments = {millimetres(17)};
    ASSERT_FALSE(script.put(planFor(script.repair(), other)));
    EXPECT_EQ(script.repair().prepDone, 1);
    EXPECT_EQ(script.next(), (NextStep{Station::Prepare, {}, 1, {}}));
    EXPECT_EQ(script.repair().planVersion, 2);
}

TEST(Replan, AWetBatchGoesBeforeIt)
{
    RepairScript script;
    script.walkTo(Station::Spread);
    ASSERT_FALSE(correct(script, Moisture::Damp));
    EXPECT_EQ(script.next(), (NextStep{Station::Spread, {}, 0, BatchRef{false, 0}}));
    ASSERT_FALSE(script.put(EdgesClear{{false, 0}}));
    EXPECT_EQ(script.next().station, Station::Decide);
    EXPECT_FALSE(script.put(Sands{{false, 0}})) << "what cures goes on";
}

TEST(Replan, KeepsTheBatchesOfALiftThatHasBegun)
{
    RepairScript script;
    script.walkTo(Station::Spread); // the first of the two batches of the first lift
    ASSERT_FALSE(script.put(EdgesClear{{false, 0}}));
    EXPECT_EQ(frozenBatches(script.repair()), 2);
    ASSERT_FALSE(correct(script, Moisture::Damp));

    RepairPlan lost = samplePlan();
    lost.batches[1].mix.filler = grams(1);
    const auto fault = script.put(planFor(script.repair(), lost));
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->value, u"batch 1"_s);

    RepairPlan lower = samplePlan();
    lower.lifts[0].thickness = millimetres(9);
    EXPECT_TRUE(script.put(planFor(script.repair(), lower)));

    RepairPlan otherPrep = samplePlan();
    otherPrep.prep.pop_back();
    EXPECT_TRUE(script.put(planFor(script.repair(), otherPrep)));

    RepairPlan rest = samplePlan();
    rest.batches[2].mix.filler = grams(99);
    EXPECT_FALSE(script.put(planFor(script.repair(), rest)));
    EXPECT_EQ(script.repair().plan, rest);
    EXPECT_EQ(script.next(), (NextStep{Station::Mix, {}, 0, BatchRef{false, 1}}));
}

TEST(Replan, NoAnswerIsCorrectedOnceFinishingFillerIsMixed)
{
    RepairScript script;
    while (!script.next().batch || !script.next().batch->finishing)
        ASSERT_FALSE(script.put(actAt(script.repair())));
    EXPECT_TRUE(mayCorrect(script.repair()));
    ASSERT_FALSE(script.put(actAt(script.repair())));
    EXPECT_FALSE(mayCorrect(script.repair()));
    EXPECT_TRUE(correct(script, Moisture::Damp));
}

TEST(Replan, PicturesAndRemarksMoveNoStep)
{
    RepairScript script;
    while (script.next().station != Station::Done) {
        const NextStep before = script.next();
        ASSERT_FALSE(script.put(PhotoTaken{PhotoMoment::Bare, QByteArray(32, 'x'), u"image/png"_s}));
        ASSERT_FALSE(script.put(Noted{u"edge_loose"_s, {}}));
        EXPECT_EQ(script.next(), before);
        ASSERT_FALSE(script.put(actAt(script.repair())));
    }
    EXPECT_EQ(script.repair().photos.size(), script.repair().notes.size());
    EXPECT_TRUE(script.put(Noted{u"edge_loose"_s, {}})) << "handed over";
}

TEST(Replan, ARemarkSaysSomethingAndAPictureHasItsHash)
{
    RepairScript script;
    EXPECT_TRUE(script.put(Noted{}));
    EXPECT_TRUE(script.put(Noted{u"edge_loose"_s, u"and words of one's own"_s}));
    EXPECT_TRUE(script.put(PhotoTaken{PhotoMoment::Bare, "short", u"image/png"_s}));
}

} // namespace
