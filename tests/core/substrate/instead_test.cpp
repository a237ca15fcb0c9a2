// SPDX-License-Identifier: GPL-3.0-or-later
// What is done instead of filling, and where the panel waits meanwhile, for every stop. Common practice, no source: the
// expectations are written out here a second time, apart from the list that the program carries.
#include "substrate/decision.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

struct Way {
    const char* instead;
    const char* place; ///< empty where it is answered on the spot
    std::vector<const char*> stops;
};

const std::vector<Way>& ways()
{
    static const std::vector<Way> all{
        {"answer_it", "", {"not_assessed"}},
        // What another trade mends, by its own method.
        {"plastic_weld_or_replace", "plastics_bench", {"substrate_thermoplastic"}},
        {"flexible_repair", "plastics_bench", {"substrate_flexible_polyurethane"}},
        {"maker_composite_repair", "laminate_shop", {"substrate_carbon"}},
        {"sandwich_repair", "laminate_shop", {"core_foam"}},
        {"core_repair", "laminate_shop", {"core_wet_wood"}},
        {"laminate_or_section", "laminate_shop", {"hole_too_large"}},
        {"maker_structural_method", "body_shop", {"zone_structural"}},
        {"maker_restraint_method", "body_shop", {"zone_restraint"}},
        {"clean_prime_seal", "welding_shop", {"weld_spot", "weld_stitch"}},
        {"cut_back_and_weld", "welding_shop", {"metal_crack", "metal_hole", "rust_hole"}},
        {"metal_work_first", "metal_shop", {"dent_too_deep"}},
        // What is not mended at all.
        {"replace_part", "parts_counter", {"substrate_cast_thermoset", "substrate_magnesium"}},
        {"replace_vessel", "parts_counter", {"zone_fuel_or_pressure"}},
        // A surface that filler does not hold on.
        {"strip_to_bare",
         "strip_bay",
         {"surface_paint", "surface_old_filler", "surface_sealer", "surface_etch_primer"}},
        {"cure_or_strip_primer", "strip_bay", {"surface_uncured_primer"}},
        {"blast_or_cut_rust", "metal_shop", {"surface_rust", "surface_rust_converter"}},
        {"remove_flux", "metal_shop", {"surface_flux"}},
        // What warmth and time mend.
        {"dry_and_prove", "warm_room", {"moisture_damp"}},
        {"let_adhesive_cure", "warm_room", {"bond_seam_not_cured"}},
        {"warm_the_panel", "warm_room", {"never_sands", "panel_near_dew_point", "panel_too_cold"}},
        {"warm_the_shop", "warm_room", {"air_too_cold"}},
        {"cool_the_shop", "cool_place", {"gels_too_fast", "overheats_in_any_lift", "air_too_hot"}},
        {"let_panel_cool", "cool_place", {"panel_too_hot"}},
        // What somebody must look at.
        {"find_out_substrate", "supervisor", {"substrate_unknown"}},
        {"maker_sensor_method", "supervisor", {"zone_sensor"}},
        {"assess_the_seam", "supervisor", {"weld_seam_not_on_metal"}},
        {"assess_the_hole", "supervisor", {"rust_hole_not_on_metal"}},
        {"epoxy_or_other_sheet", "supervisor", {"no_filler_fits"}},
        {"check_the_sheet", "supervisor", {"sheet_times_unfit", "sheet_never_sands", "cure_unsolved"}},
    };
    return all;
}

TEST(Instead, IsWhatTheTradeDoesAndWhereThePanelWaits)
{
    std::set<QString> told;
    for (const Way& way : ways())
        for (const char* code : way.stops) {
            const Stop stop = stopOf({QString::fromLatin1(code), {}});
            EXPECT_EQ(stop.instead.toStdString(), way.instead) << code;
            EXPECT_EQ(stop.parkTo.toStdString(), way.place) << code;
            told.insert(stop.reason.code);
        }
    const std::vector<QString> known = knownStopCodes();
    EXPECT_EQ(told, std::set<QString>(known.begin(), known.end()));
}

/// What bears load, holds people or holds fuel is nobody's, and so is what was not found out; nor can anybody make a
/// sheet say what it does not. All else a supervisor may take upon himself.
TEST(Instead, WhoMayOverrideIsToldOfEveryStop)
{
    const std::set<QString> nobodys{
        u"not_assessed"_s,           u"substrate_unknown"_s, u"substrate_carbon"_s,      u"substrate_magnesium"_s,
        u"zone_structural"_s,        u"zone_restraint"_s,    u"zone_fuel_or_pressure"_s, u"weld_seam_not_on_metal"_s,
        u"rust_hole_not_on_metal"_s, u"sheet_times_unfit"_s, u"sheet_never_sands"_s,     u"cure_unsolved"_s};
    for (const QString& code : knownStopCodes())
        EXPECT_EQ(stopOf({code, {}}).overridable, nobodys.count(code) ? Override::Nobody : Override::Supervisor)
            << code.toStdString();
}

} // namespace
} // namespace strandbench::test
