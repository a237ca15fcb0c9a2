// SPDX-License-Identifier: GPL-3.0-or-later
// What is the supervisor's, what rings and what the clock tells, on every glass in every language by the rules of look
// and touch.
#include "every_look.h"

#include "shell/trouble_window.h"
#include "touch_rules/rule_check.h"

#include <QTemporaryDir>

#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class RoleRules : public LookTest {
protected:
    void waitTapAndCheck(const QString& control)
    {
        waitFor(control);
        tapAndCheck(control);
        m_bench->thumb().settle();
    }
    void givePin(const QString& pin)
    {
        for (const QChar digit : pin)
            ASSERT_NO_FATAL_FAILURE(tap(u"key_"_s + digit));
        check();
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
        m_bench->thumb().settle();
    }
    void toToday()
    {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        ASSERT_NO_FATAL_FAILURE(tap(u"today"_s));
    }
    void advance(Duration by)
    {
        m_bench->clock().advance(by);
        m_bench->window().tick();
        m_bench->thumb().settle();
    }
    void openBench()
    {
        Settings settings = demoSettings();
        settings.person = u"Technician Longest-Name"_s; // as long as a name may be
        m_bench = std::make_unique<ScriptedBench>(specOn(m_folder.filePath(u"bench.sqlite"_s), settings));
    }
    void waitFor(const QString& control) { EXPECT_TRUE(m_bench->thumb().waitFor(control)) << control.toStdString(); }

    QTemporaryDir m_folder;
};

TEST_P(RoleRules, OfThePin)
{
    openBench();
    tap(u"set_up"_s);
    tap(u"answer_way_on"_s); // the set-up has a test of its own: set_up_rules_test.cpp
    tapAndCheck(u"supervisor_pin"_s);
    givePin(u"271828"_s);
    check();
    givePin(u"271828"_s);
    tapAndCheck(u"supervisor_pin"_s);
}

TEST_P(RoleRules, OfSigningOffAndPuttingRight)
{
    openBench();
    ASSERT_TRUE(m_bench->door().set(u"271828"_s).empty());
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
    toToday();
    waitTapAndCheck(u"today_row_0"_s);
    waitTapAndCheck(u"closing"_s);
    waitFor(u"sign_off"_s);
    check();
    tapAndCheck(u"sign_off"_s);
    for (int i = 0; i < 3; ++i)
        givePin(u"314159"_s);
    check(); // it waits
    advance(seconds(30));
    givePin(u"271828"_s);
    waitTapAndCheck(u"closing"_s);
    waitFor(u"correct_event"_s);
    check();
    tap(u"correct_event"_s);
    waitFor(u"correct_0"_s);
    check();
    tapAndCheck(u"correct_0"_s);
    tap(u"letter_0"_s);
    tapAndCheck(u"answer_way_on"_s);
    toToday();
    waitFor(u"today_bench"_s);
    check();
    tapAndCheck(u"today_bench"_s);
}

TEST_P(RoleRules, OfOverriding)
{
    openBench();
    ASSERT_TRUE(m_bench->door().set(u"271828"_s).empty());
    DemoJob job = skirtPanel();
    job.answers[u"moisture"_s] = u"damp"_s;
    Walk walk(*m_bench, job);
    ASSERT_TRUE(walk.walkTo(Station::Decide)) << walk.why().toStdString();
    check();
    ASSERT_TRUE(m_bench->thumb().hold(u"override_stop"_s));
    check();
    tapAndCheck(u"override_maker_allows"_s);
    givePin(u"271828"_s);
    check();
}

TEST_P(RoleRules, OfAlarmsAndJumps)
{
    openBench();
    for (const QString& number : {u"4421"_s, u"4422"_s, u"4423"_s}) {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        DemoJob job = skirtPanel();
        job.job = number;
        Walk walk(*m_bench, job);
        ASSERT_TRUE(walk.walkTo(Station::Spread)) << walk.why().toStdString();
    }
    Instant stepped = m_bench->clock().now();
    stepped.utcMs += 5'400'000;
    m_bench->clock().set(stepped);
    advance(seconds(1));
    check(); // the jump is told on the ribbon
    const auto gel = [&] { return m_bench->repair(u"4421"_s)->runs.front().times().gel; };
    advance(gel() * 0.75);
    check(); // edges
    advance(seconds(1));
    check(); // the other colours
    advance(gel());
    check();
    m_bench->window().showHome();
    m_bench->thumb().settle();
    check();
    advance(minutes(10));
    check(); // it sands
    advance(minutes(60));
    check(); // sanding time over
}

TEST_P(RoleRules, OfABenchInUse)
{
    openBench();
    Settings settings = m_bench->window().settings();
    const rules::Glass& glass = GetParam().glass;
    TroubleWindow window({LogTrouble::InUse, u"strandbench, process 4711 on bench-2"_s},
                         m_folder.filePath(u"a.sqlite"_s), settings, glass.pixelsPerMillimetre());
    window.setFixedSize(glass.pixels);
    window.show();
    m_bench->thumb().settle();
    book().take(window, m_bench->window().theme(), u"in_use"_s, rules::RuleSet::Bench);
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, RoleRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
