// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the check, one a file; see rule_check.h.
#pragma once

#include "touch_rules/rule_check.h"

#include <QAbstractButton>
#include <QRect>

#include <vector>

namespace strandbench::rules {

struct Screen {
    QWidget* root;
    const Theme& theme;
    RuleSet set;
    std::vector<QWidget*> widgets;         ///< visible, root left out, parents before children
    std::vector<QAbstractButton*> targets; ///< the buttons among them

    [[nodiscard]] QRect rectOf(const QWidget* widget) const; ///< in the root's pixels
    [[nodiscard]] QRect seenOf(const QWidget* widget) const; ///< what its parents leave of it
    [[nodiscard]] QString mm(double pixels) const;           ///< "19.6 mm"
};

[[nodiscard]] QString nameOf(const QWidget* widget);
[[nodiscard]] QString ratio(double contrast); ///< "6.9 : 1"

void checkTargets(const Screen& screen, std::vector<Breach>& out);
void checkTexts(const Screen& screen, std::vector<Breach>& out);
void checkContrast(const Screen& screen, std::vector<Breach>& out);
void checkNames(const Screen& screen, std::vector<Breach>& out);
void checkPictures(const Screen& screen, std::vector<Breach>& out);
void checkKeyboard(const Screen& screen, std::vector<Breach>& out);

} // namespace strandbench::rules
