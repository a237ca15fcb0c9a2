// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's figures, on every glass in every language by the rules of look and touch.
#include "depot_log.h"
#include "every_look.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class FigureRules : public LookTest {
protected:
    void waitAndCheck(const QString& awaited)
    {
        ASSERT_TRUE(m_bench->thumb().waitFor(awaited)) << awaited.toStdString();
        check();
    }
};

TEST_P(FigureRules, Hold)
{
    ScriptedBench::Spec spec = specOn(depotLog().path, demoSettings());
    spec.start = depotLog().evening;
    m_bench = std::make_unique<ScriptedBench>(spec);
    ASSERT_FALSE(m_bench->trouble());
    for (const QString& each : {u"today"_s, u"review"_s})
        tap(each);
    tapAndCheck(u"figures"_s);
    tap(u"figure_gel"_s);
    waitAndCheck(u"figure_lot_0"_s);
    tap(u"figure_lot_0"_s);
    waitAndCheck(u"answer_way_on"_s);
    tapAndCheck(u"figure_turn"_s);
    tapAndCheck(u"answer_way_on"_s);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    for (const QString& code : {u"material"_s, u"right"_s, u"times"_s, u"deviations"_s}) {
        tap(u"figure_"_s + code);
        waitAndCheck(u"answer_way_on"_s);
        tapAndCheck(u"answer_way_on"_s);
        tap(u"answer_back"_s);
    }
}

TEST_P(FigureRules, HoldWithoutAnything)
{
    const QTemporaryDir folder;
    m_bench = std::make_unique<ScriptedBench>(specOn(folder.filePath(u"bench.sqlite"_s), demoSettings()));
    for (const QString& each : {u"today"_s, u"review"_s, u"figures"_s, u"figure_times"_s})
        tap(each);
    waitAndCheck(u"figure_period"_s);
    tap(u"answer_back"_s);
    tap(u"figure_gel"_s);
    waitAndCheck(u"figure_period"_s);
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, FigureRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
