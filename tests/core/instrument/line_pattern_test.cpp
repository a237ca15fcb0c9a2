// SPDX-License-Identifier: GPL-3.0-or-later
#include "instrument/line_pattern.h"

#include "quantity/units.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using ::testing::ElementsAre;

namespace {

template <class T> std::vector<std::string> faultsOf(const Checked<T>& checked)
{
    static const char* kinds[] = {"Missing",     "UnknownKey", "WrongKind", "OutOfRange", "NotOneOf",
                                  "NotReadable", "Empty",      "TooLong",   "Conflicts",  "NotFound"};
    std::vector<std::string> told;
    if (!checked)
        for (const Fault& each : checked.error())
            told.push_back(
                (each.field + u'|' + each.value + u'|' + QString::fromLatin1(kinds[int(each.kind)])).toStdString());
    return told;
}

double gramsOf(const QString& pattern, const QByteArray& line)
{
    const auto reading = LinePattern::of(pattern).and_then([&](const LinePattern& made) { return made.read(line); });
    return reading && reading->weight ? inGrams(*reading->weight) : -1e9;
}

TEST(LinePattern, ReadsAWeightInTheUnitOfTheLineOrOfThePattern)
{
    EXPECT_DOUBLE_EQ(gramsOf(u"{weight} {unit}"_s, "   58.42 g"), 58.42) << "padded";
    EXPECT_DOUBLE_EQ(gramsOf(u" {weight} {unit} "_s, "   58.42 g  "), 58.42);
    EXPECT_DOUBLE_EQ(gramsOf(u" {weight} {unit} "_s, "0.05842 kg"), -1e9) << "five digits after the point";
    EXPECT_DOUBLE_EQ(gramsOf(u" {weight} {unit} "_s, "0.0584 KG"), 58.4);
    // The avoirdupois pound is 453.59237 g, the ounce a sixteenth of it (NIST Handbook 44, appendix C).
    EXPECT_DOUBLE_EQ(gramsOf(u" {weight} {unit} "_s, "2 lb"), 907.18474);
    EXPECT_DOUBLE_EQ(gramsOf(u"{weight:oz}"_s, "16"), 453.59237);
    EXPECT_DOUBLE_EQ(gramsOf(u"{weight:g}"_s, "58,42"), 58.42);
    EXPECT_DOUBLE_EQ(gramsOf(u"N {weight:g}"_s, "N +  58.42"), 58.42);
    EXPECT_DOUBLE_EQ(gramsOf(u"{weight:g}"_s, "-  3.1"), -3.1);
}

TEST(LinePattern, WhatDoesNotFitWholeIsNoWeight)
{
    const auto pattern = *LinePattern::of(u"{steady:ST|US} {weight} {unit}"_s);
    for (const char* line : {"ST 58.42", "ST 58. g", "ST 58.4 2 g", "ST 1,058.42 g", "ST 12345678 g", "58.42 g", "ST g",
                             "ST 58.42 gr", "ST 58.42 g g", "st 58.42 g", "", "ST 5e3 g", "ST 0x10 g", "ST nan g"})
        EXPECT_THAT(faultsOf(pattern.read(line)), ElementsAre("line|" + std::string(line) + "|NotReadable")) << line;
}

TEST(LinePattern, SaysWhatTheInstrumentSaysOfItself)
{
    const auto pattern = *LinePattern::of(u"{steady:ST|US} {any} {weight} {unit}"_s);
    EXPECT_EQ(pattern.read("ST net 7.00 g")->steady, true);
    EXPECT_EQ(pattern.read("US net 7.00 g")->steady, false);
    EXPECT_EQ(LinePattern::of(u"{weight:g}"_s)->read("7")->steady, std::nullopt);
    EXPECT_EQ(LinePattern::of(u"{steady:|?}{weight:g}"_s).has_value(), false);
    EXPECT_EQ(LinePattern::of(u"{weight:g}{steady:*|}"_s)->read("7")->steady, false) << "no mark: not steady";
}

TEST(LinePattern, ReadsTheAir)
{
    const auto pattern = *LinePattern::of(u"T={temperature:C}{any} RH={humidity}%"_s);
    const auto reading = pattern.read("T=21.5\xc2\xb0"
                                      "C RH=48%");
    ASSERT_TRUE(reading);
    EXPECT_NEAR(inCelsius(*reading->temperature), 21.5, 1e-9);
    EXPECT_DOUBLE_EQ(reading->humidity->percent(), 48);
    EXPECT_FALSE(reading->weight);
    // 68 degF are 20 degC by the definition of the scales.
    EXPECT_NEAR(inCelsius(*LinePattern::of(u"{temperature:F}"_s)->read("68")->temperature), 20, 1e-9);
}

TEST(LinePattern, WhatNoBenchHasIsNamed)
{
    EXPECT_THAT(faultsOf(LinePattern::of(u"{weight:kg}"_s)->read("51")), ElementsAre("weight|51|OutOfRange"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{temperature:C} {humidity}"_s)->read("999 101")),
                ElementsAre("temperature|999|OutOfRange", "humidity|101|OutOfRange"));
}

TEST(LinePattern, ThatCannotBeUsedIsRefusedByName)
{
    EXPECT_THAT(faultsOf(LinePattern::of(u"  "_s)), ElementsAre("pattern|  |Empty"));
    EXPECT_EQ(faultsOf(LinePattern::of(QString(81, u'x'))).size(), 1U);
    EXPECT_THAT(faultsOf(LinePattern::of(u"{weight"_s)), ElementsAre("pattern|{weight|NotReadable"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"weight}"_s)), ElementsAre("pattern|weight}|NotReadable"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{mass:g}"_s)), ElementsAre("pattern|mass|UnknownKey"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{weight:stone}"_s)), ElementsAre("pattern|stone|NotOneOf"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{temperature}"_s)), ElementsAre("pattern||NotOneOf"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{weight:g} {weight:g}"_s)),
                ElementsAre("pattern|{weight:g} {weight:g}|Conflicts"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{weight:g} {unit}"_s)), ElementsAre("pattern|{weight:g} {unit}|Conflicts"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{weight}"_s)), ElementsAre("pattern|{weight}|Missing"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{any}"_s)), ElementsAre("pattern|{any}|Missing"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{steady:ST} {weight:g}"_s)), ElementsAre("pattern|ST|NotReadable"));
    EXPECT_THAT(faultsOf(LinePattern::of(u"{temperature:C} °"_s)),
                ElementsAre("pattern|{temperature:C} °|NotReadable"));
}

TEST(LinePattern, WhatMeansSomethingToAnExpressionIsItself)
{
    EXPECT_DOUBLE_EQ(gramsOf(u"(a.b)* [{weight:g}]+ \\d $"_s, "(a.b)* [5]+ \\d $"), 5);
    EXPECT_DOUBLE_EQ(gramsOf(u"a.b {weight:g}"_s, "axb 5"), -1e9);
}

/// Plain ASCII weight lines are often parted by commas (common practice, no source).
TEST(LinePattern, WhatIsNotLookedAtEndsAtTheSignThatFollows)
{
    const auto pattern = *LinePattern::of(u"{steady:ST|US},{any},{weight} {unit}"_s);
    const auto read = pattern.read("ST,GS,+  151.24  g");
    ASSERT_TRUE(read);
    EXPECT_NEAR(inGrams(*read->weight), 151.24, 1e-9);
    EXPECT_EQ(read->steady, true);
    EXPECT_FALSE(pattern.read("ST,GS,NT,+  151.24  g")) << "a part more is another line";
    EXPECT_TRUE(pattern.asksFor(u"weight"_s));
    EXPECT_FALSE(pattern.asksFor(u"humidity"_s));
}

} // namespace
