// SPDX-License-Identifier: GPL-3.0-or-later
// Every screen of the walk keeps the rules of look and touch, on every glass, in every language and in both
// themes; of the other walks and the refusals each on one of them, by turns.
#include "rules_walk.h"

#include "exchange/rules.h"
#include "screens/frame/scan_text.h"
#include "screens/job/take_in_screen.h"
#include "walk/every_job.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class ScreensRules : public ::testing::TestWithParam<Look> {};

TEST_P(ScreensRules, Hold)
{
    RulesWalk rules(GetParam());
    ASSERT_NO_FATAL_FAILURE(rules.walk(wheelArch()));
    rules.toHome();
    Walk other(rules.bench(), roofCap());
    ASSERT_TRUE(other.walkTo(Station::Spread)) << other.why().toStdString();
    rules.toHome();
    ASSERT_NO_FATAL_FAILURE(rules.walk(skirtPanel()));
    rules.toHome();
    rules.check(u"4417"_s, true); // the cards have changed since
    ASSERT_NO_FATAL_FAILURE(rules.checkRecord());
    rules.toHome();
    ASSERT_TRUE(rules.bench().thumb().tap(u"set_up"_s));
    rules.check(u"set_up"_s);
    ASSERT_TRUE(rules.bench().thumb().tap(u"answer_way_on"_s));
    ASSERT_TRUE(rules.bench().thumb().tap(u"answer_way_on"_s));
    ASSERT_TRUE(rules.bench().thumb().tap(u"calibrate"_s));
    rules.check(u"calibrate"_s);
    rules.close();
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, ScreensRules, ::testing::ValuesIn(everyLookInBothThemes()),
                         [](const auto& each) { return nameOf(each.param); });

/// Every glass once: names are not translated.
std::vector<Look> everyGlass()
{
    std::vector<Look> looks = everyLookInBothThemes();
    std::erase_if(looks, [](const Look& each) { return each.language != u"en"_s || each.dayNight == DayNight::Night; });
    return looks;
}

class LongestNames : public ::testing::TestWithParam<Look> {};

/// The longest job number and panel that a scanner may give, without a space to break at.
TEST_P(LongestNames, KeepTheRules)
{
    RulesWalk rules(GetParam());
    for (const DemoJob& other : {wheelArch(), skirtPanel()}) { // beside two others a card is as narrow as it gets
        Walk walk(rules.bench(), other);
        ASSERT_TRUE(walk.walkTo(Station::Decide)) << walk.why().toStdString();
        rules.toHome();
    }
    DemoJob named = roofCap();
    named.job = u"WO-2026-11-26/000417-M84"_s;
    named.panel = u"HECKKLAPPENVERKLEIDUNG-W"_s;
    ASSERT_TRUE(named.job.size() == longestScan && named.panel.size() == longestScan);
    ASSERT_TRUE(rules.bench().thumb().tap(u"take_in"_s));
    for (const QString& scanned : {named.job, named.panel}) {
        ASSERT_TRUE(rules.bench().window().screen()->scanned(scanned));
        rules.bench().thumb().settle();
        rules.check(named.job);
    }
    ASSERT_NE(rules.bench().repair(named.job), nullptr);
    Walk walk(rules.bench(), named);
    ASSERT_TRUE(walk.walkTo(Station::Spread)) << walk.why().toStdString();
    rules.toHome();
    rules.check(named.job, true);
    ASSERT_NO_FATAL_FAILURE(rules.walk(named));
    rules.toHome();
    ASSERT_NO_FATAL_FAILURE(rules.checkRecord());
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, LongestNames, ::testing::ValuesIn(everyGlass()),
                         [](const auto& each) { return nameOf(each.param); });

/// A look by turns, so that neighbours differ in glass, language and theme.
Look lookInTurn(std::size_t index)
{
    const std::vector<Look> looks = everyLookInBothThemes();
    return looks[index * 11 % looks.size()];
}

class EveryWalkRules : public ::testing::TestWithParam<std::size_t> {};

TEST_P(EveryWalkRules, HoldOnOneGlass)
{
    RulesWalk rules(lookInTurn(GetParam()));
    SCOPED_TRACE(nameOf(lookInTurn(GetParam())));
    ASSERT_NO_FATAL_FAILURE(rules.walk(everyWalk()[GetParam()].job));
}

INSTANTIATE_TEST_SUITE_P(ByTurns, EveryWalkRules, ::testing::Range(std::size_t{0}, everyWalk().size()),
                         [](const auto& each) { return everyWalk()[each.param].name.toStdString(); });

class EveryRefusalRules : public ::testing::TestWithParam<std::size_t> {};

TEST_P(EveryRefusalRules, HoldOnOneGlass)
{
    const RefusedJob& refused = everyRefusal()[GetParam()];
    const Catalogue withoutZinc = catalogueWithoutZinc();
    const CureEngine engine;
    std::optional<PlanningSet> planning;
    if (!refused.zincNamed)
        planning.emplace(PlanningSet{builtInTable(), withoutZinc, builtInSteps(), Assumptions{}, engine});
    RulesWalk rules(lookInTurn(GetParam()), planning);
    SCOPED_TRACE(nameOf(lookInTurn(GetParam())));
    Walk walk(rules.bench(), refused.found);
    ASSERT_TRUE(walk.walkTo(Station::Decide)) << walk.why().toStdString();
    rules.check(refused.found.job);
    ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    rules.check(refused.found.job);
    rules.toHome();
    rules.check(refused.found.job);
}

INSTANTIATE_TEST_SUITE_P(ByTurns, EveryRefusalRules, ::testing::Range(std::size_t{0}, everyRefusal().size()),
                         [](const auto& each) { return everyRefusal()[each.param].stop.toStdString(); });

} // namespace
} // namespace strandbench::test
