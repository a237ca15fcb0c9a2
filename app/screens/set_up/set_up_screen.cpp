// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_screen.h"

#include "screens/set_up/set_up_assumption.h"
#include "screens/set_up/set_up_assumptions.h"
#include "screens/set_up/set_up_instruments.h"
#include "screens/set_up/set_up_people.h"
#include "screens/set_up/set_up_record.h"
#include "screens/set_up/set_up_sheets.h"
#include "screens/set_up/set_up_sound.h"
#include "theme/sizes.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

SetUpGroup after(SetUpGroup group)
{
    switch (group) {
    case SetUpGroup::Bench:
        return SetUpGroup::People;
    case SetUpGroup::People:
        return SetUpGroup::SoundAndGlass;
    case SetUpGroup::SoundAndGlass:
        return SetUpGroup::Record;
    case SetUpGroup::Record:
        return SetUpGroup::Assumptions;
    case SetUpGroup::Assumptions:
        return SetUpGroup::Sheets;
    case SetUpGroup::Sheets:
        return SetUpGroup::Instruments;
    case SetUpGroup::Instruments:
        break;
    }
    return SetUpGroup::Bench;
}

QString nameOf(SetUpGroup group)
{
    switch (group) {
    case SetUpGroup::Bench:
        break;
    case SetUpGroup::People:
        return SetUpScreen::tr("People");
    case SetUpGroup::SoundAndGlass:
        return SetUpScreen::tr("Sound and glass");
    case SetUpGroup::Record:
        return SetUpScreen::tr("Record");
    case SetUpGroup::Assumptions:
        return SetUpScreen::tr("Assumptions");
    case SetUpGroup::Sheets:
        return SetUpScreen::tr("Product sheets");
    case SetUpGroup::Instruments:
        return SetUpScreen::tr("Instruments");
    }
    return SetUpScreen::tr("Bench");
}

} // namespace

SetUpScreen::SetUpScreen(const Surroundings& around, const QString& name, const SetUpPlace& place, QWidget* parent)
    : Screen(around, name, parent), m_place(place)
{}

QWidget* SetUpScreen::buildPage(const QString& context, const QString& sentence, int pages)
{
    m_place.page = std::clamp(m_place.page, 0, pages - 1);
    const QString where = pages > 1 ? tr("page %1 of %2").arg(m_place.page + 1).arg(pages) : QString();
    QStringList parts{tr("Bench set-up"), nameOf(m_place.group), where, context};
    parts.removeAll(QString());
    buildFrame(parts.join(u" · "_s), sentence);
    answers()->stop()->hide();
    const SetUpGroup next = after(m_place.group);
    answers()->setWayOn(nameOf(next));
    answers()->wayOn()->setSecondLine(tr("next part of the set-up"));
    connect(answers(), &AnswerBar::wayOnTapped, this, [this, next] { Q_EMIT placeWanted({next, 0}); });

    auto* page = new QWidget(this);
    if (pages == 1) {
        content()->addWidget(page, 1);
        return page;
    }
    TapButton* before = arrow(u"page_before"_s, u"‹"_s, pages, pages - 1);
    TapButton* behind = arrow(u"page_after"_s, u"›"_s, pages, 1);
    before->setAccessibleName(tr("Page before"));
    behind->setAccessibleName(tr("Page after"));
    // Beside the page, one below the other, on the side of the hand; below it on an upright glass.
    auto* arrows = new QBoxLayout(around().upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    arrows->setSpacing(px(sizes::gap));
    arrows->addWidget(before, 1);
    arrows->addWidget(behind, 1);
    const bool first = !around().upright && theme().hand() == Hand::Left;
    if (first)
        content()->addLayout(arrows);
    content()->addWidget(page, 1);
    if (!first)
        content()->addLayout(arrows);
    return page;
}

void SetUpScreen::backTo(const SetUpPlace& place)
{
    disconnect(answers(), &AnswerBar::backTapped, this, &Screen::backTapped);
    connect(answers(), &AnswerBar::backTapped, this, [this, place] { Q_EMIT placeWanted(place); });
}

TapButton* SetUpScreen::arrow(const QString& name, const QString& title, int pages, int step)
{
    TapButton* made = key(name, TapButton::Kind::Plain, title);
    made->setTitleSize(Theme::size(TextRole::BigFigure));
    made->setSizePolicy(around().upright ? QSizePolicy::Expanding : QSizePolicy::Fixed,
                        around().upright ? QSizePolicy::Fixed : QSizePolicy::Expanding);
    connect(made, &TapButton::clicked, this, [this, pages, step] {
        Q_EMIT placeWanted({m_place.group, (m_place.page + step) % pages});
    });
    return made;
}

TapButton* SetUpScreen::key(const QString& name, TapButton::Kind kind, const QString& title, const QString& second)
{
    auto* made = new TapButton(theme(), name, kind, this);
    made->setLeastSize(sizes::denseTarget, sizes::denseTarget);
    made->setTitle(title);
    made->setSecondLine(second);
    return made;
}

TapButton* SetUpScreen::choice(const QString& name, const QString& title, bool chosen, const Settings& wanted)
{
    TapButton* made = key(name, TapButton::Kind::Choice, title);
    made->setChecked(chosen);
    connect(made, &TapButton::clicked, this, [this, made, chosen, wanted] {
        made->setChecked(chosen); // what is chosen is what the file says, not what was tapped last
        if (!chosen)
            Q_EMIT settingsChanged(wanted);
    });
    return made;
}

SetUpScreen* makeSetUpScreen(const Surroundings& around, const SetUpPlace& place, Player* player, const Keeper* keeper,
                             QWidget* parent)
{
    switch (place.group) {
    case SetUpGroup::People:
        if (place.detail == newName)
            return new SetUpNameScreen(around, place, parent);
        return new SetUpPeopleScreen(around, place, parent);
    case SetUpGroup::SoundAndGlass:
        return new SetUpSoundScreen(around, place, player, parent);
    case SetUpGroup::Record:
        return new SetUpRecordScreen(around, place, keeper, parent);
    case SetUpGroup::Assumptions:
        if (const AssumptionEntry* entry = findAssumption(place.detail))
            return new SetUpAssumptionScreen(around, place, *entry, parent);
        return new SetUpAssumptionsScreen(around, place, parent);
    case SetUpGroup::Sheets:
        return new SetUpSheetsScreen(around, place, parent);
    case SetUpGroup::Instruments:
        return makeSetUpInstruments(around, place, parent);
    case SetUpGroup::Bench:
        break;
    }
    return new SetUpBenchScreen(around, place, parent);
}

} // namespace strandbench
