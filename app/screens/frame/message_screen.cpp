// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/message_screen.h"

#include "screens/frame/sign_widget.h"
#include "screens/job/caution_list.h"
#include "theme/sizes.h"
#include "touch/hold_button.h"

#include <QCoreApplication>
#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A sign without a name of its own stands for what the screen says.
QString spokenSign(const MessageScreen::Spec& spec) { return spec.signName.isEmpty() ? spec.sentence : spec.signName; }

} // namespace

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
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    column->addWidget(box, 1);
    const bool aside = m_spec.keysAside && !around.upright;
    if (keysInRow() && !aside)
        buildKeys(column);
    content()->addLayout(column, 1);
    if (keysInRow() && aside)
        buildKeysAside();
    answers()->setWayOn(m_spec.wayOn, m_spec.wayOnKind);
    if (!m_spec.ofARepair)
        answers()->stop()->hide();
    answers()->setWayOnEnabled(static_cast<bool>(m_spec.go));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { m_spec.go(); });
}

void MessageScreen::buildSide(QWidget* box, QBoxLayout* row)
{
    auto* side = new QVBoxLayout;
    side->addWidget(new SignWidget(theme(), m_spec.sign, spokenSign(m_spec), box), 1);
    if (!keysInRow()) {
        if (!m_spec.holdName.isEmpty())
            side->addWidget(makeHold(box));
        for (const SideKey& each : m_spec.keys)
            side->addWidget(makeSideKey(theme(), each, box));
    }
    row->addLayout(side, 1);
}

bool MessageScreen::keysInRow() const { return m_spec.keys.size() + (m_spec.holdName.isEmpty() ? 0 : 1) > 1; }

HoldButton* MessageScreen::makeHold(QWidget* parent)
{
    auto* hold = new HoldButton(theme(), m_spec.holdName, TapButton::Kind::Plain, parent);
    hold->setTitle(m_spec.holdTitle);
    hold->setSecondLine(QCoreApplication::translate("MessageScreen", "hold 1 s"));
    hold->setLeastSize(34, 20);
    connect(hold, &HoldButton::held, this, [this] { m_spec.held(); });
    return hold;
}

void MessageScreen::buildKeys(QBoxLayout* column)
{
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    std::vector<TapButton*> all;
    for (const SideKey& each : m_spec.keys)
        all.push_back(makeSideKey(theme(), each, this));
    if (!m_spec.holdName.isEmpty())
        all.push_back(makeHold(this));
    const int columns = around().upright ? 2 : static_cast<int>(all.size());
    for (int i = 0; i < static_cast<int>(all.size()); ++i) {
        TapButton* key = all[static_cast<std::size_t>(i)];
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        grid->addWidget(key, i / columns, i % columns);
        grid->setColumnStretch(i % columns, 1);
    }
    column->addLayout(grid);
}

void MessageScreen::buildKeysAside()
{
    auto* keys = new QVBoxLayout;
    keys->setSpacing(px(sizes::gap));
    for (const SideKey& each : m_spec.keys)
        keys->addWidget(makeSideKey(theme(), each, this), 1);
    content()->addLayout(keys);
}

void MessageScreen::buildWords(QWidget* box, QBoxLayout* row)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(px(around().upright ? 1 : 2));
    column->addStretch(1);
    column->addWidget(label(u"message_headline"_s, TextRole::Title, m_spec.headline, Role::Ink, true));
    if (!m_spec.text.isEmpty())
        column->addWidget(label(u"message_text"_s, TextRole::Body, m_spec.text));
    if (!m_spec.cautions.empty())
        column->addWidget(cautionList(m_spec.cautions, theme(), box));
    if (!m_spec.small.isEmpty())
        column->addWidget(label(u"message_small"_s, TextRole::Small, m_spec.small, Role::MutedInk));
    column->addStretch(1);
    row->addLayout(column, around().upright ? 4 : 3);
}

} // namespace strandbench
