// SPDX-License-Identifier: GPL-3.0-or-later
// The same words on as many pages, as plain text: what Qt alone takes for a PDF.
#pragma once

#include <QByteArray>
#include <QStringList>

namespace strandbench::paperbench {

/// The words of each page of a PDF, as poppler's pdftotext reads them. Ends the program where that is not there.
[[nodiscard]] QStringList wordsOfPages(const QByteArray& pdf);

/// A PDF of these pages on A4 at the sheets' own resolution and in their font: a QTextDocument of one paragraph a page,
/// printed to a QPdfWriter. Ends the program where a page does not hold its words.
[[nodiscard]] QByteArray plainPdf(const QStringList& pages);

} // namespace strandbench::paperbench
