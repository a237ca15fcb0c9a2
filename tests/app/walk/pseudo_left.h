// SPDX-License-Identifier: GPL-3.0-or-later
// What is known to have no room in the pseudo-language.
#pragma once

#include "touch_rules/rule_check.h"

namespace strandbench::test {

/// True for a breach that is known and left: of this rule, by this widget.
[[nodiscard]] bool isLeftInPseudo(const rules::Breach& breach);

} // namespace strandbench::test
