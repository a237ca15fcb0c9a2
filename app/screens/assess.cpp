// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/assess.h"

#include "screens/choice_screen.h"
#include "screens/choices.h"
#include "screens/measure_screens.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(AssessScreen)
};

} // namespace

bool AssessScreens::answered(Question question) const { return m_repair.answeredBy.contains(question); }

Screen* AssessScreens::make(Question question, QWidget* parent, std::function<void()> showHowToTell,
                            std::function<void()> keep, std::function<void()> changeUnits) const
{
    const bool before = answered(question);
    if (question == Question::Size)
        return makeSizeScreen(m_around, m_repair, parent, std::move(changeUnits));
    if (question == Question::Reading)
        return makeReadingScreen(m_around, m_repair, parent, std::move(changeUnits));

    ChoiceScreen::Spec spec;
    spec.name = u"screen_assess_"_s + codeOf(question);
    spec.context = contextOf(m_repair, m_around.words);
    spec.sentence = m_around.words.question(question);
    spec.wayOn = before ? Says::tr("Keep this answer") : Says::tr("Show me how to tell");
    spec.moreTitle = Says::tr("More answers");

    // The tiles act through the screen, which is made after them.
    auto screen = std::make_shared<ChoiceScreen*>(nullptr);
    const std::optional<qint64> corrects =
        before ? std::optional<qint64>(m_repair.answeredBy.at(question)) : std::nullopt;
    for (const Choice& choice : choicesOf(question, m_repair, m_around)) {
        const auto tapped = [screen, keep, choice, question, corrects] {
            if (choice.chosen)
                return keep();
            Q_EMIT(*screen)->acts({Answered{question, choice.value, corrects}});
        };
        spec.tiles.push_back({u"answer_"_s + choice.code, choice.title, choice.hint, choice.picture, choice.refuses,
                              choice.chosen, tapped});
    }
    *screen = new ChoiceScreen(m_around, std::move(spec), parent);
    QObject::connect(*screen, &ChoiceScreen::wayOnTapped, *screen, [before, keep, showHowToTell] {
        if (before)
            keep();
        else
            showHowToTell();
    });
    return *screen;
}

HowToTellScreen::HowToTellScreen(const Surroundings& around, const Repair& repair, Question question, QWidget* parent)
    : Screen(around, u"screen_how_to_tell"_s, parent)
{
    buildFrame(contextOf(repair, words()), words().question(question));
    Card* box = card(u"how_card"_s);
    auto* columns = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, box);
    columns->setContentsMargins(px(3), px(2), px(3), px(2));
    columns->setSpacing(px(4));
    QStringList lines;
    for (const Choice& choice : choicesOf(question, repair, around))
        lines << choice.title + u": "_s + choice.hint;
    const qsizetype half = (lines.size() + 1) / 2;
    columns->addWidget(label(u"how_first"_s, TextRole::Body, lines.mid(0, half).join(u'\n')), 1);
    columns->addWidget(label(u"how_second"_s, TextRole::Body, lines.mid(half).join(u'\n')), 1);
    content()->addWidget(box, 1);
    answers()->setWayOn(Says::tr("Back to the question"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &Screen::backTapped);
}

} // namespace strandbench
