// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: who works here, names added by large keys and taken off by a hold.
#pragma once

#include "screens/set_up/set_up_screen.h"
#include "touch/hold_button.h"
#include "touch/letter_keys.h"

namespace strandbench {

class SetUpPeopleScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpPeopleScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);

private:
    void choose(const QString& name);

    std::vector<TapButton*> m_names;
    HoldButton* m_remove = nullptr;
    QString m_chosen;
};

/// A new name by the large keys or a keyboard.
class SetUpNameScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpNameScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);

private:
    void showTyped();
    void give();

    FitLabel* m_typed = nullptr;
    LetterKeys* m_keys = nullptr;
};

} // namespace strandbench
