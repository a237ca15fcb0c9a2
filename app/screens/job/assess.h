// SPDX-License-Identifier: GPL-3.0-or-later
// The screens of an assessment: one question fills the screen.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

/// The screen of one question. Where it was answered before, the answer is marked, another one corrects it,
/// and the way on keeps it.
class AssessScreens {
public:
    AssessScreens(const Surroundings& around, const Repair& repair) : m_around(around), m_repair(repair) {}

    /// foundBy: what told the substrate, as chosen so far.
    [[nodiscard]] Screen* make(Question question, QWidget* parent, std::function<void()> showHowToTell,
                               std::function<void()> keep, std::function<void()> changeUnits,
                               const std::vector<FoundBy>& foundBy) const;

private:
    [[nodiscard]] bool answered(Question question) const;

    const Surroundings& m_around;
    const Repair& m_repair;
};

/// How the answers of a question are told apart: one line each, read, then back.
/// Of the substrate it also takes down what the technician went by.
class HowToTellScreen final : public Screen {
    Q_OBJECT
public:
    HowToTellScreen(const Surroundings& around, const Repair& repair, Question question,
                    const std::vector<FoundBy>& foundBy, QWidget* parent = nullptr);

Q_SIGNALS:
    void foundByChosen(const std::vector<FoundBy>& foundBy);

private:
    void addFoundBy(const std::vector<FoundBy>& chosen);

    QWidget* m_page = nullptr; ///< behind the text: the keys of what the technician went by; null of other questions
    std::vector<std::pair<FoundBy, TapButton*>> m_foundBy;
};

} // namespace strandbench
