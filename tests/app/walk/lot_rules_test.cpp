// SPDX-License-Identifier: GPL-3.0-or-later
// What is learnt of lots, on every glass in every language by the rules of look and touch: readings while a batch
// cures, a lot's page, its test pat.
#include "every_look.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class LotRules : public LookTest {
protected:
    void keyIn(const QString& figure, const QString& keys)
    {
        ASSERT_NO_FATAL_FAILURE(tap(figure + u"_figure"_s));
        for (const QChar key : keys)
            ASSERT_NO_FATAL_FAILURE(tap(u"key_"_s + key));
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }
};

TEST_P(LotRules, Hold)
{
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.lots[hardenerKey] = {u"H-2026-0917-000000000417"_s}; // as long as a lot may be
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), settings));
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

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, LotRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
