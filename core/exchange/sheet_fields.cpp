// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sheet_fields.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

SheetField number(const QString& path, SheetGroup group, const QString& unit, std::optional<double> assumed = {})
{
    return {path, SheetFieldKind::Number, unit, group, assumed};
}

SheetField whole(const QString& path, SheetGroup group, double assumed)
{
    return {path, SheetFieldKind::Whole, {}, group, assumed};
}

SheetField law(const QString& path, const QString& unit)
{
    SheetField field = number(path, SheetGroup::Law, unit);
    field.mayBeLeftOut = true;
    return field;
}

SheetField finishing(SheetField field)
{
    field.finishingOnly = true;
    return field;
}

std::vector<SheetField> table()
{
    using enum SheetGroup;
    return {
        {u"id"_s, SheetFieldKind::Text, {}, std::nullopt, {}},
        {u"name"_s, SheetFieldKind::Text, {}, Product, {}},
        {u"demo"_s, SheetFieldKind::Flag, {}, std::nullopt, {}},
        {u"filler_class"_s, SheetFieldKind::Filler, {}, Product, {}},
        number(u"density_g_per_ml"_s, Product, u"g/ml"_s),
        number(u"working_min.nominal"_s, Times, u"min"_s),
        number(u"working_min.early"_s, Times, u"min"_s),
        number(u"working_min.late"_s, Times, u"min"_s),
        number(u"sanding_min.nominal"_s, Times, u"min"_s),
        number(u"sanding_min.early"_s, Times, u"min"_s),
        number(u"sanding_min.late"_s, Times, u"min"_s),
        number(u"easy_sanding_min"_s, Times, u"min"_s, 7),
        number(u"sanding_test_mm"_s, Times, u"mm"_s, 3), // of a finishing filler 1, see SheetDraft
        number(u"reference_c"_s, Times, u"°C"_s),
        number(u"heat_kj_per_kg"_s, Heat, u"kJ/kg"_s, 130),
        number(u"specific_heat_j_per_kg_k"_s, Heat, u"J/(kg K)"_s, 1250),
        number(u"conductivity_w_per_m_k"_s, Heat, u"W/(m K)"_s, 0.35),
        number(u"greatest_lift_mm"_s, Product, u"mm"_s),
        finishing(number(u"finish_in_all_mm"_s, Product, u"mm"_s)),
        number(u"shrinkage_percent"_s, Heat, u"%"_s, 3.5),
        number(u"styrene_percent"_s, Heat, u"%"_s, 15),
        number(u"hardener_percent.nominal"_s, Hardener, u"%"_s),
        number(u"hardener_percent.low"_s, Hardener, u"%"_s, 1.5),
        number(u"hardener_percent.high"_s, Hardener, u"%"_s, 2.5),
        number(u"hardener_percent.low_caution"_s, Hardener, u"%"_s, 1.2),
        number(u"hardener_percent.high_caution"_s, Hardener, u"%"_s, 3),
        number(u"peroxide_percent"_s, Hardener, u"%"_s, 50),
        number(u"bead_mg_per_mm"_s, Hardener, u"mg/mm"_s, 23),
        number(u"panel_c.low"_s, Limits, u"°C"_s, 15),
        number(u"panel_c.high"_s, Limits, u"°C"_s, 30),
        number(u"panel_c.low_caution"_s, Limits, u"°C"_s, 10),
        number(u"peak_limit_c"_s, Limits, u"°C"_s, 100),
        number(u"store_c.low"_s, Limits, u"°C"_s, 5),
        number(u"store_c.high"_s, Limits, u"°C"_s, 25),
        whole(u"months_sealed"_s, Limits, 12),
        whole(u"months_opened"_s, Limits, 6),
        {u"names_zinc"_s, SheetFieldKind::Flag, {}, Product, 0.0}, // nothing defaults to yes
        law(u"cure.activation_energy_j_per_mol"_s, u"J/mol"_s),
        law(u"cure.m"_s, {}),
        law(u"cure.n"_s, {}),
        law(u"cure.hardener_exponent"_s, {}),
        law(u"cure.max_conversion_at_reference"_s, {}),
        law(u"cure.max_conversion_per_k"_s, u"1/K"_s),
    };
}

} // namespace

const std::vector<SheetField>& sheetFields()
{
    static const std::vector<SheetField> all = table();
    return all;
}

const SheetField* findSheetField(const QString& path)
{
    const auto found = std::ranges::find(sheetFields(), path, &SheetField::path);
    return found == sheetFields().end() ? nullptr : &*found;
}

bool belongs(const SheetField& field, FillerClass filler) { return !field.finishingOnly || !isFibreReinforced(filler); }

} // namespace strandbench
