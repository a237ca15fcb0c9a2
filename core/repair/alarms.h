// SPDX-License-Identifier: GPL-3.0-or-later
// Which alarms ring: for every batch that runs the newest that is due, until somebody answers it or does what it calls
// for.
#pragma once

#include "clock/alarm.h"
#include "plan/assumptions.h"
#include "repair/repair.h"

namespace strandbench {

struct DueAlarm {
    QUuid repair;
    BatchRef batch;
    AlarmKind kind = AlarmKind::EdgesSoon;
    Duration at;    ///< when it began to ring, from 'hardener in'
    Duration rings; ///< since then
    Duration toAct; ///< of EdgesSoon: until they are to be clear, not below 0; of the others 0
    bool operator==(const DueAlarm&) const = default;
};

/// The alarm of one batch: of those that are due the newest, if it was not answered and its act was not told. What must
/// not be late goes by the early ends, what must not be early by the late ones (alarmsOf() in clock/batch_clock.h). A
/// lift is sanded once: of its batches only the last is called for sanding.
[[nodiscard]] std::optional<DueAlarm> alarmOf(const Repair& repair, const BatchRun& run, const Assumptions& assumptions,
                                              const Instant& now);

/// The most urgent first (urgencyOf()), and among equals what rings longest.
void mostUrgentFirst(std::vector<DueAlarm>& alarms);

} // namespace strandbench
