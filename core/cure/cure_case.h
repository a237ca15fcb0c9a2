// SPDX-License-Identifier: GPL-3.0-or-later
// One cure case: a fresh layer of filler on its stack, between two airs, with its law of cure.
#pragma once

#include "material/sheet.h"
#include "quantity/rate.h"

#include <vector>

namespace strandbench {

/// Kamal-Sourour with a ceiling that rises with temperature (vitrification):
///   dalpha/dt = phi(c) A(T) ( k1 + k2 alpha^m ) ( alpha_max(T) - alpha )^n   below alpha_max(T), else 0
///   A(T) = exp( -E/R (1/T - 1/T_ref) ),  phi(c) = (c/c_ref)^p,  alpha_max(T) = a0 + a1 (T - T_ref) in [0, 1]
struct CureKinetics {
    Rate k1; ///< 0 to 1 per second; not both 0
    Rate k2;
    CureLaw law; ///< m, n, E, p, a0, a1
    Temperature reference = celsius(25);
    Fraction referenceHardener = Fraction::ofHundred(2);
    Fraction gel = Fraction::ofOne(0.10);  ///< conversion at which it has gelled
    Fraction sand = Fraction::ofOne(0.60); ///< conversion at which its face can be sanded
    bool operator==(const CureKinetics&) const = default;
};

struct ThermalMaterial {
    Density density;
    SpecificHeat specificHeat;
    Conductivity conductivity;
    bool operator==(const ThermalMaterial&) const = default;
};

/// An inert layer: panel, backing, filler already cured.
struct StackLayer {
    Length thickness;
    ThermalMaterial material;
    Temperature temperature; ///< when hardener meets filler
    bool operator==(const StackLayer&) const = default;
};

/// The air's temperature at a moment; between points it follows the straight line, before the first and
/// after the last it holds.
struct AirPoint {
    Duration at;
    Temperature temperature;
    bool operator==(const AirPoint&) const = default;
};

/// What a reading found while it cured: layer and stack are so much warmer than the case had them.
struct FoundWarmer {
    Duration at;
    TemperatureStep by; ///< below 0: colder
    bool operator==(const FoundWarmer&) const = default;
};

/// Time counts from 'hardener in'. Ranges: `strandbench cure` (exchange/cure_json.h).
struct CureCase {
    CureKinetics kinetics;
    ThermalMaterial filler;
    SpecificEnergy heat; ///< of reaction
    Length thickness;    ///< of the fresh layer
    Fraction hardener;   ///< of filler mass
    Temperature temperature;
    Fraction initialConversion;
    std::vector<StackLayer> stack; ///< from the back face towards the fresh layer; may be empty
    std::vector<AirPoint> air;     ///< at least one point, times rising
    HeatTransfer front;            ///< over the fresh layer; 0 insulates
    HeatTransfer back;             ///< behind the stack
    Duration horizon;
    std::vector<FoundWarmer> found = {}; ///< times rising; from each on it goes on from the state reached
    bool operator==(const CureCase&) const = default;
};

} // namespace strandbench
