// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/test_piece.h"

namespace strandbench {
namespace {

/// Plain carbon steel as a panel: 7850 kg/m3, 434 J/(kg K), 60 W/(m K) (Incropera, Table A.1, rounded).
const ThermalMaterial steel{kilogramsPerCubicMetre(7850), joulesPerKilogramKelvin(434), wattsPerMetreKelvin(60)};

/// Sanding comes late on a cold day: far enough for any sheet's own time.
constexpr double horizonInSandings = 20.0;

} // namespace

StackLayer mixingBoard(Temperature temperature)
{
    return {millimetres(3),
            {kilogramsPerCubicMetre(600), joulesPerKilogramKelvin(1500), wattsPerMetreKelvin(0.15)},
            temperature};
}

ThermalMaterial thermalOf(const ProductSheet& sheet) { return {sheet.density, sheet.specificHeat, sheet.conductivity}; }

CureCase plainCase(const ProductSheet& sheet, const CureKinetics& kinetics, Length thickness, Temperature temperature)
{
    CureCase plain;
    plain.kinetics = kinetics;
    plain.filler = thermalOf(sheet);
    plain.heat = sheet.heat;
    plain.thickness = thickness;
    plain.hardener = sheet.hardenerNominal;
    plain.temperature = temperature;
    plain.air = {{seconds(0), temperature}};
    plain.front = overTheLayer;
    plain.back = behindTheStack;
    plain.horizon = sheet.sanding.nominal * horizonInSandings;
    return plain;
}

CureCase gelTestPiece(const ProductSheet& sheet, const CureKinetics& kinetics)
{
    CureCase piece = plainCase(sheet, kinetics, millimetres(12), sheet.reference);
    piece.stack = {mixingBoard(sheet.reference)};
    return piece;
}

CureCase sandTestPiece(const ProductSheet& sheet, const CureKinetics& kinetics)
{
    CureCase piece = plainCase(sheet, kinetics, sheet.sandingTestThickness, sheet.reference);
    piece.stack = {{millimetres(0.8), steel, sheet.reference}};
    return piece;
}

} // namespace strandbench
