// SPDX-License-Identifier: GPL-3.0-or-later
// A screen with every touch control on it, laid out as a bench screen is.
#pragma once

#include "touch/answer_bar.h"
#include "touch/fit_label.h"
#include "touch/hold_button.h"
#include "touch/stepper.h"
#include "touch_rules/glass.h"

#include <QWidget>

class QBoxLayout;

namespace strandbench {

class SampleScreen final : public QWidget {
public:
    SampleScreen(const Theme& theme, const rules::Glass& glass);

    FitLabel* context;
    FitLabel* sentence;
    FitLabel* figure;
    FitLabel* body;
    Stepper* stepper;
    std::vector<TapButton*> choices;
    HoldButton* hold;
    AnswerBar* answers;

private:
    void addFigureCard(const Theme& theme, QBoxLayout* middle);
    void addInputs(const Theme& theme, QBoxLayout* middle);
};

} // namespace strandbench
