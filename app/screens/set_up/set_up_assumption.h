// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: one assumption, changed by large keys or the key pad within its range, or put back to the default.
#pragma once

#include "screens/set_up/set_up_screen.h"
#include "touch/key_pad.h"
#include "touch/stepper.h"
#include "words/assumption_words.h"

class QStackedLayout;

namespace strandbench {

class SetUpAssumptionScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpAssumptionScreen(const Surroundings& around, const SetUpPlace& place, const AssumptionEntry& entry,
                          QWidget* parent = nullptr);

private:
    void buildFigure(QWidget* holder);
    /// What the log says of the person at the bench; null where it says nothing of this assumption.
    [[nodiscard]] TapButton* learntKey();
    void buildKeyPad(QWidget* holder);
    void step(int direction);
    void openKeyPad(bool open);
    void showTyped(const QString& text);
    void takeTyped();
    void wayOn();
    void back();
    void refresh();

    const AssumptionEntry& m_entry;
    AssumptionWords m_say;
    SetUpPlace m_rows; ///< where it came from
    double m_number;   ///< in the entry's unit
    bool m_typing = false;
    QStackedLayout* m_stack = nullptr;
    Stepper* m_stepper = nullptr;
    TapButton* m_default = nullptr;
    KeyPad* m_keys = nullptr;
    FitLabel* m_typed = nullptr;
};

} // namespace strandbench
