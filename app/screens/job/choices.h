// SPDX-License-Identifier: GPL-3.0-or-later
// The answers that a question offers, with how to tell them and their pictures.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

struct Choice {
    QString code;
    QString title;
    QString hint;
    AnswerValue value;
    TapButton::Picture picture;
    bool refuses = false; ///< always leads to a stop
    bool chosen = false;  ///< the answer on record
};

/// Every answer to a question of choice; empty for Size and Reading.
[[nodiscard]] std::vector<Choice> choicesOf(Question question, const Repair& repair, const Surroundings& around);

} // namespace strandbench
