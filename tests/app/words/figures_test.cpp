// SPDX-License-Identifier: GPL-3.0-or-later
// Figures carry their unit, in the person's system and number format, whatever the language.
#include "readable.h"

#include "words/words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// With ordinary spaces, so that expectations can be read.
QString plain(QString text) { return text.replace(QChar(0x00a0), u' '); }

TEST(Figures, AreMetricWithADecimalComma)
{
    const Words words(UnitSystem::Metric, QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(plain(words.length(millimetres(152.4))), u"152 mm"_s);
    EXPECT_EQ(plain(words.fineLength(millimetres(3.5))), u"3,5 mm"_s);
    EXPECT_EQ(plain(words.lengthPair(millimetres(60), millimetres(40))), u"60 × 40 mm"_s);
    EXPECT_EQ(plain(words.mass(grams(29.2))), u"29,2 g"_s);
    EXPECT_EQ(plain(words.hardener(grams(0.584))), u"0,58 g"_s);
    EXPECT_EQ(plain(words.volume(millilitres(8.7))), u"8,7 ml"_s);
    EXPECT_EQ(plain(words.temperature(celsius(18.5))), u"18,5 °C"_s);
    EXPECT_EQ(plain(words.percent(Fraction::ofHundred(52))), u"52 %"_s);
}

TEST(Figures, AreInInchesOuncesAndFahrenheit)
{
    const Words words(UnitSystem::UsCustomary, QLocale::c());
    EXPECT_EQ(plain(words.length(inches(2.3125))), u"2 5/16 in"_s);
    EXPECT_EQ(plain(words.fineLength(inches(3.0 / 32.0))), u"3/32 in"_s);
    EXPECT_EQ(plain(words.temperature(celsius(20))), u"68 °F"_s);
    const StepText step =
        words.step({u"stop_drill"_s, seconds(0), seconds(0), {}, {inches(3.0 / 32.0), inches(0.125)}});
    EXPECT_TRUE(plain(step.detail).contains(u"3/32 in to 1/8 in"_s)) << step.detail.toStdString();
}

TEST(Figures, OfTimeAreMinutesAndSecondsOrHours)
{
    const Words words(UnitSystem::Metric, QLocale::c());
    EXPECT_EQ(words.duration(seconds(125)), u"02:05"_s);
    EXPECT_EQ(words.duration(minutes(75)), u"75:00"_s);
    EXPECT_EQ(plain(words.longDuration(minutes(45))), u"45 min"_s);
    EXPECT_EQ(plain(words.longDuration(minutes(130))), u"2 h 10 min"_s);
    EXPECT_EQ(plain(words.longDuration(minutes(120))), u"2 h"_s);
    EXPECT_EQ(plain(words.age(minutes(59.9))), u"59 min"_s);
    EXPECT_EQ(plain(words.age(minutes(60))), u"1 h"_s);
    EXPECT_EQ(plain(words.age(minutes(179))), u"2 h"_s);
    Instant noon;
    noon.utcMs = (10 * 60 + 42) * 60000LL;
    noon.utcOffsetSeconds = 7200;
    EXPECT_EQ(words.clockTime(noon), u"12:42"_s);
    EXPECT_EQ(words.clockTime(noon, minutes(11 * 60 + 20)), u"00:02"_s);
}

TEST(Figures, StandInReasonsAsTheirKindIsPrinted)
{
    const Words words(UnitSystem::Metric, QLocale::c());
    EXPECT_EQ(plain(words.reason({u"panel_too_cold"_s, {celsius(9.9), celsius(10)}})),
              u"The panel is at 9.9 °C; filling starts at 10 °C."_s);
    EXPECT_EQ(plain(words.reason({u"panel_near_dew_point"_s, {kelvinStep(2.96), kelvinStep(3)}})),
              u"The panel’s margin over the dew point is 2.9 °C; it needs 3 °C."_s);
    EXPECT_EQ(plain(words.reason({u"gels_too_fast"_s, {seconds(95), seconds(45)}})),
              u"It would gel in 01:35; kneading alone takes 00:45."_s);
    EXPECT_EQ(words.reason({u"another_is_better"_s, {u"mixed_strand"_s}}), u"Mixed strand suits better here."_s);
    EXPECT_EQ(words.reason({u"not_assessed"_s, {u"weld"_s}}), u"Not assessed: kind of weld."_s);
}

TEST(Figures, NameJobsAndStandAlone)
{
    EXPECT_EQ(Words(UnitSystem::Metric, QLocale::c()).jobLabel(u"4421"_s), u"Job 4421"_s);
    EXPECT_EQ(Words::title(u"laminate"_s), u"Laminate"_s);
    EXPECT_EQ(Words::title(QString()), QString());
}

} // namespace
} // namespace strandbench
