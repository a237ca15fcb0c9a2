// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of preparing, finishing and handing over in words. Their codes, order and figures are data:
// resources/steps, and the tests of the hand-over in core/repair.
#include "words/steps.h"

#include "words/table.h"

#include <QLatin1StringView>
#include <QtGlobal>

#include <algorithm>
#include <array>

namespace strandbench::words {
namespace {

struct StepLine {
    const char* code;
    const char* sentence;
    const char* detail;
    const char* wayOn;
};

constexpr StepLine lines[] = {
    // Preparing
    {"gear_on", QT_TRANSLATE_NOOP("Steps", "Put your gear on and start the extraction"),
     QT_TRANSLATE_NOOP("Steps",
                       "Goggles, mask, gloves, ear protection, closed sleeves. Read the safety data sheets of what "
                       "you use."),
     QT_TRANSLATE_NOOP("Steps", "Gear is on")},
    {"own_tools", QT_TRANSLATE_NOOP("Steps", "Fetch the tools that touch only aluminium"),
     QT_TRANSLATE_NOOP("Steps", "Own discs, own brush, own extractor. Steel grit in aluminium starts corrosion."),
     QT_TRANSLATE_NOOP("Steps", "Own tools are here")},
    {"wash", QT_TRANSLATE_NOOP("Steps", "Wash the panel with soap and water"),
     QT_TRANSLATE_NOOP("Steps", "Keep water off open fibre. Rinse, wipe, and let it dry."),
     QT_TRANSLATE_NOOP("Steps", "Washed and rinsed")},
    {"degrease", QT_TRANSLATE_NOOP("Steps", "Wipe off wax and grease with solvent"),
     QT_TRANSLATE_NOOP("Steps", "Two cloths: one wipes it on, the other takes it off. Before any abrasive."),
     QT_TRANSLATE_NOOP("Steps", "Degreased with two cloths")},
    {"degrease_little", QT_TRANSLATE_NOOP("Steps", "Degrease with little acetone, away from open fibre"),
     QT_TRANSLATE_NOOP("Steps", "Two cloths, wipe on and off. Slow solvents soak into open fibre and stay."),
     QT_TRANSLATE_NOOP("Steps", "Degreased with two cloths")},
    {"flash_off", QT_TRANSLATE_NOOP("Steps", "Let the solvent flash off"),
     QT_TRANSLATE_NOOP("Steps", "Wait until nothing smells and nothing feels cold."),
     QT_TRANSLATE_NOOP("Steps", "Solvent has flashed off")},
    {"strip_paint", QT_TRANSLATE_NOOP("Steps", "Strip the paint well beyond the repair"),
     QT_TRANSLATE_NOOP("Steps", "%1 beyond the damage, edges feathered. Fibre filler never goes over paint."),
     QT_TRANSLATE_NOOP("Steps", "Paint is off, edges feathered")},
    {"cut_to_sound", QT_TRANSLATE_NOOP("Steps", "Cut away everything loose, back to sound material"),
     QT_TRANSLATE_NOOP("Steps", "What is white or rattles is loose. Tap: it must ring alike all round."),
     QT_TRANSLATE_NOOP("Steps", "Cut to sound material")},
    {"find_cracks", QT_TRANSLATE_NOOP("Steps", "Find every crack that runs out"),
     QT_TRANSLATE_NOOP("Steps", "Light from the side, and press gently. Mark each tip."),
     QT_TRANSLATE_NOOP("Steps", "All tips are marked")},
    {"stop_drill", QT_TRANSLATE_NOOP("Steps", "Drill a small hole just beyond each crack tip"),
     QT_TRANSLATE_NOOP("Steps", "Cracks run on under the gel coat. Hole %1 to %2, right through."),
     QT_TRANSLATE_NOOP("Steps", "All tips drilled")},
    {"squeeze_out_off", QT_TRANSLATE_NOOP("Steps", "Take the squeezed-out adhesive off"),
     QT_TRANSLATE_NOOP("Steps", "Down to the panels, none pulled out of the joint."),
     QT_TRANSLATE_NOOP("Steps", "Squeeze-out is off")},
    {"dress_weld", QT_TRANSLATE_NOOP("Steps", "Grind the weld level with the contour"),
     QT_TRANSLATE_NOOP("Steps", "Let it cool first. No pore may remain: weld it again where one does."),
     QT_TRANSLATE_NOOP("Steps", "Level, cool, free of pores")},
    {"dry", QT_TRANSLATE_NOOP("Steps", "Dry the panel and prove that it is dry"),
     QT_TRANSLATE_NOOP("Steps", "Front, edges and back. Tape clear film over it: no mist may form underneath."),
     QT_TRANSLATE_NOOP("Steps", "Proved dry")},
    {"bevel", QT_TRANSLATE_NOOP("Steps", "Bevel the edge of the damage"),
     QT_TRANSLATE_NOOP("Steps", "Run the bevel out over %1 all round. No square edge may remain."),
     QT_TRANSLATE_NOOP("Steps", "Bevel is cut")},
    {"bevel_both", QT_TRANSLATE_NOOP("Steps", "Bevel the edge on both faces"),
     QT_TRANSLATE_NOOP("Steps", "On each face run the bevel out over %1 all round. The two meet in the middle."),
     QT_TRANSLATE_NOOP("Steps", "Both bevels are cut")},
    {"open_gouge", QT_TRANSLATE_NOOP("Steps", "Open the gouge to a shallow V"),
     QT_TRANSLATE_NOOP("Steps", "No loose fibre and no square edge may remain."),
     QT_TRANSLATE_NOOP("Steps", "Gouge is open")},
    {"bevel_upper_panel", QT_TRANSLATE_NOOP("Steps", "Bevel the upper panel’s edge slightly"),
     QT_TRANSLATE_NOOP("Steps", "At most %1 deep, half its thickness. Never into the bond line."),
     QT_TRANSLATE_NOOP("Steps", "Slight bevel is cut")},
    {"abrade_back", QT_TRANSLATE_NOOP("Steps", "Abrade the back around the hole"),
     QT_TRANSLATE_NOOP("Steps", "80 grit, down to clean glass, then dust it off."),
     QT_TRANSLATE_NOOP("Steps", "Back is abraded")},
    {"backing_behind", QT_TRANSLATE_NOOP("Steps", "Bond a backing behind the hole"),
     QT_TRANSLATE_NOOP("Steps", "Cloth and resin, or an offcut, lapping %1 all round. Let it cure."),
     QT_TRANSLATE_NOOP("Steps", "Backing is on and cured")},
    {"backing_through", QT_TRANSLATE_NOOP("Steps", "Pull a backing in through the hole and bond it"),
     QT_TRANSLATE_NOOP(
         "Steps",
         "Abrade the inside first. Wet cloth on a card, pulled up with wire, lapping %1, held until it cures."),
     QT_TRANSLATE_NOOP("Steps", "Backing is on and cured")},
    {"dam", QT_TRANSLATE_NOOP("Steps", "Close the hole with a dam of tape or card"),
     QT_TRANSLATE_NOOP("Steps", "Behind the missing area; tape on clean surface only."),
     QT_TRANSLATE_NOOP("Steps", "Dam is on")},
    {"abrade_80", QT_TRANSLATE_NOOP("Steps", "Abrade bevel and surround with 80 grit"),
     QT_TRANSLATE_NOOP("Steps", "Dull all over, no shine left. Coarser only inside the filled area."),
     QT_TRANSLATE_NOOP("Steps", "Dull all over")},
    {"abrade_80_metal", QT_TRANSLATE_NOOP("Steps", "Abrade the bare metal with 80 grit"),
     QT_TRANSLATE_NOOP("Steps", "Bright all over, no rust in the pits. The hour until filling starts now."),
     QT_TRANSLATE_NOOP("Steps", "Bright all over")},
    {"dust_off", QT_TRANSLATE_NOOP("Steps", "Dust off with extraction, then with clean air"),
     QT_TRANSLATE_NOOP("Steps", "Dry, oil-free, below 30 psi (2 bar), with chip guarding. No solvent on ground fibre."),
     QT_TRANSLATE_NOOP("Steps", "Free of dust")},
    {"wipe_metal", QT_TRANSLATE_NOOP("Steps", "Wipe the bare metal once, fast, and dry it"),
     QT_TRANSLATE_NOOP("Steps", "Solvent on one clean cloth, a dry one right behind it."),
     QT_TRANSLATE_NOOP("Steps", "Wiped and dried")},
    {"flash_off_metal", QT_TRANSLATE_NOOP("Steps", "Let the metal flash off"),
     QT_TRANSLATE_NOOP("Steps", "Wait until nothing smells and nothing feels cold."),
     QT_TRANSLATE_NOOP("Steps", "Metal has flashed off")},
    {"read_panel", QT_TRANSLATE_NOOP("Steps", "Read air, panel and humidity again"),
     QT_TRANSLATE_NOOP("Steps", "Probe on the bare panel beside the damage. The dew margin is computed again."),
     QT_TRANSLATE_NOOP("Steps", "Reading is taken")},
    {"read_panel_metal", QT_TRANSLATE_NOOP("Steps", "Read air, panel and humidity again"),
     QT_TRANSLATE_NOOP("Steps", "Probe on the bare metal beside the damage. The dew margin is computed again."),
     QT_TRANSLATE_NOOP("Steps", "Reading is taken")},
    // Finishing
    {"guide_coat", QT_TRANSLATE_NOOP("Steps", "Put a guide coat over the repair"),
     QT_TRANSLATE_NOOP("Steps", "A thin, even veil; it shows what is high and what is low."),
     QT_TRANSLATE_NOOP("Steps", "Guide coat is on")},
    {"sand_180", QT_TRANSLATE_NOOP("Steps", "Sand to contour with 180 grit on a block"),
     QT_TRANSLATE_NOOP("Steps", "Stop when the guide coat is gone. Where it stays, it is low."),
     QT_TRANSLATE_NOOP("Steps", "Sanded with 180")},
    {"sand_320", QT_TRANSLATE_NOOP("Steps", "Sand out to the edges with 320 grit"),
     QT_TRANSLATE_NOOP("Steps", "No scratch of the coarser grit and no edge may remain."),
     QT_TRANSLATE_NOOP("Steps", "Sanded with 320")},
    {"dust_off_finish", QT_TRANSLATE_NOOP("Steps", "Dust off the whole panel"),
     QT_TRANSLATE_NOOP("Steps", "Extraction first, then clean, dry, oil-free air, below 30 psi (2 bar)."),
     QT_TRANSLATE_NOOP("Steps", "Free of dust")},
    {"inspect", QT_TRANSLATE_NOOP("Steps", "Inspect the surface in raking light"),
     QT_TRANSLATE_NOOP("Steps", "No pinhole at half a metre, no edge, no guide coat. Pinholes are opened and filled, "
                                "never buried."),
     QT_TRANSLATE_NOOP("Steps", "Inspected, nothing found")},
    {"cure_before_primer", QT_TRANSLATE_NOOP("Steps", "Let it cure before the primer"),
     QT_TRANSLATE_NOOP("Steps", "At least %1 after the last sanding, at this temperature."),
     QT_TRANSLATE_NOOP("Steps", "It has cured")},
    // The tests of the hand-over: the sentence says what is tested, the way on what was found.
    {"guide_coat_gone", QT_TRANSLATE_NOOP("Steps", "Look for guide coat that is left"),
     QT_TRANSLATE_NOOP("Steps", "What is left shows a low spot."), QT_TRANSLATE_NOOP("Steps", "Guide coat is gone")},
    {"straightedge", QT_TRANSLATE_NOOP("Steps", "Lay the straightedge across the repair, both ways"),
     QT_TRANSLATE_NOOP("Steps", "On a curved panel, compare with the other side."),
     QT_TRANSLATE_NOOP("Steps", "No gap, no rocking")},
    {"no_pinholes", QT_TRANSLATE_NOOP("Steps", "Look for pinholes in raking light"),
     QT_TRANSLATE_NOOP("Steps",
                       "From half a metre, light from the side. Pinholes are opened and filled, never buried."),
     QT_TRANSLATE_NOOP("Steps", "No pinhole")},
    {"nail_and_paper", QT_TRANSLATE_NOOP("Steps", "Press a nail in, then rub with paper"),
     QT_TRANSLATE_NOOP("Steps", "The nail leaves no mark, and the paper powders the filler rather than clogs."),
     QT_TRANSLATE_NOOP("Steps", "No mark, it powders")},
    {"tap_sound", QT_TRANSLATE_NOOP("Steps", "Tap with a coin over repair and surround"),
     QT_TRANSLATE_NOOP("Steps", "A dull spot is hollow."), QT_TRANSLATE_NOOP("Steps", "It rings alike all over")},
    {"no_edge", QT_TRANSLATE_NOOP("Steps", "Feel for the edge with a flat hand"),
     QT_TRANSLATE_NOOP("Steps", "Across it, through a thin cloth, eyes shut."),
     QT_TRANSLATE_NOOP("Steps", "No edge to feel")},
};

const StepLine* find(const QString& code)
{
    const auto* const found = std::find_if(std::begin(lines), std::end(lines),
                                           [&](const StepLine& line) { return code == QLatin1StringView(line.code); });
    return found == std::end(lines) ? nullptr : found;
}

QString part(const QString& code, const char* StepLine::*member)
{
    const StepLine* line = find(code);
    return line ? inLanguage("Steps", line->*member) : u'[' + code + u']';
}

} // namespace

QString stepSentence(const QString& code) { return part(code, &StepLine::sentence); }

QString stepDetail(const QString& code) { return part(code, &StepLine::detail); }

QString stepWayOn(const QString& code) { return part(code, &StepLine::wayOn); }

} // namespace strandbench::words
