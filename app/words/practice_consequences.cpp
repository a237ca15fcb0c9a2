// SPDX-License-Identifier: GPL-3.0-or-later
// What a mistake would have come to, in one sentence each.
#include "words/practice_codes.h"
#include "words/practice_words.h"
#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line consequences[] = {
    {"would_be_stopped", QT_TRANSLATE_NOOP("Consequences", "It would be filled where it must stop: %1.")},
    {"stopped_for_nothing", QT_TRANSLATE_NOOP("Consequences", "It would stop for nothing: %1.")},
    {"other_stop", QT_TRANSLATE_NOOP("Consequences", "It would be put right for the wrong reason: %1, not: %2.")},
    {"other_filler", QT_TRANSLATE_NOOP("Consequences", "Another filler would go in: %1, not %2.")},
    {"other_amount", QT_TRANSLATE_NOOP("Consequences", "%1 would be mixed, not %2.")},
    {"crack_goes_on", QT_TRANSLATE_NOOP("Consequences", "%1 of crack would stay, undrilled, and run on.")},
    {"same_outcome", QT_TRANSLATE_NOOP("Consequences", "The plan would be the same; the record would be wrong.")},
    {"step_missing", QT_TRANSLATE_NOOP("Consequences", "It would lack: %1.")},
    {"step_for_nothing", QT_TRANSLATE_NOOP("Consequences", "Work for nothing: %1.")},
    {"step_harms", QT_TRANSLATE_NOOP("Consequences", "It spoils the bond or the panel: %1.")},
    {"step_too_late", QT_TRANSLATE_NOOP("Consequences", "%1: that comes before: %2.")},
    {"adhesion_lost",
     QT_TRANSLATE_NOOP("Consequences", "The panel is only %1 above dew point, not %2: unseen dew, and no adhesion.")},
    {"adhesion_lost_wet", QT_TRANSLATE_NOOP("Consequences", "It is damp: the filler does not hold on water.")},
    //: %1 is the panel's temperature, %2 the least
    {"adhesion_lost_cold",
     QT_TRANSLATE_NOOP("Consequences", "At %1 the panel is colder than %2: it does not hold, nor cure through.")},
    {"filled_over_stop", QT_TRANSLATE_NOOP("Consequences", "Filler would hide it: %1.")},
    {"waits_for_nothing", QT_TRANSLATE_NOOP("Consequences", "A panel that could be filled would wait.")},
    {"stop_stays", QT_TRANSLATE_NOOP("Consequences", "It would still stand in the way: %1.")},
    {"leads_nowhere", QT_TRANSLATE_NOOP("Consequences", "That does not put it right: %1.")},
    {"filler_unfit", QT_TRANSLATE_NOOP("Consequences", "%1 does not belong here: %2.")},
    {"overheats_and_maps",
     QT_TRANSLATE_NOOP("Consequences", "%1 in one go reaches %2, above %3: it shrinks as it cools, and maps through.")},
    {"thicker_than_sheet",
     QT_TRANSLATE_NOOP("Consequences", "%1 in one go; its sheet ends at %2: it shrinks and maps.")},
    {"nothing_laid", QT_TRANSLATE_NOOP("Consequences", "Nothing was laid: the damage is as it was.")},
    {"left_too_low", QT_TRANSLATE_NOOP("Consequences", "The face stays %1 too low.")},
    {"built_too_high", QT_TRANSLATE_NOOP("Consequences", "The face stands %1 too high, all of it to sand off.")},
    {"cold_joint", QT_TRANSLATE_NOOP("Consequences", "%1 are missing: the next batch meets a cold joint.")},
    {"left_over", QT_TRANSLATE_NOOP("Consequences", "%1 are left over, and wasted.")},
    {"gels_on_board", QT_TRANSLATE_NOOP("Consequences", "The board gels after %1: %2 are wasted on it.")},
    {"sands_later", QT_TRANSLATE_NOOP("Consequences", "It sands after %1, not after %2.")},
    {"gels_sooner", QT_TRANSLATE_NOOP("Consequences", "It gels after %1, not after %2.")},
    {"never_cures", QT_TRANSLATE_NOOP("Consequences", "With %1 hardener it never cures hard enough to sand.")},
    {"beyond_the_model", QT_TRANSLATE_NOOP("Consequences", "%1 hardener: no sheet and no model goes there.")},
    {"edges_set_hard",
     QT_TRANSLATE_NOOP("Consequences", "The edges gel at %1: the repair grows, and must be ground back.")},
    {"edges_smeared", QT_TRANSLATE_NOOP("Consequences", "Before %1 it still flows: the edges smear again.")},
    {"drags", QT_TRANSLATE_NOOP("Consequences", "Only %1 cured at the face, not %2: it drags and clogs until %3.")},
    {"stone_hard", QT_TRANSLATE_NOOP("Consequences", "After %1 it is hard as stone: the paper hardly bites.")},
    {"not_sanded", QT_TRANSLATE_NOOP("Consequences", "It was not sanded: nothing holds on it.")},
    {"one_face_open",
     QT_TRANSLATE_NOOP("Consequences", "The other face stays open: water gets in, and it breaks out.")},
    {"turned_for_nothing", QT_TRANSLATE_NOOP("Consequences", "There is nothing to fill on the other face.")},
    {"coat_too_thick", QT_TRANSLATE_NOOP("Consequences", "A coat of %1 sinks and pinholes; at most %2.")},
    {"finish_too_thick", QT_TRANSLATE_NOOP("Consequences", "%1 of finishing filler in all; it cracks beyond %2.")},
    {"finish_too_low", QT_TRANSLATE_NOOP("Consequences", "It stays %1 below the contour.")},
    {"not_finished", QT_TRANSLATE_NOOP("Consequences", "It was not finished: strands show through primer.")},
    {"not_looked_for", QT_TRANSLATE_NOOP("Consequences", "It goes to paint unseen: %1.")},
    {"primed_too_soon", QT_TRANSLATE_NOOP("Consequences", "Primed %1 too soon: what cures below shrinks, and maps.")},
};

constexpr Line sheets[] = {
    //: %1 is the share of hardener mixed, %2 the least
    {"soft_film", QT_TRANSLATE_NOOP("Consequences", "By its product sheet: below %2 the film stays soft.")},
    //: %1 is the share of hardener mixed, %2 the most
    {"bleeds_and_pinholes",
     QT_TRANSLATE_NOOP("Consequences", "By its product sheet: above %2 it bleeds and pinholes.")},
};

/// Codes that may come any number of times stand together, for one place.
bool isList(const QString& code)
{
    for (const auto& known = knownConsequences(); const CodeWithArguments& each : known)
        if (each.code == code)
            return !each.arguments.isEmpty() && each.arguments.back().endsWith(u'*');
    return false;
}

QStringList textsOf(const Reason& what, const Words& words)
{
    QStringList texts;
    if (isList(what.code))
        return {words::markedList(what.arguments, words)};
    for (const Argument& each : what.arguments)
        texts << words::markedList({each}, words);
    return texts;
}

} // namespace

QString consequenceTold(const Reason& what, const Words& words)
{
    return Words::title(words::fillIn(words::lookUp("Consequences", consequences, what.code), textsOf(what, words)));
}

QString sheetsWordTold(const Consequence& consequence, const Words& words)
{
    if (!consequence.sheetsWord)
        return {};
    return words::fillIn(words::lookUp("Consequences", sheets, consequence.sheetsWord->code),
                         textsOf(*consequence.sheetsWord, words));
}

} // namespace strandbench
