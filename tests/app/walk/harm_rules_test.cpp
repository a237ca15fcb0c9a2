// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt: every page of it on every glass in every language by the rules of look and touch, and the steps that
// lead there with their key.
#include "every_look.h"

#include "exchange/harm.h"
#include "screens/harm_screen.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class HarmRules : public LookTest {
protected:
    void pages()
    {
        ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"harm"_s));
        for (int page = 0; page < 20; ++page) {
            const auto* more = m_bench->window().findChild<TapButton*>(u"rows_more"_s);
            if (!more || !more->isVisible() || !more->isEnabled())
                break;
            ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"rows_more"_s));
        }
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }
};

TEST_P(HarmRules, Hold)
{
    const QTemporaryDir folder;
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), demoSettings()));
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Prepare)) << walk.why().toStdString();
    int met = 0;
    for (int steps = 0; steps < 20; ++steps) {
        const QString name = m_bench->window().screen()->objectName();
        if (name.startsWith(u"screen_read"_s) || !name.startsWith(u"screen_prepare_"_s))
            break;
        if (m_bench->window().findChild<TapButton*>(u"harm"_s)) {
            check();
            pages();
            ++met;
        }
        tap(u"answer_way_on"_s);
    }
    EXPECT_GE(met, 6);
    for (const Station station : {Station::Mix, Station::Spread, Station::Wait, Station::Sand, Station::Turn}) {
        ASSERT_TRUE(walk.walkTo(station)) << walk.why().toStdString();
        check();
        pages();
    }
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, HarmRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
