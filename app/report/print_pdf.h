// SPDX-License-Identifier: GPL-3.0-or-later
// A document as the bytes of a PDF, with the same head and foot on every page.
#pragma once

#include "quantity/codes.h"
#include "report/paper_document.h"

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

/// Prints what `write` puts into the document. Needs a QGuiApplication.
[[nodiscard]] QByteArray printPdf(Paper paper, const PageFrame& frame,
                                  const std::function<void(PaperDocument&)>& write);

} // namespace strandbench
