// SPDX-License-Identifier: GPL-3.0-or-later
// The record of one repair: what deviates on top, then everything that happened, in the order of time.
#pragma once

#include "screens/frame/paged_rows.h"
#include "screens/record/record_row.h"

#include "review/deviations.h"

namespace strandbench {

class RecordScreen final : public Screen {
    Q_OBJECT
public:
    RecordScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

Q_SIGNALS:
    void sheetWanted();
    void timelineWanted();
    void lotsWanted();
    void closingWanted(); ///< to sign it off, to return it, to put it right

private:
    void showRecord(const Logged<RepairFile>& file);
    [[nodiscard]] std::vector<RecordRow> rowsOf(const JobRecord& record) const;
    void buildKeys(const JobRecord& record);

    PagedRows* m_rows = nullptr;
};

} // namespace strandbench
