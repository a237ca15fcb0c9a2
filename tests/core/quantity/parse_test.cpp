// SPDX-License-Identifier: GPL-3.0-or-later
// What a person types becomes a quantity or a fault, row beside row.
#include "quantity/units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <variant>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

constexpr UnitSystem metric = UnitSystem::Metric;
constexpr UnitSystem us = UnitSystem::UsCustomary;

/// What a row expects: a number in the row's unit, or one kind of fault.
using Expected = std::variant<double, FaultKind>;

struct Row {
    QString text;
    UnitSystem system = metric;
    Expected expected;
};

void PrintTo(const Row& row, std::ostream* out)
{
    *out << '\'' << qPrintable(row.text) << "' in " << qPrintable(codeOf(row.system));
}

void check(const Row& row, const Checked<double>& read)
{
    if (const auto* kind = std::get_if<FaultKind>(&row.expected)) {
        ASSERT_FALSE(read.has_value()) << "read as " << *read;
        ASSERT_EQ(read.error().size(), 1U);
        EXPECT_EQ(read.error().front().field, u"depth"_s);
        EXPECT_EQ(read.error().front().value, row.text);
        EXPECT_EQ(read.error().front().kind, *kind);
        return;
    }
    const double wanted = std::get<double>(row.expected);
    ASSERT_TRUE(read.has_value()) << "refused";
    EXPECT_NEAR(*read, wanted, 1e-9 * std::max(1.0, std::abs(wanted)));
}

constexpr FaultKind garbage = FaultKind::NotReadable;
constexpr FaultKind outside = FaultKind::OutOfRange;

class ParseLength : public testing::TestWithParam<Row> {};
TEST_P(ParseLength, InMillimetres)
{
    const Row& row = GetParam();
    check(row, parseLength(row.text, row.system, u"depth"_s).map(inMillimetres));
}
INSTANTIATE_TEST_SUITE_P(
    Numbers, ParseLength,
    testing::Values(Row{u"12"_s, metric, 12.0}, Row{u"12.5"_s, metric, 12.5}, Row{u"12,5"_s, metric, 12.5},
                    Row{u".5"_s, metric, 0.5}, Row{u",5"_s, metric, 0.5}, Row{u"5."_s, metric, 5.0},
                    Row{u"0"_s, metric, 0.0}, Row{u"-0"_s, metric, 0.0}, Row{u"+3"_s, metric, 3.0},
                    Row{u"  12.5  "_s, metric, 12.5},
                    // One sign only: "1,234" is a little over one, never a thousand.
                    Row{u"1,234"_s, us, 1.234 * 25.4},
                    // Two separators, garbage, other notations and other scripts.
                    Row{u"1.234,5"_s, metric, garbage}, Row{u"1,234.5"_s, us, garbage},
                    Row{u"1.2.3"_s, metric, garbage}, Row{u"1 234"_s, metric, garbage}, Row{u"12x"_s, metric, garbage},
                    Row{u"x12"_s, metric, garbage}, Row{u"12 mm 3"_s, metric, garbage}, Row{u"."_s, metric, garbage},
                    Row{u"mm"_s, metric, garbage}, Row{u"-"_s, metric, garbage}, Row{u"--3"_s, metric, garbage},
                    Row{u"1e3"_s, metric, garbage}, Row{u"inf"_s, metric, garbage}, Row{u"nan"_s, metric, garbage},
                    Row{u"0x10"_s, metric, garbage}, Row{u"٣"_s, metric, garbage}, Row{u"12½"_s, us, garbage},
                    Row{u"1'000"_s, metric, garbage}, Row{u""_s, metric, FaultKind::Empty},
                    Row{u" \t"_s, metric, FaultKind::Empty}, Row{QString(QChar::Nbsp), metric, FaultKind::Empty},
                    Row{QString(41, u'1'), metric, FaultKind::TooLong}, Row{QString(40, u'9'), metric, outside},
                    Row{u"-1"_s, metric, outside}, Row{u"−1"_s, metric, outside}, Row{u"100001"_s, metric, outside}));
INSTANTIATE_TEST_SUITE_P(Units, ParseLength,
                         testing::Values(Row{u"12mm"_s, us, 12.0}, Row{u"12 mm"_s, us, 12.0}, Row{u"12 MM"_s, us, 12.0},
                                         Row{u"12\u00a0mm"_s, us, 12.0}, Row{u"1.2 cm"_s, us, 12.0},
                                         Row{u"0.5 m"_s, us, 500.0}, Row{u"2 in"_s, metric, 50.8},
                                         Row{u"2\""_s, metric, 50.8}, Row{u"2″"_s, metric, 50.8},
                                         Row{u"1 ft"_s, metric, 304.8}, Row{u"1'"_s, metric, 304.8},
                                         Row{u"2"_s, us, 50.8}, Row{u"2 kg"_s, metric, garbage},
                                         Row{u"2 mmm"_s, metric, garbage}, Row{u"2 mm mm"_s, metric, garbage},
                                         Row{u"2 °C"_s, metric, garbage}, Row{u"1' 2\""_s, metric, garbage},
                                         Row{u"2 yd"_s, us, garbage}));
INSTANTIATE_TEST_SUITE_P(
    Fractions, ParseLength,
    testing::Values(Row{u"2 5/16"_s, us, 58.7375}, Row{u"2-5/16"_s, us, 58.7375}, Row{u"5/16"_s, us, 7.9375},
                    Row{u"2 5/16 in"_s, metric, 58.7375}, Row{u"2 5/16\""_s, metric, 58.7375},
                    Row{u"5/16in"_s, metric, 7.9375}, Row{u"3/32 in"_s, metric, 2.38125}, Row{u"21/16"_s, us, 33.3375},
                    Row{u"0/16"_s, us, 0.0}, Row{u"5/16"_s, metric, garbage}, Row{u"5/16 mm"_s, us, garbage},
                    Row{u"5/16 ft"_s, us, garbage}, Row{u"5/0"_s, us, garbage}, Row{u"2 16/16"_s, us, garbage},
                    Row{u"2 5/"_s, us, garbage}, Row{u"/16"_s, us, garbage}, Row{u"2.5/16"_s, us, garbage},
                    Row{u"2 5/16/2"_s, us, garbage}, Row{u"-5/16"_s, us, garbage}, Row{u"2--5/16"_s, us, garbage},
                    Row{u"2 - 5/16"_s, us, garbage}));

class ParseMass : public testing::TestWithParam<Row> {};
TEST_P(ParseMass, InGrams)
{
    const Row& row = GetParam();
    check(row, parseMass(row.text, row.system, u"depth"_s).map(inGrams));
}
INSTANTIATE_TEST_SUITE_P(Typed, ParseMass,
                         testing::Values(Row{u"29,2"_s, metric, 29.2}, Row{u"29.2 g"_s, us, 29.2},
                                         Row{u"1.2kg"_s, metric, 1200.0}, Row{u"1"_s, us, 28.349523125},
                                         Row{u"1 oz"_s, metric, 28.349523125}, Row{u"1 lb"_s, metric, 453.59237},
                                         Row{u"1/2 oz"_s, us, garbage}, Row{u"1 mm"_s, metric, garbage},
                                         Row{u"1 t"_s, metric, garbage}, Row{u"-1 g"_s, metric, outside},
                                         Row{u"1001 kg"_s, metric, outside}, Row{u""_s, us, FaultKind::Empty}));

class ParseTemperature : public testing::TestWithParam<Row> {};
TEST_P(ParseTemperature, InCelsius)
{
    const Row& row = GetParam();
    check(row, parseTemperature(row.text, row.system, u"depth"_s).map(inCelsius));
}
INSTANTIATE_TEST_SUITE_P(
    Typed, ParseTemperature,
    testing::Values(Row{u"18,5"_s, metric, 18.5}, Row{u"18.5 °C"_s, us, 18.5}, Row{u"18.5c"_s, us, 18.5},
                    Row{u"-5"_s, metric, -5.0}, Row{u"−5"_s, metric, -5.0}, Row{u"50"_s, us, 10.0},
                    Row{u"50 °F"_s, metric, 10.0}, Row{u"32F"_s, metric, 0.0}, Row{u"-40 F"_s, metric, -40.0},
                    Row{u"212 f"_s, metric, 100.0}, Row{u"290 K"_s, metric, garbage}, Row{u"20 °"_s, metric, garbage},
                    Row{u"1/2 °C"_s, metric, garbage}, Row{u"20 %"_s, metric, garbage}, Row{u"-101"_s, metric, outside},
                    Row{u"501"_s, metric, outside}, Row{u" "_s, metric, FaultKind::Empty}));

class ParsePercent : public testing::TestWithParam<Row> {};
TEST_P(ParsePercent, InHundredths)
{
    const Row& row = GetParam();
    check(row, parsePercent(row.text, u"depth"_s).map([](Fraction share) { return share.percent(); }));
}
INSTANTIATE_TEST_SUITE_P(Typed, ParsePercent,
                         testing::Values(Row{u"52"_s, metric, 52.0}, Row{u"52 %"_s, metric, 52.0},
                                         Row{u"52%"_s, metric, 52.0}, Row{u"1,8 %"_s, metric, 1.8},
                                         Row{u"0"_s, metric, 0.0}, Row{u"100"_s, metric, 100.0},
                                         Row{u"100.1"_s, metric, outside}, Row{u"-1"_s, metric, outside},
                                         Row{u"52 mm"_s, metric, garbage}, Row{u"1/2"_s, metric, garbage},
                                         Row{u"52 %%"_s, metric, garbage}, Row{u""_s, metric, FaultKind::Empty}));

class ParseDuration : public testing::TestWithParam<Row> {};
TEST_P(ParseDuration, InSeconds)
{
    const Row& row = GetParam();
    check(row, parseDuration(row.text, u"depth"_s).map(inSeconds));
}
INSTANTIATE_TEST_SUITE_P(
    Typed, ParseDuration,
    testing::Values(Row{u"5"_s, metric, 300.0}, Row{u"4,5 min"_s, metric, 270.0}, Row{u"45 s"_s, metric, 45.0},
                    Row{u"1.5 h"_s, metric, 5400.0}, Row{u"4:30"_s, metric, 270.0}, Row{u"04:30"_s, metric, 270.0},
                    Row{u"0:00"_s, metric, 0.0}, Row{u"90:00"_s, metric, 5400.0}, Row{u"1:30:00"_s, metric, 5400.0},
                    Row{u"4:3"_s, metric, garbage}, Row{u"4:60"_s, metric, garbage}, Row{u"1:60:00"_s, metric, garbage},
                    Row{u"1:5:00"_s, metric, garbage}, Row{u"4:30 min"_s, metric, garbage},
                    Row{u":30"_s, metric, garbage}, Row{u"4:30:"_s, metric, garbage},
                    Row{u"1:2:3:04"_s, metric, garbage}, Row{u"-1:00"_s, metric, garbage},
                    Row{u"5 d"_s, metric, garbage}, Row{u"-5"_s, metric, outside}, Row{u"169 h"_s, metric, outside},
                    Row{u"99999:00"_s, metric, outside}, Row{u""_s, metric, FaultKind::Empty}));

class ParseNumber : public testing::TestWithParam<Row> {};
TEST_P(ParseNumber, AsTyped)
{
    const Row& row = GetParam();
    check(row, parseNumber(row.text, u"depth"_s));
}
INSTANTIATE_TEST_SUITE_P(Typed, ParseNumber,
                         testing::Values(Row{u"4"_s, metric, 4.0}, Row{u"2,5"_s, metric, 2.5},
                                         Row{u"-2.5"_s, metric, -2.5}, Row{u"4 mm"_s, metric, garbage},
                                         Row{u"4:1"_s, metric, garbage}, Row{u"1/2"_s, metric, garbage},
                                         Row{u"99999999999"_s, metric, outside}, Row{u""_s, metric, FaultKind::Empty}));

} // namespace
