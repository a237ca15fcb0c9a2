// SPDX-License-Identifier: GPL-3.0-or-later
// A practice panel: what it is in truth, what of that it shows, and what it leads into.
#pragma once

#include "practice/decision_point.h"
#include "practice/evidence.h"
#include "substrate/assessment.h"

namespace strandbench {

enum class TrapKind {
    CrackPastCrazing,
    SmcAsLaminate,
    DewMarginShort,
    JustAboveDew,
    WeakMagnetOverFiller,
    HotPorousWeld,
    SpotSeam,
    StitchFromBehind,
    BlackConverter,
    ZincGroundAway,
    AluminiumSteelDisc,
    SoftSqueezeOut,
    HardThermoplastic,
    CarbonUnderPaint,
    FibrelessHood,
    GoodEtchPrimer,
    SensorZone,
    FuelTank,
    FoamCore,
};
template <> struct Codes<TrapKind> {
    static constexpr std::array<std::pair<TrapKind, const char*>, 19> table{{
        {TrapKind::CrackPastCrazing, "crack_past_crazing"},
        {TrapKind::SmcAsLaminate, "smc_as_laminate"},
        {TrapKind::DewMarginShort, "dew_margin_short"},
        {TrapKind::JustAboveDew, "just_above_dew"},
        {TrapKind::WeakMagnetOverFiller, "weak_magnet_over_filler"},
        {TrapKind::HotPorousWeld, "hot_porous_weld"},
        {TrapKind::SpotSeam, "spot_seam"},
        {TrapKind::StitchFromBehind, "stitch_from_behind"},
        {TrapKind::BlackConverter, "black_converter"},
        {TrapKind::ZincGroundAway, "zinc_ground_away"},
        {TrapKind::AluminiumSteelDisc, "aluminium_steel_disc"},
        {TrapKind::SoftSqueezeOut, "soft_squeeze_out"},
        {TrapKind::HardThermoplastic, "hard_thermoplastic"},
        {TrapKind::CarbonUnderPaint, "carbon_under_paint"},
        {TrapKind::FibrelessHood, "fibreless_hood"},
        {TrapKind::GoodEtchPrimer, "good_etch_primer"},
        {TrapKind::SensorZone, "sensor_zone"},
        {TrapKind::FuelTank, "fuel_tank"},
        {TrapKind::FoamCore, "foam_core"},
    }};
};

struct PracticePanel {
    QString id;
    /// Whole: what a technician finds who overlooks nothing. What cannot be told apart by all that is shown is
    /// Substrate::Unknown here as at the bench. Its reading, width, depth, thickness and bevel are shown as measured.
    Assessment truth;
    Evidence shown;
    std::vector<TrapKind> traps;
    bool operator==(const PracticePanel&) const = default;
};

/// The decision that a trap leads astray.
[[nodiscard]] DecisionPoint concernedBy(TrapKind trap);
/// Whether the panel has in it what that trap stands on.
[[nodiscard]] bool isLaid(TrapKind trap, const PracticePanel& panel);

} // namespace strandbench
