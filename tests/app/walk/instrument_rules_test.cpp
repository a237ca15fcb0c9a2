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
    for (int i = 0; i < 5; ++i)
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

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, InstrumentRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
