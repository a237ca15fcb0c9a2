// SPDX-License-Identifier: GPL-3.0-or-later
// A row of a record: when, who, what.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

struct RecordRow {
    QString name; ///< object name
    QString when;
    QString who;
    QString text;
    bool deviates = false;
};

/// How tall one is: mm.
[[nodiscard]] double recordRowHeight(const Surroundings& around);
[[nodiscard]] QWidget* makeRecordRow(const Surroundings& around, const RecordRow& row, QWidget* parent);

} // namespace strandbench
