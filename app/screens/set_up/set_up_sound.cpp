// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_sound.h"

#include "theme/sizes.h"
#include "touch/fit_column.h"

using namespace Qt::StringLiterals;

namespace strandbench {

SetUpSoundScreen::SetUpSoundScreen(const Surroundings& around, const SetUpPlace& place, Player* player, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_sound"_s, place, parent), m_player(player)
{
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight,
                               buildPage({}, tr("Test the speaker and the size of the glass")));
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    auto* keys = new QVBoxLayout;
    keys->setSpacing(px(sizes::gap));
    m_test = key(u"sound_test"_s, TapButton::Kind::Plain, tr("Sound test"), tr("three rising tones"));
    TapButton* calibrate =
        key(u"calibrate"_s, TapButton::Kind::Plain, tr("Calibrate the glass"), tr("with a bank card"));
    keys->addWidget(m_test, 1);
    keys->addWidget(calibrate, 1);
    row->addLayout(keys, 2);
    row->addWidget(outcomeCard(), 3);
    connect(m_test, &TapButton::clicked, this, &SetUpSoundScreen::test);
    connect(calibrate, &TapButton::clicked, this, &SetUpSoundScreen::calibrateWanted);
    ask(false);
    m_test->setEnabled(m_player != nullptr);
    if (!m_player) {
        say(tr("This bench was started without sound."), tr("Go by the glass alone."), Role::Stop);
        return;
    }
    connect(m_player, &Player::finished, this, &SetUpSoundScreen::show);
    if (m_player->playing())
        test();
    else
        say(tr("Not tested since the set-up was opened."),
            tr("Sound is never the only alarm: what the glass shows counts, heard or not."), Role::Ink);
}

Card* SetUpSoundScreen::outcomeCard()
{
    Card* box = card(u"sound_card"_s);
    auto* inside = new QVBoxLayout(box);
    inside->setContentsMargins(px(sizes::gap), px(2), px(sizes::gap), px(sizes::gap));
    inside->setSpacing(px(2));
    m_said = label(u"sound_said"_s, TextRole::Body, {}, Role::Ink, true);
    m_advice = label(u"sound_advice"_s, TextRole::Body);
    auto* texts = new FitColumn;
    texts->addText(m_said);
    texts->addText(m_advice);
    inside->addLayout(texts, 1);
    auto* heard = new QHBoxLayout;
    heard->setSpacing(px(sizes::gap));
    m_heard = key(u"sound_heard"_s, TapButton::Kind::Plain, tr("Heard it"));
    m_notHeard = key(u"sound_not_heard"_s, TapButton::Kind::Plain, tr("Heard nothing"));
    for (TapButton* each : {m_heard, m_notHeard})
        heard->addWidget(each, 1);
    inside->addLayout(heard);
    connect(m_heard, &TapButton::clicked, this, [this] {
        ask(false);
        say(tr("Heard: the speaker works."), tr("Sound only adds to what the glass shows."), Role::Go);
    });
    connect(m_notHeard, &TapButton::clicked, this, [this] {
        ask(false);
        say(tr("The device played it, but nobody heard it."),
            tr("Look at plug, switch and volume of the speaker and test again. Until then go by the glass alone."),
            Role::Stop);
    });
    return box;
}

void SetUpSoundScreen::ask(bool asking)
{
    m_heard->setVisible(asking);
    m_notHeard->setVisible(asking);
}

void SetUpSoundScreen::say(const QString& headline, const QString& whatToDo, Role ink)
{
    m_said->setRole(ink);
    m_said->setText(headline);
    m_advice->setText(whatToDo);
}

void SetUpSoundScreen::test()
{
    ask(false);
    m_test->setEnabled(false);
    say(tr("Playing. Listen."), {}, Role::Ink);
    if (!m_player->playing() && !m_player->play(Tone{}))
        show({Sounded::Result::WriteFailed, {}});
}

void SetUpSoundScreen::show(const Sounded& outcome)
{
    m_test->setEnabled(true);
    ask(outcome.result == Sounded::Result::Played);
    const QString glass = tr("Go by the glass alone until it is mended: no alarm will sound.");
    const QString told = outcome.said.isEmpty() ? glass : tr("It says: %1.").arg(outcome.said) + u' ' + glass;
    switch (outcome.result) {
    case Sounded::Result::Played:
        return say(tr("The device says that it played. Heard it?"), {}, Role::Ink);
    case Sounded::Result::NoLibrary:
        return say(tr("No sound here: the sound library is missing."), told, Role::Stop);
    case Sounded::Result::NoDevice:
        return say(tr("No sound here: no sound device opens."), told, Role::Stop);
    case Sounded::Result::WriteFailed:
        break;
    }
    say(tr("Not played: the sound device opened and then failed."), told, Role::Stop);
}

} // namespace strandbench
