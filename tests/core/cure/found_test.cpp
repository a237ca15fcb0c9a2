// SPDX-License-Identifier: GPL-3.0-or-later
// A case that goes on from the state reached after a reading found it warmer or colder.
#include "cases.h"

#include <gtest/gtest.h>

namespace strandbench::test {
namespace {

TEST(FoundWarmer, ByNothingChangesNothing)
{
    CureCase found = skirtPanel();
    const CureResult plain = solved(found);
    found.found = {{seconds(120), kelvinStep(0)}, {seconds(333), kelvinStep(0)}};
    const CureResult read = solved(found);
    EXPECT_NEAR(secondsOf(read.gel), secondsOf(plain.gel), 0.05);
    EXPECT_NEAR(secondsOf(read.sand), secondsOf(plain.sand), 0.1);
    EXPECT_NEAR(inKelvin(read.peak), inKelvin(plain.peak), 0.02);
}

/// Found at the very start it is the case that began so warm.
TEST(FoundWarmer, AtTheStartItBeganWarmer)
{
    CureCase began = skirtPanel();
    began.temperature += kelvinStep(6);
    for (StackLayer& each : began.stack)
        each.temperature += kelvinStep(6);
    CureCase found = skirtPanel();
    found.found = {{seconds(0), kelvinStep(6)}};
    EXPECT_NEAR(secondsOf(solved(found).gel), secondsOf(solved(began).gel), 1e-6);
    EXPECT_NEAR(secondsOf(solved(found).sand), secondsOf(solved(began).sand), 1e-6);
}

/// Inert, insulated at both faces, a slab stays by so much warmer as it was found: nothing else acts on it.
TEST(FoundWarmer, AnInertSlabStaysAsItWasFound)
{
    CureCase inert = insulated(skirtPanel());
    inert.kinetics.k1 = inert.kinetics.k2 = perSecond(0);
    inert.found = {{seconds(100), kelvinStep(8)}, {seconds(200), kelvinStep(-3)}};
    const CureResult result = solved(inert);
    EXPECT_NEAR(inCelsius(result.peak), 33, 1e-6);
    EXPECT_GE(inSeconds(result.peakAt), 100);
    EXPECT_NEAR(inCelsius(result.curve.back().hottest), 30, 1e-6);
}

/// The state reached is kept: warmed after it has gelled, it gelled when it did, and sands earlier than unwarmed but
/// later than one that was warm from the start.
TEST(FoundWarmer, GoesOnFromTheStateReached)
{
    const CureResult plain = solved(skirtPanel());
    CureCase found = skirtPanel();
    found.found = {{*plain.gel + seconds(30), kelvinStep(10)}};
    const CureResult read = solved(found);
    CureCase fromTheStart = skirtPanel();
    fromTheStart.found = {{seconds(0), kelvinStep(10)}};
    EXPECT_NEAR(secondsOf(read.gel), secondsOf(plain.gel), 0.05);
    EXPECT_LT(secondsOf(read.sand), secondsOf(plain.sand) - 5);
    EXPECT_GT(secondsOf(read.sand), secondsOf(solved(fromTheStart).sand) + 5);
}

/// Beyond the horizon nothing was found yet.
TEST(FoundWarmer, BeyondTheHorizonItIsNotThere)
{
    CureCase found = skirtPanel();
    found.found = {{found.horizon + seconds(1), kelvinStep(50)}};
    EXPECT_EQ(solved(found), solved(skirtPanel()));
}

} // namespace
} // namespace strandbench::test
