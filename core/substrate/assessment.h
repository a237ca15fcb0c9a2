// SPDX-License-Identifier: GPL-3.0-or-later
// What the technician found. Every answer is optional until it is given: a question not answered is a
// stop, never a default yes.
#pragma once

#include "air/reading.h"
#include "quantity/codes.h"
#include "quantity/quantity.h"

#include <optional>
#include <vector>

namespace strandbench {

enum class Substrate {
    Laminate,
    Smc,
    Steel,
    Galvanised,
    Aluminium,
    Thermoplastic,
    FlexiblePolyurethane,
    Carbon,
    CastThermoset,
    Magnesium,
    Unknown,
};
template <> struct Codes<Substrate> {
    static constexpr std::array<std::pair<Substrate, const char*>, 11> table{{
        {Substrate::Laminate, "frp"},
        {Substrate::Smc, "smc"},
        {Substrate::Steel, "steel"},
        {Substrate::Galvanised, "galvanised"},
        {Substrate::Aluminium, "aluminium"},
        {Substrate::Thermoplastic, "thermoplastic"},
        {Substrate::FlexiblePolyurethane, "flexible_polyurethane"},
        {Substrate::Carbon, "carbon"},
        {Substrate::CastThermoset, "cast_thermoset"},
        {Substrate::Magnesium, "magnesium"},
        {Substrate::Unknown, "unknown"},
    }};
};
[[nodiscard]] constexpr bool isMetal(Substrate s)
{
    return s == Substrate::Steel || s == Substrate::Galvanised || s == Substrate::Aluminium;
}
[[nodiscard]] constexpr bool isFibreComposite(Substrate s) { return s == Substrate::Laminate || s == Substrate::Smc; }

enum class DamageKind { Gouge, Dent, Crack, Hole, RustHole, WeldSeam, BondSeam };
template <> struct Codes<DamageKind> {
    static constexpr std::array<std::pair<DamageKind, const char*>, 7> table{{
        {DamageKind::Gouge, "gouge"},
        {DamageKind::Dent, "dent"},
        {DamageKind::Crack, "crack"},
        {DamageKind::Hole, "hole"},
        {DamageKind::RustHole, "rust_hole"},
        {DamageKind::WeldSeam, "weld_seam"},
        {DamageKind::BondSeam, "bond_seam"},
    }};
};

enum class WeldKind { Solid, Spot, Stitch };
template <> struct Codes<WeldKind> {
    static constexpr std::array<std::pair<WeldKind, const char*>, 3> table{{
        {WeldKind::Solid, "solid"},
        {WeldKind::Spot, "spot"},
        {WeldKind::Stitch, "stitch"},
    }};
};

enum class SurfaceState {
    Bare,
    AbradedEpoxy,
    Paint,
    OldFiller,
    Sealer,
    Rust,
    RustConverter,
    EtchPrimer,
    UncuredPrimer,
    Flux,
};
template <> struct Codes<SurfaceState> {
    static constexpr std::array<std::pair<SurfaceState, const char*>, 10> table{{
        {SurfaceState::Bare, "bare"},
        {SurfaceState::AbradedEpoxy, "abraded_epoxy"},
        {SurfaceState::Paint, "paint"},
        {SurfaceState::OldFiller, "old_filler"},
        {SurfaceState::Sealer, "sealer"},
        {SurfaceState::Rust, "rust"},
        {SurfaceState::RustConverter, "rust_converter"},
        {SurfaceState::EtchPrimer, "etch_primer"},
        {SurfaceState::UncuredPrimer, "uncured_primer"},
        {SurfaceState::Flux, "flux"},
    }};
};

enum class Zone { Cosmetic, Structural, Restraint, Sensor, FuelOrPressure };
template <> struct Codes<Zone> {
    static constexpr std::array<std::pair<Zone, const char*>, 5> table{{
        {Zone::Cosmetic, "cosmetic"},
        {Zone::Structural, "structural"},
        {Zone::Restraint, "restraint"},
        {Zone::Sensor, "sensor"},
        {Zone::FuelOrPressure, "fuel_or_pressure"},
    }};
};

enum class Moisture { Dry, Damp };
template <> struct Codes<Moisture> {
    static constexpr std::array<std::pair<Moisture, const char*>, 2> table{{
        {Moisture::Dry, "dry"},
        {Moisture::Damp, "damp"},
    }};
};

enum class CoreMaterial { None, Foam, DryWood, WetWood };
template <> struct Codes<CoreMaterial> {
    static constexpr std::array<std::pair<CoreMaterial, const char*>, 4> table{{
        {CoreMaterial::None, "none"},
        {CoreMaterial::Foam, "foam"},
        {CoreMaterial::DryWood, "dry_wood"},
        {CoreMaterial::WetWood, "wet_wood"},
    }};
};

/// The damage as measured. Ranges are the reader's business (exchange); here they hold.
/// A length of 0 means: the kind is known, its size not measured yet.
struct Damage {
    DamageKind kind = DamageKind::Gouge;
    Length length; ///< along its longer way
    Length width;  ///< across; for a gouge measured after the bevel; 0 for a crack
    Length depth;  ///< of a hole: the panel's thickness
    Length panelThickness;
    double bevelRatio = 0;             ///< run : depth, 4 means 4 : 1; used by holes and cracks
    std::optional<WeldKind> weld;      ///< asked for a weld seam
    std::optional<bool> adhesiveCured; ///< asked for a bond seam
    bool operator==(const Damage&) const = default;
    [[nodiscard]] bool measured() const { return length.value() > 0.0; }
};

struct Assessment {
    QString job; ///< label, not an identity
    QString panel;
    std::optional<Substrate> substrate;
    std::optional<Damage> damage;
    std::optional<bool> rearAccess; ///< asked for a hole
    std::optional<SurfaceState> surface;
    std::optional<Zone> zone;
    std::optional<Moisture> moisture;
    CoreMaterial core = CoreMaterial::None; ///< for a laminate
    std::optional<Reading> reading;
    std::vector<QString> overridden = {}; ///< codes of stops that a supervisor has overridden
    bool operator==(const Assessment&) const = default;
};

} // namespace strandbench
