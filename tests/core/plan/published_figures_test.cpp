// SPDX-License-Identifier: GPL-3.0-or-later
// Assumptions and demo sheets beside what is published of such materials.
#include "exchange/sheets.h"
#include "plan/assumptions.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace strandbench::test {
namespace {

double densityOf(const ThermalMaterial& material) { return material.density.value(); }
double specificHeatOf(const ThermalMaterial& material) { return material.specificHeat.value(); }
double conductivityOf(const ThermalMaterial& material) { return material.conductivity.value(); }

/// Incropera, table A.1: plain carbon steel 7854, 434, 60.5; pure aluminium 2702, 903, 237, at 300 K. Bogetti and
/// Gillespie (1991): glass and polyester 1890, 1260, 0.2163. The steel's are rounded, by less than a percent.
TEST(PublishedFigures, PanelsAreOfTheTables)
{
    constexpr double rounded = 0.01;
    const Assumptions ours;
    EXPECT_NEAR(densityOf(ours.steel) / 7854, 1, rounded);
    EXPECT_NEAR(specificHeatOf(ours.steel), 434, 1e-9);
    EXPECT_NEAR(conductivityOf(ours.steel) / 60.5, 1, rounded);
    EXPECT_NEAR(densityOf(ours.aluminium), 2702, 1e-9);
    EXPECT_NEAR(specificHeatOf(ours.aluminium), 903, 1e-9);
    EXPECT_NEAR(conductivityOf(ours.aluminium), 237, 1e-9);
    EXPECT_NEAR(densityOf(ours.laminate), 1890, 1e-9);
    EXPECT_NEAR(specificHeatOf(ours.laminate), 1260, 1e-9);
    EXPECT_NEAR(conductivityOf(ours.laminate), 0.2163, 1e-9);
}

/// Cengel's notes: free convection of gases has 2 to 25 W/(m2 K). Churchill and Chu's formula, worked out apart, gives
/// 4.1 for a plate half a metre high and 20 K warmer than its air, and 5.5 comes on top by radiation: about 10.
TEST(PublishedFigures, FacesAreInStillAir)
{
    const Assumptions ours;
    for (const HeatTransfer& face : {ours.faceFront, ours.faceBack}) {
        EXPECT_GT(face.value(), 2);
        EXPECT_LT(face.value(), 25);
        EXPECT_NEAR(face.value(), 4.1 + 5.5, 2);
    }
}

/// Kilojoules of a mole of double bonds: Lucas and others 1993, measured and for all of them. One maleic, one phthalic
/// and two propylene glycols weigh 362.3 g and have one; styrene, 104.15 g, has one.
constexpr double measured = 66;
constexpr double complete = 69;

double kilojoulesOfAKilogram(double styreneOfResin, double ofAMole)
{
    return 1000 * ((1 - styreneOfResin) / 362.3 + styreneOfResin / 104.15) * ofAMole;
}

struct Resin {
    double styrene; ///< %
    double least;   ///< J/g
    double most;
};

TEST(PublishedFigures, HeatOfAResin)
{
    for (const Resin& row : {Resin{30, 318, 332}, Resin{35, 340, 356}, Resin{40, 363, 379}, Resin{45, 385, 403}}) {
        EXPECT_NEAR(kilojoulesOfAKilogram(row.styrene / 100, measured), row.least, 0.5) << row.styrene;
        EXPECT_NEAR(kilojoulesOfAKilogram(row.styrene / 100, complete), row.most, 0.5) << row.styrene;
    }
}

/// A sheet's heat is that of its resin, of which 30 to 45 % is styrene: no more than all of its double bonds give,
/// no less than was measured. A paste with 150 J/g and 1.1 to 1.3 J/(g K) rises by 115 to 135 K at most, worked out
/// apart: none of them by more.
TEST(PublishedFigures, DemoSheetsGiveTheHeatOfTheirResin)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        const double styrene = sheet.styrene.value();
        const double kilojoules = sheet.heat.value() / 1000;
        EXPECT_LE(kilojoules, styrene / 0.30 * kilojoulesOfAKilogram(0.30, complete)) << sheet.id.toStdString();
        EXPECT_GE(kilojoules, styrene / 0.45 * kilojoulesOfAKilogram(0.45, measured)) << sheet.id.toStdString();
        EXPECT_LE(sheet.heat.value() / sheet.specificHeat.value(), 135) << sheet.id.toStdString();
    }
}

/// Maxwell's and Eucken's rule for grains in a matrix of 0.17 W/(m K) (all from memory).
double conductivityOfFilled(double grains, double share)
{
    constexpr double matrix = 0.17;
    return matrix * (grains + 2 * matrix + 2 * share * (grains - matrix)) /
           (grains + 2 * matrix - share * (grains - matrix));
}

/// Calcium carbonate 2.7 and talc 1.76 W/(m K) (from memory). No measured filled polyester was found; the demo sheets
/// conduct better than a tenth of talc by volume makes them, and less well than half of carbonate.
TEST(PublishedFigures, DemoSheetsConductAsFilledPlastics)
{
    const std::array shares{0.1, 0.2, 0.3, 0.4};
    const std::array carbonate{0.216, 0.272, 0.340, 0.424};
    const std::array talc{0.212, 0.261, 0.320, 0.392};
    for (std::size_t i = 0; i < shares.size(); ++i) {
        EXPECT_NEAR(conductivityOfFilled(2.7, shares.at(i)), carbonate.at(i), 6e-4) << shares.at(i);
        EXPECT_NEAR(conductivityOfFilled(1.76, shares.at(i)), talc.at(i), 6e-4) << shares.at(i);
    }
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        EXPECT_GT(sheet.conductivity.value(), conductivityOfFilled(1.76, 0.1)) << sheet.id.toStdString();
        EXPECT_LT(sheet.conductivity.value(), conductivityOfFilled(2.7, 0.5)) << sheet.id.toStdString();
    }
}

} // namespace
} // namespace strandbench::test
