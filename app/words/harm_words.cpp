// SPDX-License-Identifier: GPL-3.0-or-later
// General terms only: the safety data sheet names the glove and the filter. Minutes of rinsing and cooling are common
// first-aid practice, remembered and not looked up.
#include "words/harm_words.h"

#include "words/table.h"

#include <QtGlobal>

namespace strandbench::words {
namespace {

constexpr Line materials[] = {
    {"filler", QT_TRANSLATE_NOOP("Harm", "Polyester filler (styrene)")},
    {"hardener_paste", QT_TRANSLATE_NOOP("Harm", "Hardener paste (peroxide)")},
    {"hot_lump", QT_TRANSLATE_NOOP("Harm", "Mixed filler left over")},
    {"acetone", QT_TRANSLATE_NOOP("Harm", "Acetone")},
    {"wax_remover", QT_TRANSLATE_NOOP("Harm", "Wax and grease remover")},
    {"glass_dust", QT_TRANSLATE_NOOP("Harm", "Glass and laminate dust")},
    {"filler_dust", QT_TRANSLATE_NOOP("Harm", "Filler dust")},
    {"old_paint_dust", QT_TRANSLATE_NOOP("Harm", "Old paint dust (lead, chromate)")},
    {"steel_dust", QT_TRANSLATE_NOOP("Harm", "Steel dust")},
    {"aluminium_dust", QT_TRANSLATE_NOOP("Harm", "Aluminium dust")},
    {"compressed_air", QT_TRANSLATE_NOOP("Harm", "Compressed air")},
    {"lay_up_resin", QT_TRANSLATE_NOOP("Harm", "Lay-up resin (styrene)")},
    {"lay_up_catalyst", QT_TRANSLATE_NOOP("Harm", "Lay-up catalyst (peroxide)")},
    {"accelerator", QT_TRANSLATE_NOOP("Harm", "Accelerator")},
    {"guide_coat", QT_TRANSLATE_NOOP("Harm", "Guide coat (spray can)")},
};

constexpr Line gloveLines[] = {
    {"splash_gloves", QT_TRANSLATE_NOOP("Harm", "Nitrile against splashes; styrene comes through: change when wet.")},
    {"nitrile_change", QT_TRANSLATE_NOOP("Harm", "Nitrile; change at once when wet.")},
    {"butyl_gloves", QT_TRANSLATE_NOOP("Harm", "Butyl rubber, or what its sheet names; thin nitrile lasts minutes.")},
    {"leather_gloves", QT_TRANSLATE_NOOP("Harm", "Heat-resistant gloves for a hot lump.")},
    {"cut_gloves", QT_TRANSLATE_NOOP("Harm", "Against edges and fibres; nothing loose near a rotating tool.")},
    {"nitrile_under", QT_TRANSLATE_NOOP("Harm", "Thin gloves keep the dust off the skin.")},
    {"none_needed", QT_TRANSLATE_NOOP("Harm", "None for the air itself; goggles and ear protection.")},
};

constexpr Line respiratorLines[] = {
    {"vapour_filter", QT_TRANSLATE_NOOP("Harm", "Extraction first; else a mask with organic vapour filters.")},
    {"none_but_dust", QT_TRANSLATE_NOOP("Harm", "None for the paste alone; the filler beside it has its own.")},
    {"dust_mask", QT_TRANSLATE_NOOP("Harm", "Extraction first, and a particle mask (P2, N95 or better).")},
    {"dust_mask_high", QT_TRANSLATE_NOOP("Harm", "Extraction first, and a P3 or P100 particle filter.")},
};

constexpr Line aidLines[] = {
    {"wash_rinse_air", QT_TRANSLATE_NOOP("Harm", "Skin: soap and water. Eyes: rinse long. Dizzy: fresh air, doctor.")},
    {"rinse_eye_doctor",
     QT_TRANSLATE_NOOP("Harm", "Eyes: rinse at once, 15 minutes, lids open; doctor. Skin: wash off.")},
    {"cool_burn", QT_TRANSLATE_NOOP("Harm", "Burn: cool under running water, 20 minutes; doctor.")},
    {"never_vomit", QT_TRANSLATE_NOOP("Harm", "Swallowed: no vomiting, doctor at once. Skin: soap and water.")},
    {"rinse_dust", QT_TRANSLATE_NOOP("Harm", "Eyes: rinse, do not rub. Skin: cool water, then wash.")},
    {"metal_in_eye", QT_TRANSLATE_NOOP("Harm", "Eyes: do not rub; a splinter that stays is the doctor’s.")},
    {"wash_before_eating",
     QT_TRANSLATE_NOOP("Harm", "Wash hands and face before you eat, drink or smoke. Unwell: doctor.")},
    {"air_under_skin", QT_TRANSLATE_NOOP("Harm", "Air under the skin: hospital at once, however small it looks.")},
};

constexpr Line wasteLines[] = {
    {"cure_thin", QT_TRANSLATE_NOOP("Harm", "Let it cure, spread thin on metal. Uncured it is hazardous waste.")},
    {"peroxide_never_bin",
     QT_TRANSLATE_NOOP("Harm", "Never into the bin, never onto sawdust: apart, as its sheet says.")},
    {"cool_then_waste", QT_TRANSLATE_NOOP("Harm", "Thin on metal or under water, watched till cold; never the bin.")},
    {"rags_in_can", QT_TRANSLATE_NOOP("Harm", "Rags into the lidded metal can; nothing down the drain.")},
    {"dust_bag", QT_TRANSLATE_NOOP("Harm", "In the extractor’s bag, closed; extract first, never sweep.")},
    {"dust_apart", QT_TRANSLATE_NOOP("Harm", "A bag of its own, as hazardous waste.")},
    {"metal_apart", QT_TRANSLATE_NOOP("Harm", "Aluminium and steel dust apart and dry: own extractors, own cans.")},
    {"none_left", QT_TRANSLATE_NOOP("Harm", "Nothing is left over.")},
    {"accelerator_apart", QT_TRANSLATE_NOOP("Harm", "A container of its own, far from every peroxide.")},
    {"can_never_fire", QT_TRANSLATE_NOOP("Harm", "Empty cans: never pierced, never into a fire.")},
};

constexpr Line measureLeads[] = {
    {"extraction_on", QT_TRANSLATE_NOOP("Harm", "Extraction on first.")},
    {"no_ignition", QT_TRANSLATE_NOOP("Harm", "No lamp, no grinder, no spark.")},
    {"fresh_air", QT_TRANSLATE_NOOP("Harm", "Fresh air.")},
    {"never_together", QT_TRANSLATE_NOOP("Harm", "Peroxide and accelerator: never together.")},
    {"not_at_skin", QT_TRANSLATE_NOOP("Harm", "Never at skin.")},
    {"spread_left_over", QT_TRANSLATE_NOOP("Harm", "What is left over gets hot.")},
};

constexpr Line measureRests[] = {
    {"extraction_on", QT_TRANSLATE_NOOP("Harm", "Before the first stroke, not after.")},
    {"no_ignition", QT_TRANSLATE_NOOP("Harm", "Until all of it has flashed off, in the hollows too.")},
    {"fresh_air", QT_TRANSLATE_NOOP("Harm", "Extraction where there is vapour.")},
    {"never_together", QT_TRANSLATE_NOOP("Harm", "Not in one cup, not on one shelf: it can go off.")},
    {"not_at_skin", QT_TRANSLATE_NOOP("Harm", "Below 30 psi (2 bar), chips guarded: 29 CFR 1910.242(b).")},
    {"spread_left_over", QT_TRANSLATE_NOOP("Harm", "Thin on metal, or under water; never into the bin.")},
};

constexpr Line signals[] = {
    {"danger", QT_TRANSLATE_NOOP("Harm", "Danger")},
    {"warning", QT_TRANSLATE_NOOP("Harm", "Warning")},
};

constexpr Line pictograms[] = {
    {"GHS01", QT_TRANSLATE_NOOP("Harm", "exploding bomb")},
    {"GHS02", QT_TRANSLATE_NOOP("Harm", "flame")},
    {"GHS03", QT_TRANSLATE_NOOP("Harm", "flame over circle")},
    {"GHS04", QT_TRANSLATE_NOOP("Harm", "gas cylinder")},
    {"GHS05", QT_TRANSLATE_NOOP("Harm", "corrosion")},
    {"GHS06", QT_TRANSLATE_NOOP("Harm", "skull and crossbones")},
    {"GHS07", QT_TRANSLATE_NOOP("Harm", "exclamation mark")},
    {"GHS08", QT_TRANSLATE_NOOP("Harm", "health hazard")},
    {"GHS09", QT_TRANSLATE_NOOP("Harm", "environment")},
};

} // namespace

QString harmMaterial(const QString& code) { return lookUp("Harm", materials, code); }
QString gloves(const QString& code) { return lookUp("Harm", gloveLines, code); }
QString respirator(const QString& code) { return lookUp("Harm", respiratorLines, code); }
QString firstAid(const QString& code) { return lookUp("Harm", aidLines, code); }
QString harmWaste(const QString& code) { return lookUp("Harm", wasteLines, code); }

CautionText measure(Measure measure)
{
    const QString code = codeOf(measure);
    return {code, lookUp("Harm", measureLeads, code), lookUp("Harm", measureRests, code)};
}

QString signalWord(SignalWord signal)
{
    return signal == SignalWord::None ? QString() : lookUp("Harm", signals, codeOf(signal));
}

QString pictogramName(GhsPictogram pictogram) { return lookUp("Harm", pictograms, codeOf(pictogram)); }

} // namespace strandbench::words
