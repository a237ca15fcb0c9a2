// SPDX-License-Identifier: GPL-3.0-or-later
// Cautions: short, at the step where they matter. The safety data sheet, the vehicle maker's repair manual
// and local codes come first; nothing here says otherwise.
#include "words/steps.h"

#include "words/table.h"

#include <QtGlobal>

namespace strandbench::words {
namespace {

constexpr Line leads[] = {
    {"sheet_first", QT_TRANSLATE_NOOP("Cautions", "Safety data sheets first.")},
    {"old_paint_dust", QT_TRANSLATE_NOOP("Cautions", "Old paint dust.")},
    {"metal_dust_apart", QT_TRANSLATE_NOOP("Cautions", "Keep metal dusts apart.")},
    {"solvent_fire", QT_TRANSLATE_NOOP("Cautions", "Solvent burns.")},
    {"rags_in_can", QT_TRANSLATE_NOOP("Cautions", "Rags into the lidded metal can.")},
    {"acetone_gloves", QT_TRANSLATE_NOOP("Cautions", "Acetone goes through thin gloves.")},
    {"no_spark", QT_TRANSLATE_NOOP("Cautions", "No lamp, no grinder, no spark.")},
    {"rotating_tools", QT_TRANSLATE_NOOP("Cautions", "Rotating tool.")},
    {"glass_dust", QT_TRANSLATE_NOOP("Cautions", "Goggles, dust mask.")},
    {"filler_dust", QT_TRANSLATE_NOOP("Cautions", "Extraction on, dust mask.")},
    {"hot_weld", QT_TRANSLATE_NOOP("Cautions", "Hot metal.")},
    {"no_heat_on_solvent", QT_TRANSLATE_NOOP("Cautions", "No heat on wet solvent.")},
    {"lay_up_catalyst", QT_TRANSLATE_NOOP("Cautions", "Lay-up resin: its own catalyst.")},
    {"styrene_vapour", QT_TRANSLATE_NOOP("Cautions", "Styrene vapour.")},
    {"compressed_air", QT_TRANSLATE_NOOP("Cautions", "Never at skin.")},
    {"lamp_before_filler", QT_TRANSLATE_NOOP("Cautions", "Lamp before filling only.")},
    {"within_the_hour", QT_TRANSLATE_NOOP("Cautions", "Fill within the hour.")},
    {"peroxide", QT_TRANSLATE_NOOP("Cautions", "Peroxide: goggles, gloves.")},
    {"peroxide_in_eye", QT_TRANSLATE_NOOP("Cautions", "In the eye: rinse, doctor.")},
    {"nothing_back", QT_TRANSLATE_NOOP("Cautions", "Nothing goes back into the tub.")},
    {"hot_lump", QT_TRANSLATE_NOOP("Cautions", "What is left over gets hot.")},
};

constexpr Line rests[] = {
    {"sheet_first",
     QT_TRANSLATE_NOOP("Cautions", "The vehicle maker’s repair manual and local codes come before this program.")},
    {"old_paint_dust",
     QT_TRANSLATE_NOOP("Cautions", "It may hold lead or chromate: test it, and extraction on before sanding.")},
    {"metal_dust_apart",
     QT_TRANSLATE_NOOP("Cautions", "Aluminium and steel dust together can burn fiercely: own extractors.")},
    {"solvent_fire", QT_TRANSLATE_NOOP("Cautions", "Fresh air; no flame, no hot lamp, no grinding near it.")},
    {"rags_in_can", QT_TRANSLATE_NOOP("Cautions", "Solvent rags can catch fire; never into the bin.")},
    {"acetone_gloves",
     QT_TRANSLATE_NOOP("Cautions", "Within minutes through thin nitrile: change them at once when wet.")},
    {"no_spark", QT_TRANSLATE_NOOP("Cautions", "Wait until the vapour is gone, in the hollows too.")},
    {"rotating_tools", QT_TRANSLATE_NOOP("Cautions", "Goggles, no loose sleeves; let it stop before you put it down.")},
    {"glass_dust", QT_TRANSLATE_NOOP("Cautions", "Glass dust: extraction on first, sleeves closed.")},
    {"filler_dust", QT_TRANSLATE_NOOP("Cautions", "Before the first stroke, not after.")},
    {"hot_weld", QT_TRANSLATE_NOOP("Cautions", "Sparks fly: nothing that burns within reach, behind the panel too.")},
    {"no_heat_on_solvent", QT_TRANSLATE_NOOP("Cautions", "A lamp only after the solvent has flashed off.")},
    {"lay_up_catalyst",
     QT_TRANSLATE_NOOP("Cautions", "Never cream hardener in it; never peroxide onto an accelerator.")},
    {"styrene_vapour",
     QT_TRANSLATE_NOOP("Cautions", "It burns, and harms hearing and the unborn child: extraction, and the "
                                   "mask its sheet names.")},
    {"compressed_air", QT_TRANSLATE_NOOP("Cautions", "Goggles and ear protection; guard others from chips.")},
    {"lamp_before_filler", QT_TRANSLATE_NOOP("Cautions", "A lamp warms the panel before filling, never wet filler.")},
    {"within_the_hour", QT_TRANSLATE_NOOP("Cautions", "Bare metal rusts or tarnishes: after an hour, abrade again.")},
    {"peroxide_in_eye", QT_TRANSLATE_NOOP("Cautions", "At once and long, lids held open; its data sheet goes along.")},
    {"peroxide",
     QT_TRANSLATE_NOOP("Cautions", "It burns the eye and makes skin allergic; its safety data sheet says more.")},
    {"nothing_back", QT_TRANSLATE_NOOP("Cautions", "A trace of hardener sets the whole tub; close both.")},
    {"hot_lump", QT_TRANSLATE_NOOP("Cautions", "Spread it thin on metal or put it under water, never into the bin.")},
};

} // namespace

QString cautionLead(const QString& code) { return lookUp("Cautions", leads, code); }

QString cautionRest(const QString& code) { return lookUp("Cautions", rests, code); }

} // namespace strandbench::words
