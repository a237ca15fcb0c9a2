// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: every assumption as a row, with its figure, where it comes from, and a mark when it was changed.
#pragma once

#include "screens/set_up/set_up_screen.h"
#include "words/assumption_words.h"

namespace strandbench {

class SetUpAssumptionsScreen final : public SetUpScreen {
    Q_OBJECT
public:
    SetUpAssumptionsScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);

private:
    [[nodiscard]] TapButton* row(const AssumptionEntry& entry);
    /// What is assumed, but kept elsewhere: the nozzle on the sheet, hands-on times in the data of the steps.
    [[nodiscard]] TapButton* keptElsewhere(std::size_t index);

    AssumptionWords m_say;
};

} // namespace strandbench
