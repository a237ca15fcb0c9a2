// SPDX-License-Identifier: GPL-3.0-or-later
// The record of one repair: what deviates on top, then everything that happened, in the order of time.
#pragma once

#include "screens/paged_rows.h"

#include "review/deviations.h"

namespace strandbench {

class RecordScreen final : public Screen {
    Q_OBJECT
public:
    RecordScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

Q_SIGNALS:
    void sheetWanted();

private:
    struct Row {
        QString name;
        QString when;
        QString who;
        QString text;
        bool deviates = false;
    };
    void showRecord(const Logged<RepairFile>& file);
    [[nodiscard]] std::vector<Row> rowsOf(const JobRecord& record) const;
    [[nodiscard]] QWidget* makeRow(const Row& row, QWidget* parent);

    PagedRows* m_rows = nullptr;
};

} // namespace strandbench
