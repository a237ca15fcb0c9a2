// SPDX-License-Identifier: GPL-3.0-or-later
// Whole practice panels by taps: what is decided on the glass is what core marks, and the shop's log stays as it was.
#include "practice_thumb.h"

#include "touch/fit_label.h"
#include "walk/demo_jobs.h"
#include "words/practice_words.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class PracticeOnTheGlass : public ::testing::Test {
protected:
    void open()
    {
        ScriptedBench::Spec spec;
        spec.log = m_folder.filePath(u"bench.sqlite"_s);
        spec.start = workingMorning();
        spec.settings = demoSettings();
        spec.practises = true;
        m_bench = std::make_unique<ScriptedBench>(spec);
    }
    void tap(const QString& control)
    {
        ASSERT_TRUE(m_bench->thumb().tap(control)) << control.toStdString() << " on " << screen().toStdString();
        m_bench->thumb().settle();
    }
    [[nodiscard]] QString screen() { return m_bench->window().screen()->objectName(); }
    void toPractice()
    {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        tap(u"practice"_s);
        if (screen() == u"screen_tour"_s)
            tap(u"skip_tour"_s);
        ASSERT_EQ(screen(), u"screen_practice"_s);
    }
    /// Works a panel of the program's own; changes what the perfect pupil would do.
    void work(const QString& id, const std::function<void(Attempt&)>& change = {})
    {
        const PracticePanel panel = carried(id);
        toPractice();
        m_bench->practice().begin(panel);
        m_bench->thumb().settle();
        const PlanningSet& shop = m_bench->bench().planning();
        Attempt attempt = perfectAttempt(modelAnswer(panel.truth, shop), shop);
        if (change)
            change(attempt);
        EXPECT_EQ(PracticeThumb(*m_bench).work(attempt), QString());
        ASSERT_TRUE(m_bench->practice().marking());
    }
    [[nodiscard]] QStringList wrong()
    {
        QStringList all;
        for (const Mark& each : m_bench->practice().marking()->marks)
            if (each.judged == Judged::Wrong)
                all << codeOf(each.decision);
        return all;
    }
    [[nodiscard]] std::pair<qint64, QByteArray> chainInLog()
    {
        const auto log = RepairLog::open(m_folder.filePath(u"bench.sqlite"_s), LogMode::ReadOnly);
        const auto head = (*log)->head();
        return {head->count, head->hash};
    }

    QTemporaryDir m_folder;
    std::unique_ptr<ScriptedBench> m_bench;
};

TEST_F(PracticeOnTheGlass, AStopIsStoppedForItsReason)
{
    open();
    work(u"spot_joint"_s);
    EXPECT_EQ(wrong().join(u' ').toStdString(), std::string());
    EXPECT_TRUE(m_bench->practice().marking()->outcome.passed());
}

TEST_F(PracticeOnTheGlass, ALiftIsMixedByEyeSpreadAndSandedByTheNail)
{
    open();
    work(u"deep_gouge"_s);
    EXPECT_EQ(wrong().join(u' ').toStdString(), std::string());
    EXPECT_TRUE(m_bench->practice().marking()->outcome.passed());
}

TEST_F(PracticeOnTheGlass, AThroughHoleIsFilledFromBothFaces)
{
    open();
    work(u"smc_bonnet_hole"_s);
    EXPECT_EQ(wrong().join(u' ').toStdString(), std::string());
    EXPECT_TRUE(m_bench->practice().marking()->outcome.passed());
}

TEST_F(PracticeOnTheGlass, SandingTooSoonIsOneMarkWithItsConsequence)
{
    open();
    work(u"deep_gouge"_s, [](Attempt& attempt) {
        for (AttemptedLift& each : attempt.lifts)
            each.sanded = *each.batches.back().edgesCleared + seconds(30);
    });
    ASSERT_FALSE(wrong().isEmpty());
    EXPECT_EQ(wrong().removeDuplicates(), wrong().size() - 1);
    EXPECT_EQ(wrong().front(), u"sanded_at"_s);
    tap(u"mark_%1"_s.arg([&] {
        const auto& marks = m_bench->practice().marking()->marks;
        return std::ranges::find(marks, Judged::Wrong, &Mark::judged) - marks.begin();
    }()));
    ASSERT_EQ(screen(), u"screen_practice_mark"_s);
    const auto* told = m_bench->window().findChild<FitLabel*>(u"mark_consequence"_s);
    ASSERT_TRUE(told);
    const auto& marks = m_bench->practice().marking()->marks;
    const Mark& mark = *std::ranges::find(marks, Judged::Wrong, &Mark::judged);
    EXPECT_EQ(mark.consequence->what.code, u"drags"_s);
    EXPECT_EQ(told->text(), consequenceTold(mark.consequence->what, Words(UnitSystem::Metric, QLocale(u"en"_s))));
    tap(u"answer_way_on"_s);
    tap(u"replay"_s);
    EXPECT_EQ(screen(), u"screen_practice_replay"_s);
}

TEST_F(PracticeOnTheGlass, AFilledStopNeverPasses)
{
    open();
    const PracticePanel panel = carried(u"spot_joint"_s);
    toPractice();
    m_bench->practice().begin(panel);
    m_bench->thumb().settle();
    const PlanningSet& shop = m_bench->bench().planning();
    Attempt attempt = perfectAttempt(modelAnswer(panel.truth, shop), shop);
    attempt.fill = true;
    EXPECT_EQ(PracticeThumb(*m_bench).work(attempt), QString()) << "filling what the own answers stop ends it";
    EXPECT_TRUE(m_bench->practice().marking()->outcome.filledAStop);
    EXPECT_FALSE(m_bench->practice().marking()->outcome.passed());
}

TEST_F(PracticeOnTheGlass, TheShopsLogStaysAsItWasButForTheMixThatRan)
{
    open();
    Walk walk(*m_bench, roofCap());
    ASSERT_TRUE(walk.walkTo(Station::Spread)) << walk.why().toStdString();
    const QUuid running = m_bench->repair(roofCap().job)->id;
    const auto before = chainInLog();
    ASSERT_GT(before.first, 0);
    work(u"spot_joint"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(chainInLog(), before) << "a whole panel was practised";
    // In the midst of a panel the mix that runs is a tap away, and the panel waits.
    tap(u"practice_made"_s);
    ASSERT_EQ(screen(), u"screen_panel_look"_s);
    tap(u"ribbon_block_0"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(chainInLog().first, before.first + 1) << "its edges are clear";
    const auto log = RepairLog::open(m_folder.filePath(u"bench.sqlite"_s), LogMode::ReadOnly);
    EXPECT_TRUE(std::holds_alternative<EdgesClear>((*log)->events(running)->back().payload));
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tap(u"practice"_s);
    EXPECT_EQ(screen(), u"screen_panel_look"_s) << "where it was left";
}

TEST_F(PracticeOnTheGlass, TheClockRunsAtThePaceThatIsChosen)
{
    open();
    const PracticePanel panel = carried(u"deep_gouge"_s);
    toPractice();
    m_bench->practice().begin(panel);
    m_bench->thumb().settle();
    const PlanningSet& shop = m_bench->bench().planning();
    const Attempt attempt = perfectAttempt(modelAnswer(panel.truth, shop), shop);
    PracticeThumb pupil(*m_bench);
    while (m_bench->practice().run()->asks() != PracticeAsks::Spread)
        ASSERT_EQ(pupil.step(attempt), QString());
    const auto figure = [&] { return m_bench->window().findChild<FitLabel*>(u"practice_figure"_s)->text(); };
    const auto wait = [&](Duration by) {
        m_bench->clock().advance(by);
        m_bench->window().tick();
    };
    wait(seconds(10));
    EXPECT_EQ(figure(), u"00:10"_s);
    tap(u"pace"_s);
    wait(seconds(10));
    EXPECT_EQ(figure(), u"01:00"_s) << "five times as fast, and what was gone stays";
    tap(u"pace"_s);
    wait(seconds(3));
    EXPECT_EQ(figure(), u"02:00"_s) << "twenty times";
    tap(u"pace"_s);
    wait(seconds(5));
    EXPECT_EQ(figure(), u"02:05"_s) << "as in the shop";
}

TEST_F(PracticeOnTheGlass, TheNextPanelExercisesTheWeakestSkillAndTheRecordOutlivesTheProgram)
{
    open();
    work(u"spot_joint"_s);
    tap(u"answer_way_on"_s);
    m_bench.reset();
    open();
    toPractice();
    EXPECT_EQ(screen(), u"screen_practice"_s) << "no tour for somebody who has practised";
    tap(u"practice_skills"_s);
    const auto told = [&](const QString& skill) {
        const auto* row = m_bench->window().findChild<QWidget*>(u"skill_"_s + skill);
        return row ? row->findChild<FitLabel*>(u"skill_told_"_s + skill)->text() : QString();
    };
    EXPECT_EQ(told(u"identify"_s), u"1 of 1 right, not mastered yet"_s);
    tap(u"answer_back"_s);
    tap(u"practice_next"_s);
    ASSERT_EQ(screen(), u"screen_panel_look"_s);
    const PlanningSet& shop = m_bench->bench().planning();
    EXPECT_TRUE(planRepair(m_bench->practice().run()->panel().truth, shop).fill) << "only filling exercises the rest";
}

} // namespace
} // namespace strandbench::test
