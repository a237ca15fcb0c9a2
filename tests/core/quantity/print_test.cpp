// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as screens and paper show them.
#include "quantity/units.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

constexpr UnitSystem metric = UnitSystem::Metric;
constexpr UnitSystem us = UnitSystem::UsCustomary;

const QLocale& english()
{
    static const QLocale locale(QLocale::English, QLocale::UnitedStates);
    return locale;
}
const QLocale& german()
{
    static const QLocale locale(QLocale::German, QLocale::Germany);
    return locale;
}

struct Row {
    double value;
    QString metric;
    QString us;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.value; }

/// Both systems' text with a plain space, so that a row can be read.
QString plain(const Printed& printed) { return printed.figure + u' ' + printed.unit; }

class PrintLength : public testing::TestWithParam<Row> {};
TEST_P(PrintLength, OfMillimetres)
{
    const Length length = millimetres(GetParam().value);
    EXPECT_EQ(plain(printLength(length, metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printLength(length, us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(Usual, PrintLength,
                         testing::Values(Row{0, u"0 mm"_s, u"0 in"_s}, Row{0.04, u"0 mm"_s, u"0 in"_s},
                                         Row{0.5, u"0.5 mm"_s, u"0.02 in"_s}, Row{0.15, u"0.2 mm"_s, u"0.01 in"_s},
                                         Row{0.8, u"0.8 mm"_s, u"1/16 in"_s}, Row{3, u"3.0 mm"_s, u"1/8 in"_s},
                                         Row{9.94, u"9.9 mm"_s, u"3/8 in"_s}, Row{9.95, u"10 mm"_s, u"3/8 in"_s},
                                         Row{12.7, u"13 mm"_s, u"1/2 in"_s}, Row{24.9, u"25 mm"_s, u"1 in"_s},
                                         Row{25.4, u"25 mm"_s, u"1 in"_s}, Row{58.7375, u"59 mm"_s, u"2 5/16 in"_s},
                                         Row{101.6, u"102 mm"_s, u"4 in"_s}, Row{1234.4, u"1234 mm"_s, u"48 5/8 in"_s},
                                         Row{-58.7375, u"-59 mm"_s, u"-2 5/16 in"_s}));

class PrintFine : public testing::TestWithParam<Row> {};
TEST_P(PrintFine, OfMillimetres)
{
    const Length length = millimetres(GetParam().value);
    EXPECT_EQ(plain(printFineLength(length, metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printFineLength(length, us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(Drills, PrintFine,
                         testing::Values(Row{0, u"0 mm"_s, u"0 in"_s}, Row{2.38125, u"2.4 mm"_s, u"3/32 in"_s},
                                         Row{3.175, u"3.2 mm"_s, u"1/8 in"_s}, Row{0.3, u"0.3 mm"_s, u"0.01 in"_s},
                                         Row{12.34, u"12.3 mm"_s, u"1/2 in"_s},
                                         Row{26.19375, u"26.2 mm"_s, u"1 1/32 in"_s}));

class PrintThickness : public testing::TestWithParam<Row> {};
TEST_P(PrintThickness, OfMillimetres)
{
    const Length length = millimetres(GetParam().value);
    EXPECT_EQ(plain(printThickness(length, metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printThickness(length, us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(Layers, PrintThickness,
                         testing::Values(Row{0, u"0 mm"_s, u"0 in"_s}, Row{1, u"1.0 mm"_s, u"0.04 in"_s},
                                         Row{3.5, u"3.5 mm"_s, u"0.14 in"_s}, Row{25.4, u"25.4 mm"_s, u"1.00 in"_s}));

class PrintMass : public testing::TestWithParam<Row> {};
TEST_P(PrintMass, OfGrams)
{
    EXPECT_EQ(plain(printMass(grams(GetParam().value), metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printMass(grams(GetParam().value), us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(Filler, PrintMass,
                         testing::Values(Row{0, u"0.0 g"_s, u"0.00 oz"_s}, Row{29.21, u"29.2 g"_s, u"1.03 oz"_s},
                                         Row{116.84, u"116.8 g"_s, u"4.12 oz"_s},
                                         Row{9999.9, u"9999.9 g"_s, u"22.05 lb"_s},
                                         Row{9999.96, u"10.00 kg"_s, u"22.05 lb"_s},
                                         Row{9000, u"9000.0 g"_s, u"317.47 oz"_s},
                                         Row{12345, u"12.35 kg"_s, u"27.22 lb"_s}));

class PrintHardener : public testing::TestWithParam<Row> {};
TEST_P(PrintHardener, OfGrams)
{
    EXPECT_EQ(plain(printHardener(grams(GetParam().value), metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printHardener(grams(GetParam().value), us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(ByScale, PrintHardener,
                         testing::Values(Row{0.584, u"0.58 g"_s, u"0.021 oz"_s}, Row{0.996, u"1.00 g"_s, u"0.035 oz"_s},
                                         Row{1.0, u"1.00 g"_s, u"0.035 oz"_s}, Row{2.3368, u"2.35 g"_s, u"0.082 oz"_s},
                                         Row{2.32, u"2.30 g"_s, u"0.082 oz"_s},
                                         Row{7.0104, u"7.00 g"_s, u"0.247 oz"_s}));

class PrintTemperature : public testing::TestWithParam<Row> {};
TEST_P(PrintTemperature, OfCelsius)
{
    EXPECT_EQ(plain(printTemperature(celsius(GetParam().value), metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printTemperature(celsius(GetParam().value), us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(Usual, PrintTemperature,
                         testing::Values(Row{18, u"18 °C"_s, u"64 °F"_s}, Row{18.5, u"18.5 °C"_s, u"65 °F"_s},
                                         Row{18.3, u"18.5 °C"_s, u"65 °F"_s}, Row{18.2, u"18 °C"_s, u"65 °F"_s},
                                         Row{0, u"0 °C"_s, u"32 °F"_s}, Row{-0.2, u"0 °C"_s, u"32 °F"_s},
                                         Row{-7.5, u"-7.5 °C"_s, u"19 °F"_s}));

class PrintFineTemperature : public testing::TestWithParam<Row> {};
TEST_P(PrintFineTemperature, OfCelsius)
{
    EXPECT_EQ(plain(printFineTemperature(celsius(GetParam().value), metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printFineTemperature(celsius(GetParam().value), us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(BesideALimit, PrintFineTemperature,
                         testing::Values(Row{9.9, u"9.9 °C"_s, u"49.8 °F"_s}, Row{10, u"10 °C"_s, u"50 °F"_s},
                                         Row{12.01, u"12 °C"_s, u"53.6 °F"_s}));

class PrintStep : public testing::TestWithParam<Row> {};
TEST_P(PrintStep, IsNeverRoundedUp)
{
    EXPECT_EQ(plain(printTemperatureStep(kelvinStep(GetParam().value), metric, english())), GetParam().metric);
    EXPECT_EQ(plain(printTemperatureStep(kelvinStep(GetParam().value), us, english())), GetParam().us);
}
INSTANTIATE_TEST_SUITE_P(Margins, PrintStep,
                         testing::Values(Row{3, u"3 °C"_s, u"5.4 °F"_s}, Row{2.99, u"2.9 °C"_s, u"5.3 °F"_s},
                                         Row{3.09, u"3 °C"_s, u"5.5 °F"_s}, Row{0, u"0 °C"_s, u"0 °F"_s},
                                         Row{-0.01, u"-0.1 °C"_s, u"-0.1 °F"_s}, Row{0.3, u"0.3 °C"_s, u"0.5 °F"_s}));

TEST(PrintVolume, OfMillilitres)
{
    EXPECT_EQ(plain(printVolume(millilitres(26.507), metric, english())), u"26.5 ml"_s);
    EXPECT_EQ(plain(printVolume(millilitres(26.507), us, english())), u"0.90 fl oz"_s);
}

TEST(PrintPercent, HasADecimalOnlyWhereThereIsOne)
{
    EXPECT_EQ(plain(printPercent(Fraction::ofHundred(52), english())), u"52 %"_s);
    EXPECT_EQ(plain(printPercent(Fraction::ofHundred(1.8), english())), u"1.8 %"_s);
    EXPECT_EQ(plain(printPercent(Fraction::ofHundred(99.96), english())), u"100 %"_s);
}

TEST(PrintDuration, IsMinutesAndSeconds)
{
    EXPECT_EQ(printDuration(seconds(0)), u"00:00"_s);
    EXPECT_EQ(printDuration(seconds(270)), u"04:30"_s);
    EXPECT_EQ(printDuration(seconds(59.4)), u"00:59"_s);
    EXPECT_EQ(printDuration(seconds(59.5)), u"01:00"_s);
    EXPECT_EQ(printDuration(seconds(3599.5)), u"1:00:00"_s);
    EXPECT_EQ(printDuration(seconds(5405)), u"1:30:05"_s);
    EXPECT_EQ(printDuration(seconds(5405), DurationStyle::MinutesOn), u"90:05"_s);
    EXPECT_EQ(printDuration(seconds(-30)), u"-00:30"_s);
    EXPECT_EQ(printDuration(seconds(-0.4)), u"00:00"_s);
}

TEST(Print, TakesTheLocalesDecimalSignAndNoGroups)
{
    EXPECT_EQ(printMass(grams(1234.56), metric, german()).figure, u"1234,6"_s);
    EXPECT_EQ(printMass(grams(1234.56), metric, english()).figure, u"1234.6"_s);
    EXPECT_EQ(printNumber(1234567.891, 2, german()), u"1234567,89"_s);
    EXPECT_EQ(printNumber(-0.004, 2, german()), u"0,00"_s);
    EXPECT_EQ(printNumber(-0.006, 2, german()), u"-0,01"_s);
}

TEST(Print, JoinsWithNoBreakSpaces)
{
    EXPECT_EQ((Printed{u"2 5/16"_s, u"in"_s}.joined()), u"2\u00a05/16\u00a0in"_s);
    EXPECT_EQ((Printed{u"4"_s, {}}.joined()), u"4"_s);
}

TEST(Print, UnitsStandAlone)
{
    EXPECT_EQ(lengthUnit(metric) + lengthUnit(us), u"mmin"_s);
    EXPECT_EQ(massUnit(metric) + massUnit(us), u"goz"_s);
    EXPECT_EQ(temperatureUnit(metric) + temperatureUnit(us), u"°C°F"_s);
    EXPECT_EQ(volumeUnit(metric) + volumeUnit(us), u"mlfl oz"_s);
}

/// Whatever is printed can be typed back, and is then at most half a step away.
TEST(Print, CanBeTypedBack)
{
    for (double mm = 0.05; mm < 3000; mm *= 1.31) {
        for (const UnitSystem system : {metric, us}) {
            const QString shown = printLength(millimetres(mm), system, german()).joined();
            const Checked<Length> read = parseLength(shown, system, u"length"_s);
            ASSERT_TRUE(read.has_value()) << qPrintable(shown);
            const double half = system == us ? 25.4 / 32 : mm < 10 ? 0.05 : 0.5;
            EXPECT_NEAR(inMillimetres(*read), mm, half + 1e-6) << qPrintable(shown);
        }
    }
}

} // namespace
