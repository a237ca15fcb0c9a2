// SPDX-License-Identifier: GPL-3.0-or-later
// One repair, all the way: every figure on the glass is the plan's.
#include "bench_fixture.h"
#include "plan_checker.h"

#include "exchange/events.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class WholeWalk : public BenchTest, public ::testing::WithParamInterface<std::pair<const char*, UnitSystem>> {};

TEST_P(WholeWalk, EveryFigureIsThePlans)
{
    Settings settings = demoSettings();
    settings.language = QString::fromLatin1(GetParam().first);
    settings.units = GetParam().second;
    open(settings);
    PlanChecker checker(bench(), skirtPanel());
    Walk walk(bench(), skirtPanel());
    int touches = 0;
    walk.touched = [&](const Touch&) {
        ++touches;
        checker.check();
    };
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
    for (const QString& each : QStringList{u"screen_plan"_s, u"screen_spread"_s, u"screen_wait"_s, u"screen_sand"_s,
                                           u"screen_turn"_s, u"screen_hand_over"_s, u"dew"_s})
        EXPECT_GT(checker.timesOf(each), 0) << each.toStdString() << " never came";
    EXPECT_EQ(checker.timesOf(u"screen_mix"_s), 3) << "two faces and a finishing coat";
    EXPECT_GT(touches, 80);
}

TEST(WholeWalkOpening, IsTheHoleAndTheRunOfItsBevels)
{
    // 52 mm and a 4 : 1 bevel that runs to half of 4 mm on each face: 52 + 2 * 4 * 2 = 68 mm (common practice).
    Damage hole;
    hole.kind = DamageKind::Hole;
    hole.length = millimetres(52);
    hole.panelThickness = millimetres(4);
    hole.bevelRatio = 4;
    EXPECT_NEAR(inMillimetres(openingOf(hole, true)), 68, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(InBothUnits, WholeWalk,
                         ::testing::Values(std::pair{"en", UnitSystem::Metric},
                                           std::pair{"de", UnitSystem::UsCustomary}),
                         [](const auto& each) { return std::string(each.param.first); });

class Recorded : public BenchTest {};

TEST_F(Recorded, TheLogHoldsEveryActInOrder)
{
    open();
    QUuid id;
    std::vector<NextStep> steps;
    Walk walk(bench(), skirtPanel());
    walk.touched = [&](const Touch&) {
        if (const Repair* repair = bench().repair(u"4421"_s)) {
            id = repair->id;
            if (steps.empty() || steps.back() != nextStep(*repair))
                steps.push_back(nextStep(*repair));
        }
    };
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
    close();
    const auto report = verifyLog(log());
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    ASSERT_TRUE(opened.has_value());
    const auto events = (*opened)->events(id);
    ASSERT_TRUE(events.has_value());
    // Folding the log again passes by the very steps that the glass showed.
    Repair again;
    std::vector<NextStep> replayed;
    for (const Event& each : *events) {
        ASSERT_FALSE(apply(again, each).has_value());
        if (replayed.empty() || replayed.back() != nextStep(again))
            replayed.push_back(nextStep(again));
    }
    EXPECT_FALSE(again.open());
    replayed.pop_back(); // done: the repair is no longer among the open ones
    EXPECT_EQ(replayed.size(), steps.size());
    EXPECT_TRUE(replayed == steps);
}

} // namespace
} // namespace strandbench::test
