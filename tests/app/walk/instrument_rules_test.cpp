// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of instruments, on every glass in every language by the rules of look and touch.
#include "every_look.h"
#include "instrument_bench.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class InstrumentRules : public LookTest {
protected:
    void open(const Settings& settings)
    {
        ASSERT_TRUE(m_wires.scale.plugIn());
        ASSERT_TRUE(m_wires.climate.plugIn());
        ScriptedBench::Spec spec = specOn(m_folder.filePath(u"bench.sqlite"_s), settings);
        spec.ports = m_wires.ports();
        m_bench = std::make_unique<ScriptedBench>(spec);
    }

    QTemporaryDir m_folder;
    InstrumentWires m_wires;
};

TEST_P(InstrumentRules, SetUpHolds)
{
    Settings settings = m_wires.connected(demoSettings());
    settings.scale.pattern = u"ZZ"_s + settings.scale.pattern;
    ASSERT_NO_FATAL_FAILURE(open(settings));
    tap(u"set_up"_s);
    for (int i = 0; i < 6; ++i)
        tap(u"answer_way_on"_s);
    ASSERT_TRUE(m_wires.weigh(*m_bench, 1151.24));
    check(); // it does not fit
    tapAndCheck(u"instrument_port"_s);
    tapAndCheck(u"port_write"_s);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    tapAndCheck(u"instrument_speed"_s);
    tap(u"answer_back"_s);
    tapAndCheck(u"instrument_pattern"_s);
    tapAndCheck(u"pattern_write"_s);
    tapAndCheck(u"letter_page"_s);
    tap(u"answer_back"_s);
    tap(u"pattern_0"_s);
    ASSERT_TRUE(m_wires.weigh(*m_bench, 1151.24));
    check();
    m_wires.scale.pullOut();
    ASSERT_TRUE(
        InstrumentWires::wait([&] { return m_bench->instruments().scale().view().is == InstrumentView::Is::Failed; }));
    check();
    tapAndCheck(u"page_after"_s);
    tapAndCheck(u"instrument_pattern"_s);
}

TEST_P(InstrumentRules, TheBenchHolds)
{
    Settings settings = m_wires.connected(demoSettings());
    settings.lots[hardenerKey] = {u"H7"_s};
    settings.lots[u"demo_mixed_strand"_s] = {u"L7"_s};
    ASSERT_NO_FATAL_FAILURE(open(settings));
    Walk walk(*m_bench, skirtPanel());
    while (m_bench->window().screen()->objectName() != u"screen_assess_reading"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    check(); // nothing has come
    ASSERT_TRUE(m_wires.read(*m_bench, "21.4 48.0", 2));
    check();
    ASSERT_TRUE(m_wires.read(*m_bench, "21.4 48.0"));
    tapAndCheck(u"take_air"_s);
    m_wires.climate.pullOut();
    ASSERT_TRUE(InstrumentWires::wait(
        [&] { return m_bench->instruments().climate().view().is == InstrumentView::Is::Failed; }));
    check();
    while (m_bench->window().screen()->objectName() != u"screen_prepare_read_again"_s &&
           m_bench->window().screen()->objectName() != u"screen_mix"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    check();
    ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    check();
    const double filler = inGrams(m_bench->repair(u"4421"_s)->plan->batches.front().mix.filler);
    ASSERT_TRUE(m_wires.weigh(*m_bench, filler));
    check();
    tapAndCheck(u"weigh_mix"_s);
    ASSERT_TRUE(m_wires.weigh(*m_bench, filler * 0.02));
    tapAndCheck(u"take_hardener"_s);
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tap(u"set_up"_s);
    for (int i = 0; i < 6; ++i)
        tap(u"answer_way_on"_s);
    tapAndCheck(u"calibrate_bead"_s);
    for (const double grammes : {2.0, 2.5, 3.0}) {
        tap(u"bead_length_mm_plus"_s);
        ASSERT_TRUE(m_wires.weigh(*m_bench, grammes));
        tapAndCheck(u"take_bead"_s);
        tapAndCheck(u"answer_way_on"_s);
    }
    ASSERT_TRUE(m_bench->thumb().hold(u"beads_anew"_s));
    for (const double grammes : {2.2, 2.3, 2.4}) {
        tap(u"bead_length_mm_plus"_s);
        ASSERT_TRUE(m_wires.weigh(*m_bench, grammes));
        tap(u"take_bead"_s);
        tap(u"answer_way_on"_s);
    }
    check();
    tap(u"answer_way_on"_s);
    m_bench->window().showRepair(m_bench->repair(u"4421"_s)->id);
    m_bench->thumb().settle();
    check();
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, InstrumentRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
