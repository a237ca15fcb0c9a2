// SPDX-License-Identifier: GPL-3.0-or-later
// A day's repairs as CSV, one a row.
#pragma once

#include "review/deviations.h"

namespace strandbench {

/// A record and where it left the limits.
struct DayEntry {
    JobRecord record;
    std::vector<Deviation> deviations;
};

/// RFC 4180: a heading, CRLF at the end of each row, fields in quotes where they hold a comma, a quote or a line end.
/// UTF-8; moments in ISO 8601; empty where there is nothing to say; numbers with a decimal point, in full precision;
/// several values in a field are parted by "; ".
[[nodiscard]] QByteArray dayToCsv(const QString& day, const std::vector<DayEntry>& entries);

} // namespace strandbench
