// SPDX-License-Identifier: GPL-3.0-or-later
// What is learnt of lots, on every glass in every language by the rules of look and touch: readings while a batch
// cures, a lot's page, its test pat.
#include "walk/demo_jobs.h"

#include "touch_rules/glass.h"
#include "touch_rules/rule_check.h"

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

class LotRules : public ::testing::TestWithParam<Look> {
protected:
    void check()
    {
        const QString name = m_bench->window().screen()->objectName();
        if (const QString folder = qEnvironmentVariable("LOT_PICTURES"); !folder.isEmpty())
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
    void keyIn(const QString& figure, const QString& keys)
    {
        ASSERT_NO_FATAL_FAILURE(tap(figure + u"_figure"_s));
        for (const QChar key : keys)
            ASSERT_NO_FATAL_FAILURE(tap(u"key_"_s + key));
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }

    std::unique_ptr<ScriptedBench> m_bench;

private:
    int m_number = 0;
};

TEST_P(LotRules, Hold)
{
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.language = GetParam().language;
    settings.lots[hardenerKey] = {u"H-2026-0917-000000000417"_s}; // as long as a lot may be
    const rules::Glass& glass = GetParam().glass;
    m_bench = std::make_unique<ScriptedBench>(ScriptedBench::Spec{
        folder.filePath(u"bench.sqlite"_s), workingMorning(), settings, glass.pixels, glass.pixelsPerMillimetre(), {}});
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    tapAndCheck(u"in_hand"_s);
    tapAndCheck(u"lot_page"_s); // of a lot that nothing was mixed of
    tap(u"answer_back"_s);
    ASSERT_TRUE(walk.walkTo(Station::Spread)) << walk.why().toStdString();
    m_bench->clock().advance(minutes(4));
    tapAndCheck(u"read_while_curing"_s);
    for (const auto& [figure, keys] :
         {std::pair{u"air_c"_s, u"12"_s}, {u"panel_c"_s, u"15"_s}, {u"humidity_percent"_s, u"50"_s}})
        keyIn(figure, keys);
    check();
    tapAndCheck(u"answer_way_on"_s);
    const BatchRun run = m_bench->repair(u"4421"_s)->runs.front();
    m_bench->clock().advance(run.times().gel - elapsed(run.hardenerIn, m_bench->clock().now()));
    tap(u"it_has_gelled"_s);
    tapAndCheck(u"gelled_panel"_s);
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tap(u"today"_s);
    tapAndCheck(u"answer_way_on"_s);
    tapAndCheck(u"lot_row_0"_s);
    tapAndCheck(u"answer_way_on"_s);
    tapAndCheck(u"answer_way_on"_s);
    const LotBook& lots = m_bench->bench().lots();
    m_bench->clock().advance(lots.patOf(lots.lots().front())->mixed.gel);
    tapAndCheck(u"answer_way_on"_s);
    ASSERT_TRUE(m_bench->thumb().hold(u"forget_lot"_s));
    check();
    tapAndCheck(u"forget_kept_wrong"_s);
}

std::vector<Look> everyLook()
{
    std::vector<Look> looks;
    for (const rules::Glass& glass : rules::glasses())
        for (const QString& language : {u"en"_s, u"es"_s, u"fr"_s, u"de"_s})
            looks.push_back({glass, language});
    return looks;
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, LotRules, ::testing::ValuesIn(everyLook()), [](const auto& each) {
    return u"%1x%2_%3"_s.arg(each.param.glass.pixels.width())
        .arg(each.param.glass.pixels.height())
        .arg(each.param.language)
        .toStdString();
});

} // namespace
} // namespace strandbench::test
