// SPDX-License-Identifier: GPL-3.0-or-later
// What a refused text is told: the limits in the unit that was typed, or an example.
#include "quantity/units.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

constexpr UnitSystem metric = UnitSystem::Metric;
constexpr UnitSystem us = UnitSystem::UsCustomary;

template <class Q> Fault onlyFault(const Checked<Q>& read)
{
    if (read.has_value() || read.error().size() != 1) {
        ADD_FAILURE() << "not refused with one fault";
        return {};
    }
    return read.error().front();
}

TEST(ParseFault, GivesLimitsInTheUnitThatWasTyped)
{
    const Range<Length> puddle{millimetres(5), millimetres(500)};
    EXPECT_EQ(onlyFault(parseLength(u"501"_s, metric, u"puddle_mm"_s, puddle)),
              (Fault{u"puddle_mm"_s, u"501"_s, FaultKind::OutOfRange, {u"5"_s, u"500"_s, u"mm"_s}}));
    EXPECT_EQ(onlyFault(parseLength(u"0.4 cm"_s, metric, u"puddle_mm"_s, puddle)).allowed,
              QStringList({u"0.5"_s, u"50"_s, u"cm"_s}));
    // 5 mm is 0.19685 in and 500 mm 19.68504 in: both ends are shown a little inside, so that they can be typed.
    const Fault inch = onlyFault(parseLength(u"25"_s, us, u"puddle_mm"_s, puddle));
    EXPECT_EQ(inch.allowed, QStringList({u"0.1969"_s, u"19.685"_s, u"in"_s}));
    EXPECT_TRUE(parseLength(inch.allowed.at(0), us, u"puddle_mm"_s, puddle).has_value());
    EXPECT_TRUE(parseLength(inch.allowed.at(1), us, u"puddle_mm"_s, puddle).has_value());

    const Range<Temperature> air{celsius(-10), celsius(45)};
    EXPECT_EQ(onlyFault(parseTemperature(u"120 F"_s, metric, u"air_c"_s, air)).allowed,
              QStringList({u"14"_s, u"113"_s, u"F"_s}));
    const Range<Duration> step{seconds(0), minutes(30)};
    EXPECT_EQ(onlyFault(parseDuration(u"31:00"_s, u"wait"_s, step)).allowed, QStringList({u"0"_s, u"30"_s, u"min"_s}));
}

TEST(ParseFault, GivesAnExampleInThePersonsUnits)
{
    EXPECT_EQ(onlyFault(parseLength(u"wide"_s, metric, u"w"_s)).allowed, QStringList{u"12.5 mm"_s});
    EXPECT_EQ(onlyFault(parseLength(u"wide"_s, us, u"w"_s)).allowed, QStringList{u"2 5/16 in"_s});
    EXPECT_EQ(onlyFault(parseMass(u"much"_s, us, u"m"_s)).allowed, QStringList{u"4.25 oz"_s});
    EXPECT_EQ(onlyFault(parseDuration(u"long"_s, u"t"_s)).allowed, QStringList{u"4:30"_s});
    EXPECT_EQ(onlyFault(parseLength(QString(41, u'1'), us, u"w"_s)).allowed, QStringList{u"40"_s});
}

TEST(ParseFault, ExamplesAreReadable)
{
    for (const UnitSystem system : {metric, us}) {
        EXPECT_TRUE(parseLength(onlyFault(parseLength(u"?"_s, system, {})).allowed.value(0), system, {}));
        EXPECT_TRUE(parseMass(onlyFault(parseMass(u"?"_s, system, {})).allowed.value(0), system, {}));
        EXPECT_TRUE(parseTemperature(onlyFault(parseTemperature(u"?"_s, system, {})).allowed.value(0), system, {}));
    }
    EXPECT_TRUE(parsePercent(onlyFault(parsePercent(u"?"_s, {})).allowed.value(0), {}));
    EXPECT_TRUE(parseDuration(onlyFault(parseDuration(u"?"_s, {})).allowed.value(0), {}));
    EXPECT_TRUE(parseNumber(onlyFault(parseNumber(u"?"_s, {})).allowed.value(0), {}));
}

TEST(ParseFault, EndsOfTheRangeAreWithinItInEitherUnit)
{
    const Range<Temperature> panel{celsius(10), celsius(30)};
    for (const auto& text : {u"10"_s, u"30"_s, u"50 F"_s, u"86 F"_s}) {
        const Checked<Temperature> read = parseTemperature(text, metric, u"panel_c"_s, panel);
        ASSERT_TRUE(read.has_value()) << qPrintable(text);
        EXPECT_GE(*read, panel.lowest) << qPrintable(text);
        EXPECT_LE(*read, panel.highest) << qPrintable(text);
    }
    for (const auto& text : {u"9.99"_s, u"30.01"_s, u"49.9 F"_s, u"86.1 F"_s})
        EXPECT_FALSE(parseTemperature(text, metric, u"panel_c"_s, panel).has_value()) << qPrintable(text);
}

} // namespace
