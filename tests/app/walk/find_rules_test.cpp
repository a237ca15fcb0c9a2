// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of finding, on every glass in every language by the rules of look and touch.
#include "every_look.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class FindRules : public LookTest {
protected:
    void look(const QString& text, const QString& awaited)
    {
        ASSERT_TRUE(m_bench->window().screen()->scanned(text));
        ASSERT_TRUE(m_bench->thumb().waitFor(awaited)) << awaited.toStdString();
        check();
    }
};

TEST_P(FindRules, Hold)
{
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.backupFolder = folder.path();
    settings.lots[u"demo_mixed_strand"_s] = {u"F-2026-0917-000000000077"_s};
    settings.lots[hardenerKey] = {u"H-2026-0917-000000000417"_s};
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), settings));
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::HandOver)) << walk.why().toStdString();
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tapAndCheck(u"today"_s);
    tapAndCheck(u"find"_s);
    tapAndCheck(u"letter_3"_s);
    look(u"nobody has this"_s, u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    look(u"4421"_s, u"found_row_0"_s);
    tap(u"answer_way_on"_s);
    look(u"F-2026-0917-000000000077"_s, u"found_lot_0"_s);
    tap(u"found_lot_0"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"trace_row_0"_s));
    check();
    tapAndCheck(u"answer_way_on"_s);
    tapAndCheck(u"answer_way_on"_s); // written
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, FindRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
