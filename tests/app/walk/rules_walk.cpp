// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules_walk.h"

#include "languages.h"

#include <QDeadlineTimer>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {

std::vector<Look> everyLookInBothThemes()
{
    std::vector<Look> looks;
    int turn = 0;
    for (const rules::Glass& glass : rules::glasses())
        for (const QString& language : carriedLanguages())
            for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
                looks.push_back({glass, language, dayNight, turn % 3 == 0 ? Hand::Left : Hand::Right,
                                 turn % 2 == 0 ? UnitSystem::Metric : UnitSystem::UsCustomary});
                ++turn;
            }
    for (const Look& look : everyLook())
        if (look.language == QStringView(rules::pseudoCode))
            looks.push_back(look);
    return looks;
}

RulesWalk::RulesWalk(const Look& look, const std::optional<PlanningSet>& planning)
    : m_spoken(look.language), m_book(look)
{
    Settings settings = demoSettings();
    settings.language = look.language;
    settings.units = look.units;
    settings.dayNight = look.dayNight;
    settings.hand = look.hand;
    m_bench = std::make_unique<ScriptedBench>(ScriptedBench::Spec{m_folder.filePath(u"bench.sqlite"_s),
                                                                  workingMorning(), settings, look.glass.pixels,
                                                                  look.glass.pixelsPerMillimetre(), planning});
    EXPECT_FALSE(m_bench->trouble().has_value());
}

void RulesWalk::toHome()
{
    bench().window().showHome();
    bench().thumb().settle();
}

void RulesWalk::check(const QString& job, bool again)
{
    const Repair* repair = bench().repair(job);
    QString name = bench().window().screen()->objectName();
    if (repair)
        name += u' ' + codeOf(nextStep(*repair).station);
    if (const QAbstractButton* keys = bench().thumb().find(u"key_1"_s))
        name += u" keys "_s + keys->objectName();
    if (!bench().window().screen()->troubleShown().isEmpty())
        name += u" trouble"_s;
    if (m_seen.contains(name) && !again)
        return;
    m_seen.insert(name);
    m_book.take(bench().window(), bench().window().theme(), name,
                rules::ruleSetOf(bench().window().screen()->objectName()));
}

/// A hop to the side and back.
void RulesWalk::checkAside(const QString& job, const QString& control)
{
    ASSERT_TRUE(bench().thumb().tap(control)) << control.toStdString();
    check(job);
    ASSERT_TRUE(bench().thumb().tap(u"answer_back"_s));
}

void RulesWalk::checkAsides(const QString& job, const QString& screen)
{
    if (screen == u"screen_plan"_s)
        checkAside(job, u"why"_s);
    if (screen == u"screen_mix"_s)
        checkAside(job, u"bead_as_laid"_s);
    if (screen == u"screen_spread"_s || screen == u"screen_wait"_s)
        checkAside(job, u"curve_key"_s);
    if (screen == u"screen_prepare_wash"_s || screen == u"screen_spread"_s)
        checkAside(job, u"answer_stop"_s);
    if (screen.startsWith(u"screen_assess"_s) && screen != u"screen_assess_size"_s &&
        screen != u"screen_assess_reading"_s)
        checkAside(job, u"answer_way_on"_s); // how to tell
    if (screen == u"screen_assess_size"_s || screen == u"screen_job_number"_s) {
        EXPECT_TRUE(bench().thumb().tap(u"answer_way_on"_s)); // nothing measured, nothing keyed: says so
        check(job);
    }
}

void RulesWalk::walk(const DemoJob& job)
{
    Walk walk(bench(), job);
    QSet<QString> asides;
    for (int i = 0; i < 400; ++i) {
        check(job.job);
        const QString screen = bench().window().screen()->objectName();
        const auto next = walk.next();
        if (!next)
            return;
        if (!asides.contains(screen)) {
            asides.insert(screen);
            checkAsides(job.job, screen);
        }
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    }
}

void RulesWalk::waitFor(const QString& control)
{
    const QDeadlineTimer deadline(20000);
    const QAbstractButton* found = nullptr;
    do {
        bench().thumb().settle();
        found = bench().thumb().find(control);
    } while (!(found && found->isEnabled()) && !deadline.hasExpired());
    ASSERT_TRUE(found && found->isEnabled()) << control.toStdString();
}

void RulesWalk::checkRecord()
{
    ASSERT_TRUE(bench().thumb().tap(u"today"_s));
    ASSERT_NO_FATAL_FAILURE(waitFor(u"today_row_0"_s));
    check({});
    ASSERT_TRUE(bench().thumb().tap(u"today_row_0"_s));
    ASSERT_NO_FATAL_FAILURE(waitFor(u"answer_way_on"_s));
    check({});
    while (const QAbstractButton* more = bench().thumb().find(u"rows_more"_s)) {
        if (!more->isEnabled())
            break;
        ASSERT_TRUE(bench().thumb().tap(u"rows_more"_s));
        check({}, true);
    }
    ASSERT_TRUE(bench().thumb().tap(u"answer_way_on"_s));
    ASSERT_NO_FATAL_FAILURE(waitFor(u"sheet_folder_0"_s));
    check({});
}

} // namespace strandbench::test
