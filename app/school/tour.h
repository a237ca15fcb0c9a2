// SPDX-License-Identifier: GPL-3.0-or-later
// Three minutes for somebody new: the job from taking in to handing over, a page each.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

[[nodiscard]] int tourPages();
/// One page, from 0. next: to the one after it, or out of the tour from the last; skip: out of it.
[[nodiscard]] Screen* tourPage(const Surroundings& around, int page, const std::function<void()>& next,
                               const std::function<void()>& skip, QWidget* parent);

} // namespace strandbench
