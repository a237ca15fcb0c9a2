// SPDX-License-Identifier: GPL-3.0-or-later
// What the cure engine brings onto the glass: the hardener as laid, and the curve of a running layer.
#include "bench_fixture.h"
#include "shown.h"

#include "cure/solve.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QSet>
#include <QtTest/QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class CureScreens : public BenchTest {
protected:
    [[nodiscard]] QString text(const QString& name)
    {
        const auto* label = window().findChild<FitLabel*>(name);
        return label ? label->text() : QString();
    }
    [[nodiscard]] const BatchRun& run() { return bench().repair(u"4421"_s)->runs.front(); }
    void toTheBead()
    {
        open();
        walkTo(skirtPanel(), Station::Mix);
        tap(u"bead_as_laid"_s);
        ASSERT_EQ(screen(), u"screen_bead"_s);
    }
};

/// A little more hardener than planned: the act holds what was laid, and its times are the engine's for that.
TEST_F(CureScreens, MoreHardenerIsBookedAndGelsEarlier)
{
    toTheBead();
    const Repair before = *bench().repair(u"4421"_s);
    const Mix planned = before.plan->batches.front().mix;
    const QString outlook = text(u"outlook"_s);
    for (int i = 0; i < 4; ++i)
        tap(u"hardener_g_plus"_s);
    EXPECT_NE(text(u"outlook"_s), outlook);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    EXPECT_NEAR(inGrams(run().mixed.hardener), inGrams(planned.hardener) + 0.04, 1e-6);
    ASSERT_TRUE(run().mixed.cureCase);
    EXPECT_NEAR(run().mixed.cureCase->hardener.value(), run().mixed.hardener / planned.filler, 1e-6);
    const CureOutcome solved = solveCure(*run().mixed.cureCase);
    ASSERT_TRUE(solved);
    EXPECT_NEAR(inSeconds(run().mixed.times.gel), inSeconds(*solved->gel), 0.01);
    EXPECT_NEAR(inSeconds(run().mixed.times.sand), inSeconds(*solved->sand), 0.01);
    EXPECT_LT(run().mixed.times.gel, before.plan->batches.front().times.gel);
}

/// A finger that stays down: the figure runs, and what it leads to follows it, computed beside the glass.
TEST_F(CureScreens, StepsRecomputeWhileTheFingerIsDown)
{
    ScriptedBench threaded(
        {log(), workingMorning(), demoSettings(), {1280, 800}, 5.87, std::nullopt, Worker::Runs::InThread});
    Walk walk(threaded, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    ASSERT_TRUE(threaded.thumb().tap(u"bead_as_laid"_s));
    const auto outlook = [&threaded] { return threaded.window().findChild<FitLabel*>(u"outlook"_s)->text(); };
    QAbstractButton* plus = threaded.thumb().find(u"hardener_g_plus"_s);
    ASSERT_NE(plus, nullptr);
    QSet<QString> seen{outlook()};
    QTest::mousePress(plus, Qt::LeftButton);
    QElapsedTimer patience;
    patience.start();
    while (seen.size() < 4 && patience.elapsed() < 20'000) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
        seen << outlook();
    }
    EXPECT_TRUE(plus->isDown());
    QTest::mouseRelease(plus, Qt::LeftButton);
    EXPECT_GE(seen.size(), 4);
}

/// Outside the sheet's 1.2 to 3 % the batch is refused: the way on is shut, and it says why.
TEST_F(CureScreens, OutsideTheBandTheBatchIsRefused)
{
    toTheBead();
    EXPECT_TRUE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
    for (int i = 0; i < 20; ++i)
        tap(u"hardener_g_plus"_s); // 0.28 g and 0.20 g on 14 g: 3.4 %
    EXPECT_FALSE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
    EXPECT_TRUE(text(u"verdict"_s).contains(u"do not use this mix"_s)) << text(u"verdict"_s).toStdString();
    for (int i = 0; i < 8; ++i)
        tap(u"hardener_g_minus"_s); // 2.9 %: a caution
    EXPECT_TRUE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_mix"_s);
    EXPECT_TRUE(bench().repair(u"4421"_s)->runs.empty());
}

/// The curve is one tap from the clock; its figures are those of the case that was stored.
TEST_F(CureScreens, CurveShowsTheStoredCase)
{
    open();
    walkTo(skirtPanel(), Station::Spread);
    const CureOutcome solved = solveCure(*run().mixed.cureCase);
    ASSERT_TRUE(solved);
    tap(u"curve_key"_s);
    ASSERT_EQ(screen(), u"screen_curve"_s);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_EQ(text(u"curve_gel"_s), words.duration(*solved->gel));
    EXPECT_EQ(text(u"curve_sand"_s), words.duration(*solved->sand));
    EXPECT_EQ(text(u"curve_peak"_s), words.temperature(solved->peak));
    EXPECT_NE(window().findChild<QWidget*>(u"curve"_s), nullptr);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_spread"_s);
}

/// After a restart the curve is there again: it comes from the log.
TEST_F(CureScreens, CurveOutlivesARestart)
{
    open();
    walkTo(skirtPanel(), Station::Spread);
    const std::optional<CureCase> before = run().mixed.cureCase;
    open();
    EXPECT_TRUE(run().mixed.cureCase == before);
    window().showRepair(bench().repair(u"4421"_s)->id);
    bench().thumb().settle();
    tap(u"curve_key"_s);
    EXPECT_EQ(screen(), u"screen_curve"_s);
}

/// The newest reading counts, not the one that was planned with: the batch is on a warmer panel now.
TEST_F(CureScreens, TheClockGoesByTheReadingTakenLast)
{
    open();
    walkTo(skirtPanel(), Station::Spread);
    const Repair& repair = *bench().repair(u"4421"_s);
    const CureCase& mixed = *repair.runs.front().mixed.cureCase;
    EXPECT_NEAR(inCelsius(mixed.temperature), inCelsius(repair.lastReading->air), 1e-9);
    for (const StackLayer& each : mixed.stack)
        EXPECT_NEAR(inCelsius(each.temperature), inCelsius(repair.lastReading->panel), 1e-9);
    EXPECT_FALSE(repair.lastReading == repair.assessment.reading) << "the demo job reads another value again";
}

/// Only the newest of what was asked for is shown, whatever the thread had in hand.
TEST(CureWorker, TheLatestRequestWins)
{
    std::vector<int> shown;
    Worker worker(Worker::Runs::InThread);
    for (int i = 1; i <= 50; ++i)
        worker.ask([i, &shown] { return [i, &shown] { shown.push_back(i); }; });
    QElapsedTimer patience;
    patience.start();
    while (worker.busy() && patience.elapsed() < 20'000)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
    EXPECT_FALSE(worker.busy());
    EXPECT_EQ(shown, std::vector<int>{50});
}

TEST(CureWorker, EndsWhileItWorksAndShowsNothing)
{
    bool shown = false;
    {
        Worker worker(Worker::Runs::InThread);
        worker.ask([&shown] { return [&shown] { shown = true; }; });
    }
    QCoreApplication::processEvents();
    EXPECT_FALSE(shown);
}

} // namespace
} // namespace strandbench::test
