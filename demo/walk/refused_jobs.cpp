// SPDX-License-Identifier: GPL-3.0-or-later
// The refusals: for each stop what was found, and the same panel when that has been put right.
#include "walk/demo_jobs.h"
#include "walk/every_job.h"

#include "exchange/sheets.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Entries = std::map<QString, QString>;

/// What is found beyond anyJob(); what puts it right is laid over that.
struct Case {
    const char* stop;
    const char* panel;
    Entries found;
    Entries putRight;
    bool zincNamed = true;
};

/// Entries whose name is a figure's are keyed in, all others are tapped.
void lay(DemoJob& job, const Entries& entries)
{
    for (const auto& [name, value] : entries)
        (job.figures.contains(name) ? job.figures : job.answers)[name] = value;
}

Case substrate(const char* stop, const char* code, const char* panel)
{
    return {stop, panel, {{u"substrate"_s, QString::fromLatin1(code)}}, {{u"substrate"_s, u"frp"_s}}};
}

Case zone(const char* stop, const char* code, const char* panel)
{
    return {stop, panel, {{u"zone"_s, QString::fromLatin1(code)}}, {{u"zone"_s, u"cosmetic"_s}}};
}

Case surface(const char* stop, const char* code, const char* panel, const QString& on = u"steel"_s)
{
    return {stop,
            panel,
            {{u"substrate"_s, on}, {u"damage_kind"_s, u"dent"_s}, {u"surface"_s, QString::fromLatin1(code)}},
            {{u"surface"_s, u"bare"_s}}};
}

Case core(const char* stop, const char* code)
{
    return {stop, "Roof cap, front", {{u"core"_s, QString::fromLatin1(code)}}, {{u"core"_s, u"dry_wood"_s}}};
}

Case damaged(const char* stop, const char* panel, const QString& on, const QString& kind, const Entries& more,
             const Entries& putRight)
{
    Entries found{{u"substrate"_s, on}, {u"damage_kind"_s, kind}};
    found.insert(more.begin(), more.end());
    return {stop, panel, found, putRight};
}

Case air(const char* stop, const QString& air, const QString& panel, const QString& humidity)
{
    return {stop,
            "Roof cap, front",
            {{u"air_c"_s, air}, {u"panel_c"_s, panel}, {u"humidity_percent"_s, humidity}},
            {{u"air_c"_s, u"21"_s}, {u"panel_c"_s, u"20.5"_s}, {u"humidity_percent"_s, u"48"_s}}};
}

std::vector<Case> panelCases()
{
    return {
        substrate("substrate_carbon", "carbon", "Front apron"),
        substrate("substrate_thermoplastic", "thermoplastic", "Bumper corner, left"),
        substrate("substrate_flexible_polyurethane", "flexible_polyurethane", "Bumper corner, right"),
        substrate("substrate_cast_thermoset", "cast_thermoset", "Battery door"),
        substrate("substrate_magnesium", "magnesium", "Engine cover"),
        substrate("substrate_unknown", "unknown", "Another panel"),
        core("core_foam", "foam"),
        core("core_wet_wood", "wet_wood"),
        zone("zone_structural", "structural", "Another panel"),
        zone("zone_restraint", "restraint", "Another panel"),
        zone("zone_sensor", "sensor", "Bumper corner, left"),
        zone("zone_fuel_or_pressure", "fuel_or_pressure", "Another panel"),
        surface("surface_paint", "paint", "Wheel arch, left"),
        surface("surface_old_filler", "old_filler", "Wheel arch, left"),
        surface("surface_sealer", "sealer", "Wheel arch, right"),
        surface("surface_rust", "rust", "Wheel arch, right"),
        surface("surface_rust_converter", "rust_converter", "Wheel arch, right"),
        surface("surface_etch_primer", "etch_primer", "Luggage door, left", u"aluminium"_s),
        surface("surface_uncured_primer", "uncured_primer", "Luggage door, right", u"galvanised"_s),
        surface("surface_flux", "flux", "Wheel arch, left"),
        {"moisture_damp", "Skirt panel, left front", {{u"moisture"_s, u"damp"_s}}, {{u"moisture"_s, u"dry"_s}}},
    };
}

std::vector<Case> damageCases()
{
    const Entries nowSolid{{u"weld"_s, u"solid"_s}};
    const Entries nowWelded{{u"damage_kind"_s, u"weld_seam"_s}, {u"weld"_s, u"solid"_s}};
    return {
        damaged("weld_spot", "Wheel arch, left", u"steel"_s, u"weld_seam"_s, {{u"weld"_s, u"spot"_s}}, nowSolid),
        damaged("weld_stitch", "Wheel arch, left", u"steel"_s, u"weld_seam"_s, {{u"weld"_s, u"stitch"_s}}, nowSolid),
        damaged("weld_seam_not_on_metal", "Front apron", u"frp"_s, u"weld_seam"_s, {},
                {{u"damage_kind"_s, u"bond_seam"_s}}),
        damaged("bond_seam_not_cured", "Skirt panel, right rear", u"smc"_s, u"bond_seam"_s,
                {{u"adhesive_cured"_s, u"no"_s}}, {{u"adhesive_cured"_s, u"yes"_s}}),
        damaged("metal_crack", "Wheel arch, right", u"steel"_s, u"crack"_s, {}, nowWelded),
        damaged("metal_hole", "Luggage door, left", u"aluminium"_s, u"hole"_s, {}, nowWelded),
        damaged("rust_hole", "Wheel arch, right", u"steel"_s, u"rust_hole"_s, {}, nowWelded),
        damaged("rust_hole_not_on_metal", "Front apron", u"frp"_s, u"rust_hole"_s, {},
                {{u"damage_kind"_s, u"hole"_s}, {u"length_mm"_s, u"40"_s}}),
        damaged("dent_too_deep", "Engine cover", u"steel"_s, u"dent"_s, {{u"depth_mm"_s, u"9"_s}},
                {{u"depth_mm"_s, u"2.5"_s}}),
        damaged("hole_too_large", "Skirt panel, right rear", u"smc"_s, u"hole"_s,
                {{u"length_mm"_s, u"90"_s}, {u"width_mm"_s, u"60"_s}},
                {{u"length_mm"_s, u"60"_s}, {u"width_mm"_s, u"40"_s}}),
        {"no_filler_fits",
         "Battery door",
         {{u"substrate"_s, u"galvanised"_s}, {u"damage_kind"_s, u"dent"_s}},
         {{u"surface"_s, u"abraded_epoxy"_s}},
         false},
    };
}

std::vector<Case> airCases()
{
    return {
        air("panel_near_dew_point", u"24"_s, u"17"_s, u"70"_s), air("panel_too_cold", u"15"_s, u"8"_s, u"40"_s),
        air("panel_too_hot", u"30"_s, u"34"_s, u"35"_s),        air("air_too_cold", u"8"_s, u"12"_s, u"40"_s),
        air("air_too_hot", u"37"_s, u"29"_s, u"30"_s),
    };
}

RefusedJob refused(const Case& each, int number)
{
    DemoJob found = anyJob(QString::number(number), QString::fromLatin1(each.panel));
    lay(found, each.found);
    DemoJob putRight = found;
    lay(putRight, each.putRight);
    return {QString::fromLatin1(each.stop), std::move(found), std::move(putRight), each.zincNamed};
}

} // namespace

Catalogue catalogueWithoutZinc()
{
    std::vector<ProductSheet> sheets = demoCatalogue().sheets();
    for (ProductSheet& each : sheets)
        each.namesZinc = false;
    return Catalogue(std::move(sheets));
}

const std::vector<RefusedJob>& everyRefusal()
{
    static const std::vector<RefusedJob> all = [] {
        std::vector<RefusedJob> jobs;
        int number = 4501;
        for (const std::vector<Case>& part : {panelCases(), damageCases(), airCases()})
            for (const Case& each : part)
                jobs.push_back(refused(each, number++));
        return jobs;
    }();
    return all;
}

} // namespace strandbench
