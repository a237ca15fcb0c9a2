// SPDX-License-Identifier: GPL-3.0-or-later
// The test pieces on which a sheet states its two times. Ours, with no source: shown as assumptions.
#pragma once

#include "cure/cure_case.h"

namespace strandbench {

/// Face coefficients of a bench in still air: 10 W/(m2 K) over the layer, 8 behind (assumption; a 0.5 m plate
/// at 20 K by Churchill and Chu, with radiation, gives about 10).
inline const HeatTransfer overTheLayer = wattsPerSquareMetreKelvin(10);
inline const HeatTransfer behindTheStack = wattsPerSquareMetreKelvin(8);

/// The mixing board: 3 mm, 600 kg/m3, 1500 J/(kg K), 0.15 W/(m K) (assumption).
[[nodiscard]] StackLayer mixingBoard(Temperature temperature);
/// The filler of a sheet as it conducts and stores heat.
[[nodiscard]] ThermalMaterial thermalOf(const ProductSheet& sheet);

/// A layer of a sheet's filler at one temperature with its air, between the bench's face coefficients, on an
/// empty stack, with the nominal hardener.
[[nodiscard]] CureCase plainCase(const ProductSheet& sheet, const CureKinetics& kinetics, Length thickness,
                                 Temperature temperature);
/// The working time's test piece: a 12 mm puddle on the mixing board, all at the sheet's reference temperature.
[[nodiscard]] CureCase gelTestPiece(const ProductSheet& sheet, const CureKinetics& kinetics);
/// The sanding time's: a layer as thick as the sheet says on 0.8 mm of steel.
[[nodiscard]] CureCase sandTestPiece(const ProductSheet& sheet, const CureKinetics& kinetics);

} // namespace strandbench
