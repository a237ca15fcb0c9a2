// SPDX-License-Identifier: GPL-3.0-or-later
// The lots that went into a repair; a tap leads to every other repair that took of one.
#pragma once

#include "review/job_record.h"
#include "screens/frame/paged_rows.h"
#include "stock/stock_acts.h"

namespace strandbench {

class RepairLotsScreen final : public Screen {
    Q_OBJECT
public:
    RepairLotsScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

Q_SIGNALS:
    void lotTapped(const strandbench::StockLot& lot);

private:
    void showRecord(const JobRecord& record);
    [[nodiscard]] PagedRows::MakeRow rowOf(const StockLot& lot, Mass amount, int batches, std::size_t index);

    PagedRows* m_rows = nullptr;
};

} // namespace strandbench
