// SPDX-License-Identifier: GPL-3.0-or-later
// What each truth shows stands in tables (common practice, no source), and the inverse tries all of them.
#include "practice/inference.h"
#include "practice/shows.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using practice::films;
using practice::FilmShows;
using practice::isThick;
using practice::marksOf;
using practice::materials;
using practice::MaterialShows;

template <class T> bool has(const std::vector<T>& all, const T& wanted)
{
    return std::ranges::find(all, wanted) != all.end();
}

/// True when the test was not made or found one of what may be.
template <class T> bool fits(const std::optional<T>& found, const std::vector<T>& may)
{
    return !found || has(may, *found);
}

/// Marks of the back that tell of the material, not of a seam.
bool tellsMaterial(BackMark mark)
{
    return mark != BackMark::StitchBeads && mark != BackMark::SpotRings && mark != BackMark::ThroughBead;
}

bool backFits(const MaterialShows& material, const Evidence& evidence)
{
    return std::ranges::all_of(evidence.back,
                               [&](BackMark each) { return !tellsMaterial(each) || has(material.backs, each); }) &&
           (!evidence.marking || evidence.marking == material.marking);
}

/// Through old filler or sealer a magnet is weak where it is strong on the bare sheet.
bool magnetFits(const MaterialShows& material, SurfaceState surface, const Evidence& evidence)
{
    const bool pulls = material.magnet == MagnetPull::Strong;
    const MagnetPull here = pulls && isThick(surface) ? MagnetPull::Weak : material.magnet;
    return evidence.magnetHere == here && (!evidence.magnetBare || evidence.magnetBare == material.magnet);
}

/// Zinc that was ground away is still beside the spot.
bool zincFits(Substrate substrate, const Evidence& evidence)
{
    if (substrate == Substrate::Galvanised)
        return !evidence.zincBeside || evidence.zincBeside->value() > 0.0;
    return evidence.zincHere.value_or(Length()).value() <= 0.0 && evidence.zincBeside.value_or(Length()).value() <= 0.0;
}

bool tellsDamage(FrontMark mark)
{
    return mark != FrontMark::Crazing && mark != FrontMark::SqueezeOut && mark != FrontMark::Pores &&
           mark != FrontMark::SteelSpecks;
}

/// A dressed seam shows its welds only from behind.
bool weldFits(WeldKind weld, const Evidence& evidence)
{
    const bool bead = has(evidence.front, FrontMark::WeldBead) || has(evidence.back, BackMark::ThroughBead);
    const bool spots = has(evidence.front, FrontMark::SpotRings) || has(evidence.back, BackMark::SpotRings);
    const bool stitches = has(evidence.back, BackMark::StitchBeads);
    const bool unseen = evidence.reach == BackReach::Closed;
    switch (weld) {
    case WeldKind::Solid:
        return !spots && !stitches && (bead || unseen);
    case WeldKind::Spot:
        return !bead && !stitches && (spots || unseen);
    case WeldKind::Stitch:
        return !bead && !spots && (stitches || unseen);
    }
    Q_UNREACHABLE();
}

/// The zone that a part makes of what lies so near to it.
Zone zoneOf(const NearPart& near)
{
    switch (near.part) {
    case Neighbour::TankWall:
        return near.distance.value() <= 0.0 ? Zone::FuelOrPressure : Zone::Cosmetic;
    case Neighbour::SensorBehind:
        return near.distance <= sensorReach() ? Zone::Sensor : Zone::Cosmetic;
    case Neighbour::BeltMounting:
    case Neighbour::SeatMounting:
    case Neighbour::GlassFlange:
    case Neighbour::AirbagCover:
    case Neighbour::HighVoltagePart:
        return near.distance <= mountingReach() ? Zone::Restraint : Zone::Cosmetic;
    case Neighbour::Pillar:
    case Neighbour::ChassisRail:
    case Neighbour::BrakeMounting:
    case Neighbour::SteeringMounting:
    case Neighbour::SuspensionMounting:
        return near.distance <= mountingReach() ? Zone::Structural : Zone::Cosmetic;
    }
    Q_UNREACHABLE();
}

/// Of several zones the one that binds most: what nobody may override goes first.
int rankOf(Zone zone)
{
    switch (zone) {
    case Zone::Cosmetic:
        return 0;
    case Zone::Sensor:
        return 1;
    case Zone::Structural:
        return 2;
    case Zone::Restraint:
        return 3;
    case Zone::FuelOrPressure:
        return 4;
    }
    Q_UNREACHABLE();
}

} // namespace

QStringList speaksAgainst(Substrate substrate, SurfaceState surface, const Evidence& evidence)
{
    const auto found = std::ranges::find(materials(), substrate, &MaterialShows::substrate);
    if (found == materials().end())
        return {};
    QStringList against;
    const auto hold = [&](bool fitting, const QString& code) {
        if (!fitting)
            against << code;
    };
    hold(magnetFits(*found, surface, evidence), u"magnet"_s);
    hold(zincFits(substrate, evidence), u"zinc"_s);
    hold(!evidence.conducts || evidence.conducts == found->conducts, u"conducts"_s);
    hold(fits(evidence.edge, found->edges), u"edge"_s);
    hold(backFits(*found, evidence), u"back"_s);
    hold(fits(evidence.tap, found->taps), u"tap"_s);
    hold(!evidence.sanded || evidence.sanded == found->sanded, u"sanded"_s);
    hold(!evidence.bends || !found->bends || evidence.bends == found->bends, u"bends"_s);
    hold(!evidence.fizzes || *evidence.fizzes == (substrate == Substrate::Magnesium), u"fizzes"_s);
    return against;
}

bool showsSubstrate(Substrate substrate, SurfaceState surface, const Evidence& evidence)
{
    return substrate != Substrate::Unknown && speaksAgainst(substrate, surface, evidence).isEmpty();
}

bool showsSurface(SurfaceState surface, const Evidence& evidence)
{
    const auto found = std::ranges::find(films(), surface, &FilmShows::surface);
    return has(found->looks, evidence.film) && fits(evidence.rub, found->rubs) &&
           (!evidence.nailMarks || evidence.nailMarks == found->nailMarks);
}

bool showsDamage(const Candidates::Kind& damage, const Evidence& evidence)
{
    const std::vector<FrontMark> own = marksOf(damage.kind);
    const auto count = std::ranges::count_if(evidence.front, tellsDamage);
    const bool marked = count == 1 && std::ranges::all_of(evidence.front, [&](FrontMark each) {
                            return !tellsDamage(each) || has(own, each);
                        });
    if (!marked)
        return false;
    if (damage.kind == DamageKind::WeldSeam)
        return damage.weld && weldFits(*damage.weld, evidence);
    if (damage.kind == DamageKind::BondSeam)
        return damage.adhesiveCured &&
               (!evidence.adhesive || (evidence.adhesive == AdhesiveFeel::Hard) == *damage.adhesiveCured);
    return true;
}

bool showsZone(Zone zone, const Evidence& evidence)
{
    Zone most = Zone::Cosmetic;
    for (const NearPart& each : evidence.near)
        if (rankOf(zoneOf(each)) > rankOf(most))
            most = zoneOf(each);
    return zone == most;
}

bool showsMoisture(Moisture moisture, const Evidence& evidence)
{
    return (evidence.foil == FoilTest::Beads) == (moisture == Moisture::Damp);
}

bool showsCore(CoreMaterial core, const Evidence& evidence)
{
    switch (evidence.inside) {
    case InsideLook::Solid:
        return core == CoreMaterial::None;
    case InsideLook::FoamCells:
        return core == CoreMaterial::Foam;
    case InsideLook::PaleWood:
        return core == CoreMaterial::DryWood;
    case InsideLook::DarkWetWood:
        return core == CoreMaterial::WetWood;
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
