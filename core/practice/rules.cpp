// SPDX-License-Identifier: GPL-3.0-or-later
// The rules that marks go by, with their figures: limits of table and sheet, and tolerances (assumptions).
#include "practice/marking.h"

using namespace Qt::StringLiterals;

namespace strandbench {

const std::vector<CodeWithArguments>& knownRules()
{
    static const std::vector<CodeWithArguments> all{
        {u"substrate_found"_s, {}},
        {u"a_test_tells"_s, {u"code"_s}},    // the test that speaks against what was found
        {u"not_told_apart"_s, {u"count"_s}}, // so many substrates show the same
        {u"damage_found"_s, {}},
        // Along, and at least; across and deep, and the depth at least.
        {u"size_found"_s, {u"share"_s, u"length"_s, u"share"_s, u"length"_s}},
        {u"weld_found"_s, {}},
        {u"adhesive_found"_s, {}},
        {u"reach_found"_s, {}},
        {u"surface_found"_s, {}},
        {u"zone_found"_s, {u"length"_s}}, // a mounting's reach
        {u"moisture_found"_s, {}},
        {u"core_found"_s, {}},
        {u"fill_or_stop"_s, {}},
        {u"it_stops"_s, {u"code*"_s}}, // the stops that hold on the pupil's answers
        {u"nothing_stops"_s, {}},
        {u"why_stop"_s, {}},
        {u"instead_of_filling"_s, {}},
        {u"which_filler"_s, {u"code*"_s}},
        {u"another_is_better"_s, {u"code"_s}},
        {u"refused_here"_s, {u"code"_s}}, // a reason of the decision table
        {u"steps_left_out"_s, {u"code*"_s}},
        {u"steps_that_harm"_s, {u"code*"_s}},
        {u"steps_in_order"_s, {u"code*"_s}},                    // the first goes before the second
        {u"lift_thickness"_s, {u"length"_s, u"temperature"_s}}, // the sheet's greatest, the lowest peak limit
        {u"build_up"_s, {u"length*"_s}},                        // level within
        {u"mixed_amount"_s, {u"share"_s, u"share"_s}},          // too little by, too much by
        {u"hardener_dose"_s, {u"share*"_s}},                    // nominal, and the sheet's band
        {u"edges_cleared"_s, {u"share*"_s}},                    // of the gel time
        {u"sanded_at"_s, {u"share*"_s}},                        // the face's conversion that sanding needs
        {u"turned"_s, {}},
        {u"finish_coats"_s, {u"length*"_s}}, // a coat, in all, too low by
        {u"inspected"_s, {}},
        {u"primer_after"_s, {u"duration*"_s}},
    };
    return all;
}

} // namespace strandbench
