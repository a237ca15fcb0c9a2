// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of an assessment: one question fills the screen.
#pragma once

#include "screens/screen.h"

namespace strandbench {

/// The screen of one question. Where it was answered before, the answer is marked, another one corrects it,
/// and the way on keeps it.
class AssessScreens {
public:
    AssessScreens(const Surroundings& around, const Repair& repair) : m_around(around), m_repair(repair) {}

    [[nodiscard]] Screen* make(Question question, QWidget* parent, std::function<void()> showHowToTell,
                               std::function<void()> keep, std::function<void()> changeUnits) const;

private:
    [[nodiscard]] bool answered(Question question) const;

    const Surroundings& m_around;
    const Repair& m_repair;
};

/// How the answers of a question are told apart: one line each, read, then back.
class HowToTellScreen final : public Screen {
    Q_OBJECT
public:
    HowToTellScreen(const Surroundings& around, const Repair& repair, Question question, QWidget* parent = nullptr);
};

} // namespace strandbench
