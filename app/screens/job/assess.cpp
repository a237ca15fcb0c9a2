// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/assess.h"

#include "screens/frame/choice_screen.h"
#include "screens/job/choices.h"
#include "screens/job/measure_screens.h"
#include "theme/sizes.h"
#include "words/found_words.h"

#include <QCoreApplication>
#include <QGridLayout>

#include <algorithm>

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
                            std::function<void()> keep, std::function<void()> changeUnits,
                            const std::vector<FoundBy>& foundBy) const
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
    const auto told = question == Question::Substrate ? foundBy : std::vector<FoundBy>();
    for (const Choice& choice : choicesOf(question, m_repair, m_around)) {
        const auto tapped = [screen, keep, choice, question, corrects, told] {
            if (choice.chosen)
                return keep();
            Q_EMIT(*screen)->acts({Answered{question, choice.value, corrects, {}, told}});
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

HowToTellScreen::HowToTellScreen(const Surroundings& around, const Repair& repair, Question question,
                                 const std::vector<FoundBy>& foundBy, QWidget* parent)
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
    if (question == Question::Substrate)
        addFoundBy(foundBy);
    answers()->setWayOn(m_page ? Says::tr("What did you go by?") : Says::tr("Back to the question"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, box] {
        if (!m_page || m_page->isVisibleTo(this))
            return Q_EMIT backTapped();
        box->hide();
        m_page->show();
        setSentence(Says::tr("What did you go by?"));
        answers()->setWayOn(Says::tr("Back to the question"));
    });
}

void HowToTellScreen::addFoundBy(const std::vector<FoundBy>& chosen)
{
    m_page = new QWidget(this);
    m_page->hide();
    auto* keys = new QGridLayout(m_page);
    keys->setContentsMargins(0, 0, 0, 0);
    keys->setSpacing(px(sizes::gap));
    const int columns = around().upright ? 2 : 3;
    for (const auto& [by, code] : Codes<FoundBy>::table) {
        auto* key = new TapButton(theme(), u"found_by_"_s + QString::fromLatin1(code), TapButton::Kind::Choice, m_page);
        key->setTitle(Words::title(foundByName(by)));
        key->setCheckable(true);
        key->setChecked(std::ranges::find(chosen, by) != chosen.end());
        connect(key, &TapButton::toggled, this, [this] {
            std::vector<FoundBy> now;
            for (const auto& [each, button] : m_foundBy)
                if (button->isChecked())
                    now.push_back(each);
            Q_EMIT foundByChosen(now);
        });
        const int place = int(m_foundBy.size());
        keys->addWidget(key, place / columns, place % columns);
        m_foundBy.emplace_back(by, key);
    }
    content()->addWidget(m_page, 1);
}

} // namespace strandbench
