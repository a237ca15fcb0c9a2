// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_screen.h"

#include "theme/sizes.h"
#include "touch/card.h"

#include <QBoxLayout>
#include <QPainter>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

QHBoxLayout* rowOf(const Theme& theme)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(sizes::gap));
    return row;
}

} // namespace

SampleScreen::SampleScreen(const Theme& theme, const rules::Glass& glass)
    : context(new FitLabel(theme, u"context"_s, TextRole::Small, this)),
      sentence(new FitLabel(theme, u"sentence"_s, TextRole::Sentence, this)),
      figure(nullptr),
      body(nullptr),
      stepper(nullptr),
      hold(nullptr),
      answers(nullptr)
{
    setPalette(QPalette(theme.color(Role::Ground)));
    setAutoFillBackground(true);
    const int margin = theme.px(sizes::margin);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, theme.px(sizes::ribbon + 2), margin, margin);
    column->setSpacing(theme.px(sizes::gap) / 2);
    context->setText(u"Job 4421 \u00b7 skirt panel, right rear \u00b7 SMC"_s);
    context->setRole(Role::MutedInk);
    context->setLines(1);
    sentence->setText(u"Press in firmly, wet the edges, fill to level"_s);
    sentence->setBold(true);
    column->addWidget(context);
    column->addWidget(sentence);
    auto* middle = new QBoxLayout(glass.upright() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    middle->setSpacing(theme.px(sizes::gap));
    addFigureCard(theme, middle);
    addInputs(theme, middle);
    column->addLayout(middle, 1);
    column->addSpacing(theme.px(sizes::gap) / 2);
    answers = new AnswerBar(theme, this);
    answers->setWayOn(u"Edges are clear"_s);
    answers->setBackNote(u"clock runs on"_s);
    column->addWidget(answers);
}

void SampleScreen::addFigureCard(const Theme& theme, QBoxLayout* middle)
{
    auto* card = new Card(theme, this);
    auto* inside = new QVBoxLayout(card);
    inside->setContentsMargins(0, 0, 0, 0);
    figure = new FitLabel(theme, u"figure"_s, TextRole::Figure, card);
    figure->setText(u"02:05"_s);
    figure->setBold(true);
    figure->setLines(1);
    body = new FitLabel(theme, u"until"_s, TextRole::Body, card);
    body->setText(u"until the edges must be clear"_s);
    inside->addWidget(figure);
    inside->addWidget(body);
    middle->addWidget(card, 1);
}

void SampleScreen::addInputs(const Theme& theme, QBoxLayout* middle)
{
    auto* inputs = new QVBoxLayout;
    inputs->setSpacing(theme.px(sizes::gap));
    stepper = new Stepper(theme, u"tips"_s, u"Tips drilled"_s, this);
    stepper->setShown(u"3"_s, u"mm"_s);
    inputs->addWidget(stepper, 1);
    QHBoxLayout* row = rowOf(theme);
    for (const auto& [name, title] : {std::pair(u"laminate"_s, u"Laminate"_s), std::pair(u"smc"_s, u"SMC"_s)}) {
        choices.push_back(new TapButton(theme, name, TapButton::Kind::Choice, this));
        choices.back()->setTitle(title);
        row->addWidget(choices.back(), 1);
    }
    choices.front()->setChecked(true);
    hold = new HoldButton(theme, u"assess_again"_s, TapButton::Kind::Stop, this);
    hold->setTitle(u"Assess again"_s);
    hold->setSecondLine(u"hold 1 s"_s);
    row->addWidget(hold, 1);
    inputs->addLayout(row, 1);
    middle->addLayout(inputs, 1);
}

} // namespace strandbench
