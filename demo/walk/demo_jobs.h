// SPDX-License-Identifier: GPL-3.0-or-later
// The demo jobs: the workshop of a county bus depot. Every figure here is invented.
#pragma once

#include "walk/walk.h"

namespace strandbench {

/// 4421: a hole through a moulded skirt panel; the whole walk.
[[nodiscard]] DemoJob skirtPanel();
/// 4417: a gouge in a laminated roof cap.
[[nodiscard]] DemoJob roofCap();
/// 4402: a spot-welded seam in a steel wheel arch, which is refused.
[[nodiscard]] DemoJob wheelArch();

[[nodiscard]] Settings demoSettings();

} // namespace strandbench
