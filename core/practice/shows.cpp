// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/shows.h"

namespace strandbench::practice {

const std::vector<MaterialShows>& materials()
{
    using enum TapSound;
    static const std::vector<MaterialShows> all{
        {Substrate::Laminate,
         MagnetPull::None,
         false,
         {EdgeLook::LayeredMat},
         {BackMark::MatTexture},
         {Hard, Dull},
         SandedTo::Powder,
         {},
         false},
        {Substrate::Smc,
         MagnetPull::None,
         false,
         {EdgeLook::ChoppedEven},
         {BackMark::MouldedRibs},
         {Hard},
         SandedTo::Powder,
         BackMarking::Smc,
         false},
        {Substrate::Steel,
         MagnetPull::Strong,
         true,
         {EdgeLook::MetalEdge},
         {BackMark::PressedSheet},
         {Rings},
         SandedTo::BrightMetal,
         {},
         false},
        {Substrate::Galvanised,
         MagnetPull::Strong,
         true,
         {EdgeLook::MetalEdge},
         {BackMark::PressedSheet},
         {Rings},
         SandedTo::BrightMetal,
         {},
         false},
        {Substrate::Aluminium,
         MagnetPull::None,
         true,
         {EdgeLook::MetalEdge},
         {BackMark::PressedSheet, BackMark::CastRibs},
         {Rings},
         SandedTo::BrightMetal,
         {},
         false},
        {Substrate::Thermoplastic,
         MagnetPull::None,
         false,
         {EdgeLook::NoFibre},
         {BackMark::MouldedRibs},
         {Hard, Dull},
         SandedTo::Strings,
         BackMarking::Thermoplastic,
         {}},
        {Substrate::FlexiblePolyurethane,
         MagnetPull::None,
         false,
         {EdgeLook::NoFibre},
         {BackMark::MouldedRibs},
         {Dead},
         SandedTo::Crumbs,
         BackMarking::Polyurethane,
         true},
        {Substrate::Carbon,
         MagnetPull::None,
         true,
         {EdgeLook::BlackWeave},
         {BackMark::BlackWeave},
         {Hard},
         SandedTo::BlackDust,
         {},
         false},
        {Substrate::CastThermoset,
         MagnetPull::None,
         false,
         {EdgeLook::NoFibre},
         {BackMark::MouldedRibs},
         {Hard, Dull},
         SandedTo::Powder,
         BackMarking::CastThermoset,
         false},
        {Substrate::Magnesium,
         MagnetPull::None,
         true,
         {EdgeLook::MetalEdge},
         {BackMark::CastRibs},
         {Rings, Dull},
         SandedTo::BrightMetal,
         BackMarking::Magnesium,
         false},
    };
    return all;
}

const std::vector<FilmShows>& films()
{
    using enum ClothRub;
    static const std::vector<FilmShows> all{
        {SurfaceState::Bare, {FilmLook::None}, {StaysClean}, false},
        {SurfaceState::AbradedEpoxy, {FilmLook::EvenGrey}, {StaysClean}, false},
        {SurfaceState::Paint, {FilmLook::Gloss}, {StaysClean, Softens}, false},
        {SurfaceState::OldFiller, {FilmLook::Patch}, {StaysClean}, false},
        {SurfaceState::Sealer, {FilmLook::Rubbery}, {StaysClean, Softens}, true},
        {SurfaceState::Rust, {FilmLook::BrownScale}, {TakesColour}, false},
        {SurfaceState::RustConverter, {FilmLook::SmoothBlack}, {StaysClean}, false},
        {SurfaceState::EtchPrimer, {FilmLook::Tint, FilmLook::EvenGrey}, {TakesColour}, false},
        {SurfaceState::UncuredPrimer, {FilmLook::EvenGrey}, {TakesColour, Softens}, true},
        {SurfaceState::Flux, {FilmLook::Glassy}, {StaysClean}, false},
    };
    return all;
}

bool isThick(SurfaceState surface) { return surface == SurfaceState::OldFiller || surface == SurfaceState::Sealer; }

std::vector<FrontMark> marksOf(DamageKind kind)
{
    switch (kind) {
    case DamageKind::Gouge:
        return {FrontMark::Furrow};
    case DamageKind::Dent:
        return {FrontMark::Dish};
    case DamageKind::Crack:
        return {FrontMark::CrackLine};
    case DamageKind::Hole:
        return {FrontMark::ThroughHole};
    case DamageKind::RustHole:
        return {FrontMark::RustedThrough};
    case DamageKind::WeldSeam:
        return {FrontMark::WeldBead, FrontMark::SpotRings, FrontMark::SeamLine};
    case DamageKind::BondSeam:
        return {FrontMark::AdhesiveLine};
    }
    Q_UNREACHABLE();
}

} // namespace strandbench::practice
