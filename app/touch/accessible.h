// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader is told of the touch controls: buttons, choices and texts by their roles.
#pragma once

namespace strandbench {

/// Registers the accessible interfaces of TapButton, HoldButton and FitLabel; further calls do nothing.
void installAccessibility();

} // namespace strandbench
