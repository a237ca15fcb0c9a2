// SPDX-License-Identifier: GPL-3.0-or-later
// CSV files by readers that know nothing of ours: Python's csv module, and SQLite's shell.
#pragma once

#include <QByteArray>
#include <QJsonArray>

namespace strandbench {

/// Every row as a list of texts, the heading first, by Python's csv reader with strict=True, from strict UTF-8. Throws
/// std::runtime_error with what Python said when it refuses.
[[nodiscard]] QJsonArray pythonRows(const QByteArray& csv);
/// The same rows written by Python's csv writer with CRLF and as few quotes as RFC 4180 asks for.
[[nodiscard]] QByteArray pythonWrites(const QByteArray& csv);
/// Every row below the heading by `.import --csv` into a table of text columns. Throws when the shell remarks on
/// anything: a row with more or fewer fields is such a remark.
[[nodiscard]] QJsonArray sqliteRows(const QByteArray& csv);
/// True when Python reads the text as an ISO 8601 day or moment.
[[nodiscard]] bool isIso(const QString& text);

} // namespace strandbench
