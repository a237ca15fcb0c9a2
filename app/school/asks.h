// SPDX-License-Identifier: GPL-3.0-or-later
// What an apprentice is asked, one screen each: the bench's own screens without what they tell.
#pragma once

#include "practice/practice_run.h"
#include "screens/frame/screen.h"

namespace strandbench {

/// What the screens of a practice panel lead to.
struct PracticeWays {
    std::function<void()> look;    ///< at the panel
    std::function<void()> changed; ///< something was decided: the next is asked
    std::function<void()> changeUnits;
};

/// The screen of what is asked now, but for mixing and the clock. The run outlives it.
[[nodiscard]] Screen* askOf(const Surroundings& around, PracticeRun& run, const PracticeWays& ways, QWidget* parent);

/// "Practice panel · front face": what stands above every screen of it.
[[nodiscard]] QString practiceContext(const PracticeRun& run, const Words& words);

} // namespace strandbench
