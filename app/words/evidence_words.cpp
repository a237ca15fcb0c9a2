// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/evidence_words.h"

#include "air/gate.h"
#include "words/event_words.h"
#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

QString say(const char* text, const QStringList& arguments = {})
{
    return words::fillIn(words::inLanguage("Evidence", text), arguments);
}

constexpr Line names[] = {
    {"front", QT_TRANSLATE_NOOP("Evidence", "From the front")},
    {"back", QT_TRANSLATE_NOOP("Evidence", "From behind")},
    {"edge", QT_TRANSLATE_NOOP("Evidence", "Broken edge")},
    {"magnet", QT_TRANSLATE_NOOP("Evidence", "Magnet")},
    {"zinc", QT_TRANSLATE_NOOP("Evidence", "Zinc gauge")},
    {"ohmmeter", QT_TRANSLATE_NOOP("Evidence", "Ohmmeter")},
    {"tap", QT_TRANSLATE_NOOP("Evidence", "Tap it")},
    {"sand", QT_TRANSLATE_NOOP("Evidence", "80 grit, a spot")},
    {"bend", QT_TRANSLATE_NOOP("Evidence", "Bend the edge")},
    {"vinegar", QT_TRANSLATE_NOOP("Evidence", "Drop of vinegar")},
    {"cloth", QT_TRANSLATE_NOOP("Evidence", "Cloth and solvent")},
    {"nail", QT_TRANSLATE_NOOP("Evidence", "Nail in film")},
    {"crack_tips", QT_TRANSLATE_NOOP("Evidence", "Tap and wet")},
    {"adhesive", QT_TRANSLATE_NOOP("Evidence", "Nail in adhesive")},
    {"foil", QT_TRANSLATE_NOOP("Evidence", "Taped foil")},
    {"around", QT_TRANSLATE_NOOP("Evidence", "What is near")},
    {"measures", QT_TRANSLATE_NOOP("Evidence", "Measures")},
    {"air", QT_TRANSLATE_NOOP("Evidence", "Air and panel")},
    {"since", QT_TRANSLATE_NOOP("Evidence", "Since when bare")},
};

// Each of these lists is of one enumeration of what is seen.
constexpr Line frontMarks[] = {
    {"crack_line", QT_TRANSLATE_NOOP("Evidence", "a crack")},
    {"crazing", QT_TRANSLATE_NOOP("Evidence", "fine crazing in the paint")},
    {"dish", QT_TRANSLATE_NOOP("Evidence", "a dish pressed in")},
    {"furrow", QT_TRANSLATE_NOOP("Evidence", "a furrow")},
    {"through_hole", QT_TRANSLATE_NOOP("Evidence", "a hole right through")},
    {"rusted_through", QT_TRANSLATE_NOOP("Evidence", "a hole with a brown, flaking rim")},
    {"weld_bead", QT_TRANSLATE_NOOP("Evidence", "an unbroken weld bead")},
    {"spot_rings", QT_TRANSLATE_NOOP("Evidence", "a row of round pressed spots")},
    {"seam_line", QT_TRANSLATE_NOOP("Evidence", "the line of a seam")},
    {"adhesive_line", QT_TRANSLATE_NOOP("Evidence", "a line of adhesive")},
    {"squeeze_out", QT_TRANSLATE_NOOP("Evidence", "adhesive squeezed out")},
    {"pores", QT_TRANSLATE_NOOP("Evidence", "pores in the bead")},
    {"steel_specks", QT_TRANSLATE_NOOP("Evidence", "brown specks on bright metal")},
};
constexpr Line films[] = {
    {"none", QT_TRANSLATE_NOOP("Evidence", "nothing on it")},
    {"even_grey", QT_TRANSLATE_NOOP("Evidence", "even grey film, abraded")},
    {"gloss", QT_TRANSLATE_NOOP("Evidence", "glossy film")},
    {"patch", QT_TRANSLATE_NOOP("Evidence", "a patch of another colour in the film")},
    {"rubbery", QT_TRANSLATE_NOOP("Evidence", "thick rubbery film")},
    {"brown_scale", QT_TRANSLATE_NOOP("Evidence", "brown scale")},
    {"smooth_black", QT_TRANSLATE_NOOP("Evidence", "smooth black film")},
    {"tint", QT_TRANSLATE_NOOP("Evidence", "thin tinted film, metal shows through")},
    {"glassy", QT_TRANSLATE_NOOP("Evidence", "glassy drops along the joint")},
};
constexpr Line reaches[] = {
    {"hand", QT_TRANSLATE_NOOP("Evidence", "A hand gets behind it.")},
    {"mirror", QT_TRANSLATE_NOOP("Evidence", "Only a mirror gets behind it.")},
    {"closed", QT_TRANSLATE_NOOP("Evidence", "The back is closed: nothing is seen.")},
};
constexpr Line backMarks[] = {
    {"mat_texture", QT_TRANSLATE_NOOP("Evidence", "rough, strands every way")},
    {"moulded_ribs", QT_TRANSLATE_NOOP("Evidence", "smooth, with moulded ribs")},
    {"black_weave", QT_TRANSLATE_NOOP("Evidence", "black woven cloth")},
    {"pressed_sheet", QT_TRANSLATE_NOOP("Evidence", "thin pressed sheet")},
    {"cast_ribs", QT_TRANSLATE_NOOP("Evidence", "thick cast ribs")},
    {"stitch_beads", QT_TRANSLATE_NOOP("Evidence", "short weld beads with gaps")},
    {"spot_rings", QT_TRANSLATE_NOOP("Evidence", "a row of round pressed spots")},
    {"through_bead", QT_TRANSLATE_NOOP("Evidence", "an unbroken weld bead")},
};
constexpr Line markings[] = {
    //: what is moulded into the back of a part, an abbreviation of ISO 1043
    {"smc", QT_TRANSLATE_NOOP("Evidence", "Marked: UP-GF")},
    {"thermoplastic", QT_TRANSLATE_NOOP("Evidence", "Marked: PP-EPDM")},
    {"polyurethane", QT_TRANSLATE_NOOP("Evidence", "Marked: PUR")},
    {"cast_thermoset", QT_TRANSLATE_NOOP("Evidence", "Marked: PDCPD")},
    {"magnesium", QT_TRANSLATE_NOOP("Evidence", "Marked: Mg")},
};
constexpr Line edges[] = {
    {"layered_mat", QT_TRANSLATE_NOOP("Evidence", "layers, long strands stand out")},
    {"chopped_even", QT_TRANSLATE_NOOP("Evidence", "short strands, evenly all through")},
    {"no_fibre", QT_TRANSLATE_NOOP("Evidence", "no strand anywhere")},
    {"black_weave", QT_TRANSLATE_NOOP("Evidence", "black woven threads")},
    {"metal_edge", QT_TRANSLATE_NOOP("Evidence", "metal")},
};
constexpr Line insides[] = {
    {"solid", QT_TRANSLATE_NOOP("Evidence", "Solid all through.")},
    {"foam_cells", QT_TRANSLATE_NOOP("Evidence", "Between two skins: small cells.")},
    {"pale_wood", QT_TRANSLATE_NOOP("Evidence", "Between two skins: pale dry wood.")},
    {"dark_wet_wood", QT_TRANSLATE_NOOP("Evidence", "Between two skins: dark wood, wet to the finger.")},
};
constexpr Line pulls[] = {
    {"none", QT_TRANSLATE_NOOP("Evidence", "no pull")},
    {"weak", QT_TRANSLATE_NOOP("Evidence", "weak pull")},
    {"strong", QT_TRANSLATE_NOOP("Evidence", "strong pull")},
};
constexpr Line sounds[] = {
    {"rings", QT_TRANSLATE_NOOP("Evidence", "It rings.")},
    {"hard", QT_TRANSLATE_NOOP("Evidence", "A hard, short sound.")},
    {"dull", QT_TRANSLATE_NOOP("Evidence", "A dull sound.")},
    {"dead", QT_TRANSLATE_NOOP("Evidence", "Dead: no sound of its own.")},
};
constexpr Line dusts[] = {
    {"powder", QT_TRANSLATE_NOOP("Evidence", "It gives dry powder.")},
    {"strings", QT_TRANSLATE_NOOP("Evidence", "It smears and gives strings.")},
    {"crumbs", QT_TRANSLATE_NOOP("Evidence", "It gives soft crumbs.")},
    {"black_dust", QT_TRANSLATE_NOOP("Evidence", "It gives black dust.")},
    {"bright_metal", QT_TRANSLATE_NOOP("Evidence", "Bright metal comes up.")},
};
constexpr Line rubs[] = {
    {"stays_clean", QT_TRANSLATE_NOOP("Evidence", "The cloth stays clean.")},
    {"takes_colour", QT_TRANSLATE_NOOP("Evidence", "The cloth takes colour.")},
    {"softens", QT_TRANSLATE_NOOP("Evidence", "The film softens and smears.")},
};
constexpr Line feels[] = {
    {"hard", QT_TRANSLATE_NOOP("Evidence", "Hard: the nail slides off.")},
    {"rubbery", QT_TRANSLATE_NOOP("Evidence", "Rubbery: the nail springs back.")},
    {"soft", QT_TRANSLATE_NOOP("Evidence", "Soft: the nail goes in and stays.")},
};
constexpr Line foils[] = {
    {"dry", QT_TRANSLATE_NOOP("Evidence", "Dry below the foil.")},
    {"beads", QT_TRANSLATE_NOOP("Evidence", "Beads of water below the foil.")},
};
constexpr Line neighbours[] = {
    {"pillar", QT_TRANSLATE_NOOP("Evidence", "pillar")},
    {"chassis_rail", QT_TRANSLATE_NOOP("Evidence", "chassis rail")},
    {"brake_mounting", QT_TRANSLATE_NOOP("Evidence", "brake mounting")},
    {"steering_mounting", QT_TRANSLATE_NOOP("Evidence", "steering mounting")},
    {"suspension_mounting", QT_TRANSLATE_NOOP("Evidence", "suspension mounting")},
    {"belt_mounting", QT_TRANSLATE_NOOP("Evidence", "belt mounting")},
    {"seat_mounting", QT_TRANSLATE_NOOP("Evidence", "seat mounting")},
    {"glass_flange", QT_TRANSLATE_NOOP("Evidence", "flange that glass is bonded to")},
    {"airbag_cover", QT_TRANSLATE_NOOP("Evidence", "airbag cover")},
    {"high_voltage_part", QT_TRANSLATE_NOOP("Evidence", "high-voltage part, orange cable")},
    {"sensor_behind", QT_TRANSLATE_NOOP("Evidence", "driver-assistance sensor behind it")},
    {"tank_wall", QT_TRANSLATE_NOOP("Evidence", "wall of a tank")},
};

QString cannot() { return say(QT_TRANSLATE_NOOP("Evidence", "It cannot be tried here.")); }

template <class E, std::size_t N> QString seen(const std::vector<E>& all, const Line (&lines)[N])
{
    QStringList list;
    for (const E each : all)
        list << words::lookUp("Evidence", lines, codeOf(each));
    return list.join(u", "_s);
}

template <class E, std::size_t N> QString found(const std::optional<E>& what, const Line (&lines)[N])
{
    return what ? words::lookUp("Evidence", lines, codeOf(*what)) : cannot();
}

QString front(const Evidence& shown)
{
    const QString film = words::lookUp("Evidence", films, codeOf(shown.film));
    if (shown.front.empty())
        return say(QT_TRANSLATE_NOOP("Evidence", "On it: %1."), {film});
    //: both are lists: "a crack, fine crazing in the paint", "glossy film"
    return say(QT_TRANSLATE_NOOP("Evidence", "Seen: %1. On it: %2."), {seen(shown.front, frontMarks), film});
}

QString back(const Evidence& shown)
{
    QStringList all{words::lookUp("Evidence", reaches, codeOf(shown.reach))};
    if (!shown.back.empty())
        all << say(QT_TRANSLATE_NOOP("Evidence", "Seen: %1."), {seen(shown.back, backMarks)});
    if (shown.marking)
        all << words::lookUp("Evidence", markings, codeOf(*shown.marking)) + u'.';
    return all.join(u' ');
}

QString edge(const Evidence& shown)
{
    if (!shown.edge)
        return say(QT_TRANSLATE_NOOP("Evidence", "No edge is broken or cut open."));
    return say(QT_TRANSLATE_NOOP("Evidence", "Seen: %1."), {words::lookUp("Evidence", edges, codeOf(*shown.edge))}) +
           u' ' + words::lookUp("Evidence", insides, codeOf(shown.inside));
}

QString magnet(const Evidence& shown)
{
    const QString here = words::lookUp("Evidence", pulls, codeOf(shown.magnetHere));
    if (!shown.magnetBare)
        return say(QT_TRANSLATE_NOOP("Evidence", "At the damage: %1."), {here});
    return say(QT_TRANSLATE_NOOP("Evidence", "At the damage: %1. On a spot ground bare: %2."),
               {here, words::lookUp("Evidence", pulls, codeOf(*shown.magnetBare))});
}

QString microns(Length value)
{
    //: a thickness: "12 µm"
    return say(QT_TRANSLATE_NOOP("Evidence", "%1 µm"), {QString::number(qRound(inMillimetres(value) * 1000))});
}

QString zinc(const Evidence& shown)
{
    QStringList all;
    if (shown.zincHere)
        all << say(QT_TRANSLATE_NOOP("Evidence", "At the damage: %1."), {microns(*shown.zincHere)});
    if (shown.zincBeside)
        all << say(QT_TRANSLATE_NOOP("Evidence", "Beside it: %1."), {microns(*shown.zincBeside)});
    return all.isEmpty() ? cannot() : all.join(u' ');
}

QString either(const std::optional<bool>& what, const char* yes, const char* no)
{
    return what ? say(*what ? yes : no) : cannot();
}

QString around(const Evidence& shown, const Words& words)
{
    if (shown.near.empty())
        return say(QT_TRANSLATE_NOOP("Evidence", "Nothing but skin within an arm’s length."));
    QStringList all;
    for (const NearPart& each : shown.near) {
        const QString part = words::lookUp("Evidence", neighbours, codeOf(each.part));
        //: %1 is a part of a vehicle, %2 how far off: "belt mounting, 120 mm away"
        all << (each.distance.value() > 0
                    ? say(QT_TRANSLATE_NOOP("Evidence", "%1, %2 away"), {part, words.length(each.distance)})
                    : say(QT_TRANSLATE_NOOP("Evidence", "%1, right here"), {part}));
    }
    return Words::title(all.join(u"; "_s)) + u'.';
}

QString measures(const PracticePanel& panel, const Words& words)
{
    if (!panel.truth.damage)
        return cannot();
    const Damage& damage = *panel.truth.damage;
    QStringList all{
        say(QT_TRANSLATE_NOOP("Evidence", "Long, as the eye has it: %1."), {words.length(panel.shown.visibleLength)})};
    if (damage.width.value() > 0)
        all << say(QT_TRANSLATE_NOOP("Evidence", "Wide: %1."), {words.length(damage.width)});
    if (damage.depth.value() > 0)
        all << say(QT_TRANSLATE_NOOP("Evidence", "Deep: %1."), {words.length(damage.depth)});
    if (damage.panelThickness.value() > 0)
        all << say(QT_TRANSLATE_NOOP("Evidence", "Panel: %1."), {words.length(damage.panelThickness)});
    if (damage.bevelRatio > 0)
        //: run to depth, told by the shop: "Bevel to cut: 4 : 1."
        all << say(QT_TRANSLATE_NOOP("Evidence", "Bevel to cut: %1 : 1."), {words.number(damage.bevelRatio, 0)});
    return all.join(u' ');
}

QString air(const PracticePanel& panel, const Words& words)
{
    return panel.truth.reading ? Words::title(answerText(Question::Reading, *panel.truth.reading, words)) + u'.'
                               : cannot();
}

} // namespace

QString tryName(PanelTry what) { return words::lookUp("Evidence", names, codeOf(what)); }

QString tryFinds(PanelTry what, const PracticePanel& panel, const Words& words)
{
    const Evidence& shown = panel.shown;
    switch (what) {
    case PanelTry::Front:
        return front(shown);
    case PanelTry::Back:
        return back(shown);
    case PanelTry::Edge:
        return edge(shown);
    case PanelTry::Magnet:
        return magnet(shown);
    case PanelTry::ZincGauge:
        return zinc(shown);
    case PanelTry::Ohmmeter:
        return either(shown.conducts, QT_TRANSLATE_NOOP("Evidence", "It conducts."),
                      QT_TRANSLATE_NOOP("Evidence", "Open: it does not conduct."));
    case PanelTry::TapIt:
        return found(shown.tap, sounds);
    case PanelTry::SandSpot:
        return found(shown.sanded, dusts);
    case PanelTry::Bend:
        return either(shown.bends, QT_TRANSLATE_NOOP("Evidence", "It bends by hand and springs back."),
                      QT_TRANSLATE_NOOP("Evidence", "It stays stiff."));
    case PanelTry::Vinegar:
        return either(shown.fizzes, QT_TRANSLATE_NOOP("Evidence", "It fizzes."),
                      QT_TRANSLATE_NOOP("Evidence", "Nothing happens."));
    case PanelTry::Cloth:
        return found(shown.rub, rubs);
    case PanelTry::Nail:
        return either(shown.nailMarks, QT_TRANSLATE_NOOP("Evidence", "The nail leaves a mark."),
                      QT_TRANSLATE_NOOP("Evidence", "The nail leaves no mark."));
    case PanelTry::CrackTips:
        return shown.tipsAt ? say(QT_TRANSLATE_NOOP("Evidence", "From tip to tip: %1."), {words.length(*shown.tipsAt)})
                            : say(QT_TRANSLATE_NOOP("Evidence", "No crack opens."));
    case PanelTry::Adhesive:
        return found(shown.adhesive, feels);
    case PanelTry::Foil:
        return words::lookUp("Evidence", foils, codeOf(shown.foil));
    case PanelTry::Around:
        return around(shown, words);
    case PanelTry::Measures:
        return measures(panel, words);
    case PanelTry::Air:
        return air(panel, words);
    case PanelTry::Since:
        return shown.sinceCut ? say(QT_TRANSLATE_NOOP("Evidence", "Cut or ground bare %1 ago."),
                                    {words.longDuration(*shown.sinceCut)})
                              : say(QT_TRANSLATE_NOOP("Evidence", "Nobody knows."));
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
