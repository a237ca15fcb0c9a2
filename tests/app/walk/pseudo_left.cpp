// SPDX-License-Identifier: GPL-3.0-or-later
#include "pseudo_left.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace strandbench::test {
namespace {

struct Left {
    std::string_view rule;
    std::string_view widget;
};

// Each holds in the four languages that people speak. A line that is no longer needed is to be taken out.
constexpr std::array known{
    Left{"text_fits", "ribbon_reading"},
    Left{"text_fits", "caption_language_de"},
    Left{"text_fits", "figure_chart"},
    Left{"text_fits", "hardener_g_figure"},
    Left{"text_fits", "in_hand"},
    Left{"text_fits", "mix_small"},
    Left{"text_fits", "mix_bead_caption"},
    Left{"text_fits", "other_folder"},
    Left{"text_fits", "pat_figure"},
    Left{"text_fits", "sentence"},
    Left{"text_fits", "stop_override"},
    Left{"text_fits", "supervisor_pin"},
    Left{"text_fits", "take_air"},
    Left{"text_fits", "unsaved_bar"},
    Left{"text_fits", "weigh_mix"},
    Left{"text_fits", "why"},
    Left{"text_fits", "answer_galvanised"},
    Left{"text_fits", "pick_zone_sensor"},
    Left{"text_fits", "field_hardener_percent.high_caution"},
    Left{"text_fits", "field_panel_c.low_caution"},
    Left{"text_fits", "field_peroxide_percent"},
    Left{"text_fits", "field_sanding_test_mm"},
    Left{"text_fits", "assumption_bridge_share_percent"},
    Left{"text_fits", "assumption_dense_hole_mm"},
    Left{"text_fits", "assumption_edges_at_gel_percent"},
    Left{"text_fits", "assumption_filler_over_air_k"},
    Left{"text_fits", "assumption_hole_no_rear_access_mm"},
    Left{"text_fits", "assumption_laminate_j_per_kg_k"},
    Left{"text_fits", "assumption_least_under_mm"},
    Left{"text_fits", "assumption_nozzle"},
    Left{"text_fits", "try_ohmmeter"},
    Left{"text_fits", "try_measures"},
    Left{"text_inside", "caution_1_why"},
    Left{"text_inside", "plan_heat"},
    Left{"text_inside", "product_versions"},
    Left{"text_inside", "vapour_counted"},
    Left{"target_size", "rows_before"},
    Left{"target_size", "rows_more"},
    Left{"target_size", "stock_change"},
    Left{"target_size", "stock_count"},
    Left{"target_size", "stock_end"},
    Left{"target_size", "stock_moved"},
    Left{"target_size", "stock_moves"},
    Left{"target_size", "stock_open"},
    Left{"target_size", "stock_pat"},
    Left{"target_size", "stock_probe"},
};

} // namespace

bool isLeftInPseudo(const rules::Breach& breach)
{
    return std::any_of(known.begin(), known.end(), [&breach](const Left& each) {
        return breach.rule == QLatin1String(each.rule.data(), int(each.rule.size())) &&
               breach.widget == QLatin1String(each.widget.data(), int(each.widget.size()));
    });
}

} // namespace strandbench::test
