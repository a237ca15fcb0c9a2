// SPDX-License-Identifier: GPL-3.0-or-later
// Vapours and limits in words.
#include "exchange/harm.h"
#include "words/air_words.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Words& metric()
{
    static const Words words(UnitSystem::Metric, QLocale::c());
    return words;
}

QString ppm(double least, double most)
{
    return words::ppm(VapourRange{partsPerMillion(least), partsPerMillion(most)}, metric()).replace(QChar::Nbsp, u' ');
}

TEST(AirWords, NameEveryVapourAndLimit)
{
    for (const auto& [vapour, code] : Codes<Vapour>::table)
        EXPECT_FALSE(words::vapour(vapour).contains(u'[')) << code;
    for (const ExposureLimit& each : exposureLimits()) {
        const QString line = words::limitLine(each, metric());
        EXPECT_TRUE(line.startsWith(each.name)) << line.toStdString();
        EXPECT_TRUE(line.contains(words::limitKind(each.kind))) << line.toStdString();
    }
}

TEST(AirWords, RangesAreShownAsFarAsTheyDiffer)
{
    EXPECT_EQ(ppm(1, 4.26), u"1.0 to 4.3 ppm"_s);
    EXPECT_EQ(ppm(3.02, 3.04), u"3.0 ppm"_s);
    EXPECT_EQ(ppm(12.4, 80.6), u"12 to 81 ppm"_s);
    EXPECT_EQ(ppm(0, 0), u"0.0 ppm"_s);
    EXPECT_EQ(ppm(0.001, 0.02), u"under 0.1 ppm"_s);
}

TEST(AirWords, SayThatItMayBeAboveAndNeverThatNothingCanHappen)
{
    LimitBeside beside{exposureLimits().front(), {partsPerMillion(1), partsPerMillion(4.3)}, BesideIt::Below};
    ASSERT_EQ(beside.limit.level, partsPerMillion(20));
    EXPECT_TRUE(words::besideLine(beside, metric()).contains(u"22"_s)) << "a share is never rounded down";
    beside.box.most = partsPerMillion(25);
    beside.lies = BesideIt::MayBeAbove;
    EXPECT_TRUE(words::besideLine(beside, metric()).contains(u"may be above"_s));
    beside.box.least = partsPerMillion(21);
    beside.lies = BesideIt::Above;
    EXPECT_TRUE(words::besideLine(beside, metric()).contains(u"above it. Ventilate"_s));
}

TEST(AirWords, SayOfEachMaterialFromWhenItCanBeLit)
{
    const Words us(UnitSystem::UsCustomary, QLocale::c());
    for (const FirePoint& each : firePoints(builtInHarm())) {
        const QString cool = words::fireLine(each, celsius(20), metric());
        const QString hot = words::fireLine(each, celsius(35), metric());
        EXPECT_TRUE(hot.contains(u"lit now"_s) || each.by == FlashBy::Always) << hot.toStdString();
        EXPECT_EQ(cool.contains(u"below it"_s), each.material == u"filler"_s || each.material == u"lay_up_resin"_s)
            << cool.toStdString();
        EXPECT_FALSE(words::fireLine(each, std::nullopt, us).isEmpty());
    }
    const FirePoint styrene{u"filler"_s, FlashBy::Published, flashPoint(Vapour::Styrene)};
    EXPECT_TRUE(words::fireLine(styrene, std::nullopt, us).contains(u"88"_s)) << "as NIOSH gives it in degF";
}

} // namespace
} // namespace strandbench
