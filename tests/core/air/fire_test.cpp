// SPDX-License-Identifier: GPL-3.0-or-later
// What can be lit, from the program's own table of what does harm.
#include "air/fire.h"
#include "exchange/harm.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

FirePoint of(const QString& material)
{
    const std::vector<FirePoint> all = firePoints(builtInHarm());
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.material == material; });
    if (found == all.end())
        throw std::logic_error("it cannot be lit");
    return *found;
}

/// Styrene 88 degF, acetone 0 degF, closed cup: NIOSH Pocket Guide (2005-151), the second from memory.
TEST(Fire, PublishedFlashPoints)
{
    EXPECT_NEAR(inFahrenheit(*of(u"filler"_s).flash), 88, 0.5);
    EXPECT_NEAR(inFahrenheit(*of(u"lay_up_resin"_s).flash), 88, 0.5);
    EXPECT_NEAR(inFahrenheit(*of(u"acetone"_s).flash), 0, 0.5);
    EXPECT_EQ(of(u"acetone"_s).by, FlashBy::Published);
}

/// CLP Annex I, Table 2.6.1: category 2 flashes below 23 degC, category 3 from 23 to 60 degC; a published flash point
/// must lie where its class has it.
TEST(Fire, FlashPointsAreThoseOfTheirClass)
{
    for (const FirePoint& each : firePoints(builtInHarm())) {
        const auto& classes = builtInHarm().material(each.material)->classes;
        const auto is = [&](HazardClass hazard) {
            return std::find(classes.begin(), classes.end(), hazard) != classes.end();
        };
        if (each.by == FlashBy::Always) {
            EXPECT_TRUE(is(HazardClass::FlammableAerosol1)) << each.material.toStdString();
            continue;
        }
        EXPECT_EQ(is(HazardClass::FlammableLiquid2), *each.flash <= celsius(23)) << each.material.toStdString();
        EXPECT_EQ(is(HazardClass::FlammableLiquid3), *each.flash >= celsius(23.1)) << each.material.toStdString();
    }
}

/// CLP Annex I, Table 2.6.1 again: of what is known by its class alone, the end that it flashes at or below.
TEST(Fire, WhatIsKnownByItsClassHasTheUpperEndOfIt)
{
    const auto flashOf = [](HazardClass hazard) {
        HarmMaterial thinner;
        thinner.code = u"thinner"_s;
        thinner.kind = HarmKind::Solvent;
        thinner.classes = {hazard};
        HarmTable table;
        table.materials = {thinner};
        const std::vector<FirePoint> all = firePoints(table);
        return all.size() == 1 && all.front().by == FlashBy::Class ? inCelsius(*all.front().flash) : -999;
    };
    EXPECT_NEAR(flashOf(HazardClass::FlammableLiquid2), 23, 1e-9);
    EXPECT_NEAR(flashOf(HazardClass::FlammableLiquid3), 60, 1e-9);
}

TEST(Fire, NamesEveryMaterialWhoseVapourBurns)
{
    const std::vector<FirePoint> all = firePoints(builtInHarm());
    for (const HarmMaterial& each : builtInHarm().materials) {
        const bool burns = each.kind == HarmKind::Solvent || each.kind == HarmKind::Paste;
        const bool named =
            std::any_of(all.begin(), all.end(), [&](const auto& point) { return point.material == each.code; });
        EXPECT_EQ(named, burns) << each.code.toStdString();
    }
}

TEST(Fire, IsBelowItsFlashPointOnlyWhereThatIsKnown)
{
    EXPECT_NEAR(inKelvinStep(*belowFlash(of(u"filler"_s), celsius(21))), 10, 1e-9);
    EXPECT_FALSE(belowFlash(of(u"filler"_s), celsius(31)));
    EXPECT_FALSE(belowFlash(of(u"filler"_s), celsius(35)));
    EXPECT_FALSE(belowFlash(of(u"acetone"_s), celsius(10)));
    EXPECT_FALSE(belowFlash(of(u"wax_remover"_s), celsius(10))) << "below 23, nobody knows how far";
    EXPECT_FALSE(belowFlash(of(u"guide_coat"_s), celsius(10)));
}

} // namespace
