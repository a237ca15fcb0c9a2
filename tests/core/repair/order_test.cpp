// SPDX-License-Identifier: GPL-3.0-or-later
// Order: at every step of a whole repair, everything that could be said is tried. What may be said is
// worked out here from the rules once more, not from the fold.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

std::vector<Payload> everythingOnABatch(BatchRef batch)
{
    HardenerIn mixed;
    mixed.batch = batch;
    return {mixed,        EdgesClear{batch}, Gelled{batch, GelPlace::Board}, Gelled{batch, GelPlace::Panel},
            Sands{batch}, Sanded{batch}};
}

/// All that can be said from preparing on, with batches and steps that the plan does not have among it.
std::vector<Payload> everything(const Assessment& assessment)
{
    std::vector<Payload> all{TakenIn{u"4421"_s, u"another"_s},
                             PlanAccepted{assessment, samplePlan()},
                             Turned{},
                             TakenUpAgain{},
                             AssessAgain{},
                             HandedOver{},
                             Answered{Question::Zone, Zone::Cosmetic, {}}};
    for (int i = -1; i <= 4; ++i)
        for (bool finishing : {false, true})
            for (const Payload& each : everythingOnABatch({finishing, i}))
                all.push_back(each);
    const RepairPlan plan = samplePlan();
    for (int i = -1; i <= 7; ++i) {
        const auto at = std::size_t(std::max(i, 0));
        all.push_back(StepDone{Stage::Prepare, i, at < plan.prep.size() ? plan.prep[at].code : u"none"_s});
        all.push_back(StepDone{Stage::Finish, i, at < plan.finishing.size() ? plan.finishing[at].code : u"none"_s});
        all.push_back(StepDone{Stage::HandOver, i, at < 6 ? handOverTests()[at] : QString()});
    }
    return all;
}

/// The rule, said once more: what is due, and the open acts of batches that have their hardener.
bool allowed(const Payload& payload, const Repair& repair, const Payload& due)
{
    if (payload == due)
        return true;
    if (std::holds_alternative<HardenerIn>(payload) && std::holds_alternative<HardenerIn>(due))
        return std::get<HardenerIn>(payload).batch == std::get<HardenerIn>(due).batch;
    for (const BatchRun& run : repair.runs) {
        if (run.sands)
            continue;
        if (payload == Payload(Sands{run.batch}))
            return true;
        if (payload == Payload(EdgesClear{run.batch}))
            return !run.edgesClear;
        if (payload == Payload(Gelled{run.batch, GelPlace::Board}))
            return !run.boardGelled;
        if (payload == Payload(Gelled{run.batch, GelPlace::Panel}))
            return !run.panelGelled;
    }
    return false;
}

TEST(Order, OnlyWhatIsDueIsTakenAtEveryStepOfARepair)
{
    RepairScript script;
    script.toPlan();
    int taken = 0;
    int refused = 0;
    while (script.next().station != Station::Done) {
        const Payload due = actAt(script.repair());
        for (const Payload& payload : everything(script.repair().assessment)) {
            Repair tried = script.repair();
            const bool accepted = !apply(tried, script.eventOf(payload));
            EXPECT_EQ(accepted, allowed(payload, script.repair(), due))
                << qPrintable(kindOf(payload)) << " with " << qPrintable(kindOf(due)) << " due";
            if (!accepted) {
                EXPECT_EQ(tried, script.repair()) << "a refused event changed the repair";
            }
            ++(accepted ? taken : refused);
        }
        ASSERT_FALSE(script.put(due));
    }
    EXPECT_GT(taken, 40);
    EXPECT_GT(refused, 3000);
}

TEST(Order, NothingFollowsTheHandingOver)
{
    RepairScript script;
    script.walkTo(Station::Done);
    std::vector<Payload> all = everything(script.repair().assessment);
    all.push_back(ReadingTaken{});
    all.push_back(Parked{});
    for (const Payload& payload : all) {
        Repair tried = script.repair();
        EXPECT_TRUE(apply(tried, script.eventOf(payload))) << qPrintable(kindOf(payload));
        EXPECT_EQ(tried, script.repair());
    }
}

TEST(Order, AFaultNamesTheEventAndWhatIsDue)
{
    RepairScript script;
    script.toPlan();
    const auto fault = script.put(StepDone{Stage::Prepare, 2, u"read_air"_s});
    ASSERT_TRUE(fault);
    EXPECT_EQ(*fault,
              (Fault{u"step_done"_s, u"prepare 2 read_air"_s, FaultKind::Conflicts, {u"next_step"_s, u"prepare 0"_s}}));
}

TEST(Order, AStepMustCarryItsOwnCode)
{
    RepairScript script;
    script.toPlan();
    EXPECT_TRUE(script.put(StepDone{Stage::Prepare, 0, u"wash"_s}));
}

TEST(Order, TheFirstEventTakesIn)
{
    Repair repair;
    RepairScript script;
    Event event = script.eventOf(ReadingTaken{});
    EXPECT_TRUE(apply(repair, event));
    EXPECT_EQ(repair, Repair{});
    EXPECT_FALSE(foldRepair({}));
}

TEST(Order, TakingInNeedsAJobAndAPanel)
{
    for (const TakenIn& taken : {TakenIn{u" \t"_s, u"skirt"_s}, TakenIn{u"4421"_s, QString()}}) {
        Repair repair;
        const auto fault = apply(repair, RepairScript().eventOf(taken));
        ASSERT_TRUE(fault);
        EXPECT_EQ(fault->kind, FaultKind::Empty);
        EXPECT_EQ(repair, Repair{});
    }
}

TEST(Order, SeqRisesAndTheRepairStaysTheSame)
{
    RepairScript script;
    Repair repair = script.repair();
    Event event = script.eventOf(ReadingTaken{});
    event.seq = repair.lastSeq;
    EXPECT_EQ(apply(repair, event)->field, u"seq"_s);
    event.seq = repair.lastSeq + 5; // others' events lie between
    event.repair = QUuid::createUuid();
    EXPECT_EQ(apply(repair, event)->field, u"repair"_s);
    event.repair = repair.id;
    EXPECT_FALSE(apply(repair, event));
}

class Plans : public ::testing::Test {
protected:
    Plans() { script.walkTo(Station::Decide); }
    std::optional<Fault> accept(const RepairPlan& plan)
    {
        return script.put(PlanAccepted{script.repair().assessment, plan});
    }
    RepairScript script;
};

TEST_F(Plans, AreAcceptedOnce)
{
    ASSERT_FALSE(accept(samplePlan()));
    EXPECT_TRUE(accept(samplePlan()));
}

TEST_F(Plans, NeedAllAnswers)
{
    RepairScript fresh;
    EXPECT_TRUE(fresh.put(PlanAccepted{fresh.repair().assessment, samplePlan()}));
}

TEST_F(Plans, ThatStopAreNotAccepted)
{
    RepairPlan plan = samplePlan();
    plan.fill = false;
    EXPECT_TRUE(accept(plan));
}

TEST_F(Plans, ForOtherAnswersAreNotAccepted)
{
    Assessment other = script.repair().assessment;
    other.zone = Zone::Sensor;
    EXPECT_TRUE(script.put(PlanAccepted{other, samplePlan()}));
}

TEST_F(Plans, WithBatchesOfNoLiftOrOutOfOrderAreNotAccepted)
{
    for (int wrong : {-1, 3, 99}) {
        RepairPlan plan = samplePlan();
        plan.batches.back().lift = wrong;
        EXPECT_TRUE(accept(plan)) << wrong;
    }
    RepairPlan plan = samplePlan();
    std::swap(plan.batches.front(), plan.batches.back());
    EXPECT_TRUE(accept(plan));
    plan = samplePlan();
    plan.finish.coats = 1;
    EXPECT_TRUE(accept(plan));
    EXPECT_EQ(script.next().station, Station::Decide);
}

} // namespace
