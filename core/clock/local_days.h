// SPDX-License-Identifier: GPL-3.0-or-later
// Local days as events hold them, counted on and back.
#pragma once

#include <QDate>
#include <QString>

namespace strandbench {

/// The local day so many days after one, "YYYY-MM-DD"; before it where `days` is below 0. Empty of what is no day.
[[nodiscard]] inline QString daysFrom(const QString& day, int days)
{
    return QDate::fromString(day, Qt::ISODate).addDays(days).toString(Qt::ISODate);
}

} // namespace strandbench
