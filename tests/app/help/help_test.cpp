// SPDX-License-Identifier: GPL-3.0-or-later
// Help opened and left from each step of a whole repair, by touches: what was entered stays, clocks and alarms go on,
// and in practice nothing is given away.
#include "bench_fixture.h"
#include "school/practice_thumb.h"
#include "shown.h"

#include "pictures/section_picture.h"
#include "shell/help_topic.h"

#include <QTest>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class HelpOnTheBench : public BenchTest {
protected:
    /// Into help and out again. Empty: all stands as before; otherwise what does not.
    [[nodiscard]] QString inAndOut(const QString& out)
    {
        const Screen* const before = window().screen();
        const QStringList texts = allShown(window());
        if (!bench().thumb().tap(u"help"_s))
            return u"no key to help"_s;
        if (screen() != u"screen_help"_s)
            return u"help leads to "_s + screen();
        m_titles.insert(shown(window(), u"sentence"_s));
        if (!bench().thumb().tap(out))
            return u"no way out by "_s + out;
        if (window().screen() != before)
            return u"another screen came back: "_s + screen();
        return allShown(window()) == texts ? QString() : u"other texts: "_s + allShown(window()).join(u'|');
    }
    std::set<QString> m_titles; ///< of the topics that were shown
};

TEST_F(HelpOnTheBench, OpenedAndLeftFromEachTouchOfAWholeRepairKeepsWhatWasEntered)
{
    open();
    Walk walk(bench(), skirtPanel());
    const QString ways[] = {u"answer_way_on"_s, u"answer_back"_s, u"help"_s};
    int opened = 0;
    for (int touches = 0; touches < 400 && walk.next(); ++touches) {
        if (bench().thumb().find(u"help"_s)) { // an alarm stands in the ribbon's place
            const QString here = screen();
            ASSERT_EQ(inAndOut(ways[opened % 3]), QString()) << here.toStdString();
            ++opened;
        }
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    }
    EXPECT_EQ(screen(), u"screen_done"_s);
    EXPECT_GT(opened, 60);
    std::set<QString> met;
    for (const HelpTopic topic :
         {HelpTopic::TakeIn,     HelpTopic::AskMaterial, HelpTopic::AskDamage, HelpTopic::AskSize,
          HelpTopic::AskSurface, HelpTopic::AskReading,  HelpTopic::Plan,      HelpTopic::Gear,
          HelpTopic::Clean,      HelpTopic::OpenUp,      HelpTopic::Bevel,     HelpTopic::BackUp,
          HelpTopic::Abrade,     HelpTopic::Mix,         HelpTopic::Spread,    HelpTopic::Cure,
          HelpTopic::Sand,       HelpTopic::Turn,        HelpTopic::Contour,   HelpTopic::Inspect,
          HelpTopic::HandOver})
        EXPECT_TRUE(m_titles.contains(helpText(topic).title)) << helpText(topic).title.toStdString();
}

TEST_F(HelpOnTheBench, WhatIsHalfKeyedStaysAlsoWhenAMixIsLookedAfterFromHelp)
{
    open();
    walkTo(roofCap(), Station::Spread);
    window().showHome();
    bench().thumb().settle();
    Walk other(bench(), skirtPanel());
    while (screen() != u"screen_assess_size"_s)
        ASSERT_TRUE(other.step()) << other.why().toStdString();
    for (int touches = 0; touches < 6; ++touches) // a figure and a half
        ASSERT_TRUE(other.step()) << other.why().toStdString();
    ASSERT_EQ(screen(), u"screen_assess_size"_s);
    const QVariantMap keyed = window().screen()->draft();
    ASSERT_FALSE(keyed.isEmpty());
    tap(u"help"_s);
    tap(u"help_words"_s);
    EXPECT_EQ(screen(), u"screen_glossary"_s);
    ASSERT_NE(bench().thumb().find(u"ribbon_block_0"_s), nullptr) << "the mix that runs stays a tap away";
    tap(u"ribbon_block_0"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    window().showHome();
    bench().thumb().settle();
    tap(u"job_card_1"_s);
    ASSERT_EQ(screen(), u"screen_assess_size"_s);
    EXPECT_EQ(window().screen()->draft(), keyed);
}

TEST_F(HelpOnTheBench, AnAlarmRingsOverHelpAndIsAnsweredThere)
{
    open();
    walkTo(roofCap(), Station::Spread);
    tap(u"help"_s);
    ASSERT_EQ(shown(window(), u"sentence"_s), helpText(HelpTopic::Spread).title);
    for (int second = 0; second < 3600 && !bench().thumb().find(u"alarm_0"_s); ++second) {
        bench().clock().advance(seconds(1));
        window().tick();
    }
    ASSERT_NE(bench().thumb().find(u"alarm_0"_s), nullptr);
    EXPECT_EQ(bench().thumb().find(u"help"_s), nullptr) << "the alarm has the ribbon's place";
    bench().clock().advance(seconds(2));
    window().tick();
    tap(u"alarm_0"_s);
    EXPECT_EQ(screen(), u"screen_help"_s);
    EXPECT_EQ(bench().thumb().find(u"alarm_0"_s), nullptr);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_spread"_s);
}

TEST_F(HelpOnTheBench, ATapOnASectionLeadsToTheLegendAndBack)
{
    open();
    walkTo(roofCap(), Station::Decide);
    ASSERT_EQ(screen(), u"screen_plan"_s);
    Screen* const plan = window().screen();
    auto* section = plan->findChild<SectionPicture*>();
    ASSERT_TRUE(section && section->isVisible());
    QTest::mouseClick(window().windowHandle(), Qt::LeftButton, {}, section->mapTo(&window(), section->rect().center()));
    bench().thumb().settle();
    ASSERT_EQ(screen(), u"screen_legend"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(window().screen(), plan);
}

TEST_F(HelpOnTheBench, EveryPageOfHelpLeadsBack)
{
    open();
    for (const auto& [key, page] :
         {std::pair(u"help_words"_s, u"screen_glossary"_s), std::pair(u"help_legend"_s, u"screen_legend"_s),
          std::pair(u"help_card"_s, u"screen_quick_card"_s)}) {
        Screen* const home = window().screen();
        tap(u"help"_s);
        tap(key);
        ASSERT_EQ(screen(), page);
        tap(u"answer_back"_s);
        ASSERT_EQ(screen(), u"screen_help"_s);
        tap(key);
        tap(u"help"_s);
        EXPECT_EQ(window().screen(), home) << page.toStdString();
    }
}

TEST_F(HelpOnTheBench, AChangeOfTheGlassUnderHelpKeepsWhatWasKeyed)
{
    open();
    tap(u"take_in"_s);
    tap(u"key_4"_s);
    tap(u"key_4"_s);
    const QStringList keyed = allShown(window());
    tap(u"help"_s);
    window().setFixedSize(800, 1280); // turned upright: all is built anew
    bench().thumb().settle();
    ASSERT_EQ(screen(), u"screen_help"_s);
    window().setFixedSize(1280, 800);
    bench().thumb().settle();
    tap(u"answer_way_on"_s);
    EXPECT_EQ(allShown(window()), keyed);
}

TEST(HelpInPractice, GivesAwayNothingThatIsAsked)
{
    const QTemporaryDir folder;
    ScriptedBench::Spec spec;
    spec.log = folder.filePath(u"bench.sqlite"_s);
    spec.start = workingMorning();
    spec.settings = demoSettings();
    spec.practises = true;
    ScriptedBench bench(spec);
    ASSERT_TRUE(bench.thumb().tap(u"practice"_s));
    bench.practice().begin(carried(u"smc_bonnet_hole"_s));
    bench.thumb().settle();
    const PlanningSet& shop = bench.bench().planning();
    const Attempt attempt = perfectAttempt(modelAnswer(carried(u"smc_bonnet_hole"_s).truth, shop), shop);
    PracticeThumb pupil(bench);
    int asked = 0;
    for (int taps = 0; taps < 400 && !bench.practice().marking(); ++taps) {
        const QString here = bench.window().screen()->objectName();
        QStringList offered;
        for (const TapButton* each : bench.window().screen()->findChildren<TapButton*>())
            if (each->isVisible() && !each->objectName().startsWith(u"answer_"_s) && each->title().size() > 4)
                offered << each->title();
        ASSERT_TRUE(bench.thumb().tap(u"help"_s)) << here.toStdString();
        EXPECT_EQ(bench.thumb().find(u"help_card"_s), nullptr) << "the card tells the limits that are asked";
        const QString said = allShown(bench.window()).join(u'\n');
        for (const QString& each : offered)
            EXPECT_FALSE(said.contains(each, Qt::CaseInsensitive)) << here.toStdString() << ": " << each.toStdString();
        EXPECT_EQ(figuresOf(said), QStringList()) << here.toStdString();
        ASSERT_TRUE(bench.thumb().tap(u"answer_way_on"_s));
        ASSERT_EQ(bench.window().screen()->objectName(), here);
        asked += offered.isEmpty() ? 0 : 1;
        ASSERT_EQ(pupil.step(attempt), QString());
        bench.thumb().settle();
    }
    EXPECT_TRUE(bench.practice().marking());
    EXPECT_GT(asked, 10);
}

} // namespace
} // namespace strandbench::test
