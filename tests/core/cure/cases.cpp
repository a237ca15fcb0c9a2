// SPDX-License-Identifier: GPL-3.0-or-later
#include "cases.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace strandbench::test {
namespace {

ThermalMaterial material(double density, double specificHeat, double conductivity)
{
    return {kilogramsPerCubicMetre(density), joulesPerKilogramKelvin(specificHeat), wattsPerMetreKelvin(conductivity)};
}

/// k1 and k2 with a gel time of so many seconds when the temperature stays at the reference.
void setGelTime(CureKinetics& kinetics, double gelSeconds, double k2OverK1)
{
    const CureLaw& law = kinetics.law;
    constexpr int slices = 400;
    const double slice = kinetics.gel.value() / slices;
    double sum = 0.0;
    for (int i = 0; i < slices; ++i) {
        const double conversion = (i + 0.5) * slice;
        sum += slice / ((1.0 / k2OverK1 + std::pow(conversion, law.m)) *
                        std::pow(law.maxConversionAtReference - conversion, law.n));
    }
    kinetics.k2 = perSecond(sum / gelSeconds);
    kinetics.k1 = perSecond(sum / gelSeconds / k2OverK1);
}

StackLayer panel(std::mt19937_64& random, double degreesCelsius)
{
    switch (std::uniform_int_distribution<>(0, 3)(random)) {
    case 0:
        return layerOf(steel(), between(random, 0.6, 3.0), degreesCelsius);
    case 1:
        return layerOf(aluminium(), between(random, 0.8, 4.0), degreesCelsius);
    case 2:
        return layerOf(laminate(), between(random, 1.5, 10.0), degreesCelsius);
    default:
        return layerOf(board(), 3.0, degreesCelsius);
    }
}

} // namespace

ThermalMaterial filler() { return material(1150, 1250, 0.35); }
ThermalMaterial steel() { return material(7854, 434, 60.5); }
ThermalMaterial aluminium() { return material(2702, 903, 237); }
ThermalMaterial laminate() { return material(1890, 1260, 0.2163); }
ThermalMaterial board() { return material(600, 1500, 0.15); }

StackLayer layerOf(const ThermalMaterial& material, double millimetresThick, double degreesCelsius)
{
    return {millimetres(millimetresThick), material, celsius(degreesCelsius)};
}

CureCase skirtPanel()
{
    CureCase cureCase;
    cureCase.kinetics.k1 = perSecond(1.4e-4);
    cureCase.kinetics.k2 = perSecond(8.5e-3);
    cureCase.filler = filler();
    cureCase.heat = joulesPerKilogram(150'000);
    cureCase.thickness = millimetres(4);
    cureCase.hardener = Fraction::ofHundred(2);
    cureCase.temperature = celsius(25);
    cureCase.stack = {layerOf(steel(), 0.8, 25)};
    cureCase.air = {{seconds(0), celsius(25)}};
    cureCase.front = wattsPerSquareMetreKelvin(10);
    cureCase.back = wattsPerSquareMetreKelvin(8);
    cureCase.horizon = seconds(3600);
    return cureCase;
}

CureCase heldFilm(double degreesCelsius)
{
    CureCase cureCase = skirtPanel();
    cureCase.stack.clear();
    cureCase.thickness = millimetres(0.1);
    cureCase.temperature = celsius(degreesCelsius);
    cureCase.air = {{seconds(0), celsius(degreesCelsius)}};
    cureCase.front = wattsPerSquareMetreKelvin(1e6);
    cureCase.back = wattsPerSquareMetreKelvin(1e6);
    return cureCase;
}

CureCase insulated(CureCase cureCase)
{
    cureCase.stack.clear();
    cureCase.front = wattsPerSquareMetreKelvin(0);
    cureCase.back = wattsPerSquareMetreKelvin(0);
    return cureCase;
}

CureCase warmer(CureCase cureCase, double kelvins)
{
    cureCase.temperature += kelvinStep(kelvins);
    for (StackLayer& layer : cureCase.stack)
        layer.temperature += kelvinStep(kelvins);
    for (AirPoint& point : cureCase.air)
        point.temperature += kelvinStep(kelvins);
    return cureCase;
}

CureCase benchCase(std::mt19937_64& random)
{
    CureCase cureCase = skirtPanel();
    const double gelSeconds = scaledBetween(random, 60, 1800);
    setGelTime(cureCase.kinetics, gelSeconds, scaledBetween(random, 15, 300));
    cureCase.filler = material(between(random, 1100, 1750), between(random, 1000, 1400), between(random, 0.25, 0.5));
    cureCase.heat = joulesPerKilogram(between(random, 110e3, 170e3));
    cureCase.thickness = millimetres(scaledBetween(random, 0.5, 25));
    cureCase.hardener = Fraction::ofHundred(scaledBetween(random, 1, 4));
    const double air = between(random, 5, 40);
    const double panelCelsius = chance(random, 0.3) ? air : between(random, 5, 40);
    cureCase.temperature = celsius(chance(random, 0.5) ? air : between(random, 5, 40));
    cureCase.air = {{seconds(0), celsius(air)}};
    cureCase.front = wattsPerSquareMetreKelvin(between(random, 5, 25));
    cureCase.back = wattsPerSquareMetreKelvin(between(random, 3, 15));
    cureCase.stack = {panel(random, panelCelsius)};
    if (chance(random, 0.2))
        cureCase.stack.push_back({millimetres(between(random, 1, 8)), cureCase.filler, celsius(panelCelsius)});
    cureCase.horizon = seconds(gelSeconds * 12);
    return cureCase;
}

double between(std::mt19937_64& random, double low, double high)
{
    return std::uniform_real_distribution<>(low, high)(random);
}

double scaledBetween(std::mt19937_64& random, double low, double high)
{
    return std::exp(between(random, std::log(low), std::log(high)));
}

bool chance(std::mt19937_64& random, double share) { return between(random, 0.0, 1.0) < share; }

CureResult solved(const CureCase& cureCase, const CureFineness& fineness)
{
    CureOutcome outcome = solveCure(cureCase, fineness);
    if (outcome)
        return *std::move(outcome);
    ADD_FAILURE() << "no result: difficulty " << static_cast<int>(outcome.error().kind) << " at "
                  << inSeconds(outcome.error().at) << " s";
    CureResult nothing;
    nothing.curve.emplace_back();
    return nothing;
}

double secondsOf(const std::optional<Duration>& mark)
{
    return mark ? inSeconds(*mark) : std::numeric_limits<double>::quiet_NaN();
}

} // namespace strandbench::test
