// SPDX-License-Identifier: GPL-3.0-or-later
// 'Stop and ask', and the way from there to the rail: why a job is parked, to whom, and out of it again.
#pragma once

#include "screens/job/station_screens.h"

namespace strandbench {

/// 'Stop and ask': whole screen, from any step. park: chooses why; not offered while a mix runs.
[[nodiscard]] Screen* askScreenOf(const Surroundings& around, const Repair& repair, const Ways& ways,
                                  const std::function<void()>& park, QWidget* parent);
/// Why it is parked: a tap hands the reason's code over.
[[nodiscard]] Screen* parkWhyScreen(const Surroundings& around, const Repair& repair,
                                    const std::function<void(const QString&)>& chosen, QWidget* parent);
/// To whom, or where: a tap parks it.
[[nodiscard]] Screen* parkToScreen(const Surroundings& around, const Repair& repair, const QString& reason,
                                   QWidget* parent);
/// The screen of a parked job.
[[nodiscard]] Screen* parkedScreenOf(const Surroundings& around, const Repair& repair, const Ways& ways,
                                     QWidget* parent);

} // namespace strandbench
