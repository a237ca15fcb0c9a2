// SPDX-License-Identifier: GPL-3.0-or-later
// A product sheet as CSV by RFC 4180, for a spreadsheet: the header field,value,unit, one row a field.
#pragma once

#include "material/sheet.h"
#include "quantity/fault.h"

namespace strandbench {

/// UTF-8 without a byte order mark, lines that end in CRLF, numbers with a decimal point. A field outside the table (a
/// sheet's own cell) has its path and, where it is no text, its JSON as value.
[[nodiscard]] QByteArray sheetToCsv(const ProductSheet& sheet);

/// Reads such a file; the sheet's bytes are its JSON. Every fault at once, each by its field or its line. A byte order
/// mark in front and lines that end in LF alone are let pass, since spreadsheets write them; another separator, another
/// header, a unit that is not the field's, a field told twice are faults.
[[nodiscard]] Checked<ProductSheet> readSheetCsv(const QByteArray& csv);

/// Longer files are refused: no sheet is.
inline constexpr qsizetype longestSheetFile = 64 * 1024;

} // namespace strandbench
