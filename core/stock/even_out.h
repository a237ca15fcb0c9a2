// SPDX-License-Identifier: GPL-3.0-or-later
// How long a tub from the cold takes to even out with the air of the shop.
#pragma once

#include "quantity/quantity.h"

namespace strandbench {

/// A full tub or tube, as what is in it conducts.
struct Package {
    Mass mass;
    Density density;
    SpecificHeat specificHeat;
    Conductivity conductivity;
};

/// Until the middle is within so much of the air. It is taken as a cylinder as tall as it is wide that loses heat at
/// its side alone: the first term of the series for the infinite cylinder with convection, zeta J1(zeta) = Bi J0(zeta),
/// C1 = 2 J1 / (zeta (J0^2 + J1^2)), middle = C1 exp(-zeta^2 Fo) (Incropera, Fundamentals of Heat and Mass Transfer,
/// 5.6.2: eq. 5.49 and table 5.1). Lid and bottom help too, so the real tub is not slower. 0 when it is within already.
/// within: above 0. faces: of the side, above 0; 5 to 10 W/(m2 K) in still air.
[[nodiscard]] Duration evenAfter(const Package& package, Temperature from, Temperature air, TemperatureStep within,
                                 HeatTransfer faces);

/// Of the infinite cylinder with convection: the first root of zeta J1(zeta) = Bi J0(zeta) and its C1. biot: above 0.
struct CylinderTerm {
    double zeta = 0;
    double c1 = 0;
};
[[nodiscard]] CylinderTerm firstTermOfCylinder(double biot);

} // namespace strandbench
