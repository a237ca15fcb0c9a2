// SPDX-License-Identifier: GPL-3.0-or-later
// Times scaled from the sheet's own by temperature and hardener.
#include "repairs.h"

#include "exchange/sheets.h"

#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

ProductSheet sheetWith(double kilojoules)
{
    ProductSheet sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    sheet.cure.activationEnergyJoulesPerMole = kilojoules * 1000;
    return sheet;
}

double perTenDegrees(const ProductSheet& sheet, double fromC)
{
    const Fraction two = Fraction::ofHundred(2);
    return rateFactor(sheet, celsius(fromC + 10), two) / rateFactor(sheet, celsius(fromC), two);
}

/// exp(E/R (1/T - 1/(T+10))), worked out apart from the program, to its three decimals; the activation energies are
/// those published for peroxide-amine and redox cure (Turk. J. Chem. 20 (1996) 62-68: 32.3 to 55.3 kJ/mol;
/// J. Appl. Polym. Sci. 102 (2006) 1870-1876: 40 to 60 kJ/mol).
TEST(RateFactor, PerTenDegrees)
{
    struct Row {
        double kilojoules;
        std::array<double, 4> factors; ///< 10 to 20, 15 to 25, 20 to 30, 25 to 35 °C
    };
    constexpr std::array<Row, 5> rows{{
        {32.3, {1.597, 1.572, 1.548, 1.526}},
        {40, {1.785, 1.751, 1.718, 1.688}},
        {50, {2.064, 2.014, 1.967, 1.924}},
        {55.3, {2.228, 2.169, 2.114, 2.063}},
        {60, {2.385, 2.316, 2.252, 2.193}},
    }};
    constexpr std::array<double, 4> from{10, 15, 20, 25};
    for (const Row& row : rows)
        for (std::size_t i = 0; i < from.size(); ++i)
            EXPECT_NEAR(perTenDegrees(sheetWith(row.kilojoules), from.at(i)), row.factors.at(i), 0.0006)
                << row.kilojoules << " kJ/mol from " << from.at(i) << " degC";
}

/// 32 to 60 kJ/mol leave 1.55 to 2.35 per ten degrees at 15 to 25 °C.
TEST(RateFactor, OfTheDemoSheetsIsWithinWhatIsPublished)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        EXPECT_GT(perTenDegrees(sheet, 15), 1.55) << sheet.id.toStdString();
        EXPECT_LT(perTenDegrees(sheet, 15), 2.35) << sheet.id.toStdString();
    }
}

TEST(RateFactor, IsOneAtTheReference)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets())
        EXPECT_DOUBLE_EQ(rateFactor(sheet, sheet.reference, sheet.hardenerNominal), 1.0);
}

/// Twice the hardener: between one over two (inhibition, textbook) and one over the root of two (half order in
/// peroxide: Turk. J. Chem. 20 (1996) 62-68) of the gel time.
TEST(RateFactor, OfTheHardenerIsBracketed)
{
    const ProductSheet sheet = sheetWith(50);
    const auto gel = [&](double percent) {
        return 1.0 / rateFactor(sheet, sheet.reference, Fraction::ofHundred(percent));
    };
    EXPECT_NEAR(gel(4) / gel(2), 0.6156, 0.0001); // 2 to the power -0.7
    for (const ProductSheet& each : demoCatalogue().sheets()) {
        const auto times = [&](double share) {
            return 1.0 / rateFactor(each, each.reference, Fraction::ofOne(each.hardenerNominal.value() * share));
        };
        EXPECT_GT(times(2), 0.50);
        EXPECT_LT(times(2), 0.71);
        EXPECT_GT(times(0.5), 1.41);
        EXPECT_LT(times(0.5), 2.0);
        EXPECT_GT(times(1.5), 0.67);
        EXPECT_LT(times(1.5), 0.82);
    }
}

BatchTimes timesAt(FillerClass filler, double airC, double panelC, double percent = 2)
{
    const ProductSheet& sheet = *demoCatalogue().byClass(filler);
    return SheetTimes().times(
        {sheet, celsius(airC), celsius(panelC), Fraction::ofHundred(percent), millimetres(4), millimetres(8)});
}

TEST(SheetTimes, AreTheSheetsOwnAtItsReference)
{
    const BatchTimes mixed = timesAt(FillerClass::MixedStrand, 25, 25);
    EXPECT_DOUBLE_EQ(inMinutes(mixed.boardGel), 4.5);
    EXPECT_DOUBLE_EQ(inMinutes(mixed.gel), 4.5);
    EXPECT_DOUBLE_EQ(inMinutes(mixed.sand), 8);
    EXPECT_DOUBLE_EQ(inMinutes(mixed.easySanding), 6);
    EXPECT_DOUBLE_EQ(inMinutes(timesAt(FillerClass::ShortStrand, 25, 25).sand), 12.5);
}

TEST(SheetTimes, BoardFollowsTheAirAndLayerThePanel)
{
    const BatchTimes both = timesAt(FillerClass::MixedStrand, 25, 25);
    const BatchTimes coldPanel = timesAt(FillerClass::MixedStrand, 25, 15);
    EXPECT_DOUBLE_EQ(inSeconds(coldPanel.boardGel), inSeconds(both.boardGel));
    EXPECT_NEAR(coldPanel.gel / both.gel, 2.014, 0.001); // 50 kJ/mol from 15 to 25 °C
    EXPECT_NEAR(coldPanel.sand / both.sand, 2.014, 0.001);
    const BatchTimes coldAir = timesAt(FillerClass::MixedStrand, 15, 25);
    EXPECT_NEAR(coldAir.boardGel / both.boardGel, 2.014, 0.001);
    EXPECT_DOUBLE_EQ(inSeconds(coldAir.gel), inSeconds(both.gel));
}

/// The trade sands mixed strand 5 to 10 min after mixing and short strand 10 to 15 min, at 21 to 25 °C (common
/// practice, no source). The demo sheets' times, stated at 25 °C, keep within it down to 22.5 °C. At 21 °C they
/// stand up to a tenth beyond its late end, which errs towards waiting; the earliest is never too early.
TEST(SheetTimes, KeepTheTradesSandingWindows)
{
    struct Window {
        FillerClass filler;
        double early;
        double late;
    };
    for (const Window& each : {Window{FillerClass::MixedStrand, 5, 10}, Window{FillerClass::ShortStrand, 10, 15}}) {
        for (double c = 21; c <= 25; c += 0.25) {
            const double sand = inMinutes(timesAt(each.filler, c, c).sand);
            EXPECT_GE(sand, each.early) << c;
            EXPECT_LE(sand, each.late * (c < 22.5 ? 1.1 : 1.0)) << codeOf(each.filler).toStdString() << " at " << c;
        }
    }
}

} // namespace
} // namespace strandbench::test
