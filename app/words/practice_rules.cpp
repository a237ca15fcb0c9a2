// SPDX-License-Identifier: GPL-3.0-or-later
// The rule behind each mark, with its tolerance.
#include "words/practice_codes.h"
#include "words/practice_words.h"
#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line rules[] = {
    {"substrate_found", QT_TRANSLATE_NOOP("PracticeRules", "Every test on the panel must fit the material named.")},
    //: %1 is a test: "tap sound"
    {"a_test_tells", QT_TRANSLATE_NOOP("PracticeRules", "One test speaks against it: %1.")},
    //: %1 is a number
    {"not_told_apart", QT_TRANSLATE_NOOP("PracticeRules", "No test tells %1 materials apart here: that is unknown.")},
    {"damage_found", QT_TRANSLATE_NOOP("PracticeRules", "The kind of damage sets how it is cut and filled.")},
    //: %1 and %3 are percentages, %2 and %4 lengths
    {"size_found",
     QT_TRANSLATE_NOOP("PracticeRules", "A length within %1 or %2, a width or depth within %3 or %4. A crack counts "
                                        "from tip to tip.")},
    {"weld_found", QT_TRANSLATE_NOOP("PracticeRules", "Only a solid weld is filled; look at both sides.")},
    {"adhesive_found", QT_TRANSLATE_NOOP("PracticeRules", "A nail tells whether the adhesive has cured.")},
    {"reach_found", QT_TRANSLATE_NOOP("PracticeRules", "Reached from behind means by hand, not by a mirror.")},
    {"surface_found", QT_TRANSLATE_NOOP("PracticeRules", "What is on the surface is told by cloth and nail.")},
    //: %1 is a length
    {"zone_found", QT_TRANSLATE_NOOP("PracticeRules", "What carries load, restrains or sees reaches %1 round it.")},
    {"moisture_found", QT_TRANSLATE_NOOP("PracticeRules", "A taped foil tells dry from damp.")},
    {"core_found", QT_TRANSLATE_NOOP("PracticeRules", "An open edge shows what lies between the skins.")},
    {"fill_or_stop", QT_TRANSLATE_NOOP("PracticeRules", "The decision table says it for the answers given.")},
    {"it_stops", QT_TRANSLATE_NOOP("PracticeRules", "By the answers given, this stops it: %1.")},
    {"nothing_stops", QT_TRANSLATE_NOOP("PracticeRules", "By the answers given, nothing stops it.")},
    {"why_stop", QT_TRANSLATE_NOOP("PracticeRules", "Whoever stops says what must be put right, all of it.")},
    {"instead_of_filling", QT_TRANSLATE_NOOP("PracticeRules", "Each stop has its own way out.")},
    //: %1 is a filler
    {"which_filler", QT_TRANSLATE_NOOP("PracticeRules", "Best for this damage on this material: %1.")},
    {"another_is_better", QT_TRANSLATE_NOOP("PracticeRules", "It may be used, but another is better: %1.")},
    {"refused_here", QT_TRANSLATE_NOOP("PracticeRules", "The table refuses it here: %1.")},
    {"steps_left_out", QT_TRANSLATE_NOOP("PracticeRules", "No step of the plan is left out.")},
    {"steps_that_harm", QT_TRANSLATE_NOOP("PracticeRules", "Nothing is done that does not belong here.")},
    {"steps_in_order", QT_TRANSLATE_NOOP("PracticeRules", "Each step comes before the one that would spoil it.")},
    //: %1 is a thickness, %2 a temperature
    {"lift_thickness", QT_TRANSLATE_NOOP("PracticeRules", "At most %1 in one go, and no hotter than %2.")},
    //: %1 is a thickness
    {"build_up", QT_TRANSLATE_NOOP("PracticeRules", "The face is full to within %1.")},
    //: %1 and %2 are percentages
    {"mixed_amount", QT_TRANSLATE_NOOP("PracticeRules", "At most %1 too little or %2 too much.")},
    //: three shares
    {"hardener_dose", QT_TRANSLATE_NOOP("PracticeRules", "%1 hardener of filler mass, from %2 to %3.")},
    //: %1 is a share
    {"edges_cleared", QT_TRANSLATE_NOOP("PracticeRules", "Edges are cleared from %1 of the gel time to the gel.")},
    //: %1 is a share
    {"sanded_at",
     QT_TRANSLATE_NOOP("PracticeRules", "Sanding waits for %1 cured at the face, and is easy for a while.")},
    {"turned", QT_TRANSLATE_NOOP("PracticeRules", "A hole through a laminate is filled from both faces.")},
    //: two thicknesses, and a tolerance
    {"finish_coats", QT_TRANSLATE_NOOP("PracticeRules", "A coat at most %1, in all at most %2, full to within %3.")},
    {"inspected", QT_TRANSLATE_NOOP("PracticeRules", "All tests are made before primer.")},
    //: %1 is a time
    {"primer_after", QT_TRANSLATE_NOOP("PracticeRules", "Primer waits at least %1 after the last sanding.")},
};

} // namespace

QString ruleTold(const Mark& mark, const Words& words)
{
    const auto& arguments = mark.rule.arguments;
    QStringList texts;
    // One argument stands for all of a list: "this stops it: …".
    const bool list = mark.rule.code == u"it_stops"_s;
    if (list)
        texts << words::markedList(arguments, words);
    for (std::size_t i = 0; !list && i < arguments.size(); ++i)
        texts << words::markedList({arguments[i]}, words);
    const QString text = words::lookUp("PracticeRules", rules, mark.rule.code);
    if (text.contains(u'%' + QString::number(texts.size() + 1)))
        return {}; // of a decision that was not reached its figures are not known
    return Words::title(words::fillIn(text, texts));
}

} // namespace strandbench
