// SPDX-License-Identifier: GPL-3.0-or-later
// What is the supervisor's, what rings and what the clock tells, on every glass in every language by the rules of look
// and touch.
#include "walk/demo_jobs.h"

#include "shell/trouble_window.h"
#include "touch_rules/glass.h"
#include "touch_rules/rule_check.h"

#include <QDeadlineTimer>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

struct Look {
    rules::Glass glass;
    QString language;
};

class RoleRules : public ::testing::TestWithParam<Look> {
protected:
    void check()
    {
        const QString name = m_bench->window().screen()->objectName();
        if (const QString folder = qEnvironmentVariable("ROLE_PICTURES"); !folder.isEmpty())
            m_bench->window().grab().save(
                u"%1/%2_%3_%4_%5.png"_s.arg(folder, GetParam().glass.name, GetParam().language)
                    .arg(m_number++, 2, 10, QLatin1Char('0'))
                    .arg(name));
        for (const rules::Breach& breach : rules::checkScreen(&m_bench->window(), m_bench->window().theme())) {
            std::ostringstream said;
            said << breach;
            ADD_FAILURE() << name.toStdString() << ": " << said.str();
        }
    }
    void tap(const QString& control)
    {
        ASSERT_TRUE(m_bench->thumb().tap(control))
            << control.toStdString() << " on " << m_bench->window().screen()->objectName().toStdString();
    }
    void tapAndCheck(const QString& control)
    {
        ASSERT_NO_FATAL_FAILURE(tap(control));
        check();
    }
    void waitFor(const QString& control)
    {
        const QDeadlineTimer deadline(20000);
        const QAbstractButton* found = nullptr;
        do {
            m_bench->thumb().settle();
            found = m_bench->thumb().find(control);
        } while (!(found && found->isEnabled()) && !deadline.hasExpired());
    }
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
        settings.language = GetParam().language;
        settings.person = u"Technician Longest-Name"_s; // as long as a name may be
        const rules::Glass& glass = GetParam().glass;
        ScriptedBench::Spec spec;
        spec.log = m_folder.filePath(u"bench.sqlite"_s);
        spec.start = workingMorning();
        spec.settings = settings;
        spec.glass = glass.pixels;
        spec.pixelsPerMillimetre = glass.pixelsPerMillimetre();
        m_bench = std::make_unique<ScriptedBench>(spec);
    }

    QTemporaryDir m_folder;
    std::unique_ptr<ScriptedBench> m_bench;

private:
    int m_number = 0;
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
    waitFor(u"sign_off"_s);
    check();
    tapAndCheck(u"sign_off"_s);
    for (int i = 0; i < 3; ++i)
        givePin(u"314159"_s);
    check(); // it waits
    advance(seconds(30));
    givePin(u"271828"_s);
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
    for (const rules::Breach& breach : rules::checkScreen(&window, m_bench->window().theme())) {
        std::ostringstream said;
        said << breach;
        ADD_FAILURE() << said.str();
    }
    if (const QString folder = qEnvironmentVariable("ROLE_PICTURES"); !folder.isEmpty())
        window.grab().save(u"%1/%2_%3_in_use.png"_s.arg(folder, glass.name, GetParam().language));
}

std::vector<Look> everyLook()
{
    std::vector<Look> looks;
    for (const rules::Glass& glass : rules::glasses())
        for (const QString& language : {u"en"_s, u"es"_s, u"fr"_s, u"de"_s})
            looks.push_back({glass, language});
    return looks;
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, RoleRules, ::testing::ValuesIn(everyLook()), [](const auto& each) {
    return u"%1x%2_%3"_s.arg(each.param.glass.pixels.width())
        .arg(each.param.glass.pixels.height())
        .arg(each.param.language)
        .toStdString();
});

} // namespace
} // namespace strandbench::test
