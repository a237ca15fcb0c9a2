// SPDX-License-Identifier: GPL-3.0-or-later
// The work of today: every repair that is open or was handed over today, with what deviates.
#pragma once

#include "screens/frame/paged_rows.h"

namespace strandbench {

class TodayScreen final : public Screen {
    Q_OBJECT
public:
    TodayScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void repairTapped(const QUuid& repair);
    void lotsTapped();
    void takeInTapped(); ///< where nothing was worked on yet
    void findTapped();   ///< what was done on other days
    void reviewTapped(); ///< the day as a supervisor looks it through
    void benchTapped();  ///< what happened to the bench itself

private:
    [[nodiscard]] QWidget* makeNone();
    void showDay(const Logged<DayBook>& book);
    [[nodiscard]] PagedRows::MakeRow benchRow(int events);
    [[nodiscard]] PagedRows::MakeRow rowOf(const std::vector<Event>& events, std::size_t index);

    PagedRows* m_rows = nullptr;
    QWidget* m_none = nullptr; ///< where nothing was worked on: what stands here, and the way on
};

} // namespace strandbench
