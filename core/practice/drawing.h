// SPDX-License-Identifier: GPL-3.0-or-later
// The two halves of a generated panel: a truth that is drawn, and what it shows. Inside practice only.
#pragma once

#include "practice/dice.h"
#include "practice/panel.h"

namespace strandbench::practice {

/// A truth of any kind: half of them with nothing against filling, the others with one or two complications. Figures
/// are whole tenths of their unit.
[[nodiscard]] Assessment drawTruth(Dice& dice);

/// Evidence that such a truth shows, with every test made.
[[nodiscard]] Evidence drawEvidence(const Assessment& truth, Dice& dice);

} // namespace strandbench::practice
