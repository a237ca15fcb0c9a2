// SPDX-License-Identifier: GPL-3.0-or-later
#include "every_look.h"

#include "touch_rules/rule_check.h"

#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {

std::vector<Look> everyLook()
{
    std::vector<Look> looks;
    for (const rules::Glass& glass : rules::glasses())
        for (const QString& language : {u"en"_s, u"es"_s, u"fr"_s, u"de"_s})
            looks.push_back({glass, language});
    return looks;
}

std::string nameOfLook(const ::testing::TestParamInfo<Look>& each)
{
    return u"%1x%2_%3"_s.arg(each.param.glass.pixels.width())
        .arg(each.param.glass.pixels.height())
        .arg(each.param.language)
        .toStdString();
}

ScriptedBench::Spec LookTest::specOn(const QString& log, Settings settings) const
{
    settings.language = GetParam().language;
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
    if (const QString folder = qEnvironmentVariable("LOOK_PICTURES"); !folder.isEmpty())
        m_bench->window().grab().save(u"%1/%2_%3_%4_%5.png"_s.arg(folder, GetParam().glass.name, GetParam().language)
                                          .arg(m_number++, 2, 10, QLatin1Char('0'))
                                          .arg(name));
    const auto set = rules::ruleSetOf(name);
    for (const rules::Breach& breach : rules::checkScreen(&m_bench->window(), m_bench->window().theme(), set)) {
        std::ostringstream said;
        said << breach;
        ADD_FAILURE() << name.toStdString() << ": " << said.str();
    }
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
