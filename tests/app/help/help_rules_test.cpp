// SPDX-License-Identifier: GPL-3.0-or-later
// Help on every glass in every language by the rules of look and touch: each topic, each page of words and legend, the
// quick card's screen; and the empty states.
#include "every_look.h"

#include "screens/help/help_screen.h"
#include "touch/keyboard_order.h"

#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class HelpRules : public LookTest {
protected:
    void open(bool practises = false)
    {
        ScriptedBench::Spec spec = specOn(m_folder.filePath(u"bench.sqlite"_s), demoSettings());
        spec.practises = practises;
        m_bench = std::make_unique<ScriptedBench>(spec);
        m_bench->thumb().settle();
    }
    void checkPages()
    {
        check();
        while (const QAbstractButton* more = m_bench->thumb().find(u"rows_more"_s)) {
            if (!more->isEnabled())
                break;
            ASSERT_NO_FATAL_FAILURE(tapAndCheck(u"rows_more"_s));
        }
    }
    QTemporaryDir m_folder;
};

TEST_P(HelpRules, HoldOnEveryPage)
{
    open();
    tapAndCheck(u"help"_s);
    for (const QString& key : {u"help_words"_s, u"help_legend"_s, u"help_card"_s}) {
        ASSERT_NO_FATAL_FAILURE(tap(key));
        ASSERT_NO_FATAL_FAILURE(checkPages());
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_back"_s));
    }
}

/// Of every topic, as large as it stands below the ribbon.
TEST_P(HelpRules, HoldForEveryTopic)
{
    open();
    const BenchWindow& window = m_bench->window();
    const Settings settings = window.settings();
    const Words words(settings.units, QLocale(settings.language));
    const Surroundings around{window.theme(), words, m_bench->bench(), settings, GetParam().glass.upright()};
    for (const auto& [topic, code] : Codes<HelpTopic>::table) {
        HelpScreen::Spec spec;
        spec.topic = topic;
        spec.context = u"4421"_s;
        spec.ofARepair = true;
        HelpScreen screen(around, spec);
        screen.resize(window.width(), window.screen()->height());
        screen.show();
        orderKeyboard(screen); // as the window does
        book().take(screen, window.theme(), u"topic_"_s + QString::fromLatin1(code),
                    rules::ruleSetOf(screen.objectName()));
    }
}

/// Two mixes run: each is a tap away, beside the key to help.
TEST_P(HelpRules, HoldWhileMixesRun)
{
    open();
    for (const DemoJob& job : {roofCap(), skirtPanel()}) {
        Walk walk(*m_bench, job);
        ASSERT_TRUE(walk.walkTo(Station::Spread)) << walk.why().toStdString();
        m_bench->window().showHome();
        m_bench->thumb().settle();
    }
    ASSERT_EQ(m_bench->bench().runningMixes().size(), 2U);
    ASSERT_TRUE(m_bench->thumb().find(u"help"_s));
    check();
    ASSERT_TRUE(m_bench->thumb().find(u"ribbon_block_0"_s));
    tapAndCheck(m_bench->thumb().find(u"ribbon_block_1"_s) ? u"ribbon_block_1"_s : u"ribbon_rest"_s);
    tapAndCheck(u"help"_s);
    tap(u"ribbon_block_0"_s);
    EXPECT_EQ(m_bench->window().screen()->objectName(), u"screen_spread"_s);
}

/// Nothing there yet: each says what it is, and one key leads on.
TEST_P(HelpRules, HoldWhereThereIsNothingYet)
{
    open(true);
    check(); // first start
    tap(u"today"_s);
    ASSERT_TRUE(m_bench->thumb().waitFor(u"today_take_in"_s));
    check();
    tapAndCheck(u"today_take_in"_s);
    tap(u"answer_back"_s);
    tapAndCheck(u"stock"_s);
    tap(u"answer_back"_s);
    tap(u"practice"_s);
    tap(u"skip_tour"_s);
    tapAndCheck(u"practice_skills"_s);
    tapAndCheck(u"answer_way_on"_s);
    EXPECT_EQ(m_bench->window().screen()->objectName(), u"screen_panel_look"_s);
}

INSTANTIATE_TEST_SUITE_P(EveryLook, HelpRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
