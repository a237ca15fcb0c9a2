// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <gtest/gtest.h>

#include <QJsonArray>

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Ran byPuddle(const QString& puddle, const QStringList& more = {})
{
    return program(QStringList{u"mix"_s, u"--puddle-mm"_s, puddle} + more);
}

QStringList codesOf(const QJsonObject& json)
{
    QStringList codes;
    for (const QJsonValue& each : json[u"advice"_s].toArray())
        codes << each[u"code"_s].toString();
    return codes;
}

TEST(Mix, MeetsTheThreeTradePoints)
{
    // 2 in - 1 in, 4 in - 4 in, 8 in - 12 in: common practice, no source.
    EXPECT_EQ(byPuddle(u"50.8"_s).json()[u"bead_mm"_s].toDouble(), 25.4);
    EXPECT_EQ(byPuddle(u"101.6"_s).json()[u"bead_mm"_s].toDouble(), 101.6);
    EXPECT_EQ(byPuddle(u"203.2"_s).json()[u"bead_mm"_s].toDouble(), 304.8);
}

TEST(Mix, HasTheKeysOfTheContractAndFiguresThatAgree)
{
    const Ran ran = byPuddle(u"101.6"_s);
    ASSERT_EQ(ran.status, 0);
    EXPECT_TRUE(ran.err.isEmpty());
    const QJsonObject json = ran.json();
    EXPECT_EQ(json.keys(), (QStringList{u"advice"_s, u"bead_mm"_s, u"filler_g"_s, u"hardener_g"_s,
                                        u"hardener_percent"_s, u"puddle_height_mm"_s, u"puddle_mm"_s}));
    EXPECT_EQ(json[u"puddle_mm"_s].toDouble(), 101.6);
    EXPECT_EQ(json[u"hardener_percent"_s].toDouble(), 2.0);
    // 23 mg/mm of hardener at 2 % of filler mass.
    EXPECT_NEAR(json[u"hardener_g"_s].toDouble(), 101.6 * 0.023, 1e-9);
    EXPECT_NEAR(json[u"filler_g"_s].toDouble(), 101.6 * 0.023 * 50, 1e-9);
    // A flat round puddle of the mixed-strand demo sheet, 1.45 g/ml.
    const double area = std::numbers::pi * 10.16 * 10.16 / 4.0;
    EXPECT_NEAR(json[u"puddle_height_mm"_s].toDouble(), json[u"filler_g"_s].toDouble() / 1.45 / area * 10.0, 1e-6);
    EXPECT_TRUE(ran.out.contains("\"bead_mm\": 101.6,")) << "full precision, but no noise of the binary digits";
}

TEST(Mix, GoesBothWays)
{
    const QJsonObject there = byPuddle(u"137.25"_s).json();
    const QString mass = QString::number(there[u"filler_g"_s].toDouble(), 'g', 17);
    const QJsonObject back = program({u"mix"_s, u"--filler-g"_s, mass}).json();
    for (const QString& key : {u"puddle_mm"_s, u"bead_mm"_s, u"filler_g"_s, u"hardener_g"_s, u"puddle_height_mm"_s})
        EXPECT_NEAR(back[key].toDouble(), there[key].toDouble(), 1e-9 * there[key].toDouble()) << key.toStdString();
}

TEST(Mix, AnswersFromEndToEndOfItsRangeWithAdvice)
{
    EXPECT_TRUE(codesOf(byPuddle(u"5"_s).json()).contains(u"puddle_small"_s));
    EXPECT_TRUE(codesOf(byPuddle(u"40"_s).json()).contains(u"weigh_small"_s));
    EXPECT_TRUE(codesOf(byPuddle(u"101.6"_s).json()).isEmpty());
    EXPECT_TRUE(codesOf(byPuddle(u"500"_s).json()).contains(u"split_large"_s));
    EXPECT_EQ(program({u"mix"_s, u"--filler-g"_s, u"0.1"_s}).status, 0);
    EXPECT_EQ(program({u"mix"_s, u"--filler-g"_s, u"20000"_s}).status, 0);
    for (const QJsonValue& each : byPuddle(u"500"_s).json()[u"advice"_s].toArray())
        EXPECT_FALSE(each[u"text"_s].toString().isEmpty());
}

TEST(Mix, TakesASheetByIdOrByClass)
{
    const QJsonObject byClass = byPuddle(u"100"_s, {u"--sheet"_s, u"short_strand"_s}).json();
    const QJsonObject byId = byPuddle(u"100"_s, {u"--sheet"_s, u"demo_short_strand"_s}).json();
    EXPECT_FALSE(byClass.isEmpty());
    EXPECT_EQ(byClass, byId);
    // A dense filler makes a lower puddle for the same bead.
    const QJsonObject mixed = byPuddle(u"100"_s).json();
    EXPECT_LT(byClass[u"puddle_height_mm"_s].toDouble(), mixed[u"puddle_height_mm"_s].toDouble());
    const Ran unknown = byPuddle(u"100"_s, {u"--sheet"_s, u"nonesuch"_s});
    EXPECT_EQ(unknown.status, 2);
    ASSERT_EQ(unknown.messages().size(), 1);
    EXPECT_TRUE(unknown.messages().first().startsWith(u"--sheet: 'nonesuch' is not there; there is: "_s));
    EXPECT_TRUE(unknown.messages().first().contains(u"demo_mixed_strand"_s));
}

TEST(Mix, RefusesWhatIsOutOfRangeOrNoNumber)
{
    EXPECT_EQ(byPuddle(u"4.99"_s).messages(),
              QStringList{u"--puddle-mm: 4.99 is out of range; allowed is 5 to 500 mm"_s});
    EXPECT_EQ(byPuddle(u"500.1"_s).status, 2);
    EXPECT_EQ(program({u"mix"_s, u"--filler-g"_s, u"0"_s}).messages(),
              QStringList{u"--filler-g: 0 is out of range; allowed is 0.1 to 20000 g"_s});
    EXPECT_EQ(program({u"mix"_s, u"--filler-g"_s, u"20001"_s}).status, 2);
    EXPECT_EQ(byPuddle(u"101,6"_s).messages(),
              QStringList{u"--puddle-mm: '101,6' cannot be read; it looks like: 12.5"_s});
    for (const QString& odd : {u"nan"_s, u"-inf"_s, u"4 in"_s, u"."_s, u"1_0"_s, u"٥٠"_s})
        EXPECT_EQ(byPuddle(odd).status, 2) << odd.toStdString();
}

TEST(Mix, WantsExactlyOneSize)
{
    EXPECT_EQ(program({u"mix"_s}).messages(), QStringList{u"--puddle-mm | --filler-g: missing; it must be a number"_s});
    const Ran both = byPuddle(u"50"_s, {u"--filler-g"_s, u"30"_s});
    EXPECT_EQ(both.status, 2);
    EXPECT_EQ(both.messages(), QStringList{u"--puddle-mm: '50' does not agree with --filler-g: '30'"_s});
}

} // namespace
} // namespace strandbench
