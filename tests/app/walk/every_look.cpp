// SPDX-License-Identifier: GPL-3.0-or-later
#include "every_look.h"

#include <QDeadlineTimer>

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

void LookTest::letRead()
{
    constexpr int roundTrips = 3; // a screen may ask again for what an answer named
    constexpr int longestMs = 5000;
    const QDeadlineTimer deadline(longestMs);
    for (int i = 0; i < roundTrips; ++i) {
        const auto answered = std::make_shared<bool>(false);
        // The log's thread answers in turn: when this comes back, what was asked before has.
        m_bench->bench().recorder().readHead([answered](const Logged<ChainHead>&) { *answered = true; });
        do
            m_bench->thumb().settle();
        while (!*answered && !deadline.hasExpired());
    }
}

void LookTest::check()
{
    if (m_book.compares())
        letRead();
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
