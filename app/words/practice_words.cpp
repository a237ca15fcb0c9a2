// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/practice_words.h"

#include "words/practice_codes.h"
#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line skills[] = {
    {"identify", QT_TRANSLATE_NOOP("Practice", "identify")}, {"decide", QT_TRANSLATE_NOOP("Practice", "decide")},
    {"prepare", QT_TRANSLATE_NOOP("Practice", "prepare")},   {"mix", QT_TRANSLATE_NOOP("Practice", "mix")},
    {"time", QT_TRANSLATE_NOOP("Practice", "time")},         {"finish", QT_TRANSLATE_NOOP("Practice", "finish")},
};

constexpr Line decisions[] = {
    {"substrate_found", QT_TRANSLATE_NOOP("Practice", "Material")},
    {"damage_found", QT_TRANSLATE_NOOP("Practice", "Kind of damage")},
    {"size_found", QT_TRANSLATE_NOOP("Practice", "Size")},
    {"weld_found", QT_TRANSLATE_NOOP("Practice", "Kind of weld")},
    {"adhesive_found", QT_TRANSLATE_NOOP("Practice", "Adhesive")},
    {"reach_found", QT_TRANSLATE_NOOP("Practice", "Reach from behind")},
    {"surface_found", QT_TRANSLATE_NOOP("Practice", "Surface")},
    {"zone_found", QT_TRANSLATE_NOOP("Practice", "Zone")},
    {"moisture_found", QT_TRANSLATE_NOOP("Practice", "Dry or damp")},
    {"core_found", QT_TRANSLATE_NOOP("Practice", "Core")},
    {"fill_or_stop", QT_TRANSLATE_NOOP("Practice", "Fill or stop")},
    {"why_stop", QT_TRANSLATE_NOOP("Practice", "Why stop")},
    {"instead_of_filling", QT_TRANSLATE_NOOP("Practice", "What instead")},
    {"which_filler", QT_TRANSLATE_NOOP("Practice", "Which filler")},
    {"steps_left_out", QT_TRANSLATE_NOOP("Practice", "Steps left out")},
    {"steps_that_harm", QT_TRANSLATE_NOOP("Practice", "Steps too many")},
    {"steps_in_order", QT_TRANSLATE_NOOP("Practice", "Order of steps")},
    {"lift_thickness", QT_TRANSLATE_NOOP("Practice", "Thickness in one go")},
    {"build_up", QT_TRANSLATE_NOOP("Practice", "Built up")},
    {"mixed_amount", QT_TRANSLATE_NOOP("Practice", "Amount mixed")},
    {"hardener_dose", QT_TRANSLATE_NOOP("Practice", "Hardener")},
    {"edges_cleared", QT_TRANSLATE_NOOP("Practice", "Edges cleared")},
    {"sanded_at", QT_TRANSLATE_NOOP("Practice", "When sanded")},
    {"turned", QT_TRANSLATE_NOOP("Practice", "Other face")},
    {"finish_coats", QT_TRANSLATE_NOOP("Practice", "Finishing filler")},
    {"inspected", QT_TRANSLATE_NOOP("Practice", "Inspection")},
    {"primer_after", QT_TRANSLATE_NOOP("Practice", "Wait before primer")},
};

constexpr Line traps[] = {
    {"crack_past_crazing", QT_TRANSLATE_NOOP("Traps", "The crack runs on past the crazing that is seen.")},
    {"smc_as_laminate", QT_TRANSLATE_NOOP("Traps", "SMC passes for hand laminate until its edge is looked at.")},
    {"dew_margin_short", QT_TRANSLATE_NOOP("Traps", "It looks dry, and is too near its dew point.")},
    {"just_above_dew", QT_TRANSLATE_NOOP("Traps", "Just above the dew point is not enough.")},
    {"weak_magnet_over_filler", QT_TRANSLATE_NOOP("Traps", "A weak magnet means old filler over steel.")},
    {"hot_porous_weld", QT_TRANSLATE_NOOP("Traps", "The weld is hot and full of pores.")},
    {"spot_seam", QT_TRANSLATE_NOOP("Traps", "A spot-welded seam invites welding up: it is a joint.")},
    {"stitch_from_behind", QT_TRANSLATE_NOOP("Traps", "Only from behind it is seen that the weld is stitched.")},
    {"black_converter", QT_TRANSLATE_NOOP("Traps", "Black rust converter looks sound, and a belt is mounted near.")},
    {"zinc_ground_away", QT_TRANSLATE_NOOP("Traps", "The zinc was ground away here; beside it the gauge finds it.")},
    {"aluminium_steel_disc", QT_TRANSLATE_NOOP("Traps", "Steel in aluminium corrodes overnight.")},
    {"soft_squeeze_out", QT_TRANSLATE_NOOP("Traps", "The squeezed-out adhesive is still soft.")},
    {"hard_thermoplastic", QT_TRANSLATE_NOOP("Traps", "It rings hard under its paint, and sands to strings.")},
    {"carbon_under_paint", QT_TRANSLATE_NOOP("Traps", "Carbon under paint: only the ohmmeter tells.")},
    {"fibreless_hood", QT_TRANSLATE_NOOP("Traps", "It powders like SMC, and has no fibre in it.")},
    {"good_etch_primer", QT_TRANSLATE_NOOP("Traps", "Etch primer looks good, and polyester does not hold on it.")},
    {"sensor_zone", QT_TRANSLATE_NOOP("Traps", "A sensor looks through here.")},
    {"fuel_tank", QT_TRANSLATE_NOOP("Traps", "It is the wall of a tank.")},
    {"foam_core", QT_TRANSLATE_NOOP("Traps", "Under the skin there is foam.")},
};

QString say(const char* text, const QStringList& arguments = {})
{
    return words::fillIn(words::inLanguage("Practice", text), arguments);
}

/// Both ends of a range stand as a range.
bool isRange(const Mark& mark, const std::vector<Argument>& arguments)
{
    switch (mark.decision) {
    case DecisionPoint::EdgesCleared:
    case DecisionPoint::SandedAt:
    case DecisionPoint::HardenerDose:
        return arguments.size() == 2;
    case DecisionPoint::MixedAmount: // what was given is a mass and batches
        return &arguments == &mark.expected && arguments.size() == 2;
    default:
        return false;
    }
}

QString decidedTold(const Mark& mark, const std::vector<Argument>& arguments, const Words& words)
{
    if (arguments.empty())
        return say(QT_TRANSLATE_NOOP("Practice", "nothing"));
    if (isRange(mark, arguments))
        //: two times
        return say(QT_TRANSLATE_NOOP("Practice", "%1 to %2"),
                   {words::markedArgument(arguments.front(), words), words::markedArgument(arguments.back(), words)});
    if (mark.decision == DecisionPoint::MixedAmount)
        return words::markedArgument(arguments.front(), words);
    if (mark.decision == DecisionPoint::FinishCoats && arguments.size() == 2)
        return words::markedArgument(arguments.front(), words) + u" × "_s +
               words::markedArgument(arguments.back(), words);
    return words::markedList(arguments, words);
}

} // namespace

QString skillName(Skill skill) { return words::lookUp("Practice", skills, codeOf(skill)); }

QString decisionName(DecisionPoint decision) { return words::lookUp("Practice", decisions, codeOf(decision)); }

QString decisionTold(const Mark& mark, const Words& words)
{
    if (!mark.lift)
        return decisionName(mark.decision);
    if (mark.decision == DecisionPoint::BuildUp)
        return decisionName(mark.decision) + u", "_s + words.face(*mark.lift == 0 ? Face::Front : Face::Back);
    //: %1 is a decision, %2 a number: "Hardener, lift 2"
    return say(QT_TRANSLATE_NOOP("Practice", "%1, lift %2"),
               {decisionName(mark.decision), QString::number(*mark.lift + 1)});
}

QString givenTold(const Mark& mark, const Words& words) { return decidedTold(mark, mark.given, words); }

QString expectedTold(const Mark& mark, const Words& words) { return decidedTold(mark, mark.expected, words); }

QString outcomeTold(const Outcome& outcome)
{
    if (outcome.filledAStop)
        return say(QT_TRANSLATE_NOOP("Practice", "Not passed: it was filled where it must stop."));
    if (outcome.wrongVerdict)
        return say(QT_TRANSLATE_NOOP("Practice", "Not passed: it could have been filled."));
    if (outcome.unfitFiller)
        return say(QT_TRANSLATE_NOOP("Practice", "Not passed: the wrong filler went in."));
    if (outcome.graveMistake)
        return say(QT_TRANSLATE_NOOP("Practice", "Not passed: one mistake that no care makes good."));
    if (outcome.weak.empty())
        return say(QT_TRANSLATE_NOOP("Practice", "Passed."));
    QStringList weak;
    for (const Skill each : outcome.weak)
        weak << skillName(each);
    //: %1 is a list of skills: "mix, time"
    return say(QT_TRANSLATE_NOOP("Practice", "Not passed: more than one mistake in: %1."), {weak.join(u", "_s)});
}

QString trapTold(TrapKind trap) { return words::lookUp("Traps", traps, codeOf(trap)); }

} // namespace strandbench
