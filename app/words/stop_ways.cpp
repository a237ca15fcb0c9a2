// SPDX-License-Identifier: GPL-3.0-or-later
// What to do instead of filling, and where the job waits meanwhile.
#include "words/stops.h"

#include "words/table.h"

#include <QtGlobal>

namespace strandbench::words {
namespace {

constexpr Line ways[] = {
    {"answer_it", QT_TRANSLATE_NOOP("StopWays", "Look, measure, and answer the question.")},
    {"plastic_weld_or_replace", QT_TRANSLATE_NOOP("StopWays", "Weld the plastic, or replace the part.")},
    {"flexible_repair", QT_TRANSLATE_NOOP("StopWays", "Repair it with a flexible system, or replace it.")},
    {"maker_composite_repair", QT_TRANSLATE_NOOP("StopWays", "Follow the vehicle maker’s method for carbon fibre.")},
    {"replace_part", QT_TRANSLATE_NOOP("StopWays", "Replace the part.")},
    {"find_out_substrate", QT_TRANSLATE_NOOP("StopWays", "Find out what it is before you touch it.")},
    {"maker_structural_method", QT_TRANSLATE_NOOP("StopWays", "Follow the vehicle maker’s method for this part.")},
    {"maker_restraint_method", QT_TRANSLATE_NOOP("StopWays", "Follow the vehicle maker’s method for these parts.")},
    {"maker_sensor_method", QT_TRANSLATE_NOOP("StopWays", "Follow the vehicle maker’s method for sensor areas.")},
    {"replace_vessel", QT_TRANSLATE_NOOP("StopWays", "Take it out of service and replace it.")},
    {"strip_to_bare", QT_TRANSLATE_NOOP("StopWays", "Strip it to the bare panel.")},
    {"blast_or_cut_rust", QT_TRANSLATE_NOOP("StopWays", "Blast or cut it back to bright metal.")},
    {"cure_or_strip_primer", QT_TRANSLATE_NOOP("StopWays", "Let the primer cure, or strip it.")},
    {"remove_flux", QT_TRANSLATE_NOOP("StopWays", "Wash the flux off and grind to bright metal.")},
    {"dry_and_prove", QT_TRANSLATE_NOOP("StopWays", "Dry it, and prove that it is dry.")},
    {"core_repair", QT_TRANSLATE_NOOP("StopWays", "Open it and renew the wet wood first.")},
    {"sandwich_repair", QT_TRANSLATE_NOOP("StopWays", "Have skin and core repaired as one.")},
    {"clean_prime_seal", QT_TRANSLATE_NOOP("StopWays", "Clean, prime and seal it to the vehicle maker’s pattern.")},
    {"assess_the_seam", QT_TRANSLATE_NOOP("StopWays", "Look at the seam and the panel again.")},
    {"assess_the_hole", QT_TRANSLATE_NOOP("StopWays", "Look at the hole and the panel again.")},
    {"let_adhesive_cure", QT_TRANSLATE_NOOP("StopWays", "Let the adhesive cure to its sheet.")},
    {"cut_back_and_weld", QT_TRANSLATE_NOOP("StopWays", "Cut back to bright metal, then weld or patch.")},
    {"metal_work_first", QT_TRANSLATE_NOOP("StopWays", "Bring the metal up first.")},
    {"laminate_or_section", QT_TRANSLATE_NOOP("StopWays", "Laminate it, or let in a section.")},
    {"epoxy_or_other_sheet", QT_TRANSLATE_NOOP("StopWays", "Ask for a filler whose sheet allows it.")},
    {"check_the_sheet", QT_TRANSLATE_NOOP("StopWays", "Check the sheet’s times against its maker’s data sheet.")},
    {"cool_the_shop", QT_TRANSLATE_NOOP("StopWays", "Wait for cooler air, or move to a cooler place.")},
    {"warm_the_panel", QT_TRANSLATE_NOOP("StopWays", "Warm the panel right through, then read again.")},
    {"let_panel_cool", QT_TRANSLATE_NOOP("StopWays", "Let the panel cool in the shade.")},
    {"warm_the_shop", QT_TRANSLATE_NOOP("StopWays", "Warm the shop, the tub and the tube.")},
};

constexpr Line details[] = {
    {"answer_it", QT_TRANSLATE_NOOP("StopWays", "If you cannot tell, stop and ask.")},
    {"plastic_weld_or_replace", QT_TRANSLATE_NOOP("StopWays", "The marking on the back names the plastic.")},
    {"flexible_repair", QT_TRANSLATE_NOOP("StopWays", "The repair must bend with the part.")},
    {"maker_composite_repair", QT_TRANSLATE_NOOP("StopWays", "Damage inside must be found by those trained for it.")},
    {"replace_part", QT_TRANSLATE_NOOP("StopWays", "Do not sand or drill it meanwhile.")},
    {"find_out_substrate",
     QT_TRANSLATE_NOOP("StopWays", "Magnet, zinc gauge, ohmmeter, broken edge, back-face marking, tap sound.")},
    {"maker_structural_method", QT_TRANSLATE_NOOP("StopWays", "What carries load is restored, never filled over.")},
    {"maker_restraint_method",
     QT_TRANSLATE_NOOP("StopWays", "Airbags and high voltage only by those trained and licensed for them.")},
    {"maker_sensor_method", QT_TRANSLATE_NOOP("StopWays", "The sensor may need calibrating afterwards.")},
    {"replace_vessel", QT_TRANSLATE_NOOP("StopWays", "No grinding, drilling or heat near it.")},
    {"strip_to_bare", QT_TRANSLATE_NOOP("StopWays", "Well beyond the repair, edges feathered; then assess again.")},
    {"blast_or_cut_rust", QT_TRANSLATE_NOOP("StopWays", "What is left thin or holed is cut out; then assess again.")},
    {"cure_or_strip_primer", QT_TRANSLATE_NOOP("StopWays", "Cured epoxy that is abraded may stay; then assess again.")},
    {"remove_flux", QT_TRANSLATE_NOOP("StopWays", "Then assess again.")},
    {"dry_and_prove",
     QT_TRANSLATE_NOOP("StopWays", "Tape clear film over it. When no mist forms underneath, assess again.")},
    {"core_repair", QT_TRANSLATE_NOOP("StopWays", "Laminate the skin shut and prove it dry; then assess again.")},
    {"sandwich_repair",
     QT_TRANSLATE_NOOP("StopWays", "By the vehicle maker’s method, with a resin that leaves the foam whole.")},
    {"clean_prime_seal",
     QT_TRANSLATE_NOOP("StopWays",
                       "Only where the maker’s method calls for a continuous weld: weld, dress, then assess "
                       "again.")},
    {"assess_the_seam", QT_TRANSLATE_NOOP("StopWays", "One of the two answers is wrong.")},
    {"assess_the_hole", QT_TRANSLATE_NOOP("StopWays", "One of the two answers is wrong.")},
    {"let_adhesive_cure", QT_TRANSLATE_NOOP("StopWays", "Then take the squeeze-out off and assess again.")},
    {"cut_back_and_weld", QT_TRANSLATE_NOOP("StopWays", "Then it is a seam or a low spot: assess again.")},
    {"metal_work_first", QT_TRANSLATE_NOOP("StopWays", "Aim at half of that limit or less; then assess again.")},
    {"laminate_or_section", QT_TRANSLATE_NOOP("StopWays", "What stays low after that can be assessed again.")},
    {"epoxy_or_other_sheet",
     QT_TRANSLATE_NOOP("StopWays", "On zinc, cured and abraded epoxy primer first is another way.")},
    {"check_the_sheet", QT_TRANSLATE_NOOP("StopWays", "Until it is right, use a filler whose sheet is.")},
    {"cool_the_shop", QT_TRANSLATE_NOOP("StopWays", "Temperature is never corrected with hardener.")},
    {"warm_the_panel", QT_TRANSLATE_NOOP("StopWays", "A lamp warms the panel before filling, never wet filler.")},
    {"let_panel_cool", QT_TRANSLATE_NOOP("StopWays", "Temperature is never corrected with hardener.")},
    {"warm_the_shop", QT_TRANSLATE_NOOP("StopWays", "From the cold they need hours to even out.")},
};

constexpr Line places[] = {
    //: goes on after "Park it —"
    {"plastics_bench", QT_TRANSLATE_NOOP("StopWays", "to the plastics bench")},
    {"laminate_shop", QT_TRANSLATE_NOOP("StopWays", "to the laminate shop")},
    {"parts_counter", QT_TRANSLATE_NOOP("StopWays", "to the parts counter")},
    {"supervisor", QT_TRANSLATE_NOOP("StopWays", "to the supervisor")},
    {"body_shop", QT_TRANSLATE_NOOP("StopWays", "to the body shop")},
    {"strip_bay", QT_TRANSLATE_NOOP("StopWays", "to the stripping bay")},
    {"metal_shop", QT_TRANSLATE_NOOP("StopWays", "to the metal shop")},
    {"warm_room", QT_TRANSLATE_NOOP("StopWays", "to the warm room")},
    {"welding_shop", QT_TRANSLATE_NOOP("StopWays", "to the welding shop")},
    {"cool_place", QT_TRANSLATE_NOOP("StopWays", "to a cool place")},
};

} // namespace

QString insteadLine(const QString& code) { return lookUp("StopWays", ways, code); }

QString insteadDetail(const QString& code) { return lookUp("StopWays", details, code); }

QString placeOf(const QString& code) { return lookUp("StopWays", places, code); }

} // namespace strandbench::words
