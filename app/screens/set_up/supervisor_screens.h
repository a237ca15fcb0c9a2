// SPDX-License-Identifier: GPL-3.0-or-later
// What leads up to a supervisor's act: why a stop is overridden, which event is put right.
#pragma once

#include "review/job_record.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

/// True when a supervisor may take away all that refuses, and something can be planned then.
[[nodiscard]] bool canOverride(const Surroundings& around, const Repair& repair, const std::vector<Stop>& stops);

/// Why the stops of a repair are overridden; a tap tells it.
[[nodiscard]] Screen* makeOverrideScreen(const Surroundings& around, const Repair& repair,
                                         const std::vector<QString>& stops,
                                         const std::function<void(const Overridden&)>& tell, QWidget* parent);

/// The events of a repair that was handed over, to choose the one that is put right.
class CorrectWhichScreen final : public Screen {
    Q_OBJECT
public:
    CorrectWhichScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

Q_SIGNALS:
    /// text: the event as it is told.
    void chosen(qint64 seq, const QString& text);

private:
    void showRecord(const JobRecord& record);

    PagedRows* m_rows = nullptr;
};

/// What happened to the bench itself today: its clocks, refused acts, its PIN.
class BenchDayScreen final : public Screen {
    Q_OBJECT
public:
    BenchDayScreen(const Surroundings& around, QWidget* parent = nullptr);

private:
    void showDay(const Logged<DayBook>& book);

    PagedRows* m_rows = nullptr;
};

} // namespace strandbench
