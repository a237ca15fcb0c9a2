// SPDX-License-Identifier: GPL-3.0-or-later
// Where a job's sheet goes, and where a day's go: the day sheet with its jobs' behind it, and the day as CSV and JSON.
#pragma once

#include "screens/paper/paper_screen.h"

namespace strandbench {

class SheetScreen final : public PaperScreen {
    Q_OBJECT
public:
    SheetScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr,
                Printing printing = Printing::bySystem());

private:
    void keep(const Logged<RepairFile>& file);
};

class DaySheetsScreen final : public PaperScreen {
    Q_OBJECT
public:
    /// day: local, "YYYY-MM-DD".
    DaySheetsScreen(const Surroundings& around, const QString& day, QWidget* parent = nullptr,
                    Printing printing = Printing::bySystem());

private:
    void keep(const Logged<DaySheets>& sheets);

    QString m_day;
};

} // namespace strandbench
