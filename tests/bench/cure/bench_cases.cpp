// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench_cases.h"

namespace strandbench::curebench {
namespace {

// Handbook values, rounded; the filler's rates give a gel of about five minutes. What is compared is solvers,
// so any plausible numbers do.
const ThermalMaterial filler{kilogramsPerCubicMetre(1150), joulesPerKilogramKelvin(1250), wattsPerMetreKelvin(0.35)};
const ThermalMaterial steel{kilogramsPerCubicMetre(7850), joulesPerKilogramKelvin(470), wattsPerMetreKelvin(45)};
const ThermalMaterial laminate{kilogramsPerCubicMetre(1800), joulesPerKilogramKelvin(1100), wattsPerMetreKelvin(0.3)};
const ThermalMaterial board{kilogramsPerCubicMetre(600), joulesPerKilogramKelvin(1500), wattsPerMetreKelvin(0.15)};

CureCase layerOn(double freshMillimetres, double backMillimetres, const ThermalMaterial& back)
{
    CureCase c;
    c.kinetics.k1 = perSecond(1.4e-4);
    c.kinetics.k2 = perSecond(8.5e-3);
    c.filler = filler;
    c.heat = joulesPerKilogram(150'000);
    c.thickness = millimetres(freshMillimetres);
    c.hardener = Fraction::ofHundred(2);
    c.temperature = celsius(25);
    c.stack = {{millimetres(backMillimetres), back, celsius(25)}};
    c.air = {{seconds(0), celsius(25)}};
    c.front = wattsPerSquareMetreKelvin(10);
    c.back = wattsPerSquareMetreKelvin(8);
    c.horizon = seconds(3600);
    return c;
}

} // namespace

std::vector<BenchCase> benchCases()
{
    std::vector<BenchCase> cases;
    for (const int thickness : {1, 3, 6, 12, 25})
        cases.push_back({thickness, "on steel", layerOn(thickness, 0.8, steel)});
    cases.push_back({3, "on laminate", layerOn(3, 3, laminate)});
    cases.push_back({12, "puddle on board", layerOn(12, 3, board)});
    return cases;
}

} // namespace strandbench::curebench
