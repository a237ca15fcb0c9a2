// SPDX-License-Identifier: GPL-3.0-or-later
// The record of one repair: what deviates on top, then everything that happened, in the order of time.
#pragma once

#include "screens/paged_rows.h"
#include "screens/record_row.h"

#include "review/deviations.h"

namespace strandbench {

class RecordScreen final : public Screen {
    Q_OBJECT
public:
    RecordScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

Q_SIGNALS:
    void sheetWanted();
    void signOffWanted();
    void correctWanted();

private:
    void showRecord(const Logged<RepairFile>& file);
    [[nodiscard]] std::vector<RecordRow> rowsOf(const JobRecord& record) const;
    /// What the supervisor may do with a repair that was handed over.
    void buildSupervisors(const JobRecord& record);

    PagedRows* m_rows = nullptr;
};

} // namespace strandbench
