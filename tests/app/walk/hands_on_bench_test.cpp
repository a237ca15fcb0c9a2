// SPDX-License-Identifier: GPL-3.0-or-later
// Several mixes at one bench: hands wanted twice, the rest of the ribbon, jumps that lose nothing, a batch too hot.
#include "bench_fixture.h"
#include "shown.h"

#include "pictures/mix_block.h"
#include "repair/hands.h"
#include "repair/mixing.h"
#include "repair/run_clock.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class HandsOnBench : public BenchTest {
protected:
    [[nodiscard]] const Repair& repair(const QString& job) { return *bench().repair(job); }
    void go(const QString& job)
    {
        window().showRepair(repair(job).id);
        bench().thumb().settle();
    }
    void home()
    {
        window().showHome();
        bench().thumb().settle();
    }
    void later(Duration by)
    {
        bench().clock().advance(by);
        bench().thumb().settle();
        window().tick();
    }
    [[nodiscard]] HandsOf next(const QString& job)
    {
        const Repair& of = repair(job);
        const BatchRef ref = *nextStep(of).batch;
        const BatchInHand batch = batchInHand(*of.plan, ref, {}, bench().bench().planning());
        const auto forecast = forecastOf(of, batch, batch.batch.mix.hardenerShare, bench().bench().planning(),
                                         bench().bench().beliefOf(*batch.sheet));
        return {of.id, ref, handActs(batch.batch.mix.filler, forecast->howSure.early, bench().bench().assumptions())};
    }
    [[nodiscard]] std::vector<HandsOf> running(const QString& job)
    {
        return handsOf(repair(job), bench().bench().assumptions(), bench().clock().now());
    }
    [[nodiscard]] QAbstractButton* wayOn() { return bench().thumb().find(u"answer_way_on"_s); }
};

/// 4417 is spread while 4421 stands at the mix: it is told to wait, until a moment that core computes, and the caution
/// goes when that moment has come.
TEST_F(HandsOnBench, ABatchIsHeldBackUntilTheHandsAreFree)
{
    open();
    walkTo(skirtPanel(), Station::Mix);
    home();
    walkTo(roofCap(), Station::Spread);
    later(seconds(70));
    go(u"4421"_s);
    ASSERT_EQ(screen(), u"screen_mix"_s);
    const auto hold = judgeHands(running(u"4417"_s), next(u"4421"_s));
    ASSERT_TRUE(hold);
    ASSERT_FALSE(hold->collision.soft());
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    const QString notice = shown(window(), u"mix_notice"_s);
    EXPECT_TRUE(notice.contains(u"job 4417"_s)) << notice.toStdString();
    EXPECT_TRUE(notice.contains(words.duration(hold->delay))) << notice.toStdString();
    EXPECT_TRUE(notice.contains(words.clockTime(bench().clock().now(), hold->delay))) << notice.toStdString();
    EXPECT_TRUE(shown(window(), u"answer_way_on"_s).contains(u"anyway"_s));
    EXPECT_TRUE(wayOn()->isEnabled()); // the technician decides
    later(seconds(1));
    EXPECT_TRUE(shown(window(), u"mix_notice"_s).contains(words.duration(hold->delay - seconds(1))));
    tap(u"hold_back"_s);
    EXPECT_EQ(screen(), u"screen_spread"_s);
    EXPECT_TRUE(shown(window(), u"context"_s).contains(u"4417"_s));
    go(u"4421"_s);
    later(hold->delay - seconds(1));
    EXPECT_TRUE(shown(window(), u"mix_notice"_s).isEmpty()) << shown(window(), u"mix_notice"_s).toStdString();
    EXPECT_FALSE(shown(window(), u"answer_way_on"_s).contains(u"anyway"_s));
}

/// Mixed all the same: two clocks run, every figure is core's, and both the clock screen and the ribbon say who first.
TEST_F(HandsOnBench, TwoMixedAtOnceSayWhichGoesFirst)
{
    open();
    walkTo(skirtPanel(), Station::Mix);
    home();
    walkTo(roofCap(), Station::Spread);
    later(seconds(5));
    go(u"4421"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    std::vector<HandsOf> both = running(u"4417"_s);
    for (const HandsOf& each : running(u"4421"_s))
        both.push_back(each);
    const auto collision = nextCollision(both);
    ASSERT_TRUE(collision);
    const QString first = bench().bench().repair(collision->first.repair)->job;
    EXPECT_TRUE(shown(window(), u"clock_hands"_s).contains(u"first job "_s + first))
        << shown(window(), u"clock_hands"_s).toStdString();
    for (const char* name : {"ribbon_block_0", "ribbon_block_1"}) {
        const auto* block = window().findChild<MixBlock*>(QString::fromLatin1(name));
        const QString turn = block->accessibleName().startsWith(first) ? u"turn 1"_s : u"turn 2"_s;
        EXPECT_TRUE(block->accessibleName().endsWith(turn)) << block->accessibleName().toStdString();
    }
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    for (const QString& job : {u"4417"_s, u"4421"_s}) {
        go(job);
        later(seconds(7));
        const ClockFace face = clockOf(repair(job).runs.front(), bench().bench().assumptions(), bench().clock().now());
        EXPECT_EQ(shown(window(), u"clock_figure"_s), words.duration(face.toNextPhase)) << job.toStdString();
    }
    later(minutes(60)); // all is past: nothing collides any more
    EXPECT_TRUE(shown(window(), u"clock_hands"_s).isEmpty());
}

/// Six run: the ribbon shows the most urgent and a count, and the count opens them all.
TEST_F(HandsOnBench, SixMixesAreOneTapAway)
{
    open();
    QStringList jobs;
    for (int i = 0; i < 6; ++i) {
        DemoJob job = skirtPanel();
        job.job = QString::number(4431 + i);
        jobs << job.job;
        walkTo(job, Station::Spread);
        later(seconds(3));
        home();
    }
    const auto mixes = bench().bench().runningMixes();
    ASSERT_EQ(mixes.size(), 6U);
    EXPECT_EQ(shown(window(), u"ribbon_rest"_s), u"+4"_s); // two fit beside it on 217 mm
    tap(u"ribbon_rest"_s);
    ASSERT_EQ(screen(), u"screen_mixes"_s);
    for (int i = 0; i < 6; ++i) {
        const auto* block = window().findChild<MixBlock*>(u"mix_%1"_s.arg(i));
        ASSERT_TRUE(block && block->isVisible());
        const QString job = bench().bench().repair(mixes[std::size_t(i)].repair)->job;
        EXPECT_TRUE(block->accessibleName().startsWith(job + u','));
    }
    tap(u"mix_3"_s);
    EXPECT_TRUE(shown(window(), u"context"_s).contains(bench().bench().repair(mixes[3].repair)->job));
    EXPECT_EQ(screen(), u"screen_spread"_s);
}

/// Figures that are not recorded yet outlive a look at another repair's clock, and go when they are recorded.
TEST_F(HandsOnBench, WhatIsEnteredOutlivesAJump)
{
    open();
    walkTo(roofCap(), Station::Spread);
    home();
    Walk walk(bench(), skirtPanel());
    while (screen() != u"screen_assess_size"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    tap(u"length_mm_plus"_s);
    tap(u"length_mm_plus"_s);
    const QString length = shown(window(), u"length_mm_figure"_s);
    ASSERT_FALSE(length.isEmpty());
    tap(u"width_mm_figure"_s);
    tap(u"key_3"_s);
    tap(u"key_8"_s);
    tap(u"ribbon_block_0"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    go(u"4421"_s);
    EXPECT_TRUE(shown(window(), u"typed"_s).startsWith(u"38"_s)) << shown(window(), u"typed"_s).toStdString();
    tap(u"answer_way_on"_s);
    EXPECT_EQ(shown(window(), u"length_mm_figure"_s), length);
    EXPECT_TRUE(shown(window(), u"width_mm_figure"_s).startsWith(u"38"_s));
    walkTo(skirtPanel(), Station::Mix);
    EXPECT_NEAR(inMillimetres(repair(u"4421"_s).assessment.damage->width), 38, 1e-9);
}

TEST_F(HandsOnBench, AJobNumberHalfKeyedOutlivesAJump)
{
    open();
    walkTo(roofCap(), Station::Spread);
    home();
    tap(u"take_in"_s);
    tap(u"key_4"_s);
    tap(u"key_4"_s);
    tap(u"ribbon_block_0"_s);
    home();
    tap(u"take_in"_s);
    EXPECT_EQ(shown(window(), u"job_number"_s), u"44"_s);
    walkTo(skirtPanel(), Station::Assess);
    home();
    tap(u"take_in"_s);
    EXPECT_EQ(shown(window(), u"job_number"_s), u"–"_s); // taken in: the draft is gone
}

TEST_F(HandsOnBench, TheBeadAsLaidOutlivesAJumpAndGoesWhenMixed)
{
    open();
    walkTo(roofCap(), Station::Spread);
    home();
    walkTo(skirtPanel(), Station::Mix);
    tap(u"bead_as_laid"_s);
    const QString planned = shown(window(), u"hardener_g_figure"_s);
    for (int i = 0; i < 4; ++i)
        tap(u"hardener_g_plus"_s);
    const QString laid = shown(window(), u"hardener_g_figure"_s);
    ASSERT_NE(laid, planned);
    tap(u"ribbon_block_0"_s);
    go(u"4421"_s);
    tap(u"bead_as_laid"_s);
    EXPECT_EQ(shown(window(), u"hardener_g_figure"_s), laid);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    walkTo(skirtPanel(), Station::Mix, 1);
    tap(u"bead_as_laid"_s);
    EXPECT_NE(shown(window(), u"hardener_g_figure"_s), laid);
}

/// A deep gouge in a laminate, planned close under the laminate's 90 °C; read again on a hot day.
DemoJob deepGouge()
{
    DemoJob job = roofCap();
    job.figures[u"depth_mm"_s] = u"7"_s;
    job.figures[u"panel_thickness_mm"_s] = u"16"_s;
    job.readAgain = {{u"air_c"_s, u"31"_s}, {u"panel_c"_s, u"29.5"_s}, {u"humidity_percent"_s, u"40"_s}};
    return job;
}

TEST_F(HandsOnBench, ABatchTooHotForItsLiftIsHeldUntilReadAgain)
{
    open();
    walkTo(deepGouge(), Station::Mix);
    const Repair& of = repair(u"4417"_s);
    const BatchInHand batch = batchInHand(*of.plan, {}, {}, bench().bench().planning());
    const auto hot = forecastOf(of, batch, batch.batch.mix.hardenerShare, bench().bench().planning(),
                                bench().bench().beliefOf(*batch.sheet));
    ASSERT_TRUE(hot);
    ASSERT_GE(hot->peak, *of.plan->peakLimit) << inCelsius(hot->peak);
    EXPECT_FALSE(wayOn()->isEnabled());
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    const QString notice = shown(window(), u"mix_notice"_s);
    EXPECT_TRUE(notice.contains(words.fineTemperature(hot->peak)) &&
                notice.contains(words.fineTemperature(*of.plan->peakLimit)))
        << notice.toStdString();
    tap(u"bead_as_laid"_s); // no way round it
    EXPECT_FALSE(wayOn()->isEnabled());
    tap(u"answer_back"_s);
    tap(u"read_again"_s);
    ASSERT_EQ(screen(), u"screen_read_again"_s);
    for (const auto& [name, keys] : std::vector<std::pair<QString, QString>>{
             {u"air_c"_s, u"20"_s}, {u"panel_c"_s, u"19"_s}, {u"humidity_percent"_s, u"50"_s}}) {
        tap(name + u"_figure"_s);
        for (const QChar key : keys)
            tap(u"key_"_s + key);
        tap(u"answer_way_on"_s);
    }
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_mix"_s);
    EXPECT_NEAR(inCelsius(repair(u"4417"_s).lastReading->panel), 19, 1e-9);
    EXPECT_TRUE(wayOn()->isEnabled());
    EXPECT_TRUE(shown(window(), u"mix_notice"_s).isEmpty());
}

/// Or it is planned again with what was read: lifts that stay under the limit.
TEST_F(HandsOnBench, ABatchTooHotForItsLiftIsPlannedAgain)
{
    open();
    walkTo(deepGouge(), Station::Mix);
    const std::size_t lifts = repair(u"4417"_s).plan->lifts.size();
    tap(u"plan_again"_s);
    ASSERT_EQ(screen(), u"screen_replan"_s);
    walkTo(deepGouge(), Station::Mix);
    EXPECT_GT(repair(u"4417"_s).plan->lifts.size(), lifts);
    EXPECT_TRUE(wayOn()->isEnabled());
}

} // namespace
} // namespace strandbench::test
