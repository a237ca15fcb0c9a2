// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: who works here.
#pragma once

#include "screens/set_up_screen.h"

namespace strandbench {

class SetUpPeopleScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpPeopleScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);

private:
    void choose(const QString& name);

    std::vector<TapButton*> m_names;
    class HoldButton* m_remove = nullptr;
    QString m_chosen;
};

} // namespace strandbench
