// SPDX-License-Identifier: GPL-3.0-or-later
// Faces, heights and openings: what the section is drawn from.
#include "damages.h"

#include <gtest/gtest.h>

#include <numbers>

using namespace strandbench;
using namespace strandbench::test;

namespace {

struct Row {
    const char* name;
    Damage damage;
    bool rearAccess;
    int faces;
    double height;
    double openingLength;
    double openingWidth;
    double floorWidth;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class CavityOutline : public testing::TestWithParam<Row> {};

TEST_P(CavityOutline, InMillimetres)
{
    const Row& row = GetParam();
    const Cavity cavity(row.damage, row.rearAccess);
    EXPECT_EQ(cavity.faces(), row.faces);
    EXPECT_NEAR(inMillimetres(cavity.height()), row.height, 1e-9);
    EXPECT_NEAR(inMillimetres(cavity.openingLength()), row.openingLength, 1e-9);
    EXPECT_NEAR(inMillimetres(cavity.openingWidth()), row.openingWidth, 1e-9);
    EXPECT_NEAR(inMillimetres(cavity.floorWidth()), row.floorWidth, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(
    EveryShape, CavityOutline,
    testing::Values(
        // A hole has the floor a x b and widens by the bevel's run on every side; only a hole has two faces.
        Row{"hole, no rear access", damageOf(DamageKind::Hole, 60, 40, 4, 3), false, 1, 4, 84, 64, 60},
        Row{"hole, rear access", damageOf(DamageKind::Hole, 60, 40, 4, 3), true, 2, 2, 72, 52, 60},
        Row{"rust hole, cut back", damageOf(DamageKind::RustHole, 60, 40, 4, 3), true, 2, 2, 72, 52, 60},
        Row{"dent", damageOf(DamageKind::Dent, 150, 90, 5, 3), true, 1, 5, 150, 90, 0},
        // A gouge is measured after the bevel, which is not added again.
        Row{"gouge", damageOf(DamageKind::Gouge, 150, 12, 4, 3), true, 1, 4, 150, 12, 0},
        Row{"crack", damageOf(DamageKind::Crack, 80, 0, 3, 2), true, 1, 3, 92, 12, 0},
        Row{"weld seam", damageOf(DamageKind::WeldSeam, 200, 30, 2), true, 1, 2, 200, 30, 0},
        Row{"bond seam", damageOf(DamageKind::BondSeam, 200, 10, 1.5), false, 1, 1.5, 200, 10, 0}));

TEST(CavityOpening, OfAHoleIsTheBevelledEllipse)
{
    const Cavity cavity(damageOf(DamageKind::Hole, 60, 40, 4, 3), false);
    EXPECT_NEAR(inSquareMillimetres(cavity.opening()), std::numbers::pi * 42 * 32, 1e-6);
}

TEST(CavityFaces, TwoHalvesTakeLessBevelThanOneWhole)
{
    const Damage hole = damageOf(DamageKind::Hole, 60, 40, 4, 3);
    const Cavity one(hole, false);
    const Cavity two(hole, true);
    EXPECT_LT(two.volume() * 2.0, one.volume());
    // Without a bevel it is the same cylinder, however it is filled.
    const Damage plain = damageOf(DamageKind::Hole, 60, 40, 4, 0);
    EXPECT_NEAR(cubicMillimetresIn(Cavity(plain, true).volume() * 2.0),
                cubicMillimetresIn(Cavity(plain, false).volume()), 1e-6);
}

} // namespace
