// SPDX-License-Identifier: GPL-3.0-or-later
// What goes with every stop: who may override it, what to do instead, where it can be made fillable.
#include "substrate/decision.h"

#include <array>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

struct StopFacts {
    const char* code;
    Override overridable;
    const char* instead;
    const char* parkTo;
};

// What the trade refuses (common practice, no source). Structural, restraint and fuel stops are nobody's to override.
constexpr std::array<StopFacts, 44> allStops{{
    {"not_assessed", Override::Nobody, "answer_it", ""},
    {"substrate_thermoplastic", Override::Supervisor, "plastic_weld_or_replace", "plastics_bench"},
    {"substrate_flexible_polyurethane", Override::Supervisor, "flexible_repair", "plastics_bench"},
    {"substrate_carbon", Override::Nobody, "maker_composite_repair", "laminate_shop"},
    {"substrate_cast_thermoset", Override::Supervisor, "replace_part", "parts_counter"},
    {"substrate_magnesium", Override::Nobody, "replace_part", "parts_counter"},
    {"substrate_unknown", Override::Nobody, "find_out_substrate", "supervisor"},
    {"zone_structural", Override::Nobody, "maker_structural_method", "body_shop"},
    {"zone_restraint", Override::Nobody, "maker_restraint_method", "body_shop"},
    {"zone_sensor", Override::Supervisor, "maker_sensor_method", "supervisor"},
    {"zone_fuel_or_pressure", Override::Nobody, "replace_vessel", "parts_counter"},
    {"surface_paint", Override::Supervisor, "strip_to_bare", "strip_bay"},
    {"surface_old_filler", Override::Supervisor, "strip_to_bare", "strip_bay"},
    {"surface_sealer", Override::Supervisor, "strip_to_bare", "strip_bay"},
    {"surface_rust", Override::Supervisor, "blast_or_cut_rust", "metal_shop"},
    {"surface_rust_converter", Override::Supervisor, "blast_or_cut_rust", "metal_shop"},
    {"surface_etch_primer", Override::Supervisor, "strip_to_bare", "strip_bay"},
    {"surface_uncured_primer", Override::Supervisor, "cure_or_strip_primer", "strip_bay"},
    {"surface_flux", Override::Supervisor, "remove_flux", "metal_shop"},
    {"moisture_damp", Override::Supervisor, "dry_and_prove", "warm_room"},
    {"core_foam", Override::Supervisor, "sandwich_repair", "laminate_shop"},
    {"core_wet_wood", Override::Supervisor, "core_repair", "laminate_shop"},
    {"weld_spot", Override::Supervisor, "clean_prime_seal", "welding_shop"},
    {"weld_stitch", Override::Supervisor, "clean_prime_seal", "welding_shop"},
    {"weld_seam_not_on_metal", Override::Nobody, "assess_the_seam", "supervisor"},
    {"rust_hole_not_on_metal", Override::Nobody, "assess_the_hole", "supervisor"},
    {"bond_seam_not_cured", Override::Supervisor, "let_adhesive_cure", "warm_room"},
    {"metal_crack", Override::Supervisor, "cut_back_and_weld", "welding_shop"},
    {"metal_hole", Override::Supervisor, "cut_back_and_weld", "welding_shop"},
    {"rust_hole", Override::Supervisor, "cut_back_and_weld", "welding_shop"},
    {"dent_too_deep", Override::Supervisor, "metal_work_first", "metal_shop"},
    {"hole_too_large", Override::Supervisor, "laminate_or_section", "laminate_shop"},
    {"no_filler_fits", Override::Supervisor, "epoxy_or_other_sheet", "supervisor"},
    {"gels_too_fast", Override::Supervisor, "cool_the_shop", "cool_place"},
    {"overheats_in_any_lift", Override::Supervisor, "cool_the_shop", "cool_place"},
    {"never_sands", Override::Supervisor, "warm_the_panel", "warm_room"},
    {"sheet_times_unfit", Override::Nobody, "check_the_sheet", "supervisor"},
    {"sheet_never_sands", Override::Nobody, "check_the_sheet", "supervisor"},
    {"cure_unsolved", Override::Nobody, "check_the_sheet", "supervisor"},
    {"panel_near_dew_point", Override::Supervisor, "warm_the_panel", "warm_room"},
    {"panel_too_cold", Override::Supervisor, "warm_the_panel", "warm_room"},
    {"panel_too_hot", Override::Supervisor, "let_panel_cool", "cool_place"},
    {"air_too_cold", Override::Supervisor, "warm_the_shop", "warm_room"},
    {"air_too_hot", Override::Supervisor, "cool_the_shop", "cool_place"},
}};

const StopFacts* factsOf(const QString& code)
{
    for (const StopFacts& each : allStops)
        if (code == QLatin1StringView(each.code))
            return &each;
    return nullptr;
}

} // namespace

Stop stopOf(Reason reason)
{
    const StopFacts* facts = factsOf(reason.code);
    if (!facts)
        throw std::logic_error("a stop without facts: " + reason.code.toStdString());
    return {std::move(reason), facts->overridable, QString::fromLatin1(facts->instead),
            QString::fromLatin1(facts->parkTo)};
}

std::vector<QString> knownStopCodes()
{
    std::vector<QString> codes;
    for (const StopFacts& each : allStops)
        codes.push_back(QString::fromLatin1(each.code));
    return codes;
}

} // namespace strandbench
