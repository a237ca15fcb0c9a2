// SPDX-License-Identifier: GPL-3.0-or-later
// A row of comma-separated values by RFC 4180.
#pragma once

#include <QStringList>

namespace strandbench {

/// Fields in quotes where they hold a comma, a quote or a line end, quotes doubled; CRLF at the end.
[[nodiscard]] QString csvRow(const QStringList& fields);

} // namespace strandbench
