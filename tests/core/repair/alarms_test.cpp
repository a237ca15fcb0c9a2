// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/alarms.h"

#include "repair/run_clock.h"
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const Assumptions ours; // edges at 0.75 of the gel

/// One batch of one lift: early, expected and late ends; the early gel at 4 min, so the edges are due at 3.
Repair oneBatch()
{
    Repair repair;
    repair.id = QUuid::createUuid();
    repair.plan = RepairPlan{};
    repair.plan->batches = {Batch{}};
    BatchRun run;
    run.hardenerIn = moment(0);
    run.mixed.times = {minutes(4), minutes(5), minutes(8), minutes(15)};
    run.mixed.howSure = HowSure{run.mixed.times,
                                {minutes(3), minutes(4), minutes(6), minutes(15)},
                                {minutes(5), minutes(6), minutes(10), minutes(15)},
                                {},
                                {},
                                0,
                                0};
    repair.runs = {run};
    return repair;
}

std::optional<AlarmKind> rings(const Repair& repair, int second)
{
    const auto alarm = alarmOf(repair, repair.runs.front(), ours, moment(second));
    return alarm ? std::optional(alarm->kind) : std::nullopt;
}

TEST(Alarms, RingForWhatMustNotBeLateByTheEarlyEndAndForSandingByTheLateOne)
{
    const Repair repair = oneBatch();
    EXPECT_EQ(rings(repair, 159), std::nullopt);
    EXPECT_EQ(rings(repair, 160), AlarmKind::EdgesSoon); // 0.75 x 4 min less 20 s
    EXPECT_EQ(rings(repair, 239), AlarmKind::EdgesSoon);
    EXPECT_EQ(rings(repair, 240), AlarmKind::Gels); // early end
    EXPECT_EQ(rings(repair, 599), AlarmKind::Gels);
    EXPECT_EQ(rings(repair, 600), AlarmKind::SandFrom); // late end
    EXPECT_EQ(rings(repair, 6 * 60 + 15 * 60 - 1), AlarmKind::SandFrom);
    EXPECT_EQ(rings(repair, 6 * 60 + 15 * 60), AlarmKind::SandUntil); // early end and the easy time
    EXPECT_EQ(rings(repair, 100'000), AlarmKind::SandUntil);          // until somebody comes
}

TEST(Alarms, SayHowLongIsLeftAndHowLongTheyRing)
{
    const Repair repair = oneBatch();
    const auto alarm = alarmOf(repair, repair.runs.front(), ours, moment(170));
    ASSERT_TRUE(alarm);
    EXPECT_DOUBLE_EQ(inSeconds(alarm->toAct), 10);
    EXPECT_DOUBLE_EQ(inSeconds(alarm->rings), 10);
    EXPECT_EQ(inSeconds(alarmOf(repair, repair.runs.front(), ours, moment(200))->toAct), 0);
}

TEST(Alarms, AreSilentWhenAnsweredUntilTheNextIsDue)
{
    Repair repair = oneBatch();
    repair.runs.front().answered = {AlarmKind::EdgesSoon};
    EXPECT_EQ(rings(repair, 200), std::nullopt);
    EXPECT_EQ(rings(repair, 240), AlarmKind::Gels);
    repair.runs.front().answered = {AlarmKind::EdgesSoon, AlarmKind::Gels, AlarmKind::SandFrom, AlarmKind::SandUntil};
    for (const int second : {200, 300, 700, 5000})
        EXPECT_EQ(rings(repair, second), std::nullopt) << second;
}

TEST(Alarms, AreAnsweredByTheActThatTheyCallFor)
{
    Repair repair = oneBatch();
    BatchRun& run = repair.runs.front();
    run.edgesClear = moment(170);
    EXPECT_EQ(rings(repair, 180), std::nullopt);
    EXPECT_EQ(rings(repair, 240), AlarmKind::Gels); // hands off is told all the same
    run.panelGelled = moment(250);
    EXPECT_EQ(rings(repair, 300), std::nullopt);
    run.sands = moment(500);
    EXPECT_EQ(rings(repair, 700), std::nullopt);
    EXPECT_EQ(rings(repair, 1300), AlarmKind::SandUntil);
    run.sanded = moment(1400);
    EXPECT_EQ(rings(repair, 1500), std::nullopt);
}

TEST(Alarms, ALiftOfSeveralBatchesIsCalledForSandingByItsLast)
{
    Repair repair = oneBatch();
    repair.plan->batches = {Batch{0, {}, {}}, Batch{0, {}, {}}, Batch{1, {}, {}}};
    EXPECT_EQ(rings(repair, 900), AlarmKind::Gels); // the second of this lift is still to come
    repair.runs.front().batch.index = 1;
    EXPECT_EQ(rings(repair, 900), AlarmKind::SandFrom);
    repair.runs.front().batch.index = 2;
    EXPECT_EQ(rings(repair, 900), AlarmKind::SandFrom);
}

TEST(Alarms, TheMostUrgentGoesFirst)
{
    const auto alarm = [](AlarmKind kind, double rings) { return DueAlarm{{}, {}, kind, {}, seconds(rings), {}}; };
    std::vector<DueAlarm> all{alarm(AlarmKind::SandFrom, 900), alarm(AlarmKind::SandUntil, 5),
                              alarm(AlarmKind::Gels, 3), alarm(AlarmKind::EdgesSoon, 1), alarm(AlarmKind::Gels, 30)};
    mostUrgentFirst(all);
    std::vector<std::pair<AlarmKind, double>> order;
    for (const DueAlarm& each : all)
        order.emplace_back(each.kind, inSeconds(each.rings));
    EXPECT_EQ(order, (std::vector<std::pair<AlarmKind, double>>{{AlarmKind::EdgesSoon, 1},
                                                                {AlarmKind::Gels, 30},
                                                                {AlarmKind::Gels, 3},
                                                                {AlarmKind::SandUntil, 5},
                                                                {AlarmKind::SandFrom, 900}}));
}

TEST(Alarms, AnAnswerIsFoldedOnce)
{
    RepairScript script;
    script.walkTo(Station::Spread);
    const BatchRef batch = script.repair().runs.back().batch;
    EXPECT_FALSE(script.put(AlarmAnswered{batch, AlarmKind::EdgesSoon}));
    EXPECT_TRUE(script.put(AlarmAnswered{batch, AlarmKind::EdgesSoon}));
    EXPECT_FALSE(script.put(AlarmAnswered{batch, AlarmKind::Gels}));
    EXPECT_TRUE(script.put(AlarmAnswered{{true, 7}, AlarmKind::Gels}));
    EXPECT_EQ(script.repair().runs.back().answered, (std::vector{AlarmKind::EdgesSoon, AlarmKind::Gels}));
}

} // namespace
} // namespace strandbench::test
