// SPDX-License-Identifier: GPL-3.0-or-later
// Why a filler is taken or not, cautions and advice: one short sentence each. Stops stand in stops.cpp.
#include "words/reasons.h"

#include "words/stops.h"
#include "words/table.h"

#include <QtGlobal>

namespace strandbench::words {
namespace {

constexpr Line lines[] = {
    // Cells of the decision table. A cell's reason is told of a filler taken and of one left alike.
    {"wets_laminate", QT_TRANSLATE_NOOP("Reasons", "Its resin wets the glass of a laminate.")},
    {"holds_on_smc", QT_TRANSLATE_NOOP("Reasons", "It holds on SMC that is abraded and free of dust.")},
    {"holds_on_steel", QT_TRANSLATE_NOOP("Reasons", "It holds on bare, abraded steel.")},
    {"holds_on_aluminium", QT_TRANSLATE_NOOP("Reasons", "It holds on aluminium filled within the hour.")},
    {"zinc_must_be_named",
     QT_TRANSLATE_NOOP("Reasons", "On zinc only if its sheet names zinc, or over abraded epoxy primer.")},
    {"dense_seals_weld", QT_TRANSLATE_NOOP("Reasons", "Dense filler has the fewest pores over a ground weld.")},
    {"dense_resists_bond_line", QT_TRANSLATE_NOOP("Reasons", "Dense filler shows the bond line least when it swells.")},
    {"strands_too_short_for_hole", QT_TRANSLATE_NOOP("Reasons", "Its short strands hold only in a small hole.")},
    {"light_weak_on_smc", QT_TRANSLATE_NOOP("Reasons", "Light filler holds poorly on SMC.")},
    {"light_lets_water_to_zinc", QT_TRANSLATE_NOOP("Reasons", "Light filler has pores that let water to the zinc.")},
    {"light_lets_water_to_aluminium",
     QT_TRANSLATE_NOOP("Reasons", "Light filler has pores that let water to the aluminium.")},
    {"light_only_over_dense_weld", QT_TRANSLATE_NOOP("Reasons", "Light filler only over a weld without pores.")},
    {"takes_bond_seam", QT_TRANSLATE_NOOP("Reasons", "It takes a bond seam whose adhesive has cured.")},
    {"light_cannot_bridge", QT_TRANSLATE_NOOP("Reasons", "Light filler cannot bridge a hole.")},
    {"mixed_bonds_to_smc", QT_TRANSLATE_NOOP("Reasons", "Mixed strand bonds best to SMC.")},
    {"takes_weld_seam", QT_TRANSLATE_NOOP("Reasons", "It takes a solid weld that is ground level.")},
    {"mixed_bridges_hole", QT_TRANSLATE_NOOP("Reasons", "Mixed strand bridges a hole and wets its edges.")},
    {"long_for_bulk", QT_TRANSLATE_NOOP("Reasons", "Long strand builds bulk.")},
    {"long_leaves_smc_dry", QT_TRANSLATE_NOOP("Reasons", "Long strand has too little resin to wet SMC.")},
    {"long_lets_water_to_zinc", QT_TRANSLATE_NOOP("Reasons", "Long strand is coarse and lets water to the zinc.")},
    {"long_lets_water_to_aluminium",
     QT_TRANSLATE_NOOP("Reasons", "Long strand is coarse and lets water to the aluminium.")},
    {"long_bridges_over_weld", QT_TRANSLATE_NOOP("Reasons", "Long strand leaves voids over a weld.")},
    {"long_bridges_over_bond", QT_TRANSLATE_NOOP("Reasons", "Long strand leaves voids over a bond line.")},
    {"long_only_bridges", QT_TRANSLATE_NOOP("Reasons", "Long strand only bridges; mixed strand must go over it.")},
    {"no_cell", QT_TRANSLATE_NOOP("Reasons", "The table does not say that it may be used here.")},
    {"no_sheet", QT_TRANSLATE_NOOP("Reasons", "No product sheet of this class is loaded.")},
    //: %1 is a filler class: "mixed strand"
    {"another_is_better", QT_TRANSLATE_NOOP("Reasons", "%1 suits better here.")},
    // Cautions and advice of a plan and of a mix
    {"dent_deep", QT_TRANSLATE_NOOP("Reasons", "The dent is %1 deep: metal-work aims at %2 or less.")},
    {"panel_cool", QT_TRANSLATE_NOOP("Reasons", "The panel is at %1, below %2: it cures slower and grips less.")},
    //: %1 is the hole's size, %2 how far the backing laps its edge
    {"bridged_first",
     QT_TRANSLATE_NOOP("Reasons", "Nobody reaches behind it: %1 bridges the backing, %2 goes over it.")},
    {"backing_first", QT_TRANSLATE_NOOP("Reasons", "The hole is %1 across: bond a backing first, lapping %2.")},
    {"edges_square", QT_TRANSLATE_NOOP("Reasons", "No bevel is given: filler cracks out of square edges.")},
    {"weigh_small",
     QT_TRANSLATE_NOOP("Reasons",
                       "%1 is too little to measure by a bead: weigh it to 0.01 g, or mix %2 and book the waste.")},
    {"puddle_small", QT_TRANSLATE_NOOP("Reasons", "The puddle is only %1 across, below %2: weigh instead.")},
    {"split_large", QT_TRANSLATE_NOOP("Reasons", "The puddle is %1 across, above %2: split the batch.")},
    {"wider_than_board", QT_TRANSLATE_NOOP("Reasons", "The puddle is %1 across, the board %2: split the batch.")},
    //: %1 is a stop: "Damp"
    {"overridden", QT_TRANSLATE_NOOP("Reasons", "Overridden by the supervisor: %1.")},
    //: %1 is a share: "8 %"
    {"lot_faster",
     QT_TRANSLATE_NOOP("Reasons", "The hardener lot in hand cures %1 faster than its sheet: planned for that.")},
    {"lot_slower",
     QT_TRANSLATE_NOOP("Reasons", "The hardener lot in hand cures %1 slower than its sheet: planned for that.")},
    //: %1 is a thickness, %2 and %3 temperatures, %4 a number above one
    {"one_go_too_hot", QT_TRANSLATE_NOOP("Reasons", "%1 in one go reaches %2, limit %3: %4 lifts.")},
    {"greatest_lift_today", QT_TRANSLATE_NOOP("Reasons", "At most %1 in one go today: more would pass %2.")},
    {"demo_sheet", QT_TRANSLATE_NOOP("Reasons", "Demo sheet: its values are invented, not for work.")},
};

} // namespace

QString reasonText(const QString& code) { return isStop(code) ? stopWrong(code) : lookUp("Reasons", lines, code); }

bool hasReason(const QString& code) { return isStop(code) || holds(lines, code); }

} // namespace strandbench::words
