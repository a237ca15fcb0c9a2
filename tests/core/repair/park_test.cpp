// SPDX-License-Identifier: GPL-3.0-or-later
// Parking, taking up again and assessing again.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

const Parked byChoice{u"shelf"_s, {}};
const Parked refused{u"warm_room"_s, {u"panel_too_cold"_s}};

TEST(Park, TakenUpAgainItIsWhereItWas)
{
    RepairScript script;
    while (script.next().station != Station::Done) {
        const NextStep before = script.next();
        ASSERT_FALSE(script.put(byChoice));
        EXPECT_EQ(script.next(), (NextStep{Station::Parked, {}, 0, {}}));
        EXPECT_TRUE(script.put(byChoice)) << "parked already";
        ASSERT_FALSE(script.put(TakenUpAgain{}));
        EXPECT_EQ(script.next(), before);
        ASSERT_FALSE(script.put(actAt(script.repair())));
    }
}

TEST(Park, ARefusalIsLeftByAssessingAgainAlone)
{
    RepairScript script;
    script.walkTo(Station::Decide);
    ASSERT_FALSE(script.put(refused));
    EXPECT_TRUE(script.put(TakenUpAgain{}));
    ASSERT_FALSE(script.put(AssessAgain{}));
    EXPECT_EQ(script.next().question, Question::Substrate);
    EXPECT_TRUE(script.repair().answeredBy.empty());
    EXPECT_FALSE(script.repair().assessment.substrate);
    EXPECT_EQ(script.repair().assessment.job, u"4421"_s);
    script.toPlan(); // all is asked again, without corrections
    EXPECT_EQ(script.next().station, Station::Prepare);
}

TEST(Park, AssessingAgainDropsThePlanBeforeAnyBatch)
{
    RepairScript script;
    script.walkTo(Station::Mix);
    ASSERT_FALSE(script.put(refused));
    ASSERT_FALSE(script.put(AssessAgain{}));
    EXPECT_FALSE(script.repair().plan);
    EXPECT_FALSE(script.repair().planAcceptedAt);
    EXPECT_EQ(script.repair().prepDone, 0);
    EXPECT_EQ(script.next().station, Station::Assess);
    script.walkTo(Station::Done);
    EXPECT_FALSE(script.repair().open());
}

TEST(Park, AssessingAgainKeepsThePlanOnceABatchIsMixedAndAsksAllAgain)
{
    RepairScript script;
    script.walkTo(Station::Wait);
    const Repair before = script.repair();
    ASSERT_FALSE(script.put(refused));
    ASSERT_FALSE(script.put(AssessAgain{}));
    EXPECT_EQ(script.repair().plan, before.plan);
    EXPECT_EQ(script.repair().runs, before.runs);
    EXPECT_TRUE(script.repair().answeredBy.empty());
    EXPECT_EQ(script.next().question, Question::Substrate);
    // The same answers again: the plan stands, and it goes on where it was.
    for (const Answered& each : sampleAnswers())
        ASSERT_FALSE(script.put(each));
    EXPECT_FALSE(script.repair().replanDue());
    EXPECT_EQ(script.next(), nextStep(before));
}

TEST(Park, AssessingAgainNeedsNoParkingWhileThereIsNoPlan)
{
    RepairScript script;
    script.put(Answered{Question::Substrate, Substrate::Carbon, {}});
    ASSERT_EQ(script.next().station, Station::Decide);
    ASSERT_FALSE(script.put(AssessAgain{}));
    EXPECT_EQ(script.next().question, Question::Substrate);
    script.toPlan();
    EXPECT_TRUE(script.put(AssessAgain{}));
}

TEST(Park, NothingIsTakenUpThatIsNotParked)
{
    RepairScript script;
    EXPECT_TRUE(script.put(TakenUpAgain{}));
}

TEST(Park, RunningBatchesGoOn)
{
    RepairScript script;
    script.walkTo(Station::Spread);
    ASSERT_FALSE(script.put(byChoice));
    const BatchRef running{false, 0};
    EXPECT_FALSE(script.put(Gelled{running, GelPlace::Board}));
    EXPECT_FALSE(script.put(EdgesClear{running}));
    EXPECT_FALSE(script.put(Gelled{running, GelPlace::Panel}));
    EXPECT_FALSE(script.put(Sands{running}));
    EXPECT_TRUE(script.repair().run(running)->sands);
}

TEST(Park, NothingElseGoesOn)
{
    RepairScript script;
    script.walkTo(Station::Mix);
    const Payload due = actAt(script.repair());
    ASSERT_FALSE(script.put(byChoice));
    const Repair before = script.repair();
    const std::vector<Payload> others{due,
                                      ReadingTaken{},
                                      Sanded{{false, 0}},
                                      Turned{},
                                      HandedOver{},
                                      StepDone{Stage::Finish, 0, u"guide_coat"_s},
                                      PlanAccepted{before.assessment, samplePlan()},
                                      Answered{Question::Zone, Zone::Sensor, before.answeredBy.at(Question::Zone)}};
    for (const Payload& payload : others) {
        EXPECT_TRUE(script.put(payload)) << qPrintable(kindOf(payload));
        EXPECT_EQ(script.repair(), before);
    }
}

} // namespace
