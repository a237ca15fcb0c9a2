// SPDX-License-Identifier: GPL-3.0-or-later
// The home rail with its job cards, and the way to take in a panel.
#pragma once

#include "screens/job/job_card.h"
#include "screens/frame/screen.h"

namespace strandbench {

class HomeScreen final : public Screen {
    Q_OBJECT
public:
    HomeScreen(const Surroundings& around, QWidget* parent = nullptr);

    void tick() override;
    void setBackupOverdue(bool overdue);
    void offerPractice(); ///< a key for it, below the taking in

Q_SIGNALS:
    void repairTapped(const QUuid& repair);
    void takeInTapped();
    void personTapped();
    void setUpTapped();
    void todayTapped();
    void stockTapped();
    void practiceTapped();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void buildRail();
    void buildKeys(QBoxLayout* column);
    void showCards();
    [[nodiscard]] std::size_t cardsRoom() const;
    [[nodiscard]] JobCard::Shown shownOf(const Repair& repair) const;

    QBoxLayout* m_rail = nullptr;
    FitLabel* m_none = nullptr; ///< where no card is: what this is
    TapButton* m_takeIn = nullptr;
    TapButton* m_practice = nullptr;
    TapButton* m_more = nullptr;
    TapButton* m_setUp = nullptr;
    std::vector<JobCard*> m_cards;
    std::vector<QUuid> m_ids;
    std::size_t m_first = 0;
};

} // namespace strandbench
