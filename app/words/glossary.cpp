// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/glossary.h"

#include "exchange/terms.h"
#include "words/table.h"

#include <QCollator>

#include <algorithm>

namespace strandbench {
namespace {

constexpr words::Line definitions[] = {
    {"aramid",
     QT_TRANSLATE_NOOP("Glossary", "Tough yellow fibre that fuzzes instead of breaking; it cannot be sanded clean.")},
    {"backing",
     QT_TRANSLATE_NOOP("Glossary", "Cloth and resin bonded behind a hole, so that the filler has something to lie "
                                   "on.")},
    {"batch", QT_TRANSLATE_NOOP("Glossary", "What is mixed at one time, with one bead of hardener.")},
    {"bead",
     QT_TRANSLATE_NOOP("Glossary", "The line of hardener paste pressed from its tube; its length is the measure.")},
    {"bevel",
     QT_TRANSLATE_NOOP("Glossary", "The slope ground round a hole or crack, which gives the filler area to hold on.")},
    {"bond_seam",
     QT_TRANSLATE_NOOP("Glossary", "Two panels joined by adhesive; it moves a little with heat and load.")},
    {"crazing",
     QT_TRANSLATE_NOOP("Glossary", "Fine cracks like a net in paint, gel coat or a filler that got too hot.")},
    {"cure", QT_TRANSLATE_NOOP("Glossary", "The reaction that makes the paste hard; it gives off heat.")},
    {"dam", QT_TRANSLATE_NOOP("Glossary", "Tape or card behind a hole that keeps the filler in; it carries nothing.")},
    {"delamination",
     QT_TRANSLATE_NOOP("Glossary", "Plies of a laminate that have come apart; they sound dull when tapped.")},
    {"deviation",
     QT_TRANSLATE_NOOP("Glossary", "Where the work left a limit; it stands in the record and is looked at.")},
    {"dew_margin",
     QT_TRANSLATE_NOOP("Glossary", "How much warmer the panel is than the dew point of the air round it.")},
    {"dew_point", QT_TRANSLATE_NOOP("Glossary", "The temperature at which water comes out of the air onto a surface.")},
    {"doi", QT_TRANSLATE_NOOP("Glossary", "How sharply a painted surface mirrors; low spots and sand marks blur it.")},
    {"e_coat",
     QT_TRANSLATE_NOOP("Glossary", "The primer that a new metal part was dipped in; thin, hard, often grey or black.")},
    {"epoxy_primer",
     QT_TRANSLATE_NOOP("Glossary", "Two-part primer that keeps water off metal; cured and abraded it carries filler.")},
    {"etch_primer", QT_TRANSLATE_NOOP("Glossary", "Primer with acid that bites metal; polyester does not hold on it.")},
    {"exotherm", QT_TRANSLATE_NOOP("Glossary", "The heat of the cure; a thick lump gets hotter than a thin layer.")},
    {"face", QT_TRANSLATE_NOOP("Glossary", "One side of the panel: front is what the customer sees.")},
    {"feather_edge", QT_TRANSLATE_NOOP("Glossary", "An edge sanded out until a hand cannot feel where it ends.")},
    {"filler", QT_TRANSLATE_NOOP("Glossary", "Paste of polyester with powder or fibre that fills and is sanded.")},
    {"flash_off",
     QT_TRANSLATE_NOOP("Glossary", "The wait in which a solvent leaves a surface, until nothing smells or feels "
                                   "cold.")},
    {"galvanised", QT_TRANSLATE_NOOP("Glossary", "Steel with a skin of zinc; sanded through, it rusts there.")},
    {"gel",
     QT_TRANSLATE_NOOP("Glossary", "When the paste stops flowing and turns to rubber: no spreading from then on.")},
    {"gel_coat", QT_TRANSLATE_NOOP("Glossary", "The unreinforced outer skin of a moulded laminate.")},
    {"gel_time",
     QT_TRANSLATE_NOOP("Glossary", "From hardener in to the gel; it follows from lot, warmth and share of hardener.")},
    {"grit", QT_TRANSLATE_NOOP("Glossary", "The number of an abrasive paper: the higher, the finer.")},
    {"guide_coat", QT_TRANSLATE_NOOP("Glossary", "A thin veil over the repair that stays in low spots while sanding.")},
    {"hand_laminate",
     QT_TRANSLATE_NOOP("Glossary", "Glass cloth or mat laid by hand in resin; the cloth shows at a broken edge.")},
    {"hardener",
     QT_TRANSLATE_NOOP("Glossary", "The paste with peroxide that starts the cure; more of it is not harder.")},
    {"lift", QT_TRANSLATE_NOOP("Glossary", "One layer of filler that is laid, cures and is sanded before the next.")},
    {"lot", QT_TRANSLATE_NOOP("Glossary", "What was made at one time; its number stands on the package.")},
    {"mapping", QT_TRANSLATE_NOOP("Glossary", "When edge or sand marks of the repair show through the paint later.")},
    {"peroxide", QT_TRANSLATE_NOOP("Glossary", "What works in the hardener; it burns eyes and feeds fire.")},
    {"pinhole", QT_TRANSLATE_NOOP("Glossary", "A small open bubble in the sanded surface.")},
    {"pot_life", QT_TRANSLATE_NOOP("Glossary", "How long a batch can be worked on the board.")},
    {"profile", QT_TRANSLATE_NOOP("Glossary", "The roughness that abrading leaves, for the filler to bite.")},
    {"puddle", QT_TRANSLATE_NOOP("Glossary", "The round of filler laid on the board; its width is the measure.")},
    {"sanding_block", QT_TRANSLATE_NOOP("Glossary", "The firm support of the paper that keeps a surface flat.")},
    {"scuff", QT_TRANSLATE_NOOP("Glossary", "To dull a surface lightly, so that the next coat holds.")},
    {"sheet", QT_TRANSLATE_NOOP("Glossary", "What the maker says of a product, as the program reads it.")},
    {"skim", QT_TRANSLATE_NOOP("Glossary", "The thin last coat of finishing filler over lift and edge.")},
    {"smc",
     QT_TRANSLATE_NOOP("Glossary", "Sheet moulding compound: short glass fibre pressed hot in a mould, flecks at the"
                                   " broken edge.")},
    {"stop_drill", QT_TRANSLATE_NOOP("Glossary", "A hole at the tip of a crack, so that it runs no further.")},
    {"tack", QT_TRANSLATE_NOOP("Glossary", "The sticky film that air leaves on a cured face; it clogs paper.")},
    {"two_cloth_wipe",
     QT_TRANSLATE_NOOP("Glossary", "One cloth wipes the solvent on, a clean dry one takes it off before it dries.")},
    {"weld_seam",
     QT_TRANSLATE_NOOP("Glossary", "Two panels joined by welding; only a solid, dressed one is ever filled over.")},
    {"wet_out", QT_TRANSLATE_NOOP("Glossary", "Working resin in until every fibre is wet and no white is left.")},
};

} // namespace

std::vector<GlossaryEntry> glossary(const QLocale& locale)
{
    std::vector<GlossaryEntry> entries;
    for (const std::vector<Term>& terms = builtInTerms(); const Term& each : terms)
        entries.push_back({each.id, each.in(locale), words::lookUp("Glossary", definitions, each.id)});
    QCollator order(locale);
    order.setCaseSensitivity(Qt::CaseInsensitive);
    std::ranges::stable_sort(
        entries, [&](const GlossaryEntry& a, const GlossaryEntry& b) { return order.compare(a.term, b.term) < 0; });
    return entries;
}

} // namespace strandbench
