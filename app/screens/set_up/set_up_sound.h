// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: a tone at the bench's speaker, and the size of the glass. Sound is never the only alarm.
#pragma once

#include "screens/set_up/set_up_screen.h"
#include "sound/player.h"

namespace strandbench {

class SetUpSoundScreen final : public SetUpScreen {
    Q_OBJECT
public:
    /// player: null where the program was started without one.
    SetUpSoundScreen(const Surroundings& around, const SetUpPlace& place, Player* player, QWidget* parent = nullptr);

private:
    [[nodiscard]] Card* outcomeCard();
    void test();
    void show(const Sounded& outcome);
    void say(const QString& headline, const QString& whatToDo, Role ink);
    void ask(bool asking);

    Player* m_player;
    FitLabel* m_said = nullptr;
    FitLabel* m_advice = nullptr;
    TapButton* m_test = nullptr;
    TapButton* m_heard = nullptr;
    TapButton* m_notHeard = nullptr;
};

} // namespace strandbench
