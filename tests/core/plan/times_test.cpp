// SPDX-License-Identifier: GPL-3.0-or-later
// What rates hang on, and the times of layers and puddles from the cure engine.
#include "repairs.h"

#include "cure/rate_factor.h"
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

/// "Gel time halves every ten degrees" is 49.5 kJ/mol from 15 to 25 °C and 51.2 from 20 to 30, worked out apart. Two
/// resins measured at two rates of warming have 44.4 and 51.9 (Polymers 16 (2024) 2391, as quoted).
TEST(RateFactor, IsTwoWhereTheRuleOfThumbHasIt)
{
    EXPECT_NEAR(perTenDegrees(sheetWith(49.5), 15), 2, 0.002);
    EXPECT_NEAR(perTenDegrees(sheetWith(51.2), 20), 2, 0.002);
    for (const double kilojoules : {44.4, 51.9})
        EXPECT_NEAR(perTenDegrees(sheetWith(kilojoules), 15), 2, 0.15) << kilojoules;
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

StackLayer steelSheet(double millimetresThick, double c)
{
    return {millimetres(millimetresThick), Assumptions().steel, celsius(c)};
}

StackLayer laminatePanel(double c) { return {millimetres(3), Assumptions().laminate, celsius(c)}; }

LayerCure layerOf(const ProductSheet& sheet, double millimetresThick, double airC, const StackLayer& panel,
                  double percent = 2)
{
    static const CureEngine engine;
    const auto cure = engine.layer({sheet,
                                    {celsius(airC), panel.temperature, {}},
                                    Fraction::ofHundred(percent),
                                    millimetres(millimetresThick),
                                    {panel}});
    EXPECT_TRUE(cure) << cure.error().code.toStdString();
    return *cure;
}

double boardGelOf(const ProductSheet& sheet, double millimetresHigh, double airC)
{
    static const CureEngine engine;
    return inSeconds(*engine.boardGel(sheet, celsius(airC), sheet.hardenerNominal, millimetres(millimetresHigh)));
}

/// On the test pieces that a sheet's two times are stated on, the engine gives those two: 12 mm on the board, the
/// sheet's own thickness on 0.8 mm of steel. Within what solving promises.
TEST(CureEngine, GivesTheSheetsOwnTimesOnItsTestPieces)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        EXPECT_NEAR(boardGelOf(sheet, 12, 25) / inSeconds(sheet.working.nominal), 1.0, 0.005) << sheet.id.toStdString();
        const LayerCure film = layerOf(sheet, inMillimetres(sheet.sandingTestThickness), 25, steelSheet(0.8, 25));
        EXPECT_NEAR(film.sand / sheet.sanding.nominal, 1.0, 0.005) << sheet.id.toStdString();
    }
}

/// A thick puddle gels before the thin layer of the same batch (ASTM D2471: gel depends on the volume).
TEST(CureEngine, PuddleGelsBeforeTheLayer)
{
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    EXPECT_LT(boardGelOf(sheet, 15, 20), inSeconds(layerOf(sheet, 3, 20, steelSheet(0.8, 20)).gel));
    EXPECT_LT(boardGelOf(sheet, 15, 20), boardGelOf(sheet, 5, 20));
}

TEST(CureEngine, ColdPanelAndLittleHardenerAreSlower)
{
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    const LayerCure here = layerOf(sheet, 4, 20, steelSheet(0.8, 20));
    EXPECT_GT(layerOf(sheet, 4, 20, steelSheet(0.8, 12)).gel, here.gel);
    EXPECT_GT(layerOf(sheet, 4, 20, steelSheet(0.8, 20), 1.5).gel, here.gel);
    EXPECT_LT(layerOf(sheet, 4, 20, steelSheet(0.8, 20), 2.5).sand, here.sand);
}

/// A heat-sinking skin keeps a layer cooler than an insulating laminate (common practice, no source).
TEST(CureEngine, ThickSteelKeepsItCooler)
{
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    EXPECT_LT(layerOf(sheet, 6, 25, steelSheet(3, 25)).peak, layerOf(sheet, 6, 25, laminatePanel(25)).peak);
}

/// The trade sands mixed strand 5 to 10 min after mixing and short strand 10 to 15 min, 3 to 6 mm thick, with
/// nominal hardener at 21 to 25 degC (common practice, no source). At 25 and at 24 degC all of it holds. At 21 degC it
/// holds for what is 6 mm thick; 3 mm on steel takes up to a fifth longer, which errs towards waiting.
TEST(CureEngine, KeepsTheTradesSandingWindows)
{
    struct Window {
        FillerClass filler;
        double early;
        double late;
    };
    for (const Window& each : {Window{FillerClass::MixedStrand, 5, 10}, Window{FillerClass::ShortStrand, 10, 15}}) {
        const ProductSheet& sheet = *demoCatalogue().byClass(each.filler);
        for (const double c : {21.0, 24.0, 25.0})
            for (const double thick : {3.0, 4.5, 6.0}) {
                const double sand = inMinutes(layerOf(sheet, thick, c, steelSheet(0.8, c)).sand);
                EXPECT_GE(sand, each.early) << each.late << " at " << c << ", " << thick << " mm";
                EXPECT_LE(sand, each.late * (c < 24 && thick < 6 ? 1.2 : 1.0)) << c << " degC, " << thick << " mm";
            }
    }
}

TEST(CureEngine, RefusesASheetWhoseTimesNoCureHas)
{
    ProductSheet sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    sheet.sanding.nominal = sheet.working.nominal * 40.0;
    const CureEngine engine;
    const auto cure = engine.layer(
        {sheet, {celsius(20), celsius(20), {}}, Fraction::ofHundred(2), millimetres(3), {steelSheet(0.8, 20)}});
    ASSERT_FALSE(cure);
    EXPECT_EQ(cure.error().code, QStringLiteral("sheet_times_unfit"));
}

} // namespace
} // namespace strandbench::test
