// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of looking a day through, on every glass in every language by the rules of look and touch.
#include "every_look.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class ReviewRules : public LookTest {
protected:
    void waitAndCheck(const QString& awaited)
    {
        ASSERT_TRUE(m_bench->thumb().waitFor(awaited)) << awaited.toStdString();
        check();
    }
    void waitAndTap(const QString& name)
    {
        ASSERT_TRUE(m_bench->thumb().waitFor(name)) << name.toStdString();
        tap(name);
    }
    void givePin()
    {
        for (const QChar each : u"271828"_s)
            tap(u"key_"_s + each);
        tap(u"answer_way_on"_s);
        m_bench->thumb().settle();
    }
    void toReview()
    {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        tap(u"today"_s);
        tap(u"review"_s);
        waitAndCheck(u"review_row_0"_s);
    }
};

TEST_P(ReviewRules, Hold)
{
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.lots[u"demo_mixed_strand"_s] = {u"F-2026-0917-000000000077"_s};
    settings.lots[hardenerKey] = {u"H-2026-0917-000000000417"_s};
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), settings));
    ASSERT_TRUE(m_bench->door().set(u"271828"_s).empty());
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tapAndCheck(u"today"_s);
    toReview();
    tapAndCheck(u"narrow"_s);
    tap(u"narrow_lot"_s);
    waitAndCheck(u"narrow_value_0"_s);
    tap(u"narrow_value_0"_s);
    waitAndCheck(u"review_row_0"_s);
    tap(u"day_files"_s);
    waitAndCheck(u"sheet_folder_0"_s);
    tap(u"answer_back"_s);
    tap(u"day_before"_s);
    m_bench->thumb().settle();
    waitAndCheck(u"day_after"_s);
    toReview();
    tap(u"review_row_0"_s);
    waitAndCheck(u"closing"_s);
    tap(u"timeline"_s);
    waitAndCheck(u"zoom"_s);
    tapAndCheck(u"zoom"_s);
    tap(u"answer_back"_s);
    waitAndTap(u"lots"_s);
    waitAndCheck(u"repair_lot_0"_s);
    tap(u"answer_back"_s);
    waitAndTap(u"closing"_s);
    waitAndCheck(u"return_it"_s);
    tapAndCheck(u"return_it"_s);
    tap(u"return_soft"_s);
    givePin();
    toReview();
    tap(u"review_row_0"_s);
    waitAndTap(u"closing"_s);
    waitAndCheck(u"correct_event"_s);
    m_bench->window().showHome();
    m_bench->thumb().settle();
    check(); // returned, on the rail
    tapAndCheck(u"job_card_0"_s);
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, ReviewRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
