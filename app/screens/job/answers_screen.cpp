// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/answers_screen.h"

#include "screens/frame/choice_screen.h"
#include "words/plan_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(AnswersScreen)
};

} // namespace

Screen* makeAnswersScreen(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent)
{
    const Words& words = around.words;
    const bool open = mayCorrect(repair) || repair.replanDue() || !repair.plan;
    ChoiceScreen::Spec spec;
    spec.name = u"screen_answers"_s;
    spec.context = contextOf(repair, words);
    spec.sentence = open ? Says::tr("Which answer was wrong?") : Says::tr("These were the answers");
    spec.wayOn = Says::tr("All right: go on");
    spec.moreTitle = Says::tr("More answers");
    auto screen = std::make_shared<ChoiceScreen*>(nullptr);
    for (const auto& [question, seq] : repair.answeredBy) {
        const auto tapped = [screen, ways, open, question = question] {
            if (open)
                return ways.look({Look::At::Question, question, 0, Stage::Prepare});
            (*screen)->showTrouble(Says::tr("Finishing filler is on: the answers stand."),
                                   Says::tr("If one was wrong, stop and ask."));
        };
        spec.tiles.push_back({u"answered_"_s + codeOf(question),
                              Words::title(words.questionName(question)),
                              words::answerValue(repair.assessment, question, words),
                              {},
                              false,
                              false,
                              tapped});
    }
    *screen = new ChoiceScreen(around, std::move(spec), parent);
    QObject::connect(*screen, &ChoiceScreen::wayOnTapped, *screen, ways.present);
    return *screen;
}

} // namespace strandbench
