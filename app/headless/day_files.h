// SPDX-License-Identifier: GPL-3.0-or-later
// A day's report as three files in a folder, all of them or none: what a timer of the system asks for each night.
#pragma once

#include "headless/command.h"

namespace strandbench::headless {

/// One of them: what its name ends in ("pdf"), and what it holds.
struct DayFile {
    QString ending;
    QByteArray bytes;
};

/// What keeps day-YYYY-MM-DD.pdf, .csv and .json from being written: the folder is not there, or one of the names is
/// taken, each by its own fault. Without a day only the folder is looked at.
[[nodiscard]] Faults judgeDayFolder(const QString& option, const QString& folder, const QString& day);

/// Writes them. Where one cannot be written, those written before it are taken away again, and the message names it.
/// done: what is printed of a day that was; the path of each file is put into it under its ending.
[[nodiscard]] Outcome writeDayFiles(const QString& option, const QString& folder, const QString& day,
                                    const std::vector<DayFile>& files, QJsonObject done);

} // namespace strandbench::headless
