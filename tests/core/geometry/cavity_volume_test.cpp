// SPDX-License-Identifier: GPL-3.0-or-later
// Volumes against closed forms of textbook solids, and against a quadrature of the outline as a referee.
#include "damages.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

using namespace strandbench;
using namespace strandbench::test;

namespace {

constexpr double pi = std::numbers::pi;

double volumeOf(const Damage& damage, bool rearAccess = false)
{
    return cubicMillimetresIn(Cavity(damage, rearAccess).volume());
}

/// Standard formulas, worked out apart from this program; each row names its solid.
TEST(CavityVolume, IsTheSolidsClosedForm)
{
    // Elliptic paraboloid pi a b h / 2: a 75, b 45, h 5.
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::Dent, 150, 90, 5)), 26507.19, 0.005);
    // Sharp V-groove w d L / 2: 12 x 4 x 150.
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::Gouge, 150, 12, 4)), 3600.00, 1e-6);
    // Conical frustum pi h (R^2 + R r + r^2) / 3: R 50, r 30, h 8, so a bevel of 2.5 : 1.
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::Hole, 60, 60, 8, 2.5)), 41050.14, 0.005);
    // A scarf of 20 : 1 around a hole of 40 mm in 3 mm: R 80, r 20 (AC 43.13-1B's way of scarfing).
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::Hole, 40, 40, 3, 20)), 26389.38, 0.005);
    // A plain elliptic cylinder pi a b h, no bevel.
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::Hole, 60, 40, 3.5)), pi * 30 * 20 * 3.5, 1e-6);
    // A crack of no length: the cone pi r^2 h / 3 that the burr leaves, r = B d.
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::Crack, 0, 0, 3, 2)), pi * 36 * 3 / 3, 1e-6);
    // Parabolic segment 2/3 w d along a weld (Archimedes); a triangle along a bond.
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::WeldSeam, 200, 30, 2)), 8000.0, 1e-6);
    EXPECT_NEAR(volumeOf(damageOf(DamageKind::BondSeam, 200, 10, 1.5)), 1500.0, 1e-6);
}

TEST(CavityVolume, DishLiesBetweenConeAndEllipsoid)
{
    // cone : paraboloid : half-ellipsoid = 2 : 3 : 4
    const double dish = volumeOf(damageOf(DamageKind::Dent, 150, 90, 5));
    EXPECT_NEAR(dish * 2 / 3, 17671.46, 0.005);
    EXPECT_NEAR(dish * 4 / 3, 35342.92, 0.005);
}

/// A dent beaten by a ball is a cap of its sphere, pi h (3 a^2 + h^2) / 6 (any textbook of solids): of a 60, h 6 on a
/// sphere of R = (a^2 + h^2) / 2h = 303 mm, 34042.30. A paraboloid of the same rim and depth is less than it by
/// h^2 / 3 a^2 of itself: a third of a percent.
TEST(CavityVolume, DishIsNearlyACapOfASphere)
{
    EXPECT_NEAR((60.0 * 60.0 + 6.0 * 6.0) / (2 * 6.0), 303.000, 1e-9);
    EXPECT_NEAR(pi * 6 * (3 * 60.0 * 60.0 + 6.0 * 6.0) / 6, 34042.30, 0.005);
    const double dish = volumeOf(damageOf(DamageKind::Dent, 120, 120, 6));
    EXPECT_NEAR(dish * (1 + 6.0 * 6.0 / (3 * 60.0 * 60.0)), 34042.30, 0.005);
}

struct Shape {
    const char* name;
    Damage damage;
    bool rearAccess = false;
};

void PrintTo(const Shape& shape, std::ostream* out) { *out << shape.name; }

/// The area of the level cut at z above the floor, in mm2, from the outline of each damage: width and
/// length of the cut, not its volume.
double cutAt(const Shape& shape, double z, double height)
{
    const double l = inMillimetres(shape.damage.length);
    const double w = inMillimetres(shape.damage.width);
    const double run = shape.damage.bevelRatio * z;
    const double share = z / height;
    switch (shape.damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
        return pi * (l / 2 + run) * (w / 2 + run);
    case DamageKind::Crack:
        return 2 * run * l + pi * run * run; // a strip with half a disc at each end
    case DamageKind::Dent:
        return pi / 4 * l * w * share; // both axes grow with the root of the height
    case DamageKind::Gouge:
    case DamageKind::BondSeam:
        return l * w * share;
    case DamageKind::WeldSeam:
        return l * w * std::sqrt(share);
    }
    return 0;
}

class CavitySlices : public testing::TestWithParam<Shape> {};

TEST_P(CavitySlices, AgreeWithTheQuadratureOfTheirCuts)
{
    const Cavity cavity(GetParam().damage, GetParam().rearAccess);
    const double height = inMillimetres(cavity.height());
    for (int tenth = 0; tenth <= 10; ++tenth) {
        const double top = height * tenth / 10;
        double error = 0;
        const double referee = boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
            [&](double z) { return cutAt(GetParam(), z, height); }, 0.0, top, 15, 1e-12, &error);
        EXPECT_NEAR(cubicMillimetresIn(cavity.volumeUpTo(millimetres(top))), referee, 1e-6 * referee + 1e-9) << tenth;
    }
}

TEST_P(CavitySlices, StartAtNothingRiseAndEndAtTheWhole)
{
    const Cavity cavity(GetParam().damage, GetParam().rearAccess);
    EXPECT_EQ(cavity.volumeUpTo(Length()), Volume());
    EXPECT_EQ(cavity.volumeUpTo(cavity.height()), cavity.volume());
    Volume below;
    for (int tenth = 1; tenth <= 10; ++tenth) {
        const Volume now = cavity.volumeUpTo(cavity.height() * (tenth / 10.0));
        EXPECT_GT(now, below) << tenth;
        below = now;
    }
    // Lifts that add up a rounding past the height take no more than there is.
    EXPECT_EQ(cavity.volumeUpTo(cavity.height() * 1.001), cavity.volume());
    EXPECT_EQ(cavity.volumeUpTo(millimetres(-1)), Volume());
}

TEST_P(CavitySlices, TopCutIsTheOpening)
{
    const Cavity cavity(GetParam().damage, GetParam().rearAccess);
    const double height = inMillimetres(cavity.height());
    EXPECT_NEAR(inSquareMillimetres(cavity.opening()), cutAt(GetParam(), height, height), 1e-6);
}

INSTANTIATE_TEST_SUITE_P(EveryShape, CavitySlices,
                         testing::Values(Shape{"hole, one face", damageOf(DamageKind::Hole, 60, 40, 3.5, 4), false},
                                         Shape{"hole, two faces", damageOf(DamageKind::Hole, 60, 40, 3.5, 4), true},
                                         Shape{"hole without bevel", damageOf(DamageKind::Hole, 12, 12, 6, 0), false},
                                         Shape{"dent", damageOf(DamageKind::Dent, 150, 90, 5)},
                                         Shape{"gouge", damageOf(DamageKind::Gouge, 150, 12, 4)},
                                         Shape{"crack", damageOf(DamageKind::Crack, 80, 0, 3, 2)},
                                         Shape{"weld seam", damageOf(DamageKind::WeldSeam, 200, 30, 2)},
                                         Shape{"bond seam", damageOf(DamageKind::BondSeam, 200, 10, 1.5)}));

} // namespace
