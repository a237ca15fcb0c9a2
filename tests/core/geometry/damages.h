// SPDX-License-Identifier: GPL-3.0-or-later
// Damages of every shape, by millimetres, and Cavity's parts back in millimetres.
#pragma once

#include "geometry/cavity.h"

namespace strandbench::test {

inline Damage damageOf(DamageKind kind, double length, double width, double depth, double bevel = 0)
{
    Damage damage;
    damage.kind = kind;
    damage.length = millimetres(length);
    damage.width = millimetres(width);
    damage.depth = millimetres(depth);
    damage.panelThickness = millimetres(depth);
    damage.bevelRatio = bevel;
    return damage;
}

inline double cubicMillimetresIn(Volume volume) { return inMillilitres(volume) * 1000.0; }

} // namespace strandbench::test
