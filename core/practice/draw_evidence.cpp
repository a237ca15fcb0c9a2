// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drawing.h"

#include "air/gate.h"
#include "practice/shows.h"

#include <algorithm>

namespace strandbench::practice {
namespace {

/// The material below: of an unknown one, some plastic.
Substrate materialOf(const Assessment& truth, Dice& dice)
{
    static const std::vector<Substrate> plastics{Substrate::Thermoplastic, Substrate::CastThermoset, Substrate::Smc};
    return truth.substrate == Substrate::Unknown ? dice.from(plastics) : *truth.substrate;
}

void drawMaterial(Substrate substrate, const Assessment& truth, Evidence& shown, Dice& dice)
{
    const MaterialShows& material = *std::ranges::find(materials(), substrate, &MaterialShows::substrate);
    const bool pulls = material.magnet == MagnetPull::Strong;
    shown.magnetHere = pulls && isThick(*truth.surface) ? MagnetPull::Weak : material.magnet;
    shown.magnetBare = material.magnet;
    shown.conducts = material.conducts;
    shown.edge = dice.from(material.edges);
    shown.tap = dice.from(material.taps);
    shown.sanded = material.sanded;
    shown.bends = material.bends.value_or(false);
    shown.fizzes = substrate == Substrate::Magnesium;
    if (material.marking && dice.percent(30))
        shown.marking = material.marking;
    if (shown.reach != BackReach::Closed)
        shown.back.push_back(material.backs.front());
    const bool zinc = substrate == Substrate::Galvanised;
    const Length coat = millimetres(zinc ? dice.between(5, 20) / 1000.0 : 0.0);
    shown.zincBeside = coat;
    shown.zincHere = zinc && dice.percent(40) ? millimetres(0) : coat;
    if (isMetal(substrate) && truth.surface == SurfaceState::Bare) {
        const bool overnight = substrate == Substrate::Aluminium && dice.percent(50);
        shown.sinceCut = minutes(overnight ? dice.between(480, 1000) : dice.between(5, 50));
        if (overnight)
            shown.front.push_back(FrontMark::SteelSpecks);
    }
}

void drawFilm(SurfaceState surface, Evidence& shown, Dice& dice)
{
    const FilmShows& film = *std::ranges::find(films(), surface, &FilmShows::surface);
    shown.film = dice.from(film.looks);
    shown.rub = dice.from(film.rubs);
    shown.nailMarks = film.nailMarks;
}

void drawWeld(WeldKind weld, bool hot, Evidence& shown, Dice& dice)
{
    const bool dressed = shown.reach != BackReach::Closed && dice.percent(50);
    switch (weld) {
    case WeldKind::Solid:
        shown.front.push_back(dressed ? FrontMark::SeamLine : FrontMark::WeldBead);
        if (dressed)
            shown.back.push_back(BackMark::ThroughBead);
        if (hot)
            shown.front.push_back(FrontMark::Pores);
        break;
    case WeldKind::Spot:
        shown.front.push_back(dressed ? FrontMark::SeamLine : FrontMark::SpotRings);
        if (dressed)
            shown.back.push_back(BackMark::SpotRings);
        break;
    case WeldKind::Stitch:
        shown.front.push_back(FrontMark::SeamLine);
        shown.back.push_back(BackMark::StitchBeads);
        break;
    }
}

void drawDamage(const Assessment& truth, Evidence& shown, Dice& dice)
{
    const Damage& damage = *truth.damage;
    shown.visibleLength = damage.length;
    if (damage.kind == DamageKind::WeldSeam) {
        drawWeld(*damage.weld, truth.reading->panel > FillingLimits{}.panelHigh, shown, dice);
        return;
    }
    shown.front.push_back(marksOf(damage.kind).front());
    if (damage.kind == DamageKind::Crack) {
        shown.tipsAt = damage.length;
        if (dice.percent(60)) {
            shown.front.push_back(FrontMark::Crazing);
            shown.visibleLength = millimetres(qRound(inMillimetres(damage.length) * dice.between(4, 8) / 10.0));
        }
    }
    if (damage.kind == DamageKind::BondSeam) {
        shown.adhesive = *damage.adhesiveCured ? AdhesiveFeel::Hard
                         : dice.percent(50)    ? AdhesiveFeel::Soft
                                               : AdhesiveFeel::Rubbery;
        if (!*damage.adhesiveCured || dice.percent(50))
            shown.front.push_back(FrontMark::SqueezeOut);
    }
}

BackReach drawReach(const Assessment& truth, Dice& dice)
{
    const Damage& damage = *truth.damage;
    if (damage.kind == DamageKind::Hole && truth.rearAccess.value_or(false))
        return BackReach::Hand;
    if (damage.weld == WeldKind::Stitch)
        return BackReach::Mirror;
    if (truth.substrate == Substrate::Unknown)
        return BackReach::Closed;
    return dice.percent(50) ? BackReach::Mirror : BackReach::Closed;
}

void drawNear(Zone zone, Evidence& shown, Dice& dice)
{
    static const std::vector<Neighbour> bearing{Neighbour::Pillar, Neighbour::ChassisRail, Neighbour::BrakeMounting,
                                                Neighbour::SteeringMounting, Neighbour::SuspensionMounting};
    static const std::vector<Neighbour> restraint{Neighbour::BeltMounting, Neighbour::SeatMounting,
                                                  Neighbour::GlassFlange, Neighbour::AirbagCover,
                                                  Neighbour::HighVoltagePart};
    const Length near = millimetres(dice.between(0, 29) * 10);
    switch (zone) {
    case Zone::Cosmetic:
        if (dice.percent(30)) // near enough to ask, too far to matter
            shown.near.push_back(
                {dice.from(dice.percent(50) ? bearing : restraint), millimetres(dice.between(35, 90) * 10)});
        break;
    case Zone::Structural:
        shown.near.push_back({dice.from(bearing), near});
        break;
    case Zone::Restraint:
        shown.near.push_back({dice.from(restraint), near});
        break;
    case Zone::Sensor:
        shown.near.push_back({Neighbour::SensorBehind, millimetres(dice.between(0, 5) * 10)});
        break;
    case Zone::FuelOrPressure:
        shown.near.push_back({Neighbour::TankWall, millimetres(0)});
        break;
    }
}

InsideLook insideOf(CoreMaterial core)
{
    switch (core) {
    case CoreMaterial::None:
        return InsideLook::Solid;
    case CoreMaterial::Foam:
        return InsideLook::FoamCells;
    case CoreMaterial::DryWood:
        return InsideLook::PaleWood;
    case CoreMaterial::WetWood:
        return InsideLook::DarkWetWood;
    }
    Q_UNREACHABLE();
}

} // namespace

Evidence drawEvidence(const Assessment& truth, Dice& dice)
{
    Evidence shown;
    shown.reach = drawReach(truth, dice);
    drawDamage(truth, shown, dice);
    drawMaterial(materialOf(truth, dice), truth, shown, dice);
    drawFilm(*truth.surface, shown, dice);
    shown.inside = insideOf(truth.core);
    shown.foil = truth.moisture == Moisture::Damp ? FoilTest::Beads : FoilTest::Dry;
    drawNear(*truth.zone, shown, dice);
    return shown;
}

} // namespace strandbench::practice
