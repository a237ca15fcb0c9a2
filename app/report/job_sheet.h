// SPDX-License-Identifier: GPL-3.0-or-later
// The record on paper: the sheet of one job, and a day with the sheets of all its jobs.
#pragma once

#include "plan/assumptions.h"
#include "repairlog/repair_log.h"
#include "report/print_pdf.h"
#include "review/deviations.h"
#include "words/words.h"

#include <functional>
#include <stop_token>

namespace strandbench {

/// What a sheet needs beside the record. All outlive the printing.
struct SheetFacts {
    ChainHead head; ///< of the log, as it was read
    const Catalogue& catalogue;
    const Assumptions& assumptions;
    /// The bytes of a picture by its SHA-256; empty when they are not to be had.
    std::function<QByteArray(const QByteArray& hash)> picture;
    Paper paper = Paper::A4;
    std::stop_token stop = {}; ///< once it asks to stop, there is no sheet
};

/// The job sheet as the bytes of a PDF; empty when it was stopped. Needs a QGuiApplication; any thread (print_pdf.h).
[[nodiscard]] QByteArray jobSheetPdf(const JobRecord& record, const SheetFacts& facts, const Words& words);

/// The same pages on a printer whose paper is set; `paper` of the facts is of no account.
[[nodiscard]] PrintEnd printJobSheet(QPagedPaintDevice& device, const JobRecord& record, const SheetFacts& facts,
                                     const Words& words);

/// A page of the day, "YYYY-MM-DD", and the sheet of each of its jobs behind it.
[[nodiscard]] QByteArray dayPdf(const QString& day, const std::vector<JobRecord>& records, const SheetFacts& facts,
                                const Words& words);

[[nodiscard]] PrintEnd printDay(QPagedPaintDevice& device, const QString& day, const std::vector<JobRecord>& records,
                                const SheetFacts& facts, const Words& words);

} // namespace strandbench
