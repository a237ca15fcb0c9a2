// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <gtest/gtest.h>

#include <QJsonArray>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Ran air(const QString& temperature, const QString& humidity, const QString& panel)
{
    return program(
        {u"air"_s, u"--temperature-c"_s, temperature, u"--humidity-percent"_s, humidity, u"--panel-c"_s, panel});
}

QStringList codesOf(const QJsonObject& json)
{
    QStringList codes;
    for (const QJsonValue& each : json[u"reasons"_s].toArray()) {
        codes << each[u"code"_s].toString();
        EXPECT_FALSE(each[u"text"_s].toString().isEmpty());
    }
    return codes;
}

// Alduchov and Eskridge 1996, J. Appl. Meteor. 35, 601-609: a = 17.625, b = 243.04 degC. Published sets of
// coefficients differ by a few hundredths of a degree; that is how close any of them must come.
constexpr double betweenSets = 0.05;
double magnusDewPoint(double celsius, double percent)
{
    const double gamma = std::log(percent / 100.0) + 17.625 * celsius / (243.04 + celsius);
    return 243.04 * gamma / (17.625 - gamma);
}

TEST(Air, GivesDewPointAndMargin)
{
    const Ran ran = air(u"18.5"_s, u"52"_s, u"17"_s);
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty());
    const QJsonObject json = ran.json();
    EXPECT_EQ(json.keys(), (QStringList{u"dew_point_c"_s, u"margin_k"_s, u"may_fill"_s, u"reasons"_s}));
    EXPECT_NEAR(json[u"dew_point_c"_s].toDouble(), magnusDewPoint(18.5, 52), betweenSets);
    EXPECT_NEAR(json[u"margin_k"_s].toDouble(), 17 - json[u"dew_point_c"_s].toDouble(), 1e-9);
    EXPECT_TRUE(json[u"may_fill"_s].toBool());
    EXPECT_TRUE(json[u"reasons"_s].toArray().isEmpty());
}

TEST(Air, SaysWhyFillingMayNotStart)
{
    EXPECT_EQ(codesOf(air(u"20"_s, u"90"_s, u"19"_s).json()), QStringList{u"panel_near_dew_point"_s});
    EXPECT_EQ(codesOf(air(u"20"_s, u"30"_s, u"9.9"_s).json()), QStringList{u"panel_too_cold"_s});
    EXPECT_EQ(codesOf(air(u"20"_s, u"30"_s, u"30.1"_s).json()), QStringList{u"panel_too_hot"_s});
    EXPECT_EQ(codesOf(air(u"9.9"_s, u"30"_s, u"20"_s).json()), QStringList{u"air_too_cold"_s});
    EXPECT_EQ(codesOf(air(u"35.1"_s, u"20"_s, u"25"_s).json()), QStringList{u"air_too_hot"_s});
    EXPECT_FALSE(air(u"20"_s, u"90"_s, u"19"_s).json()[u"may_fill"_s].toBool());
}

TEST(Air, CountsTheLimitsThemselvesAsWithin)
{
    for (const auto& [temperature, panel] : {std::pair{u"10"_s, u"10"_s}, std::pair{u"35"_s, u"30"_s}}) {
        const QJsonObject json = air(temperature, u"30"_s, panel).json();
        EXPECT_TRUE(json[u"may_fill"_s].toBool()) << panel.toStdString();
        EXPECT_TRUE(json[u"reasons"_s].toArray().isEmpty());
    }
    // No limit of humidity by itself.
    EXPECT_TRUE(air(u"15"_s, u"100"_s, u"20"_s).json()[u"may_fill"_s].toBool());
    EXPECT_EQ(air(u"-30"_s, u"0.5"_s, u"-30"_s).status, 0);
    EXPECT_EQ(air(u"60"_s, u"100"_s, u"100"_s).status, 0);
}

TEST(Air, RefusesWhatIsOutOfRangeOrNoNumber)
{
    const auto one = [](const Ran& ran, const QString& message) {
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.messages(), QStringList{message});
        EXPECT_TRUE(ran.out.isEmpty());
    };
    one(air(u"-30.1"_s, u"50"_s, u"20"_s), u"--temperature-c: -30.1 is out of range; allowed is -30 to 60 °C"_s);
    one(air(u"61"_s, u"50"_s, u"20"_s), u"--temperature-c: 61 is out of range; allowed is -30 to 60 °C"_s);
    one(air(u"20"_s, u"0"_s, u"20"_s), u"--humidity-percent: 0 is out of range; allowed is > 0 to 100 %"_s);
    one(air(u"20"_s, u"101"_s, u"20"_s), u"--humidity-percent: 101 is out of range; allowed is > 0 to 100 %"_s);
    one(air(u"20"_s, u"50"_s, u"100.5"_s), u"--panel-c: 100.5 is out of range; allowed is -30 to 100 °C"_s);
    for (const QString& odd : {u"18,5"_s, u"nan"_s, u"inf"_s, u"0x12"_s, u"1 8"_s, u"18.5C"_s, u"--"_s, u"1e999"_s})
        EXPECT_EQ(air(odd, u"50"_s, u"20"_s).status, 2) << odd.toStdString();
    const Ran all = air(u"x"_s, u"y"_s, u"z"_s);
    EXPECT_EQ(all.messages().size(), 3);
    EXPECT_EQ(program({u"air"_s, u"--temperature-c"_s, u"20"_s}).messages(),
              (QStringList{u"--humidity-percent: missing; it needs H"_s, u"--panel-c: missing; it needs P"_s}));
}

} // namespace
} // namespace strandbench
