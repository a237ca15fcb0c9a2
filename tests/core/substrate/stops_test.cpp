// SPDX-License-Identifier: GPL-3.0-or-later
// Every refusal of the trade, each alone on an otherwise sound panel, with who may override it. Common practice,
// no source, unless a line names one.
#include "sound_panels.h"

#include <gmock/gmock.h>

#include <functional>
#include <set>

using namespace Qt::StringLiterals;
using testing::ElementsAre;
using testing::IsEmpty;

namespace strandbench::test {
namespace {

using Spoil = std::function<void(Assessment&)>;

struct Refusal {
    const char* code;
    Override overridable;
    Substrate substrate;
    DamageKind kind;
    Spoil spoil;
};

constexpr Override nobody = Override::Nobody;
constexpr Override supervisor = Override::Supervisor;

Spoil substrateIs(Substrate value)
{
    return [=](Assessment& a) { a.substrate = value; };
}
Spoil zoneIs(Zone value)
{
    return [=](Assessment& a) { a.zone = value; };
}
Spoil surfaceIs(SurfaceState value)
{
    return [=](Assessment& a) { a.surface = value; };
}
Spoil coreIs(CoreMaterial value)
{
    return [=](Assessment& a) { a.core = value; };
}
Spoil weldIs(WeldKind value)
{
    return [=](Assessment& a) { a.damage->weld = value; };
}
Spoil airIs(double air, double panel, double humidity)
{
    return [=](Assessment& a) { a.reading = Reading{celsius(air), celsius(panel), Fraction::ofHundred(humidity)}; };
}

void nothing(Assessment&) {}

std::vector<Refusal> refusals()
{
    using enum DamageKind;
    constexpr Substrate frp = Substrate::Laminate;
    constexpr Substrate steel = Substrate::Steel;
    return {
        {"substrate_thermoplastic", supervisor, frp, Gouge, substrateIs(Substrate::Thermoplastic)},
        {"substrate_flexible_polyurethane", supervisor, frp, Gouge, substrateIs(Substrate::FlexiblePolyurethane)},
        {"substrate_carbon", nobody, frp, Gouge, substrateIs(Substrate::Carbon)},
        {"substrate_cast_thermoset", supervisor, frp, Gouge, substrateIs(Substrate::CastThermoset)},
        {"substrate_magnesium", nobody, frp, Gouge, substrateIs(Substrate::Magnesium)},
        {"substrate_unknown", nobody, frp, Gouge, substrateIs(Substrate::Unknown)},
        {"zone_structural", nobody, frp, Gouge, zoneIs(Zone::Structural)},
        {"zone_restraint", nobody, frp, Gouge, zoneIs(Zone::Restraint)},
        {"zone_sensor", supervisor, frp, Gouge, zoneIs(Zone::Sensor)},
        {"zone_fuel_or_pressure", nobody, frp, Gouge, zoneIs(Zone::FuelOrPressure)},
        {"surface_paint", supervisor, frp, Gouge, surfaceIs(SurfaceState::Paint)},
        {"surface_old_filler", supervisor, frp, Gouge, surfaceIs(SurfaceState::OldFiller)},
        {"surface_sealer", supervisor, frp, Gouge, surfaceIs(SurfaceState::Sealer)},
        {"surface_rust", supervisor, steel, Gouge, surfaceIs(SurfaceState::Rust)},
        {"surface_rust_converter", supervisor, steel, Gouge, surfaceIs(SurfaceState::RustConverter)},
        {"surface_etch_primer", supervisor, steel, Gouge, surfaceIs(SurfaceState::EtchPrimer)},
        {"surface_uncured_primer", supervisor, steel, Gouge, surfaceIs(SurfaceState::UncuredPrimer)},
        {"surface_flux", supervisor, steel, Gouge, surfaceIs(SurfaceState::Flux)},
        // Moisture inhibits the cure: FAA AC 43.13-1B, paragraph 3-2.
        {"moisture_damp", supervisor, frp, Gouge, [](Assessment& a) { a.moisture = Moisture::Damp; }},
        {"core_foam", supervisor, frp, Gouge, coreIs(CoreMaterial::Foam)},
        {"core_wet_wood", supervisor, frp, Gouge, coreIs(CoreMaterial::WetWood)},
        {"weld_spot", supervisor, steel, WeldSeam, weldIs(WeldKind::Spot)},
        {"weld_stitch", supervisor, steel, WeldSeam, weldIs(WeldKind::Stitch)},
        {"weld_seam_not_on_metal", nobody, frp, WeldSeam, nothing},
        {"bond_seam_not_cured", supervisor, frp, BondSeam, [](Assessment& a) { a.damage->adhesiveCured = false; }},
        {"metal_crack", supervisor, steel, Crack, nothing},
        {"metal_crack", supervisor, Substrate::Aluminium, Crack, nothing},
        {"metal_crack", supervisor, Substrate::Galvanised, Crack, nothing},
        {"metal_hole", supervisor, steel, Hole, nothing},
        {"metal_hole", supervisor, Substrate::Aluminium, Hole, nothing},
        {"metal_hole", supervisor, Substrate::Galvanised, Hole, nothing},
        {"rust_hole", supervisor, steel, RustHole, nothing},
        {"dent_too_deep", supervisor, steel, Dent, [](Assessment& a) { a.damage->depth = millimetres(6.5); }},
        {"hole_too_large", supervisor, frp, Hole, [](Assessment& a) { a.damage->width = millimetres(76); }},
        // ISO 8502-4 / ISO 12944-7 practice: 20 °C and 85 % leave 2.6 K.
        {"panel_near_dew_point", supervisor, frp, Gouge, airIs(20, 20, 85)},
        {"panel_too_cold", supervisor, frp, Gouge, airIs(15, 9.5, 30)},
        {"panel_too_hot", supervisor, frp, Gouge, airIs(30, 30.5, 30)},
        {"air_too_cold", supervisor, frp, Gouge, airIs(9.5, 15, 30)},
        {"air_too_hot", supervisor, frp, Gouge, airIs(35.5, 29, 30)},
    };
}

TEST(Refused, EachAloneWithItsCode)
{
    for (const Refusal& each : refusals()) {
        Assessment assessment = soundPanel(each.substrate, each.kind);
        each.spoil(assessment);
        const Decision decision = decideHere(assessment);
        EXPECT_FALSE(decision.fill) << each.code;
        EXPECT_THAT(stopCodes(decision), ElementsAre(QString::fromLatin1(each.code))) << each.code;
        EXPECT_FALSE(decision.filler) << each.code;
        EXPECT_EQ(decision.sheet, nullptr) << each.code;
        EXPECT_THAT(decision.reasons, IsEmpty()) << each.code;
        for (const Stop& stop : decision.stops) {
            EXPECT_EQ(stop.overridable, each.overridable) << each.code;
            EXPECT_FALSE(stop.instead.isEmpty()) << each.code << ": nothing to do instead";
        }
    }
}

/// A rust hole in a laminate is a slip of the assessment: that rust ate it cannot be said beside it.
TEST(Refused, RustHoleOutsideMetalIsASlipAlone)
{
    const Decision decision = decideHere(soundPanel(Substrate::Laminate, DamageKind::RustHole));
    EXPECT_THAT(stopCodes(decision), ElementsAre(u"rust_hole_not_on_metal"_s));
}

/// Between them the refusals above use every stop that there is, but for those listed here.
TEST(Refused, NoStopIsLeftUntried)
{
    std::set<QString> tried{u"not_assessed"_s, u"rust_hole_not_on_metal"_s, u"no_filler_fits"_s,
                            // the planner's own
                            u"gels_too_fast"_s, u"overheats_in_any_lift"_s, u"never_sands"_s, u"sheet_times_unfit"_s,
                            u"sheet_never_sands"_s, u"cure_unsolved"_s};
    for (const Refusal& each : refusals())
        tried.insert(QString::fromLatin1(each.code));
    const std::vector<QString> known = knownStopCodes();
    EXPECT_EQ(tried, std::set<QString>(known.begin(), known.end()));
}

TEST(Refused, AllStopsAreGivenNotOnlyTheFirst)
{
    Assessment assessment = soundPanel(Substrate::Steel, DamageKind::Hole);
    assessment.damage->length = millimetres(90);
    assessment.zone = Zone::Structural;
    assessment.surface = SurfaceState::Rust;
    assessment.moisture = Moisture::Damp;
    assessment.rearAccess.reset();
    airIs(36, 9, 90)(assessment);
    EXPECT_THAT(stopCodes(decideHere(assessment)),
                ElementsAre(u"air_too_hot"_s, u"hole_too_large"_s, u"metal_hole"_s, u"moisture_damp"_s,
                            u"not_assessed"_s, u"panel_near_dew_point"_s, u"panel_too_cold"_s, u"surface_rust"_s,
                            u"zone_structural"_s));
}

TEST(Refused, SoundPanelsAreNot)
{
    for (const SurfaceState surface : {SurfaceState::Bare, SurfaceState::AbradedEpoxy}) {
        Assessment assessment = soundPanel(Substrate::Laminate, DamageKind::Gouge);
        assessment.surface = surface;
        EXPECT_TRUE(decideHere(assessment).fill);
        assessment.core = CoreMaterial::DryWood;
        EXPECT_TRUE(decideHere(assessment).fill);
    }
}

TEST(Stops, EveryKnownCodeCanBeBuilt)
{
    std::set<QString> seen;
    for (const QString& code : knownStopCodes()) {
        const Stop stop = stopOf({code, {Count{3}}});
        EXPECT_EQ(stop.reason, (Reason{code, {Count{3}}}));
        EXPECT_FALSE(stop.instead.isEmpty()) << code.toStdString();
        EXPECT_TRUE(seen.insert(code).second) << code.toStdString() << " twice";
    }
    EXPECT_THROW((void)stopOf({u"no_such_stop"_s, {}}), std::logic_error);
}

/// Structural, restraint and fuel are nobody's to override, whatever else is wrong.
TEST(Stops, SomeAreNobodysToOverride)
{
    for (const char* code : {"zone_structural", "zone_restraint", "zone_fuel_or_pressure", "not_assessed"})
        EXPECT_EQ(stopOf({QString::fromLatin1(code), {}}).overridable, Override::Nobody) << code;
}

} // namespace
} // namespace strandbench::test
