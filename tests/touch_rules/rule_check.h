// SPDX-License-Identifier: GPL-3.0-or-later
// Walks the widgets of a shown screen and reports every breach of the rules of look and touch: targets, gaps,
// texts, contrast as rendered, names and roles, order of the keyboard.
#pragma once

#include "theme/theme.h"

#include <QString>
#include <QWidget>

#include <iosfwd>
#include <vector>

namespace strandbench::rules {

enum class RuleSet {
    Bench, ///< targets at least 20 mm, 24 mm for the answers
    Dense, ///< set-up and supervisor: targets at least 14 mm; pages may scroll
};

/// One rule broken. rule is one of: target_size, target_gap, target_inside, answer_height, text_fits, text_size,
/// text_inside, text_elided, text_contrast, edge_contrast, name, role, value, picture_text, picture_role, object_name,
/// keyboard_reach, keyboard_order.
struct Breach {
    QString rule;
    QString widget; ///< object name, or the class when it has none
    QString found;
    QString allowed;
};

/// The set that a screen is held to, by its object name.
[[nodiscard]] RuleSet ruleSetOf(const QString& screen);

/// Checks the visible widgets below root (a window that is shown at its final size). An empty answer is a
/// good screen. Sizes and gaps may miss by the half pixel that rounding costs.
[[nodiscard]] std::vector<Breach> checkScreen(QWidget* root, const Theme& theme, RuleSet set = RuleSet::Bench);

/// For the messages of a failing test.
std::ostream& operator<<(std::ostream& out, const Breach& breach);
void PrintTo(const Breach& breach, std::ostream* out);

} // namespace strandbench::rules
