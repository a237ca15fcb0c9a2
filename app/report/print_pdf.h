// SPDX-License-Identifier: GPL-3.0-or-later
// A document on pages with the same head and foot: as the bytes of a PDF, or on a printer.
#pragma once

#include "quantity/codes.h"
#include "report/paper_document.h"

#include <QPagedPaintDevice>

#include <stop_token>

namespace strandbench {

enum class Paper { A4, Letter };
template <> struct Codes<Paper> {
    static constexpr std::array<std::pair<Paper, const char*>, 2> table{{{Paper::A4, "a4"}, {Paper::Letter, "letter"}}};
};

/// What stands on every page.
struct PageFrame {
    QString title; ///< of the file
    QString head;
    QString foot;                                    ///< cautions
    QString mark;                                    ///< of the log
    std::function<QString(int page, int of)> number; ///< "1 of 3"
};

using WritePaper = std::function<void(PaperDocument&)>;

/// How it ended.
enum class PrintEnd {
    Whole,
    Stopped, ///< as asked: what is there of it is of no use
    Failed   ///< the device does not take a page
};

// Both may run outside the thread of the glass: QPainter on a paged device and QTextDocument are reentrant there (Qt's
// "Thread-Support in Qt Modules"), as long as nothing is painted by a QPixmap and all that `write` reads outlives them.
// Both need a QGuiApplication, and ask `stop` before each page.

/// Paints what `write` puts into the document, page by page, onto a device with its paper and resolution set. It keeps
/// margins of its own: give the device none.
[[nodiscard]] PrintEnd printPages(QPagedPaintDevice& device, const PageFrame& frame, const WritePaper& write,
                                  const std::stop_token& stop = {});
/// The same as the bytes of a PDF; empty when it was stopped.
[[nodiscard]] QByteArray printPdf(Paper paper, const PageFrame& frame, const WritePaper& write,
                                  const std::stop_token& stop = {});
[[nodiscard]] QPageSize pageSizeOf(Paper paper);
inline constexpr int sheetDotsPerInch = 300;

} // namespace strandbench
