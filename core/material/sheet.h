// SPDX-License-Identifier: GPL-3.0-or-later
// A product sheet: what a data sheet says of one filler, as numbers with units.
#pragma once

#include "material/hazards.h"
#include "quantity/codes.h"
#include "quantity/quantity.h"

#include <QByteArray>
#include <QString>

#include <map>
#include <optional>
#include <tuple>

namespace strandbench {

enum class FillerClass { ShortStrand, ShortStrandLight, MixedStrand, LongStrand, FinishSmooth, FinishFine };

template <> struct Codes<FillerClass> {
    static constexpr std::array<std::pair<FillerClass, const char*>, 6> table{{
        {FillerClass::ShortStrand, "short_strand"},
        {FillerClass::ShortStrandLight, "short_strand_light"},
        {FillerClass::MixedStrand, "mixed_strand"},
        {FillerClass::LongStrand, "long_strand"},
        {FillerClass::FinishSmooth, "finish_smooth"},
        {FillerClass::FinishFine, "finish_fine"},
    }};
};

/// True for the four fibre-reinforced classes, false for the two finishing ones.
[[nodiscard]] constexpr bool isFibreReinforced(FillerClass filler)
{
    return filler != FillerClass::FinishSmooth && filler != FillerClass::FinishFine;
}

/// A stated time with its range: "5 (4–6)". early <= nominal <= late.
struct StatedTime {
    Duration nominal;
    Duration early;
    Duration late;
    bool operator==(const StatedTime&) const = default;
};

/// The cure law's parameters that may stand on a sheet; the defaults of cure-model apply otherwise:
/// activation energy (J/mol), m, n, hardener exponent p, ceiling a0 and its slope a1 per kelvin.
struct CureLaw {
    double activationEnergyJoulesPerMole = 50'000.0;
    double m = 0.9;
    double n = 1.3;
    double hardenerExponent = 0.7;
    double maxConversionAtReference = 0.85;
    double maxConversionPerKelvin = 0.003;
    bool operator==(const CureLaw&) const = default;
};

/// How a substrate or a damage takes a filler: a cell of the decision table.
enum class Suitability { Best, Yes, YesBulk, Second, IfNamed, UpTo12Millimetres, Bridging, No };

template <> struct Codes<Suitability> {
    static constexpr std::array<std::pair<Suitability, const char*>, 8> table{{
        {Suitability::Best, "best"},
        {Suitability::Yes, "yes"},
        {Suitability::YesBulk, "yes_bulk"},
        {Suitability::Second, "second"},
        {Suitability::IfNamed, "if_named"},
        {Suitability::UpTo12Millimetres, "to_12_mm"},
        {Suitability::Bridging, "bridging"},
        {Suitability::No, "no"},
    }};
};

/// A cell that the sheet itself states; it wins over the decision table.
struct SheetCell {
    Suitability suitability = Suitability::No;
    QString reason; ///< a code known to app/words, or the shop's own text shown as entered
    bool operator==(const SheetCell&) const = default;
};

struct ProductSheet {
    QString id;        ///< unique in the catalogue, [a-z0-9_]
    QString name;      ///< as the shop calls it; shown as entered
    bool demo = false; ///< an invented sheet: says so wherever it is used
    FillerClass fillerClass = FillerClass::MixedStrand;
    Density density;             ///< of the paste
    StatedTime working;          ///< working (gel) time at the reference temperature and nominal hardener
    StatedTime sanding;          ///< earliest sanding after mixing, likewise
    Duration easySanding;        ///< how long it then sands easily; advice only
    Length sandingTestThickness; ///< of the test piece that the sanding time was stated on
    Temperature reference;       ///< of both times
    SpecificEnergy heat;         ///< of reaction, per mass of paste
    SpecificHeat specificHeat;
    Conductivity conductivity;
    Length greatestLift;               ///< in one go
    std::optional<Length> finishInAll; ///< finishing fillers: greatest thickness in all
    Fraction shrinkage;                ///< by volume
    Fraction styrene;                  ///< of the paste's mass
    Fraction hardenerNominal;          ///< of filler mass
    Fraction hardenerLow;              ///< accepted band
    Fraction hardenerHigh;
    Fraction hardenerLowCaution; ///< accepted with a caution, down to
    Fraction hardenerHighCaution;
    Fraction peroxideInHardener; ///< share of peroxide in the paste
    LinearDensity beadMass;      ///< hardener mass per length of bead (the tube's nozzle)
    Temperature panelLow;        ///< panel limits for filling
    Temperature panelHigh;
    Temperature panelLowCaution; ///< accepted with a caution, down to
    Temperature peakLimit;       ///< of the curing filler itself
    Temperature storeLow;
    Temperature storeHigh;
    int monthsSealed = 0;
    int monthsOpened = 0;
    bool namesZinc = false; ///< the sheet names galvanised steel
    CureLaw cure;
    std::map<QString, SheetCell> cells;          ///< by column code of the decision table
    std::optional<SheetHazards> hazards;         ///< of the filler, by its safety data sheet
    std::optional<SheetHazards> hardenerHazards; ///< of the hardener that belongs to it
    QByteArray source;                           ///< the bytes it was read from: what is hashed and stored
    QByteArray hash;                             ///< SHA-256 of source
};

/// A product's sheet as it was at one time.
struct SheetVersion {
    QString id;
    QByteArray hash; ///< SHA-256 of its bytes; empty where that was not told
    bool operator==(const SheetVersion&) const = default;
    bool operator<(const SheetVersion& other) const { return std::tie(id, hash) < std::tie(other.id, other.hash); }
};
[[nodiscard]] inline SheetVersion versionOf(const ProductSheet& sheet) { return {sheet.id, sheet.hash}; }

} // namespace strandbench
