// SPDX-License-Identifier: GPL-3.0-or-later
// A day looked through: what needs eyes first on top, what is still to be signed off or returned counted.
#pragma once

#include "review/day_review.h"
#include "screens/frame/paged_rows.h"

#include <atomic>

namespace strandbench {

/// Which repairs are looked through.
struct ReviewWish {
    QString day; ///< local, "YYYY-MM-DD"
    Narrowing narrowing;
    QString narrowed; ///< in words; empty: all
};

class DayReviewScreen final : public Screen {
    Q_OBJECT
public:
    DayReviewScreen(const Surroundings& around, const ReviewWish& wish, QWidget* parent = nullptr);
    ~DayReviewScreen() override; ///< what is still being read is given up

Q_SIGNALS:
    void wasRead(const std::vector<strandbench::RepairDigest>& repairs); ///< all of the day
    void repairTapped(const QUuid& repair);
    void dayWanted(const QString& day);
    void narrowWanted();
    void figuresWanted();
    void filesWanted();

private:
    void buildKeys();
    void read();
    void show(const std::vector<RepairDigest>& repairs);
    [[nodiscard]] PagedRows::MakeRow rowOf(const RepairDigest& repair, std::size_t index);
    [[nodiscard]] QString figuresText(const DayFigures& day) const;

    ReviewWish m_wish;
    std::shared_ptr<std::atomic<bool>> m_cancelled;
    PagedRows* m_rows = nullptr;
    FitLabel* m_none = nullptr;
    FitLabel* m_figures = nullptr;
    std::optional<QUuid> m_next; ///< to look through
};

} // namespace strandbench
