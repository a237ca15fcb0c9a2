// SPDX-License-Identifier: GPL-3.0-or-later
// What an apprentice decides on a panel, and which skill each of it belongs to.
#pragma once

#include "quantity/codes.h"

namespace strandbench {

enum class Skill { Identify, Decide, Prepare, Mix, Time, Finish };
template <> struct Codes<Skill> {
    static constexpr std::array<std::pair<Skill, const char*>, 6> table{{
        {Skill::Identify, "identify"},
        {Skill::Decide, "decide"},
        {Skill::Prepare, "prepare"},
        {Skill::Mix, "mix"},
        {Skill::Time, "time"},
        {Skill::Finish, "finish"},
    }};
};

enum class DecisionPoint {
    SubstrateFound,
    DamageFound,
    SizeFound,
    WeldFound,
    AdhesiveFound,
    ReachFound,
    SurfaceFound,
    ZoneFound,
    MoistureFound,
    CoreFound,
    FillOrStop,
    WhyStop,
    InsteadOfFilling,
    WhichFiller,
    StepsLeftOut,
    StepsThatHarm,
    StepsInOrder,
    LiftThickness,
    BuildUp,
    MixedAmount,
    HardenerDose,
    EdgesCleared,
    SandedAt,
    Turned,
    FinishCoats,
    Inspected,
    PrimerAfter,
};
template <> struct Codes<DecisionPoint> {
    static constexpr std::array<std::pair<DecisionPoint, const char*>, 27> table{{
        {DecisionPoint::SubstrateFound, "substrate_found"},
        {DecisionPoint::DamageFound, "damage_found"},
        {DecisionPoint::SizeFound, "size_found"},
        {DecisionPoint::WeldFound, "weld_found"},
        {DecisionPoint::AdhesiveFound, "adhesive_found"},
        {DecisionPoint::ReachFound, "reach_found"},
        {DecisionPoint::SurfaceFound, "surface_found"},
        {DecisionPoint::ZoneFound, "zone_found"},
        {DecisionPoint::MoistureFound, "moisture_found"},
        {DecisionPoint::CoreFound, "core_found"},
        {DecisionPoint::FillOrStop, "fill_or_stop"},
        {DecisionPoint::WhyStop, "why_stop"},
        {DecisionPoint::InsteadOfFilling, "instead_of_filling"},
        {DecisionPoint::WhichFiller, "which_filler"},
        {DecisionPoint::StepsLeftOut, "steps_left_out"},
        {DecisionPoint::StepsThatHarm, "steps_that_harm"},
        {DecisionPoint::StepsInOrder, "steps_in_order"},
        {DecisionPoint::LiftThickness, "lift_thickness"},
        {DecisionPoint::BuildUp, "build_up"},
        {DecisionPoint::MixedAmount, "mixed_amount"},
        {DecisionPoint::HardenerDose, "hardener_dose"},
        {DecisionPoint::EdgesCleared, "edges_cleared"},
        {DecisionPoint::SandedAt, "sanded_at"},
        {DecisionPoint::Turned, "turned"},
        {DecisionPoint::FinishCoats, "finish_coats"},
        {DecisionPoint::Inspected, "inspected"},
        {DecisionPoint::PrimerAfter, "primer_after"},
    }};
};

[[nodiscard]] Skill skillOf(DecisionPoint decision);

} // namespace strandbench
