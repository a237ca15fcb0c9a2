// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/screen.h"

#include "theme/sizes.h"
#include "touch/fit_text.h"
#include "words/log_trouble.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double troubleHeight = 10; // mm: two lines

/// One on a wide glass, so that all sentences stand alike; a second one only where its least size is too wide for it.
int sentenceLines(const QString& sentence, const QWidget& screen, const Theme& theme, bool upright)
{
    if (upright)
        return 3;
    const QWidget* glass = screen.parentWidget();
    if (!glass)
        return 1;
    const double room = glass->width() - 2.0 * theme.px(sizes::margin);
    return wrapText(theme, {sentence, {}, true, 1}, Theme::size(TextRole::Sentence).leastMm, room).fits ? 1 : 2;
}

} // namespace

Screen::Screen(const Surroundings& around, const QString& name, QWidget* parent) : QWidget(parent), m_around(around)
{
    setObjectName(name);
}

FitLabel* Screen::label(const QString& name, TextRole role, const QString& text, Role ink, bool bold)
{
    auto* made = new FitLabel(theme(), name, role, this);
    made->setRole(ink);
    made->setBold(bold);
    made->setText(text);
    return made;
}

void Screen::buildFrame(const QString& context, const QString& sentence)
{
    auto* column = new QVBoxLayout(this);
    const int margin = px(sizes::margin);
    column->setContentsMargins(margin, px(1.5), margin, margin);
    column->setSpacing(0);

    m_context = label(u"context"_s, TextRole::Small, context, Role::MutedInk);
    m_context->setLines(around().upright ? 2 : 1);
    m_context->setLeavesOut(u" · "_s);
    m_sentence = label(u"sentence"_s, TextRole::Sentence, sentence, Role::Ink, true);
    m_sentence->setLines(sentenceLines(sentence, *this, theme(), around().upright));
    column->addWidget(m_context);
    column->addWidget(m_sentence);
    column->addWidget(makeTrouble());
    column->addSpacing(px(1.5));

    m_content = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_content->setSpacing(px(sizes::gap));
    column->addLayout(m_content, 1);

    column->addSpacing(px(sizes::gap));

    m_answers = new AnswerBar(theme(), this);
    column->addWidget(m_answers);
    connect(m_answers, &AnswerBar::backTapped, this, &Screen::backTapped);
    connect(m_answers, &AnswerBar::stopTapped, this, &Screen::stopTapped);
}

QWidget* Screen::makeTrouble()
{
    Card* trouble = card(u"trouble"_s);
    trouble->setFilled(Role::Stop);
    trouble->setMinimumHeight(px(troubleHeight));
    auto* inside = new QHBoxLayout(trouble);
    inside->setContentsMargins(px(3), px(0.5), px(3), px(0.5));
    m_troubleText = label(u"trouble_text"_s, TextRole::Body, {}, Role::OnStop, true);
    inside->addWidget(m_troubleText);
    trouble->hide();
    m_trouble = trouble;
    return trouble;
}

Card* Screen::card(const QString& name)
{
    auto* made = new Card(theme(), this);
    made->setObjectName(name);
    return made;
}

void Screen::setSentence(const QString& sentence)
{
    m_sentence->setLines(sentenceLines(sentence, *this, theme(), around().upright));
    m_sentence->setText(sentence);
}

void Screen::setContext(const QString& context) { m_context->setText(context); }

void Screen::showTrouble(const QString& headline, const QString& whatToDo)
{
    m_troubleText->setText(headline.isEmpty() ? QString() : (headline + u" "_s + whatToDo).trimmed());
    // It stands where the sentence stood, so that nothing below moves.
    m_trouble->setVisible(!headline.isEmpty());
    if (m_sentence)
        m_sentence->setVisible(headline.isEmpty());
}

void Screen::showTrouble(const LogFailure& failure)
{
    const LogTroubleText text = logTrouble(failure.trouble);
    showTrouble(text.headline, text.whatToDo);
}

QString Screen::troubleShown() const { return m_trouble->isVisibleTo(this) ? m_troubleText->text() : QString(); }

void Screen::tapWayOn()
{
    if (m_answers && m_answers->wayOn()->isVisible() && m_answers->wayOn()->isEnabled())
        m_answers->wayOn()->click();
}

void Screen::setWriting(bool writing)
{
    if (m_answers)
        m_answers->setEnabled(!writing);
}

QString contextOf(const Repair& repair, const Words& words)
{
    QStringList parts{words.jobLabel(repair.job), repair.panel};
    if (repair.assessment.substrate)
        parts << words.substrate(*repair.assessment.substrate);
    return parts.join(u" · "_s);
}

} // namespace strandbench
