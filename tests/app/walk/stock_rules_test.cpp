// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of the shelf, on every glass in every language by the rules of look and touch, with lots as long as they
// may be and as much to tell as there can be.
#include "every_look.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QString longLot = u"2026-0917-00000000000417"_s;

class StockRules : public LookTest {
protected:
    void keyIn(const QString& figure, const QString& keys)
    {
        ASSERT_NO_FATAL_FAILURE(tap(figure + u"_figure"_s));
        for (const QChar key : keys)
            ASSERT_NO_FATAL_FAILURE(tap(u"key_"_s + key));
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }
    void bookIn(const QString& product, bool first)
    {
        tapAndCheck(u"answer_way_on"_s);
        tap(u"product_"_s + product);
        for (const QChar key : longLot)
            ASSERT_NO_FATAL_FAILURE(tap(key == u'-' ? u"key_dash"_s : u"key_"_s + key));
        check();
        tapAndCheck(u"answer_way_on"_s);
        keyIn(u"stock_packages"_s, u"2"_s);
        keyIn(u"stock_each"_s, u"5"_s);
        check();
        tapAndCheck(u"answer_way_on"_s);
        tapAndCheck(u"stock_dated"_s);
        keyIn(u"stock_year"_s, u"2026"_s);
        keyIn(u"stock_month"_s, u"1"_s);
        keyIn(u"stock_day"_s, first ? u"31"_s : u"15"_s);
        check(); // past already
        tapAndCheck(u"answer_way_on"_s);
    }
    void acts()
    {
        tapAndCheck(u"stock_open"_s);
        tapAndCheck(u"stock_count"_s);
        keyIn(u"stock_there"_s, u"7"_s);
        check();
        tap(u"answer_way_on"_s);
        tapAndCheck(u"stock_change"_s);
        tapAndCheck(u"change_keyed_in_wrong_less"_s);
        keyIn(u"stock_by"_s, u"6"_s);
        tap(u"answer_way_on"_s);
        tapAndCheck(u"stock_moved"_s);
        keyIn(u"stock_temperature"_s, u"10"_s);
        tapAndCheck(u"answer_way_on"_s);
        tapAndCheck(u"stock_moves"_s);
        tap(u"answer_back"_s);
        tapAndCheck(u"stock_probe"_s);
        tap(u"answer_back"_s);
        tapAndCheck(u"stock_end"_s);
        tapAndCheck(u"end_separated"_s);
        tap(u"answer_back"_s);
        tap(u"answer_back"_s);
    }
};

TEST_P(StockRules, Hold)
{
    const QTemporaryDir folder;
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), demoSettings()));
    check(); // home, with the key
    tapAndCheck(u"stock"_s);
    bookIn(u"demo_mixed_strand"_s, true);
    acts();
    tapAndCheck(u"answer_back"_s);
    bookIn(hardenerKey, false);
    tap(u"answer_back"_s);
    tapAndCheck(u"reorder_list"_s);
    tapAndCheck(u"reorder_row_0"_s);
    m_bench->window().showHome();
    m_bench->thumb().settle();
    check();
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Decide)) << walk.why().toStdString();
    check();
    tapAndCheck(u"plan_stock"_s);
    tap(u"answer_back"_s);
    ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    tapAndCheck(u"in_hand"_s); // lots of the shelf are offered
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, StockRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
