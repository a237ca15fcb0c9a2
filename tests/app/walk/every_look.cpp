// SPDX-License-Identifier: GPL-3.0-or-later
#include "every_look.h"

#include <array>

using namespace Qt::StringLiterals;

namespace strandbench::test {

std::vector<Look> everyLook()
{
    const std::array<QString, 4> languages{u"en"_s, u"es"_s, u"fr"_s, u"de"_s};
    const std::vector<rules::Glass>& glasses = rules::glasses();
    std::vector<Look> looks;
    // Glass and language are two binary digits each; theme, units and hand are sums of different pairs of the four.
    for (std::size_t glass = 0; glass < glasses.size(); ++glass)
        for (std::size_t language = 0; language < languages.size(); ++language) {
            const bool night = ((glass ^ language) & 1U) != 0;
            const bool customary = ((glass >> 1U ^ language >> 1U) & 1U) != 0;
            const bool left = ((glass ^ language >> 1U) & 1U) != 0;
            looks.push_back({glasses[glass], languages[language], night ? DayNight::Night : DayNight::Day,
                             left ? Hand::Left : Hand::Right,
                             customary ? UnitSystem::UsCustomary : UnitSystem::Metric});
        }
    const QString nobodys = QString::fromUtf16(rules::pseudoCode);
    looks.push_back({glasses.front(), nobodys, DayNight::Day, Hand::Left, UnitSystem::UsCustomary});
    looks.push_back({glasses.back(), nobodys, DayNight::Night, Hand::Right, UnitSystem::Metric});
    return looks;
}

std::string nameOfLook(const ::testing::TestParamInfo<Look>& each) { return nameOf(each.param); }

void LookTest::TearDown() { m_book.close(); }

ScriptedBench::Spec LookTest::specOn(const QString& log, Settings settings) const
{
    return specOn(log, std::move(settings), GetParam().units);
}

ScriptedBench::Spec LookTest::specOn(const QString& log, Settings settings, UnitSystem units) const
{
    settings.language = GetParam().language;
    settings.dayNight = GetParam().dayNight;
    settings.hand = GetParam().hand;
    settings.units = units;
    ScriptedBench::Spec spec;
    spec.log = log;
    spec.start = workingMorning();
    spec.settings = settings;
    spec.glass = GetParam().glass.pixels;
    spec.pixelsPerMillimetre = GetParam().glass.pixelsPerMillimetre();
    return spec;
}

void LookTest::check()
{
    const QString name = m_bench->window().screen()->objectName();
    m_book.take(m_bench->window(), m_bench->window().theme(), name, rules::ruleSetOf(name));
}

void LookTest::tap(const QString& control)
{
    ASSERT_TRUE(m_bench->thumb().tap(control))
        << control.toStdString() << " on " << m_bench->window().screen()->objectName().toStdString();
}

void LookTest::tapAndCheck(const QString& control)
{
    ASSERT_NO_FATAL_FAILURE(tap(control));
    check();
}

} // namespace strandbench::test
