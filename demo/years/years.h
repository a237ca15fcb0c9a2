// SPDX-License-Identifier: GPL-3.0-or-later
// Many years of the depot's repairs in one log, made and not kept: the same seed and number give the same bytes.
#pragma once

#include "repairlog/repair_log.h"

#include <functional>

namespace strandbench::years {

struct YearsWanted {
    QString log;        ///< where nothing lies
    qint64 repairs = 0; ///< over 0
    quint64 seed = 1;
    int benches = 1; ///< 1 to 9: whose chains the log holds, as if they had been brought in
};

struct YearsReport {
    qint64 repairs = 0;
    qint64 handedOver = 0;
    qint64 reworks = 0;
    qint64 open = 0; ///< parked, or returned and not done again yet
    qint64 events = 0;
    qint64 days = 0;  ///< on which a repair was taken in
    QString firstDay; ///< local, "YYYY-MM-DD"
    QString lastDay;  ///< on which the last was taken in
    [[nodiscard]] double eventsARepair() const { return double(events) / double(repairs); }
    [[nodiscard]] double repairsADay() const { return double(repairs) / double(days); }
};

/// Writes the log; `progress` is told how many repairs were taken in, day by day. Twelve events a repair in the mean
/// and forty repairs a day: every repair that is handed over takes some fifty, so most are stops that are parked.
[[nodiscard]] Logged<YearsReport> writeYears(const YearsWanted& wanted,
                                             const std::function<void(qint64)>& progress = {});

} // namespace strandbench::years
