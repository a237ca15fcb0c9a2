// SPDX-License-Identifier: GPL-3.0-or-later
// Everything answered so far, a tile each: a tap leads to the question, where another answer corrects it.
#pragma once

#include "screens/job/station_screens.h"

namespace strandbench {

[[nodiscard]] Screen* makeAnswersScreen(const Surroundings& around, const Repair& repair, const Ways& ways,
                                        QWidget* parent);

} // namespace strandbench
