// SPDX-License-Identifier: GPL-3.0-or-later
// What needs eyes first.
#include "review/eyes.h"

#include <gtest/gtest.h>

namespace strandbench {
namespace {

using enum DeviationKind;
using Kinds = std::vector<DeviationKind>;

TEST(Eyes, OneThatMayNotHoldComesBeforeAnyNumberOfLighterOnes)
{
    EXPECT_TRUE(needsEyesBefore({SandsEarly}, Kinds(40, ReadingOld)));
    EXPECT_FALSE(needsEyesBefore(Kinds(40, ReadingOld), {SandsEarly}));
    EXPECT_TRUE(needsEyesBefore({ReadingOld}, Kinds(40, PhotoMissing)));
    EXPECT_TRUE(needsEyesBefore({SandsEarly, Overridden}, {HardenerLow, NoReading, NoReading}));
    EXPECT_TRUE(needsEyesBefore({SandsEarly, Parked}, {HardenerLow})) << "as many that weigh, and one more of the rest";
    EXPECT_TRUE(needsEyesBefore({Parked}, {}));
}

TEST(Eyes, IsAnOrder)
{
    const std::vector<Kinds> some{{}, {Parked}, {ReadingOld}, {SandsEarly}, {SandsEarly, Parked}, {HardenerLow}};
    for (const Kinds& one : some) {
        EXPECT_FALSE(needsEyesBefore(one, one));
        for (const Kinds& other : some)
            EXPECT_FALSE(needsEyesBefore(one, other) && needsEyesBefore(other, one));
    }
    EXPECT_FALSE(needsEyesBefore({SandsEarly}, {HardenerLow}) || needsEyesBefore({HardenerLow}, {SandsEarly}))
        << "equal weights are equal";
}

TEST(Eyes, SortingKeepsEveryOneAndTheOrderOfEquals)
{
    Kinds kinds{PhotoMissing, SandsEarly, AirTooCold, Parked, HardenerLow, NoReading};
    sortByWeight(kinds);
    EXPECT_EQ(kinds, (Kinds{SandsEarly, HardenerLow, AirTooCold, NoReading, PhotoMissing, Parked}));
}

TEST(Eyes, EveryStopThatWasOverriddenIsLookedAtFirst) { EXPECT_EQ(weightOf(Overridden), Weight::First); }

} // namespace
} // namespace strandbench
