// SPDX-License-Identifier: GPL-3.0-or-later
// Tab goes as a person reads: from row to row, from left to right, wherever the layout put the controls.
#pragma once

class QWidget;

namespace strandbench {

/// Puts the controls below root into reading order, by where they stand now. Changes nothing when they are.
void orderKeyboard(QWidget& root);

} // namespace strandbench
