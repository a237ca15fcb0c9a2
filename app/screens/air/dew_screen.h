// SPDX-License-Identifier: GPL-3.0-or-later
// How far the panel was above its dew point, day by day, from the readings of the log.
#pragma once

#include "pictures/dew_picture.h"
#include "review/air_of_days.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

class DewScreen final : public Screen {
    Q_OBJECT
public:
    static constexpr int daysBack = 13; ///< before today

    explicit DewScreen(const Surroundings& around, QWidget* parent = nullptr);

private:
    void showDays(const Logged<std::vector<Event>>& events);
    [[nodiscard]] QWidget* dayPage(const QString& day, const std::vector<AirReading>& readings, QWidget* parent) const;
    [[nodiscard]] DewDay dewDay(const std::vector<AirReading>& readings) const;
    [[nodiscard]] QWidget* figures(const QString& day, const std::vector<AirReading>& readings, QWidget* parent) const;

    PagedRows* m_pages = nullptr;
    FitLabel* m_none = nullptr;
};

} // namespace strandbench
