// SPDX-License-Identifier: GPL-3.0-or-later
// What a practice panel shows: what eye, hand and instruments find on it, as codes. Screens draw them; nothing here
// says what they mean.
#pragma once

#include "quantity/codes.h"
#include "quantity/quantity.h"

#include <optional>
#include <vector>

namespace strandbench {

/// What is drawn in the view from the front.
enum class FrontMark {
    CrackLine,
    Crazing, ///< of the paint, round a crack
    Dish,
    Furrow,
    ThroughHole,
    RustedThrough,
    WeldBead,
    SpotRings,
    SeamLine, ///< of a seam whose welds are not seen from here
    AdhesiveLine,
    SqueezeOut,
    Pores,      ///< in a weld
    SteelSpecks ///< brown points on a bright sheet
};
template <> struct Codes<FrontMark> {
    static constexpr std::array<std::pair<FrontMark, const char*>, 13> table{{
        {FrontMark::CrackLine, "crack_line"},
        {FrontMark::Crazing, "crazing"},
        {FrontMark::Dish, "dish"},
        {FrontMark::Furrow, "furrow"},
        {FrontMark::ThroughHole, "through_hole"},
        {FrontMark::RustedThrough, "rusted_through"},
        {FrontMark::WeldBead, "weld_bead"},
        {FrontMark::SpotRings, "spot_rings"},
        {FrontMark::SeamLine, "seam_line"},
        {FrontMark::AdhesiveLine, "adhesive_line"},
        {FrontMark::SqueezeOut, "squeeze_out"},
        {FrontMark::Pores, "pores"},
        {FrontMark::SteelSpecks, "steel_specks"},
    }};
};

/// The film on the surface as it looks where it is to be filled.
enum class FilmLook { None, EvenGrey, Gloss, Patch, Rubbery, BrownScale, SmoothBlack, Tint, Glassy };
template <> struct Codes<FilmLook> {
    static constexpr std::array<std::pair<FilmLook, const char*>, 9> table{{
        {FilmLook::None, "none"},
        {FilmLook::EvenGrey, "even_grey"},
        {FilmLook::Gloss, "gloss"},
        {FilmLook::Patch, "patch"},
        {FilmLook::Rubbery, "rubbery"},
        {FilmLook::BrownScale, "brown_scale"},
        {FilmLook::SmoothBlack, "smooth_black"},
        {FilmLook::Tint, "tint"},
        {FilmLook::Glassy, "glassy"},
    }};
};

/// What a cloth with solvent does to the film.
enum class ClothRub { StaysClean, TakesColour, Softens };
template <> struct Codes<ClothRub> {
    static constexpr std::array<std::pair<ClothRub, const char*>, 3> table{{
        {ClothRub::StaysClean, "stays_clean"},
        {ClothRub::TakesColour, "takes_colour"},
        {ClothRub::Softens, "softens"},
    }};
};

/// How far the back is reached.
enum class BackReach { Hand, Mirror, Closed };
template <> struct Codes<BackReach> {
    static constexpr std::array<std::pair<BackReach, const char*>, 3> table{{
        {BackReach::Hand, "hand"},
        {BackReach::Mirror, "mirror"},
        {BackReach::Closed, "closed"},
    }};
};

/// What is drawn in the view from the back.
enum class BackMark {
    MatTexture,
    MouldedRibs,
    BlackWeave,
    PressedSheet,
    CastRibs,
    StitchBeads,
    SpotRings,
    ThroughBead
};
template <> struct Codes<BackMark> {
    static constexpr std::array<std::pair<BackMark, const char*>, 8> table{{
        {BackMark::MatTexture, "mat_texture"},
        {BackMark::MouldedRibs, "moulded_ribs"},
        {BackMark::BlackWeave, "black_weave"},
        {BackMark::PressedSheet, "pressed_sheet"},
        {BackMark::CastRibs, "cast_ribs"},
        {BackMark::StitchBeads, "stitch_beads"},
        {BackMark::SpotRings, "spot_rings"},
        {BackMark::ThroughBead, "through_bead"},
    }};
};

/// What the mould or the foundry marked on the back; never a maker's name.
enum class BackMarking { Smc, Thermoplastic, Polyurethane, CastThermoset, Magnesium };
template <> struct Codes<BackMarking> {
    static constexpr std::array<std::pair<BackMarking, const char*>, 5> table{{
        {BackMarking::Smc, "smc"},
        {BackMarking::Thermoplastic, "thermoplastic"},
        {BackMarking::Polyurethane, "polyurethane"},
        {BackMarking::CastThermoset, "cast_thermoset"},
        {BackMarking::Magnesium, "magnesium"},
    }};
};

/// What a broken or cut edge shows.
enum class EdgeLook { LayeredMat, ChoppedEven, NoFibre, BlackWeave, MetalEdge };
template <> struct Codes<EdgeLook> {
    static constexpr std::array<std::pair<EdgeLook, const char*>, 5> table{{
        {EdgeLook::LayeredMat, "layered_mat"},
        {EdgeLook::ChoppedEven, "chopped_even"},
        {EdgeLook::NoFibre, "no_fibre"},
        {EdgeLook::BlackWeave, "black_weave"},
        {EdgeLook::MetalEdge, "metal_edge"},
    }};
};

/// What is between the skins.
enum class InsideLook { Solid, FoamCells, PaleWood, DarkWetWood };
template <> struct Codes<InsideLook> {
    static constexpr std::array<std::pair<InsideLook, const char*>, 4> table{{
        {InsideLook::Solid, "solid"},
        {InsideLook::FoamCells, "foam_cells"},
        {InsideLook::PaleWood, "pale_wood"},
        {InsideLook::DarkWetWood, "dark_wet_wood"},
    }};
};

enum class MagnetPull { None, Weak, Strong };
template <> struct Codes<MagnetPull> {
    static constexpr std::array<std::pair<MagnetPull, const char*>, 3> table{{
        {MagnetPull::None, "none"},
        {MagnetPull::Weak, "weak"},
        {MagnetPull::Strong, "strong"},
    }};
};

enum class TapSound { Rings, Hard, Dull, Dead };
template <> struct Codes<TapSound> {
    static constexpr std::array<std::pair<TapSound, const char*>, 4> table{{
        {TapSound::Rings, "rings"},
        {TapSound::Hard, "hard"},
        {TapSound::Dull, "dull"},
        {TapSound::Dead, "dead"},
    }};
};

/// What 80 grit makes of a small spot.
enum class SandedTo { Powder, Strings, Crumbs, BlackDust, BrightMetal };
template <> struct Codes<SandedTo> {
    static constexpr std::array<std::pair<SandedTo, const char*>, 5> table{{
        {SandedTo::Powder, "powder"},
        {SandedTo::Strings, "strings"},
        {SandedTo::Crumbs, "crumbs"},
        {SandedTo::BlackDust, "black_dust"},
        {SandedTo::BrightMetal, "bright_metal"},
    }};
};

/// What a thumbnail finds in the adhesive of a bond seam.
enum class AdhesiveFeel { Hard, Rubbery, Soft };
template <> struct Codes<AdhesiveFeel> {
    static constexpr std::array<std::pair<AdhesiveFeel, const char*>, 3> table{{
        {AdhesiveFeel::Hard, "hard"},
        {AdhesiveFeel::Rubbery, "rubbery"},
        {AdhesiveFeel::Soft, "soft"},
    }};
};

/// What a foil that was taped on shows when it comes off.
enum class FoilTest { Dry, Beads };
template <> struct Codes<FoilTest> {
    static constexpr std::array<std::pair<FoilTest, const char*>, 2> table{{
        {FoilTest::Dry, "dry"},
        {FoilTest::Beads, "beads"},
    }};
};

/// What stands near the damage.
enum class Neighbour {
    Pillar,
    ChassisRail,
    BrakeMounting,
    SteeringMounting,
    SuspensionMounting,
    BeltMounting,
    SeatMounting,
    GlassFlange,
    AirbagCover,
    HighVoltagePart,
    SensorBehind,
    TankWall,
};
template <> struct Codes<Neighbour> {
    static constexpr std::array<std::pair<Neighbour, const char*>, 12> table{{
        {Neighbour::Pillar, "pillar"},
        {Neighbour::ChassisRail, "chassis_rail"},
        {Neighbour::BrakeMounting, "brake_mounting"},
        {Neighbour::SteeringMounting, "steering_mounting"},
        {Neighbour::SuspensionMounting, "suspension_mounting"},
        {Neighbour::BeltMounting, "belt_mounting"},
        {Neighbour::SeatMounting, "seat_mounting"},
        {Neighbour::GlassFlange, "glass_flange"},
        {Neighbour::AirbagCover, "airbag_cover"},
        {Neighbour::HighVoltagePart, "high_voltage_part"},
        {Neighbour::SensorBehind, "sensor_behind"},
        {Neighbour::TankWall, "tank_wall"},
    }};
};
struct NearPart {
    Neighbour part = Neighbour::Pillar;
    Length distance; ///< from the edge of the damage; 0: the damage is in it, or before it
    bool operator==(const NearPart&) const = default;
};

/// Everything a panel shows. What is empty was not or cannot be tried here. The tests of the material (magnetBare to
/// fizzes) are made at a spot beside the damage that is ground bare.
struct Evidence {
    std::vector<FrontMark> front;
    FilmLook film = FilmLook::None;
    BackReach reach = BackReach::Closed;
    std::vector<BackMark> back; ///< empty where the back is closed
    std::optional<BackMarking> marking;
    std::optional<EdgeLook> edge;
    InsideLook inside = InsideLook::Solid;
    MagnetPull magnetHere = MagnetPull::None; ///< at the damage, through what is on it
    std::optional<MagnetPull> magnetBare;
    std::optional<Length> zincHere; ///< by the gauge, 0: none
    std::optional<Length> zincBeside;
    std::optional<bool> conducts; ///< by the ohmmeter
    std::optional<TapSound> tap;
    std::optional<SandedTo> sanded;
    std::optional<bool> bends;  ///< by hand, at its edge
    std::optional<bool> fizzes; ///< under a drop of vinegar
    std::optional<ClothRub> rub;
    std::optional<bool> nailMarks; ///< in the film
    Length visibleLength;          ///< of the damage, as the eye has it
    std::optional<Length> tipsAt;  ///< of a crack: its length from tip to tip once tapped and wetted
    std::optional<AdhesiveFeel> adhesive;
    FoilTest foil = FoilTest::Dry;
    std::vector<NearPart> near;
    std::optional<Duration> sinceCut; ///< of bare metal
    bool operator==(const Evidence&) const = default;
};

} // namespace strandbench
