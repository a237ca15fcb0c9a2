// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/message_screen.h"

#include "screens/sign_widget.h"
#include "screens/caution_list.h"
#include "touch/hold_button.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {

MessageScreen::MessageScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent), m_spec(std::move(spec))
{
    buildFrame(m_spec.context, m_spec.sentence);
    Card* box = card(u"message_card"_s);
    if (m_spec.refuses) {
        box->setEdge(Role::Stop);
        sentence()->setRole(Role::Stop);
    }
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(px(3), px(2.5), px(3), px(2.5));
    row->setSpacing(px(4));
    buildSide(box, row);
    buildWords(box, row);
    content()->addWidget(box, 1);
    answers()->setWayOn(m_spec.wayOn, m_spec.wayOnKind);
    answers()->setWayOnEnabled(static_cast<bool>(m_spec.go));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { m_spec.go(); });
}

void MessageScreen::buildSide(QWidget* box, QBoxLayout* row)
{
    auto* side = new QVBoxLayout;
    side->addWidget(new SignWidget(theme(), m_spec.sign, m_spec.signName, box), 1);
    if (!m_spec.holdName.isEmpty()) {
        auto* hold = new HoldButton(theme(), m_spec.holdName, TapButton::Kind::Plain, box);
        hold->setTitle(m_spec.holdTitle);
        hold->setSecondLine(QCoreApplication::translate("MessageScreen", "hold 1 s"));
        hold->setLeastSize(34, 20);
        connect(hold, &HoldButton::held, this, [this] { m_spec.held(); });
        side->addWidget(hold);
    }
    row->addLayout(side, 1);
}

void MessageScreen::buildWords(QWidget* box, QBoxLayout* row)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(px(2));
    column->addStretch(1);
    column->addWidget(label(u"message_headline"_s, TextRole::Title, m_spec.headline, Role::Ink, true));
    if (!m_spec.text.isEmpty())
        column->addWidget(label(u"message_text"_s, TextRole::Body, m_spec.text));
    if (!m_spec.cautions.empty())
        column->addWidget(cautionList(m_spec.cautions, theme(), box));
    if (!m_spec.small.isEmpty())
        column->addWidget(label(u"message_small"_s, TextRole::Small, m_spec.small, Role::MutedInk));
    column->addStretch(1);
    row->addLayout(column, 3);
}

} // namespace strandbench
