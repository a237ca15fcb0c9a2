// SPDX-License-Identifier: GPL-3.0-or-later
// What the work gave off into the room by the well-mixed box, beside each published limit with its name. A reason to
// ventilate; nothing here clears anybody.
#pragma once

#include "review/air_of_days.h"
#include "screens/frame/paged_rows.h"

#include <QPointer>

namespace strandbench {

class VapourScreen final : public Screen {
    Q_OBJECT
public:
    explicit VapourScreen(const Surroundings& around, QWidget* parent = nullptr);

    void tick() override;

private:
    void showAir(const Logged<std::vector<Event>>& events);
    [[nodiscard]] QWidget* roomPage(QWidget* parent);
    void addRoom(QWidget* page, QBoxLayout* row);
    void addReckoned(QWidget* page, QBoxLayout* row) const;
    [[nodiscard]] QWidget* limitsPage(Vapour vapour, std::size_t from, QWidget* parent) const;
    [[nodiscard]] QString nowLine(Vapour vapour) const;

    PagedRows* m_pages = nullptr;
    std::optional<ShopAir> m_air; ///< on a clock that is 0 at m_readAt
    Instant m_readAt;
    int m_unknownSheets = 0;
    std::vector<std::pair<QPointer<FitLabel>, Vapour>> m_now; ///< the lines that change by the second
};

} // namespace strandbench
